"""Where the back of a point is: the one map from a front to its back.

Printers are described by the edge they flip on; both pages are upright to the reader. On a page
of width W and height H, a point (x, y) of the front lies on top of

    (W - x, y)   portrait flipped on the long edge, landscape on the short edge;
    (x, H - y)   portrait flipped on the short edge, landscape on the long edge

of the back (HP PCL 5 Printer Language Technical Reference, 5961-0509, pp. 4-7 and 4-8). A card is
read by turning it like a page of a book. After the first map its back is upright then; after the
second it stands on its head, so what is drawn there is drawn half a turn round.
"""

from msgspec import Struct

from decks.recipe import Flip


class Turning(Struct, frozen=True, kw_only=True):
    """A mirror over the page's upright axis (`sideways`) or over its level axis.

    `centre_x` and `centre_y` are where the axes stand, in points.
    """

    centre_x: float
    centre_y: float
    sideways: bool

    @property
    def half_turn(self) -> bool:
        """Whether backs are drawn half a turn round to read upright when turned like a page."""
        return not self.sideways

    def point(self, x: float, y: float) -> tuple[float, float]:
        """Return where (x, y) of one side lies on the other."""
        if self.sideways:
            return 2 * self.centre_x - x, y
        return x, 2 * self.centre_y - y

    def corner(self, x: float, y: float, *, width: float, height: float) -> tuple[float, float]:
        """Return the lower left corner of the rectangle behind the one whose corner is (x, y)."""
        if self.sideways:
            return 2 * self.centre_x - x - width, y
        return x, 2 * self.centre_y - y - height


def duplex(*, width: float, height: float, flip: Flip) -> Turning:
    """Return the turning of a page that the printer flips over one of its edges."""
    landscape = width > height
    sideways = (flip is Flip.LONG) != landscape
    return Turning(centre_x=width / 2, centre_y=height / 2, sideways=sideways)


def fold(*, x: float | None = None, y: float | None = None) -> Turning:
    """Return the turning of a fold along the upright line at `x` or the level line at `y`."""
    return Turning(centre_x=x or 0.0, centre_y=y or 0.0, sideways=x is not None)
