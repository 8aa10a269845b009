"""What the pages of a deck have in common, made once: what printers lock up as a forme."""

from msgspec import Struct

from decks.layout.frame import Thing
from decks.layout.grid import Grid
from decks.press.cards.faces import shapes_of
from decks.press.cards.foot import foot
from decks.press.cards.marks import corner, marks
from decks.press.cards.shape import Shape
from decks.recipe import Recipe


class Forme(Struct, frozen=True):
    """The shapes of the cards' sides, and what stands round them on a front and on a back."""

    grid: Grid
    shapes: tuple[Shape, Shape]
    marks: tuple[Thing, ...]
    corners: tuple[tuple[Thing, ...], tuple[Thing, ...]]
    feet: tuple[tuple[Thing, ...], tuple[Thing, ...]]

    def round_cards(self, *, back: bool) -> tuple[Thing, ...]:
        """Return what moves with the cards: the marks, and the one in a corner of two sides."""
        return (*self.marks, *self.corners[back])

    def foot(self, *, back: bool) -> tuple[Thing, ...]:
        """Return the foot of a page."""
        return self.feet[back]


def forme_of(grid: Grid, recipe: Recipe) -> Forme:
    """Return the forme of a deck's pages."""
    corners = ((corner(grid, back=False),), (corner(grid, back=True),))
    return Forme(
        grid,
        shapes_of(grid, recipe),
        tuple(marks(grid)),
        corners if grid.two_sided else ((), ()),
        (tuple(foot(grid, back=False)), tuple(foot(grid, back=True))),
    )
