"""The head of a page of cards: which side of which leaf it is, and how to print it."""

from collections.abc import Iterator

from decks.layout.fitting import shorten
from decks.layout.frame import Thing
from decks.layout.grid import Grid
from decks.press.cards.leaf_side import FIRST_IN, Side, along_cards, first_edge, handling
from decks.press.cards.strips import (
    CLEAR,
    SMALL_PRINT,
    Arrow,
    Note,
    Words,
    fit_side_by_side,
    set_note,
    width_of_note,
)
from decks.press.type.fonts import measure
from decks.recipe import Sides

DOT = Words(" · ")
LEAST_TITLE = 8.0
"""A title that has room for fewer ems is left out."""


def head(grid: Grid, side: Side) -> list[Thing]:
    """Return the line at the head of a page, with as much in it as has room."""
    left, right = along_cards(grid, back=side.back, head=True)
    first, second = fit_side_by_side(_head_ways(grid, side, right - left), left, right)
    y = grid.height - grid.page.white.top - 0.95 * SMALL_PRINT
    return [*set_note(first, left, y), *set_note(second, right - width_of_note(second), y)]


def _head_ways(grid: Grid, side: Side, room: float) -> Iterator[tuple[Note, Note]]:
    """Yield what could stand at the head, left and right, the fullest first."""
    before, after = _arrows(grid, side, FIRST_IN[0])
    start = [*before, *([DOT] if before else []), *_load(side)]
    where = f"deck {side.deck} · {_where(grid, side)}"
    full, short = f"{grid.paper.name} · actual size (100 %)", "100 %"
    after = [DOT, *after] if after else []
    ends = [[Words(f"{scale} · {handling(grid)}"), *after] for scale in (full, short)]
    for end in ends:
        yield [*start, Words(f"{side.title} · {where}")], end
    taken = width_of_note([*start, Words(f" · {where}"), *ends[1]]) / SMALL_PRINT + CLEAR
    most = room / SMALL_PRINT - taken
    if most >= LEAST_TITLE:
        title = shorten(side.title, most, measure=measure, between=True)
        yield [*start, Words(f"{title} · {where}")], ends[1]
    yield [*start, Words(where)], ends[1]
    yield [*start, Words(_where(grid, side))], ends[1]
    yield from _briefly(grid, side)


def _briefly(grid: Grid, side: Side) -> Iterator[tuple[Note, Note]]:
    """Yield what could stand at the head of a narrow page."""
    brief = Words(_where(grid, side, brief=True))
    if grid.sides is Sides.DUPLEX:
        yield [*_load(side), brief], [Words(f"flip on the {grid.flip} edge")]
        yield [*_load(side), brief], [Words(f"flip {grid.flip}")]
    for words in FIRST_IN:
        before, after = _arrows(grid, side, words)
        yield [*before, *([DOT] if before else []), *_load(side), brief], after
    leaf, of = side.leaf
    least = Words(f"leaf {leaf}/{of}")
    yield [*before, *([DOT] if before else []), brief], after
    load = _load(side)[:1]
    yield [*before, *([DOT] if before else []), *(load or [least])], after
    before, after = _arrows(grid, side, "")
    yield [*before, *(load or [least])], after


def _load(side: Side) -> list[Words | Arrow]:
    if side.load is None:
        return []
    return [Words(f"Load {side.load} paper", strong=True), DOT]


def _where(grid: Grid, side: Side, *, brief: bool = False) -> str:
    of = "/" if brief else " of "
    counts = [("stack", side.stack), ("leaf", side.leaf)]
    words = [f"{what} {count[0]}{of}{count[1]}" for what, count in counts if count]
    words.append("front and back" if grid.folded else "back" if side.back else "front")
    if grid.sides is Sides.TWO_PASSES:
        words.append("pass 2" if side.back else "pass 1")
    return " · ".join(words)


def _arrows(grid: Grid, side: Side, words: str) -> tuple[list[Words | Arrow], list[Words | Arrow]]:
    """Return the notes at the left and the right of the head that say what goes in first."""
    if grid.sides is not Sides.TWO_PASSES:
        return [], []
    across, up = first_edge(grid, back=side.back)
    arrow, what = Arrow(across, up), Words(f" {words}", strong=True)
    if across < 0:
        return [arrow, what], []
    if across > 0:
        return [], [Words(f"{words} ", strong=True), arrow]
    return ([], [arrow, what]) if up > 0 else ([], [])
