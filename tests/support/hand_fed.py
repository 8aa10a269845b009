"""A small model of a printer and of a teacher who puts paper in again by hand.

It knows nothing of how pages are ordered. Common practice in it: sheets come out on top of one
another, the hand-feed tray takes the top sheet first, and the head of an upright page goes first.
"""

from collections.abc import Sequence

from msgspec import Struct, field

HEAD, FOOT = "head of the front", "foot of the front"


class Sheet(Struct):
    """A piece of paper: what is printed on its two faces, and which of them lies up."""

    printed: list[list[object]] = field(default_factory=lambda: [[], []])
    led_by: list[str] = field(default_factory=lambda: ["", ""])
    up: int = 0

    def turn_over(self) -> None:
        self.up = 1 - self.up


class Printer(Struct, frozen=True):
    """A printer by how paper comes out, and which face its hand-feed tray prints."""

    comes_out_face_up: bool
    prints_the_upper_face: bool = True

    def print_on(
        self, pile: Sequence[Sheet], pages: Sequence[object], *, leading: str = HEAD
    ) -> list[Sheet]:
        """Print a page on each sheet, from the top of the pile; return the tray, top first."""
        assert len(pile) == len(pages)
        tray: list[Sheet] = []
        for sheet, page in zip(pile, pages, strict=True):
            face = sheet.up if self.prints_the_upper_face else 1 - sheet.up
            sheet.printed[face].append(page)
            sheet.led_by[face] = leading
            sheet.up = face if self.comes_out_face_up else 1 - face
            tray.insert(0, sheet)
        return tray


def turned_over(pile: Sequence[Sheet]) -> list[Sheet]:
    """Turn a whole pile over: the lowest sheet comes to lie on top, every other face up."""
    for sheet in pile:
        sheet.turn_over()
    return list(reversed(pile))
