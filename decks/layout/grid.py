"""The slots of a page: how many cards, how large, and where front and back lie."""

from dataclasses import dataclass
from functools import cached_property

from decks.layout.paper import PAPERS, Paper
from decks.layout.turning import Turning, duplex, fold
from decks.layout.units import mm
from decks.recipe import CardSize, Flip, PaperName, Sides

SIDE_MARGIN = mm(10.5)
END_MARGIN = mm(14)
"""Room for 5 mm that the printer leaves white, the cut marks and the lines of small print."""

DIVISIONS = {CardSize.SMALL: (2, 4), CardSize.MEDIUM: (2, 2), CardSize.LARGE: (1, 2)}
"""Columns and rows of a page. The page is turned the way that makes the cards wide."""


@dataclass(frozen=True, slots=True)
class Spot:
    """Where one side of a card is printed: lower left corner, and whether half a turn round."""

    x: float
    y: float
    half_turn: bool = False


@dataclass(frozen=True, slots=True)
class Slot:
    """The rectangle that a card fills, and the one that lies behind it."""

    front: Spot
    back: Spot


@dataclass(frozen=True)
class Grid:
    """A page divided into equal cards that butt, so that one cut parts two neighbours.

    Lengths are in points. In a folded grid two neighbouring cells are front and back of one card,
    side by side where there are two columns, else one above the other.
    """

    paper: Paper
    width: float
    height: float
    columns: int
    rows: int
    sides: Sides
    flip: Flip

    @property
    def card_width(self) -> float:
        """The trimmed width of a card."""
        return (self.width - 2 * SIDE_MARGIN) / self.columns

    @property
    def card_height(self) -> float:
        """The trimmed height of a card."""
        return (self.height - 2 * END_MARGIN) / self.rows

    @property
    def folded(self) -> bool:
        """Whether front and back stand on the same side of the paper."""
        return self.sides is Sides.FOLD

    @property
    def turning(self) -> Turning:
        """The turning of the whole leaf between its front and its back."""
        return duplex(width=self.width, height=self.height, flip=self.flip)

    @cached_property
    def upright_lines(self) -> list[float]:
        """The x of every upright line between cells, left to right."""
        return [SIDE_MARGIN + n * self.card_width for n in range(self.columns + 1)]

    @cached_property
    def level_lines(self) -> list[float]:
        """The y of every level line between cells, top to bottom."""
        top = self.height - END_MARGIN
        return [top - n * self.card_height for n in range(self.rows + 1)]

    @property
    def upright_folds(self) -> list[float]:
        """The x of every upright fold."""
        return self.upright_lines[1::2] if self.folded and self.columns > 1 else []

    @property
    def level_folds(self) -> list[float]:
        """The y of every level fold."""
        return self.level_lines[1::2] if self.folded and self.columns == 1 else []

    @property
    def upright_cuts(self) -> int:
        """How many upright cuts part a leaf into cards; a folded leaf is cut folded."""
        return len(self.upright_lines) // 2 if self.upright_folds else len(self.upright_lines)

    @property
    def level_cuts(self) -> int:
        """How many level cuts part a leaf into cards; a folded leaf is cut folded."""
        return len(self.level_lines) // 2 if self.level_folds else len(self.level_lines)

    @property
    def cuts(self) -> int:
        """How many straight cuts part a leaf into cards."""
        return self.upright_cuts + self.level_cuts

    @cached_property
    def slots(self) -> list[Slot]:
        """The slots in reading order: along a row, then down."""
        if not self.folded:
            return [self._slot(spot, self.turning) for spot in self._cells(1, 1)]
        if self.columns > 1:
            return [
                self._slot(spot, fold(x=spot.x + self.card_width)) for spot in self._cells(2, 1)
            ]
        return [self._slot(spot, fold(y=spot.y)) for spot in self._cells(1, 2)]

    def _cells(self, across: int, down: int) -> list[Spot]:
        return [
            Spot(x, y) for y in self.level_lines[1::down] for x in self.upright_lines[:-1:across]
        ]

    def _slot(self, front: Spot, turning: Turning) -> Slot:
        x, y = turning.corner(front.x, front.y, width=self.card_width, height=self.card_height)
        return Slot(front, Spot(x, y, turning.half_turn))


def make_grid(paper: PaperName, size: CardSize, sides: Sides, flip: Flip) -> Grid:
    """Return the grid for a paper and a card size."""
    sheet = PAPERS[paper]
    columns, rows = DIVISIONS[size]
    wide = columns == rows
    width, height = (sheet.height, sheet.width) if wide else (sheet.width, sheet.height)
    return Grid(sheet, width, height, columns, rows, sides, flip)
