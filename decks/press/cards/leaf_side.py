"""One side of a leaf: what it is called, how it is printed, and which edge goes in first."""

from msgspec import Struct

from decks.layout.grid import Grid
from decks.layout.units import mm
from decks.press.cards.marks import CORNER, FROM_WHITE, corner
from decks.recipe import Sides

FIRST_IN = ("this edge goes in first on pass 2", "first in on pass 2")
CORNER_ROOM = FROM_WHITE + CORNER + mm(1)


class Side(Struct, frozen=True, kw_only=True):
    """One side of one leaf: what it is called, and the paper to load for it, if any is.

    `stack` and `leaf` are a number and of how many.
    """

    title: str
    deck: int
    stack: tuple[int, int] | None
    leaf: tuple[int, int]
    back: bool
    load: str | None = None


def loading(grid: Grid) -> str:
    """Return the one line that says how to load, print and flip."""
    by_hand = grid.sides is Sides.TWO_PASSES
    way = "one side · fronts, then backs" if by_hand else handling(grid)
    return f"{grid.paper.name} · actual size (100 %) · {way}"


def handling(grid: Grid) -> str:
    """Return how pages are printed, and what is done before they are cut or folded."""
    if grid.sides is Sides.DUPLEX:
        return f"both sides · flip on the {grid.flip} edge"
    if grid.two_sided or grid.sides is Sides.FRONTS:
        return "one side"
    if grid.whole:
        return "one side · fold on the dashes"
    if grid.folds_first:
        return "one side · fold on the dashes, then cut"
    return "one side · cut, then fold on the dashes"


def first_edge(grid: Grid, *, back: bool) -> tuple[int, int]:
    """Return the edge of a page that goes into the printer first on the second pass.

    As (across, up): (0, 1) is the head of the page, (1, 0) its right edge. Printers take the head
    of upright paper first (common practice). What is printed then is the back, so that it is the
    back's head; pages on their side are sent to the printer turned to the left, so that their right
    edge becomes the head. On a front it is the edge that lies behind that one.
    """
    across, up = (1, 0) if grid.page.turned else (0, 1)
    if back:
        return across, up
    return (-across, up) if grid.turning.sideways else (across, -up)


def between_corners(grid: Grid, *, back: bool, head: bool) -> tuple[float, float]:
    """Return where the head or the foot of a page starts and ends, clear of the corner mark."""
    left, right = grid.page.white.left, grid.width - grid.page.white.right
    x, y = corner(grid, back=back).points[0]
    if not grid.two_sided or (y > grid.height / 2) != head:
        return left, right
    return (left + CORNER_ROOM, right) if x < grid.width / 2 else (left, right - CORNER_ROOM)


def along_cards(grid: Grid, *, back: bool, head: bool) -> tuple[float, float]:
    """Return where the room for cards starts and ends, for what stands above or below it."""
    if grid.whole:
        return between_corners(grid, back=back, head=head)
    return grid.page.around.left, grid.width - grid.page.around.right
