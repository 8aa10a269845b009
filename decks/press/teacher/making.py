"""How to print, check, cut and pile this deck, with the cautions where they are needed."""

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.teacher import steps
from decks.press.teacher.keys import title_block
from decks.press.teacher.plan import cut_plan
from decks.press.type import (
    BODY,
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
BETWEEN_PLANS = 18.0


def making(deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float) -> list[Block]:
    """Return the page that says how to make the deck."""
    leaves = sum(stack.leaves for stack in stacks)
    subtitle = (
        f"{counted(len(deck.cards), 'card')} for {counted(len(deck.hands), 'team')} · "
        f"{counted(leaves, 'leaf', 'leaves')} of {grid.paper.name}"
    )
    blocks = [title_block("Make this deck", subtitle, width)]
    for n, (title, text) in enumerate(_steps(deck, grid, stacks), start=1):
        blocks.append(Block(_step(n, title, text, width), space=12, with_next=title == "Pile"))
        if title == "Cut":
            blocks.append(Block(panel("At the paper cutter", steps.CUTTING, width), space=8))
        if title == "Pile":
            blocks += _plans(deck, grid, stacks, width)
    blocks.append(Block(panel("Before anyone moves", steps.MOVING, width), space=16))
    return blocks


def _steps(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[tuple[str, str]]:
    leaves = sum(stack.leaves for stack in stacks)
    return [
        ("Print", steps.printing(grid, leaves)),
        ("Check the first leaf", steps.checking(grid)),
        *([("Fold and glue", steps.folding())] if grid.folded else []),
        ("Cut", steps.cutting(grid, stacks)),
        ("Pile", steps.piling()),
        *([("Copy the study guide", steps.guides(deck))] if deck.guides else []),
    ]


def _step(number: int, title: str, text: str, width: float) -> Frame:
    words = under_one_another(
        [paragraph(title, width - INDENT, STRONG), paragraph(text, width - INDENT, BODY)], gap=1
    )
    return side_by_side([(0, paragraph(str(number), INDENT, FIGURE)), (INDENT, words)], width)


def _plans(deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float) -> list[Block]:
    """Return the stacks' plans, as many side by side as the page is wide."""
    titles = [f"stack {n} of {len(stacks)}" if len(stacks) > 1 else "" for n in _from_one(stacks)]
    plans = [
        cut_plan(deck, grid, stack, title=title)
        for stack, title in zip(stacks, titles, strict=True)
    ]
    each = plans[0].width + BETWEEN_PLANS
    across = max(1, int((width - INDENT + BETWEEN_PLANS) // each))
    rows = [plans[start : start + across] for start in range(0, len(plans), across)]
    return [
        Block(side_by_side([(INDENT + n * each, p) for n, p in enumerate(row)], width), space=9)
        for row in rows
    ]


def _from_one(stacks: tuple[Stack, ...]) -> range:
    return range(1, len(stacks) + 1)
