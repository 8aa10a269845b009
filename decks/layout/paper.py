"""The papers that a deck can be printed on."""

from dataclasses import dataclass

from decks.layout.units import inch, mm
from decks.recipe import PaperName

UNPRINTABLE = mm(5)
"""The edge that school printers leave white: lasers 4 to 4.2 mm, most inkjets up to 5."""


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper by name; `width` and `height` in points, upright."""

    name: str
    width: float
    height: float


PAPERS = {
    PaperName.LETTER: Paper("Letter", inch(8.5), inch(11)),
    PaperName.A4: Paper("A4", mm(210), mm(297)),
}
"""ASME Y14.1 (Letter) and ISO 216 (A4). A new paper is a row here and a word in `PaperName`."""
