"""Printers that a teacher has measured, and what their backs are moved by."""

from decks.printers.keeping import forget, read_printers, remember, settings_folder
from decks.printers.printer import (
    MOST_OFF,
    MOST_SKEW,
    SPAN,
    Printer,
    Reading,
    find,
    near_names,
    shift_for,
)

__all__ = [
    "MOST_OFF",
    "MOST_SKEW",
    "SPAN",
    "Printer",
    "Reading",
    "find",
    "forget",
    "near_names",
    "read_printers",
    "remember",
    "settings_folder",
    "shift_for",
]
