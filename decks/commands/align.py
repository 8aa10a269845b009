"""`fairdeal align`: a test page for the printer, and the numbers that are read off it."""

from pathlib import Path
from typing import Annotated

import typer

from decks.commands.options import chosen, option_for
from decks.commands.saying import say
from decks.settings import UsageError

TEST_FILE = Path("align.pdf")


def align(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    *,
    out: Annotated[
        Path, typer.Option(help="The test file to make, or a folder for it.")
    ] = TEST_FILE,
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
    numbers = chosen(given)
    _refuse_mixtures(keep, numbers, turned=turned, tell=tell, drop=drop)
    from decks.commands import aligning  # noqa: PLC0415 (help needs no printers)

    if keep is not None:
        lines = aligning.keep_reading(keep, numbers, flip, turned=turned)
    elif tell:
        lines = aligning.all_told()
    elif drop is not None:
        lines = aligning.forget_printer(drop)
    else:
        lines = aligning.make_page(out, paper, flip)
    say(*lines)


def _refuse_mixtures(
    keep: str | None, numbers: dict[str, str], *, turned: bool, tell: bool, drop: str | None
) -> None:
    if (keep is not None) + tell + (drop is not None) > 1:
        raise UsageError("--set, --list and --forget are three different things: give one of them.")
    if keep is None and (numbers or turned):
        first = next(iter(numbers), "--turned")
        raise UsageError(f'{first} goes with a printer’s name: --set "Staff room"')
