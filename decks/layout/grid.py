"""The slots of a page: where front and back of each card lie, where to cut and where to fold."""

from functools import cached_property

from msgspec import Struct

from decks.layout.page import FOLDED, TWO_SIDED, Page
from decks.layout.paper import PAPERS, Paper
from decks.layout.room import Division, Printing, divide
from decks.layout.turning import Turning, duplex, fold
from decks.layout.units import mm
from decks.lengths import WHITE_EDGE, CardMeasure, Margins
from decks.recipe import CardSize, Flip, PaperName, Recipe, Sides


class Spot(Struct, frozen=True):
    """Where one side of a card is printed: lower left corner, and whether half a turn round."""

    x: float
    y: float
    half_turn: bool = False


class Slot(Struct, frozen=True):
    """The rectangle that a card fills, and the one that lies behind it."""

    front: Spot
    back: Spot


class Grid(Struct, frozen=True, dict=True):
    """A page divided into equal cells in the middle of the room for cards.

    Lengths are in points. Cards butt, so that one cut parts two neighbours, or stand apart by a
    `gutter`. In a folded grid two neighbouring cells are front and back of one card and meet at
    the fold. Where `whole`, the paper is one card and is not cut; the cell is then what its face
    may fill.
    """

    division: Division
    sides: Sides
    flip: Flip
    bleed: float
    gutter: float
    whole: bool

    @property
    def page(self) -> Page:
        """The page that is divided."""
        return self.division.page

    @property
    def paper(self) -> Paper:
        """The paper, upright."""
        return self.page.paper

    @property
    def width(self) -> float:
        """The width of the page."""
        return self.page.width

    @property
    def height(self) -> float:
        """The height of the page."""
        return self.page.height

    @property
    def columns(self) -> int:
        """How many cells stand side by side."""
        return self.division.columns

    @property
    def rows(self) -> int:
        """How many cells stand below one another."""
        return self.division.rows

    @property
    def card_width(self) -> float:
        """The trimmed width of a card."""
        return self.division.card_width

    @property
    def card_height(self) -> float:
        """The trimmed height of a card."""
        return self.division.card_height

    @property
    def folded(self) -> bool:
        """Whether front and back stand on the same side of the paper."""
        return self.sides in FOLDED

    @property
    def two_sided(self) -> bool:
        """Whether backs are printed on the other side of the paper."""
        return self.sides in TWO_SIDED

    @property
    def folds_first(self) -> bool:
        """Whether a leaf is folded before it is cut: it has one fold, and halves to be glued."""
        folds = len(self.upright_folds) + len(self.level_folds)
        return self.sides is Sides.FOLD and folds == 1 and not self.whole

    @property
    def turning(self) -> Turning:
        """The turning of the whole leaf between its front and its back."""
        return duplex(width=self.width, height=self.height, flip=self.flip)

    @cached_property
    def lefts(self) -> list[float]:
        """The x of every cell's left edge, left to right."""
        cells = _starts(self.columns, self.card_width, self.division.across, self.gutter)
        around = self.page.around
        slack = self.page.across - (cells[-1] + self.card_width)
        return [around.left + slack / 2 + start for start in cells]

    @cached_property
    def tops(self) -> list[float]:
        """The y of every cell's upper edge, top to bottom."""
        cells = _starts(self.rows, self.card_height, self.division.down, self.gutter)
        slack = self.page.down - (cells[-1] + self.card_height)
        return [self.height - self.page.around.top - slack / 2 - start for start in cells]

    @cached_property
    def upright_lines(self) -> list[float]:
        """The x of every upright line to cut or to fold at, left to right."""
        return _distinct([x for left in self.lefts for x in (left, left + self.card_width)])

    @cached_property
    def level_lines(self) -> list[float]:
        """The y of every level line to cut or to fold at, top to bottom."""
        return _distinct([y for top in self.tops for y in (top, top - self.card_height)])

    @cached_property
    def upright_folds(self) -> list[float]:
        """The x of every upright fold, left to right."""
        beside = self.division.across > 1
        return [left + self.card_width for left in self.lefts[::2]] if beside else []

    @cached_property
    def level_folds(self) -> list[float]:
        """The y of every level fold, top to bottom."""
        below = self.division.down > 1
        return [top - self.card_height for top in self.tops[::2]] if below else []

    @property
    def upright_cuts(self) -> int:
        """How many upright cuts part a leaf into cards."""
        return self._cuts(len(self.upright_lines), len(self.upright_folds))

    @property
    def level_cuts(self) -> int:
        """How many level cuts part a leaf into cards."""
        return self._cuts(len(self.level_lines), len(self.level_folds))

    @property
    def cuts(self) -> int:
        """How many straight cuts part a leaf into cards."""
        return self.upright_cuts + self.level_cuts

    @cached_property
    def slots(self) -> list[Slot]:
        """The slots in reading order: along a row, then down."""
        lefts = self.lefts[:: self.division.across]
        tops = self.tops[:: self.division.down]
        if self.sides is Sides.TENT:
            # a tent stands with its fold on top, so that heads of both sides are at the fold
            tops = self.tops[1::2]
        return [self._slot(Spot(x, top - self.card_height)) for top in tops for x in lefts]

    def _slot(self, front: Spot) -> Slot:
        turning = self._turning_of(front)
        x, y = turning.corner(front.x, front.y, width=self.card_width, height=self.card_height)
        return Slot(front, Spot(x, y, turning.half_turn))

    def _turning_of(self, front: Spot) -> Turning:
        if self.sides is Sides.TENT:
            return fold(y=front.y + self.card_height)
        if not self.folded:
            return self.turning
        return fold(x=front.x + self.card_width) if self.upright_folds else fold(y=front.y)

    def _cuts(self, lines: int, folds: int) -> int:
        if self.whole:
            return 0
        # folded first, the outer edges of both halves are one cut
        return (lines - folds) // 2 if folds and self.folds_first else lines - folds


def make_grid(  # noqa: PLR0913 (a page is made of all of them)
    paper: PaperName,
    size: CardSize | CardMeasure,
    sides: Sides,
    flip: Flip,
    *,
    margins: Margins = WHITE_EDGE,
    bleed: float = 0,
) -> Grid:
    """Return the grid with the most cards for a paper and a card size; `bleed` in millimetres.

    Raises `NoRoomError` where not one card fits.
    """
    whole = size is CardSize.FULL
    printing = Printing(PAPERS[paper], sides, flip, margins, bleed)
    return Grid(
        division=divide(printing, size),
        sides=sides,
        flip=flip,
        bleed=0 if whole else mm(bleed),
        gutter=0 if whole else printing.gutter,
        whole=whole,
    )


def grid_of(recipe: Recipe) -> Grid:
    """Return the grid that a recipe asks for; raise as `make_grid` does."""
    return make_grid(
        recipe.paper,
        recipe.card_size,
        recipe.sides,
        recipe.flip,
        margins=recipe.margins,
        bleed=recipe.bleed,
    )


def _starts(cells: int, length: float, joined: int, gutter: float) -> list[float]:
    """Return where cells start, of which `joined` butt before a gutter comes."""
    return [n * length + n // joined * gutter for n in range(cells)]


def _distinct(lines: list[float]) -> list[float]:
    """Return lines in order, those that coincide but for rounding once."""
    return [b for n, b in enumerate(lines) if not n or abs(b - lines[n - 1]) > mm(0.01)]
