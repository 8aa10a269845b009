"""`fairdeal align`: a test page for the printer, and the numbers that are read off it."""

from pathlib import Path
from typing import Annotated

import typer

from decks.commands.naming_printers import told, unknown_printer
from decks.commands.options import option_for
from decks.commands.readings import name_of, reading_of
from decks.printers import (
    Reading,
    forget,
    read_printers,
    remember,
    settings_folder,
)
from decks.recipe import Flip, PaperName
from decks.settings import SETTINGS, UsageError

TEST_FILE = Path("align.pdf")


def align(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    *,
    out: Annotated[Path, typer.Option(help="The test file to make.")] = TEST_FILE,
    paper: Annotated[str | None, option_for("paper")] = None,
    flip: Annotated[str | None, option_for("flip")] = None,
    keep: Annotated[
        str | None, typer.Option("--set", help="Keep what was read, by a name for the printer.")
    ] = None,
    right: Annotated[str | None, typer.Option(help="What was read on the scale right.")] = None,
    up: Annotated[str | None, typer.Option(help="What was read on the scale up.")] = None,
    foot: Annotated[
        str | None, typer.Option(help="What was read at the foot, if it is not the same as right.")
    ] = None,
    skew: Annotated[
        str | None, typer.Option(help="Right less foot, if you would rather give that.")
    ] = None,
    turned: Annotated[
        bool, typer.Option("--turned", help="It was read on leaf 2, for pages wider than high.")
    ] = False,
    tell: Annotated[bool, typer.Option("--list", help="Tell the printers that are kept.")] = False,
    drop: Annotated[str | None, typer.Option("--forget", help="Forget a printer.")] = None,
) -> None:
    """Make a test page that shows where a printer's backs land, or keep what was read on it.

    Print the file on both sides at actual size; its back says how to go on.
    """
    given = {"--right": right, "--up": up, "--foot": foot, "--skew": skew}
    numbers = {option: text for option, text in given.items() if text is not None}
    _refuse_mixtures(keep, numbers, turned=turned, tell=tell, drop=drop)
    if keep is not None:
        reading = reading_of(numbers, _flip(flip))
        lines = _kept(name_of(keep), reading, turned=turned)
    elif tell:
        lines = _listed()
    elif drop is not None:
        lines = _forgotten(drop)
    else:
        lines = _made(out, _paper(paper), _flip(flip))
    for line in lines:
        typer.echo(line)


def _refuse_mixtures(
    keep: str | None, numbers: dict[str, str], *, turned: bool, tell: bool, drop: str | None
) -> None:
    if (keep is not None) + tell + (drop is not None) > 1:
        raise UsageError("--set, --list and --forget are three different things: give one of them.")
    if keep is None and (numbers or turned):
        first = next(iter(numbers), "--turned")
        raise UsageError(f'{first} goes with a printer’s name: --set "Staff room"')


def _made(out: Path, paper: PaperName, flip: Flip) -> list[str]:
    from cards.workbook import save_new  # noqa: PLC0415 (help is not to load openpyxl)
    from decks.press.align.page import align_file  # noqa: PLC0415 (nor the press)

    data = align_file(paper, flip)
    if not (out.is_file() and out.read_bytes() == data):
        save_new(out, data)
    return [
        f"Made    {out}",
        f"Print   both sides, actual size (100 %), flipped on the {flip} edge.",
        "Next    Hold each leaf to the light; its back says what to read and what to type.",
    ]


def _kept(name: str, reading: Reading, *, turned: bool) -> list[str]:
    printer = remember(settings_folder(), name, reading, turned=turned)
    lines = [f"Kept    {line}" for line in told(printer)[int(turned) : int(turned) + 1]]
    lines.append(f'Next    Build with --printer "{printer.name}", or name it on the Deck sheet.')
    if printer.turned is None:
        lines.append("Note    Pages wider than high are not measured yet: that is leaf 2.")
    if printer.upright is None:
        lines.append("Note    Pages higher than wide are not measured yet: that is leaf 1.")
    return lines


def _listed() -> list[str]:
    printers = read_printers(settings_folder())
    if not printers:
        return ["No printer is kept yet. Make a test page with fairdeal align; it says what to do."]
    return [line for printer in printers for line in told(printer)]


def _forgotten(name: str) -> list[str]:
    known = forget(settings_folder(), name)
    if known is None:
        raise UsageError(unknown_printer(read_printers(settings_folder()), name))
    return [f"Forgot  {known.name}"]


def _paper(text: str | None) -> PaperName:
    return PaperName.LETTER if text is None else PaperName(_chosen("paper", text))


def _flip(text: str | None) -> Flip:
    return Flip.LONG if text is None else Flip(_chosen("flip", text))


def _chosen(key: str, text: str) -> str:
    setting = next(one for one in SETTINGS if one.key == key)
    value = setting.read(text)
    if value is None:
        raise UsageError(f"{setting.option} {text}: this can be {setting.expects}.")
    return str(value)
