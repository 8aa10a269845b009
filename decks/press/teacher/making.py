"""How to print, check, cut and pile this deck, with the caution at the paper cutter."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.cards.sizes import readable_from
from decks.press.teacher import steps
from decks.press.teacher.how.counts import cards_told
from decks.press.teacher.keys import title_block
from decks.press.teacher.piles import leaf_rows, load_rows, plans
from decks.press.teacher.step import Shown, Step
from decks.press.type.pages import page_paper, pages
from decks.press.type.setting import (
    BODY,
    NOTE,
    STRONG,
    Style,
    panel,
    paragraph,
    side_by_side,
    under_one_another,
)
from decks.words import counted

FIGURE = Style(11, strong=True, tone="quiet")
INDENT = 24.0
BESIDE = 16.0
SPACE, CLOSE = 12.0, 7.0
"""What stands between steps, and what does where that saves a page."""

LEAST_BESIDE = 165.0
"""The least room for a step's words beside a drawing, with the gap between."""


class _Told(Struct, frozen=True):
    """A step with its number, and what is drawn below it or beside it."""

    number: int
    step: Step
    below: list[Frame]


def making(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float, *, contents: str = ""
) -> list[Block]:
    """Return the page that says how to make the deck, below what the file contains.

    Where that is more than a page, it takes less height.
    """
    leaves = sum(stack.leaves for stack in stacks)
    items = [card.item for card in deck.cards]
    subtitle = (
        f"{cards_told(deck)} · {counted(leaves, 'leaf', 'leaves')} of {grid.paper.name}. "
        f"{readable_from(items, grid, deck.recipe)}"
    )
    blocks = [title_block("Make this deck", subtitle, width)]
    if contents:
        blocks.append(Block(paragraph(contents, width, NOTE), space=6, with_next=True))
    told = [
        _Told(number, step, _below(step.shown, deck, grid, stacks, width))
        for number, step in enumerate(steps.steps_of(deck, grid, stacks), start=1)
    ]
    roomy = [*blocks, *(block for each in told for block in _step(each, width))]
    if _pages_of(roomy, deck) == 1:
        return roomy
    beside = [*blocks, *_all_beside(told, width)]
    close = [replace(block, space=min(block.space, CLOSE)) for block in beside]
    return min(roomy, beside, close, key=lambda way: _pages_of(way, deck))


def _pages_of(blocks: Sequence[Block], deck: Deck) -> int:
    return len(pages(blocks, page_paper(deck.recipe.paper), foot=()))


def _below(
    shown: Shown, deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float
) -> list[Frame]:
    """Return what is drawn below a step, or beside it."""
    if shown is Shown.LOADS:
        return load_rows(deck, grid, stacks, width - INDENT)
    if shown is Shown.LEAVES:
        return leaf_rows(deck, stacks, width - INDENT)
    if shown is Shown.PLANS:
        return plans(deck, grid, stacks, width - INDENT)
    return []


def _all_beside(told: Sequence[_Told], width: float) -> list[Block]:
    """Return the steps, with those that follow one with a drawing beside it as well."""
    blocks: list[Block] = []
    for n, each in enumerate(told):
        if _has_room_beside(each, width):
            return [*blocks, _beside(told[n:], width)]
        blocks += _step(each, width)
    return blocks


def _has_room_beside(told: _Told, width: float) -> bool:
    """Say whether a step has one drawing, and words have room beside it."""
    if told.step.shown is not Shown.PLANS or len(told.below) != 1:
        return False
    return told.below[0].width + LEAST_BESIDE <= width - INDENT


def _beside(told: Sequence[_Told], width: float) -> Block:
    """Return steps under one another, beside the drawing of the first."""
    (drawing,) = told[0].below
    room = width - drawing.width - BESIDE
    words = under_one_another([_words(each.number, each.step, room) for each in told], gap=SPACE)
    return Block(side_by_side([(0, words), (width - drawing.width, drawing)], width), space=SPACE)


def _step(told: _Told, width: float) -> list[Block]:
    """Return a step and what belongs to it; a drawing stands beside it where there is room."""
    if _has_room_beside(told, width):
        return [_beside([told], width)]
    number, step, below = told.number, told.step, told.below
    first = Block(_words(number, step, width), space=SPACE, with_next=bool(below))
    if step.shown is Shown.CAUTION:
        first = replace(first, with_next=True)
        return [first, Block(panel("At the paper cutter", steps.CUTTING, width), space=8)]
    drawn = step.shown is Shown.PLANS
    rows = [
        Block(
            side_by_side([(INDENT, frame)], width),
            space=9 if drawn else 0 if n else 4,
            with_next=not drawn,
        )
        for n, frame in enumerate(below)
    ]
    return [first, *rows[:-1], *(replace(row, with_next=False) for row in rows[-1:])]


def _words(number: int, step: Step, width: float) -> Frame:
    room = width - INDENT
    words = under_one_another(
        [paragraph(step.title, room, STRONG), paragraph(step.text, room, BODY)], gap=1
    )
    return side_by_side([(0, paragraph(str(number), INDENT, FIGURE)), (INDENT, words)], width)
