"""How many cards a page holds, and how large they are."""

from collections.abc import Iterator
from math import floor

from msgspec import Struct

from decks.layout.page import FOLDED, Page, page_to_cut, whole_page
from decks.layout.paper import Paper
from decks.layout.units import in_mm, mm
from decks.lengths import LEAST_CARD, CardMeasure, Margins
from decks.recipe import CardSize, Flip, Sides

LEAST = {
    CardSize.SMALL: CardMeasure(87, 61),
    CardSize.MEDIUM: CardMeasure(120, 85),
    CardSize.LARGE: CardMeasure(170, 110),
}
"""The least measure of a card by name. As many as fit share the whole page, so that most are
larger: eight, four and two to a page on Letter and on A4, with any margins up to 8 mm."""

WAYS = {
    Sides.FOLD: ((2, 1), (1, 2)),
    Sides.TENT: ((1, 2),),
}
"""How many cells across and down a folded card takes; the first way that fits is taken."""

ROUNDING = 1e-6


class NoRoomError(Exception):
    """A card that its paper cannot hold.

    `fitting` are the named sizes that it can, `most` is the largest card of about the wanted
    shape, or None where the margins leave room for none.
    """

    def __init__(
        self, paper: Paper, fitting: tuple[CardSize, ...], most: CardMeasure | None
    ) -> None:
        super().__init__(f"{paper.name} has no room for a card of this size")
        self.paper = paper
        self.fitting = fitting
        self.most = most


class Division(Struct, frozen=True, kw_only=True):
    """A page divided into cells, of which a card takes `across` by `down`; lengths in points."""

    page: Page
    columns: int
    rows: int
    across: int
    down: int
    card_width: float
    card_height: float

    @property
    def cards(self) -> int:
        """How many cards the page holds."""
        return self.columns // self.across * (self.rows // self.down)


class Printing(Struct, frozen=True):
    """The paper, and what is done with it; margins and bleed in millimetres."""

    paper: Paper
    sides: Sides
    flip: Flip
    margins: Margins
    bleed: float

    @property
    def ways(self) -> tuple[tuple[int, int], ...]:
        """How many cells across and down a card may take."""
        return WAYS.get(self.sides, ((1, 1),))

    @property
    def gutter(self) -> float:
        """What parts two cards, in points: nothing, or room for the bleed of both."""
        return mm(2 * self.bleed)

    def pages(self) -> Iterator[Page]:
        """Yield the paper upright, then turned."""
        for turned in (False, True):
            yield page_to_cut(
                self.paper,
                self.margins,
                self.sides,
                self.flip,
                turned=turned,
                bleed=mm(self.bleed),
            )


def divide(printing: Printing, size: CardSize | CardMeasure) -> Division:
    """Return the division with the most cards; of two, one with wide cards, then the upright one.

    Raises `NoRoomError` where there is none.
    """
    found = _whole(printing) if size is CardSize.FULL else _best(printing, size)
    if found is None:
        raise NoRoomError(printing.paper, _fitting(printing), _most(printing, size))
    return found


def _best(printing: Printing, size: CardSize | CardMeasure) -> Division | None:
    divisions = [found for page in printing.pages() if (found := _division(printing, page, size))]
    return max(
        divisions,
        key=lambda one: (one.cards, one.card_width >= one.card_height, not one.page.turned),
        default=None,
    )


def _division(printing: Printing, page: Page, size: CardSize | CardMeasure) -> Division | None:
    least = size if isinstance(size, CardMeasure) else LEAST[size]
    for across, down in printing.ways:
        wide, high = across * mm(least.width), down * mm(least.height)
        side_by_side = _count(page.across, wide, printing.gutter)
        in_a_column = _count(page.down, high, printing.gutter)
        if side_by_side and in_a_column:
            if size is not least:
                wide = _share(page.across, side_by_side, printing.gutter)
                high = _share(page.down, in_a_column, printing.gutter)
            return Division(
                page=page,
                columns=side_by_side * across,
                rows=in_a_column * down,
                across=across,
                down=down,
                card_width=wide / across,
                card_height=high / down,
            )
    return None


def _count(room: float, least: float, gutter: float) -> int:
    return max(0, floor((room + gutter + ROUNDING) / (least + gutter)))


def _share(room: float, count: int, gutter: float) -> float:
    return (room - (count - 1) * gutter) / count


def _whole(printing: Printing) -> Division | None:
    """Return the paper as one wide card; a folded one is as wide, and half as high as the paper."""
    down = 2 if printing.sides in FOLDED else 1
    page = whole_page(printing.paper, printing.margins, turned=down == 1)
    if min(page.across, page.down / down) < mm(LEAST_CARD):
        return None
    return Division(
        page=page,
        columns=1,
        rows=down,
        across=1,
        down=down,
        card_width=page.across,
        card_height=page.down / down,
    )


def _fitting(printing: Printing) -> tuple[CardSize, ...]:
    fitting = [size for size in LEAST if _best(printing, size)]
    return (*fitting, CardSize.FULL) if _whole(printing) else tuple(fitting)


def _most(printing: Printing, size: CardSize | CardMeasure) -> CardMeasure | None:
    """Return the card that comes nearest to a size, in whole millimetres."""
    wanted = size if isinstance(size, CardMeasure) else LEAST.get(size, LEAST[CardSize.SMALL])
    rooms = [
        CardMeasure(
            floor(in_mm((page.across + ROUNDING) / across)),
            floor(in_mm((page.down + ROUNDING) / down)),
        )
        for page in printing.pages()
        for across, down in printing.ways
    ]
    most = max(rooms, key=lambda room: _nearness(room, wanted))
    return most if min(most.width, most.height) >= LEAST_CARD else None


def _nearness(room: CardMeasure, wanted: CardMeasure) -> float:
    return min(room.width / wanted.width, room.height / wanted.height)
