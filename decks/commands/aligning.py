"""The test page for a printer, and the printers that are kept."""

from collections.abc import Mapping
from pathlib import Path

from cards.folders import is_folder
from cards.writing.saving import holds, save_new
from decks.commands.naming_printers import printer_told, unknown_printer
from decks.commands.places import refuse_other_ending
from decks.commands.readings import name_of, reading_of
from decks.commands.stopping import finishing
from decks.printers import forget, read_printers, remember, settings_folder
from decks.recipe import Flip, PaperName
from decks.settings import UsageError, read_option

TEST_FILE = "align.pdf"


def make_page(out: Path, paper: str | None, flip: str | None) -> list[str]:
    """Make the test page, in a folder or by a name, and return what to do with it.

    `paper` and `flip` are as given.
    """
    from decks.press.align.page import align_file  # noqa: PLC0415 (a list needs no press)

    place = out / TEST_FILE if is_folder(out) else out
    refuse_other_ending(place, ".pdf", "test file")
    edge = _flip(flip)
    data = align_file(_paper(paper), edge)
    if not holds(place, data):
        with finishing():
            save_new(place, data)
    return [
        f"Made    {place}",
        f"Print   both sides, actual size (100 %), flipped on the {edge} edge.",
        "Next    Hold each leaf to the light; its back says what to read and what to type.",
    ]


def keep_reading(
    named: str, numbers: Mapping[str, str], flip: str | None, *, turned: bool
) -> list[str]:
    """Keep what was read, by the name of a printer, and return what is known of it now.

    Raises `UsageError` for a name or numbers that cannot be.
    """
    reading = reading_of(numbers, _flip(flip))
    name = name_of(named)
    with finishing():
        printer = remember(settings_folder(), name, reading, turned=turned)
    lines = [f"Kept    {printer_told(printer)[turned]}"]
    lines.append(f'Next    Build with --printer "{printer.name}", or name it on the Deck sheet.')
    if printer.turned is None:
        lines.append("Note    Pages wider than high are not measured yet: that is leaf 2.")
    if printer.upright is None:
        lines.append("Note    Pages higher than wide are not measured yet: that is leaf 1.")
    return lines


def all_told() -> list[str]:
    """Return what is known of each printer that is kept."""
    printers = read_printers(settings_folder())
    if not printers:
        return ["No printer is kept yet. Make a test page with fairdeal align; it says what to do."]
    return [line for printer in printers for line in printer_told(printer)]


def forget_printer(name: str) -> list[str]:
    """Forget a printer and say so; raises `UsageError` where it is not known."""
    with finishing():
        known = forget(settings_folder(), name)
    if known is None:
        raise UsageError(unknown_printer(read_printers(settings_folder()), name))
    return [f"Forgot  {known.name}"]


def _paper(text: str | None) -> PaperName:
    return PaperName.LETTER if text is None else PaperName(str(read_option("paper", text)))


def _flip(text: str | None) -> Flip:
    return Flip.LONG if text is None else Flip(str(read_option("flip", text)))
