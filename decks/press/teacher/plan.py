"""The cut plan: a small leaf from above, with its cuts in their order and whose pile lies where."""

from collections.abc import Sequence

from msgspec import Struct

from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.frame import Box, Frame, Line, Placed, Ribbon, Text, Thing
from decks.layout.grid import Grid
from decks.layout.stacking import Pile, Stack
from decks.press.cards.spare import LABEL as SPARE
from decks.press.type.fonts import measure
from decks.press.type.setting import NOTE, Style, line_of, under_one_another, width_of
from decks.recipe import Ink

NAME = Style(8.5)
LABELS = Style(8.5, tone="quiet")
CUT = Style(8.5, strong=True, tone="quiet")
EDGE = 19.0
"""Room left of the leaf and above it for the numbers of the cuts."""

OVER = 4.0
"""How far a line is drawn over the edges of the leaf."""

CLOSE = 11.0
"""Lines nearer to one another than this share one label."""

RIBBON = 6.0
NARROWEST_NAME = 24.0
LOWEST_FOR_TWO = 24.0
BEFORE_NAME = 12.0
AFTER_NAME = 2.0
A_ROW = 3
"""So many plans stand in one row."""

SHORT, SIDEWAYS, LONG = 102.0, 130.0, 165.0
LONGEST = 250.0


class Cut(Struct, frozen=True):
    """A line to cut or to fold at, in points of the page; `number` is 0 for a fold."""

    at: float
    number: int


def long_edge(deck: Deck, grid: Grid, stacks: Sequence[Stack]) -> float:
    """Return how long a leaf is drawn: short, but long enough for names where they can fit."""
    few = len(stacks) <= A_ROW
    if deck.recipe.ink is Ink.STOCK:
        return SHORT if not few else LONG
    start = SHORT if not few else SIDEWAYS if grid.page.turned else LONG
    names = [deck.owners[team].name for stack in stacks for team in stack.teams]
    widest = max(width_of(name, NAME) for name in names) + BEFORE_NAME + AFTER_NAME
    needed = widest * max(grid.width, grid.height) / grid.card_width
    most = LONGEST if len(stacks) == 1 else LONG
    return max(start, needed) if needed <= most else max(start, LONG)


def cut_plan(deck: Deck, grid: Grid, stack: Stack, *, title: str, longest: float) -> Frame:
    """Return the drawing of one stack's leaf, its long edge `longest` points long.

    An empty title is left out.
    """
    scale = longest / max(grid.width, grid.height)
    page = Box(EDGE, 0, grid.width * scale, grid.height * scale, radius=2, stroke="frame")
    piles: list[Thing] = []
    for slot, pile in zip(grid.slots, stack.piles, strict=False):
        written = _pile(deck, pile, grid.card_width * scale, grid.card_height * scale)
        piles.append(Placed(EDGE + slot.front.x * scale, slot.front.y * scale, written))
    things = (page, *piles, *_lines(grid, scale))
    inner = Frame(page.width + EDGE, page.height + EDGE, things)
    drawing = Frame(inner.width + OVER, inner.height + OVER, (Placed(0, OVER, inner),))
    if not title:
        return drawing
    named = Frame(drawing.width, 12, (line_of(title, NOTE, x=EDGE, y=3),))
    return under_one_another([named, drawing])


def upright_cuts(grid: Grid) -> list[Cut]:
    """Return the upright lines from left to right; their cuts follow the level ones."""
    lines, folds = grid.upright_lines, grid.upright_folds
    return _numbered(lines, folds, after=grid.level_cuts, folded=grid.folds_first)


def level_cuts(grid: Grid) -> list[Cut]:
    """Return the level lines from the head down; they are cut first."""
    return _numbered(grid.level_lines, grid.level_folds, after=0, folded=grid.folds_first)


def _numbered(
    lines: Sequence[float], folds: Sequence[float], *, after: int, folded: bool
) -> list[Cut]:
    """Return the lines with their numbers; two are one cut where the leaf is folded first."""
    edges = [line for line in lines if line not in folds]
    numbers = {line: n for n, line in enumerate(edges, start=after + 1)}
    if folds and folded:
        numbers |= {
            line: numbers[other]
            for line, other in zip(reversed(edges), edges, strict=True)
            if numbers[other] < numbers[line]
        }
    return [Cut(line, numbers.get(line, 0)) for line in lines]


def _lines(grid: Grid, scale: float) -> list[Thing]:
    width, height = grid.width * scale, grid.height * scale
    uprights = [Cut(cut.at * scale, cut.number) for cut in upright_cuts(grid)]
    levels = [Cut(cut.at * scale, cut.number) for cut in level_cuts(grid)]
    things: list[Thing] = [
        *(_line(EDGE + c.at, -OVER, EDGE + c.at, height + OVER, c) for c in uprights),
        *(_line(EDGE - OVER, c.at, EDGE + width + OVER, c.at, c) for c in levels),
    ]
    for at, label in _labels(uprights):
        x = EDGE + at - width_of(label, CUT) / 2
        things.append(line_of(label, CUT, x=x, y=height + OVER + 3))
    for at, label in _labels(levels):
        x = EDGE - OVER - 2 - width_of(label, CUT)
        things.append(line_of(label, CUT, x=x, y=at - 3))
    return things


def _line(x: float, y: float, end_x: float, end_y: float, cut: Cut) -> Line:
    return Line(x, y, end_x, end_y, 0.6, dashed=not cut.number)


def _labels(cuts: Sequence[Cut]) -> list[tuple[float, str]]:
    """Return where the numbers of the cuts stand; those of the edges of a gap stand together."""
    groups: list[list[Cut]] = []
    for cut in cuts:
        if not cut.number:
            continue
        if groups and abs(groups[-1][-1].at - cut.at) < CLOSE:
            groups[-1].append(cut)
        else:
            groups.append([cut])
    return [
        (
            sum(cut.at for cut in group) / len(group),
            "·".join(str(cut.number) for cut in group),
        )
        for group in groups
    ]


def _pile(deck: Deck, pile: Pile, width: float, height: float) -> Frame:
    """Return what stands on the fronts of a pile: whose it is, if there is room, and its labels."""
    if deck.recipe.ink is Ink.STOCK:
        return Frame(width, height, tuple(_written(["", labels_of(deck, pile)], 6, height)))
    ribbon = Ribbon(3, 3, min(RIBBON, width / 4), height - 6, pile.team)
    left = ribbon.width + BEFORE_NAME - RIBBON
    name = deck.owners[pile.team].name
    room = width - left - AFTER_NAME
    tight = room < NARROWEST_NAME or height < LOWEST_FOR_TWO
    said = "" if tight else shorten(name, room / NAME.size, measure=measure)
    texts = _written([said, labels_of(deck, pile)], left, height)
    return Frame(width, height, (ribbon, *texts))


def labels_of(deck: Deck, pile: Pile) -> str:
    """Return the first and the last label of a pile; one without cards is of spare ones."""
    hand = deck.hands[pile.team][pile.first : pile.end]
    if not hand:
        return SPARE
    first, last = hand[0].label, hand[-1].label
    return first if first == last else f"{first}–{last}"


def _written(words: Sequence[str], x: float, height: float) -> list[Text]:
    name, labels = words
    if not name:
        return [line_of(labels, LABELS, x=x, y=height / 2 - 3)]
    return [
        line_of(name, NAME, x=x, y=height / 2 + 1.5),
        line_of(labels, LABELS, x=x, y=height / 2 - 9),
    ]
