"""How to print, check, cut and pile this deck, with the caution at the paper cutter."""

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
LEAST_BESIDE = 165.0
"""The least room for a step's words beside a drawing, with the gap between."""


def making(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float, *, contents: str = ""
) -> list[Block]:
    """Return the page that says how to make the deck, below what the file contains."""
    leaves = sum(stack.leaves for stack in stacks)
    items = [card.item for card in deck.cards]
    subtitle = (
        f"{cards_told(deck)} · {counted(leaves, 'leaf', 'leaves')} of {grid.paper.name}. "
        f"{readable_from(items, grid, deck.recipe)}"
    )
    blocks = [title_block("Make this deck", subtitle, width)]
    if contents:
        blocks.append(Block(paragraph(contents, width, NOTE), space=6, with_next=True))
    for number, step in enumerate(steps.steps_of(deck, grid, stacks), start=1):
        blocks += _step(number, step, _below(step.shown, deck, grid, stacks, width), width)
    return blocks


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


def _step(number: int, step: Step, below: list[Frame], width: float) -> list[Block]:
    """Return a step and what belongs to it; a drawing stands beside it where there is room."""
    room = width - INDENT
    if step.shown is Shown.PLANS and len(below) == 1 and below[0].width + LEAST_BESIDE <= room:
        (drawing,) = below
        words = _words(number, step, width - drawing.width - BESIDE)
        beside = side_by_side([(0, words), (width - drawing.width, drawing)], width)
        return [Block(beside, space=12)]
    first = Block(_words(number, step, width), space=12, with_next=bool(below))
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
