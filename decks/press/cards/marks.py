"""Marks outside the cards: solid to cut at, dashed to fold at, and the one in the corner."""

from decks.layout.frame import Line, Wedge
from decks.layout.grid import Grid
from decks.layout.page import MARK_LENGTH, mark_gap
from decks.layout.units import mm

CORNER = mm(3.5)
FROM_WHITE = mm(0.5)


def marks(grid: Grid) -> list[Line]:
    """Return the marks at the ends of every line, none of them on a card.

    A card that fills its paper has none but those of its fold, near the edges of the paper.
    """
    if grid.whole:
        return _fold_of_whole(grid)
    return [*_upright(grid), *_level(grid)]


def _upright(grid: Grid) -> list[Line]:
    near, far = _reach(grid)
    top, bottom = grid.level_lines[0], grid.level_lines[-1]
    return [
        Line(x, end + away * near, x, end + away * far, dashed=x in grid.upright_folds)
        for x in grid.upright_lines
        for end, away in ((top, 1), (bottom, -1))
    ]


def _level(grid: Grid) -> list[Line]:
    near, far = _reach(grid)
    left, right = grid.upright_lines[0], grid.upright_lines[-1]
    return [
        Line(end + away * near, y, end + away * far, y, dashed=y in grid.level_folds)
        for y in grid.level_lines
        for end, away in ((right, 1), (left, -1))
    ]


def _fold_of_whole(grid: Grid) -> list[Line]:
    left, right = grid.page.white.left, grid.width - grid.page.white.right
    return [
        Line(x, y, x + away * MARK_LENGTH, y, dashed=True)
        for y in grid.level_folds
        for x, away in ((left, 1), (right, -1))
    ]


def _reach(grid: Grid) -> tuple[float, float]:
    near = mark_gap(grid.bleed)
    return near, near + MARK_LENGTH


def corner(grid: Grid, *, back: bool) -> Wedge:
    """Return the mark in one corner; after a wrong flip it lies behind the opposite corner."""
    white = grid.page.white
    x, y = grid.width - white.right - FROM_WHITE, white.bottom + FROM_WHITE
    points = ((x, y), (x - CORNER, y), (x, y + CORNER))
    return Wedge(tuple(grid.turning.point(*point) for point in points) if back else points)
