"""The papers that a deck can be printed on."""

from msgspec import Struct

from decks.layout.units import inch, mm
from decks.recipe import PaperName


class Paper(Struct, frozen=True):
    """A paper by name; `width` and `height` in points, upright."""

    name: str
    width: float
    height: float


PAPERS = {
    PaperName.LETTER: Paper("Letter", inch(8.5), inch(11)),
    PaperName.LEGAL: Paper("Legal", inch(8.5), inch(14)),
    PaperName.TABLOID: Paper("Tabloid", inch(11), inch(17)),
    PaperName.A3: Paper("A3", mm(297), mm(420)),
    PaperName.A4: Paper("A4", mm(210), mm(297)),
    PaperName.A5: Paper("A5", mm(148), mm(210)),
    PaperName.INDEX_3X5: Paper("3 × 5 in card", inch(3), inch(5)),
    PaperName.INDEX_4X6: Paper("4 × 6 in card", inch(4), inch(6)),
    PaperName.INDEX_5X8: Paper("5 × 8 in card", inch(5), inch(8)),
}
"""ISO 216 (A sizes), ASME Y14.1 (A and B: Letter and Tabloid); Legal and index cards by their names
in the trade. A new paper is a row here and a word in `PaperName`."""
