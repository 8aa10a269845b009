"""Colour as eyes and copiers see it: pure sums on `#RRGGBB` codes."""

from decks.colour.apart import apart, apart_for, apart_in_grey, choose
from decks.colour.contrast import contrast
from decks.colour.difference import difference
from decks.colour.seeing import Sight, seen
from decks.colour.spaces import Lab, lab

__all__ = [
    "Lab",
    "Sight",
    "apart",
    "apart_for",
    "apart_in_grey",
    "choose",
    "contrast",
    "difference",
    "lab",
    "seen",
]
