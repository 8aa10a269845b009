"""What the terminal says of the printers that are kept."""

from collections.abc import Sequence

from cards.quoting import quoted
from decks.printers import Printer, Reading, near_names
from decks.words import listed


def unknown_printer(printers: Sequence[Printer], name: str) -> str:
    """Say that no printer of a name is kept, and which may be meant."""
    return f"No printer called {quoted(name)} is kept. {hint(printers, name)}"


def hint(printers: Sequence[Printer], name: str) -> str:
    """Say which printer a misspelt name may stand for, or where printers come from."""
    near = near_names(printers, name)
    if near:
        return f"Did you mean {listed([f'“{one}”' for one in near])}? fairdeal align --list"
    if printers:
        return "See which are: fairdeal align --list"
    return "None is kept on this computer yet: make a test page with fairdeal align."


def printer_told(printer: Printer) -> list[str]:
    """Return what is kept of a printer: a line for upright pages and one for turned ones."""
    pages = {"higher than wide": printer.upright, "wider than high": printer.turned}
    return [f"{printer.name}: pages {shape}, {_numbers(one)}." for shape, one in pages.items()]


def _numbers(reading: Reading | None) -> str:
    if reading is None:
        return "not measured"
    skew = f", foot {shown(reading.right - reading.skew)}" if reading.skew else ""
    numbers = f"right {shown(reading.right)}, up {shown(reading.up)}{skew} mm"
    return f"{numbers}, flipped on the {reading.flip} edge"


def shown(number: float) -> str:
    """Return millimetres as they are typed: `1.2`, `-0.8`, and never `-0`."""
    return f"{round(number, 2) + 0:g}"
