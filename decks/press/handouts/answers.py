"""The answers as a list, for cards without backs: one for whoever checks.

It stands in the order of the labels, which is the order of the piles. Only the label and the
answer are told: the card that is held up shows its own prompt.
"""

from collections.abc import Sequence

from msgspec.structs import replace

from decks.card import Card
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.press.also import also_told
from decks.press.cards.arranging import as_printed
from decks.press.type.pages import column, foot_of, page_paper, pages
from decks.press.type.setting import (
    BODY,
    NOTE,
    STRONG,
    SUBTITLE,
    TITLE,
    Style,
    continued,
    headed,
    paragraph,
    ruled,
    side_by_side,
    under_one_another,
    width_of,
)
from decks.recipe import Activity, Recipe, Sides

LABEL = Style(11, strong=True, tone="quiet")
LABEL_WIDTH = 30.0
BETWEEN = 20.0
AIR = 3.5
LINES_DOWN = 20
"""How many answers go down a column before the next one begins: a part fits half a page."""


def has_answer_list(deck: Deck, grid: Grid) -> bool:
    """Say whether the cards need a list: they have no backs, and ask something in front."""
    return grid.sides is Sides.FRONTS and deck.recipe.activity is not Activity.COLLECT


def answer_pages(deck: Deck) -> list[Frame]:
    """Return the pages of the list, team by team; where all have the same cards, once."""
    paper = page_paper(deck.recipe.paper)
    width = column(paper)
    across = _columns(deck, width)
    blocks = [Block(_title(deck, width))]
    for team, hand in enumerate(deck.hands[:1] if deck.has_copies else deck.hands):
        name = "" if deck.has_copies else deck.owners[team].name
        each = (width + BETWEEN) / across - BETWEEN
        entries = [_entry(card, each, deck.recipe) for card in hand]
        rows = _list(entries, width, across)
        if name:
            head = Block(headed(name, team, width), space=20, with_next=True)
            again = continued(name, team, width)
            rows = [head, *(replace(row, head=again) for row in rows)]
        blocks += rows
    return pages(blocks, paper, foot=foot_of(deck, "answers"))


def _columns(deck: Deck, width: float) -> int:
    """Return how many columns take every answer in one line: three, or else two."""
    room = (width + BETWEEN) / 3 - BETWEEN - LABEL_WIDTH
    return 3 if all(width_of(card.item.answer, STRONG) <= room for card in deck.cards) else 2


def _title(deck: Deck, width: float) -> Frame:
    whose = "for whoever checks the team" if deck.owner_word == "team" else "for whoever checks"
    if deck.owner_word == "set":
        whose = "one for each base"
    if deck.has_copies:
        whose = "the same for every team"
    return under_one_another(
        [
            paragraph(f"Answers: {deck.recipe.title}", width, TITLE),
            paragraph(f"In the order of the labels, {whose}", width, SUBTITLE),
        ],
        gap=3,
    )


def _list(entries: Sequence[Frame], width: float, across: int) -> list[Block]:
    """Return a team's answers in columns, read downwards, in parts that stay together."""
    blocks = []
    for start in range(0, len(entries), across * LINES_DOWN):
        part = entries[start : start + across * LINES_DOWN]
        down = -(-len(part) // across)
        blocks += [
            Block(
                _row(part[n::down], width, across),
                space=0 if n or start else 6,
                with_next=n < down - 1,
            )
            for n in range(down)
        ]
    return blocks


def _row(entries: Sequence[Frame], width: float, across: int) -> Frame:
    step = (width + BETWEEN) / across
    tallest = max(entry.height for entry in entries)
    return side_by_side(
        [(n * step, _ruled(entry, tallest)) for n, entry in enumerate(entries)], width
    )


def _entry(card: Card, width: float, recipe: Recipe) -> Frame:
    room = width - LABEL_WIDTH
    also = also_told(card.item)
    words = [paragraph(as_printed(card.item, recipe, back=True), room, STRONG)]
    words += [paragraph(also, room, NOTE)] if also else []
    entry = [
        (0.0, paragraph(card.label, LABEL_WIDTH, LABEL, first=BODY.size * 0.8)),
        (LABEL_WIDTH, under_one_another(words, gap=1)),
    ]
    return side_by_side(entry, width, above=AIR, below=AIR)


def _ruled(frame: Frame, height: float) -> Frame:
    """Return the frame as tall as its neighbour, with one hairline at the foot of both."""
    return ruled(side_by_side([(0, frame)], frame.width, below=height - frame.height))
