"""Organisers for the teacher: which detail supports which heading, and how the sheets are seen."""

from collections.abc import Sequence

from cards.item import Item
from decks.deck import Deck
from decks.layout.flow import Block, kept_at_the_ends
from decks.layout.frame import Frame
from decks.lesson import Story, Telling
from decks.press.cards.arranging import styled_of
from decks.press.teacher.keys import FIGURE, title_block
from decks.press.teacher.table import Column, cell
from decks.press.type.setting import (
    BODY,
    HEADING,
    NOTE,
    STRONG,
    continued,
    gap,
    paragraph,
    ruled,
    side_by_side,
    swatch,
    under_one_another,
)
from decks.words import counted, listed

LABEL = 42.0
CARDS = 0.4
"""The share of the width for the numbers of a heading's cards."""

ROW_AIR = 4.0
BESIDE = 14.0


def organizing_key(deck: Deck, telling: Telling, width: float) -> list[Block]:
    """Return the key to the details: text by text, heading by heading, with the cards' labels."""
    texts = list(telling.teams_by_story.items())
    headings = sum(len(story.headings) for story, _teams in texts)
    shared = any(len(teams) > 1 for _story, teams in texts)
    alike = "; in every group a text’s cards have the same numbers" if shared else ""
    subtitle = f"{counted(len(texts), 'text')}, {counted(headings, 'heading')}{alike}"
    blocks = [title_block("Key to the details", subtitle, width)]
    labels = [{card.item: card.label for card in hand} for hand in deck.hands]
    for story, teams in texts:
        blocks.append(_text_head(deck, story, teams, width))
        for heading, items in story.headings:
            named = _named(deck, story, teams, heading, width)
            blocks += _heading(named, items, labels[teams[0]], deck, width)
    return blocks


def _text_head(deck: Deck, story: Story, teams: Sequence[int], width: float) -> Block:
    everyone = _is_for_all(deck, teams)
    ribbons = [] if everyone else [(n * BESIDE, swatch(team)) for n, team in enumerate(teams)]
    start = len(ribbons) * BESIDE + (4 if ribbons else 0)
    words = under_one_another(
        [
            paragraph(_name(story), width - start, HEADING),
            paragraph(
                f"for {'every group' if everyone else _groups(deck, teams)}", width - start, NOTE
            ),
        ],
        gap=2,
    )
    return Block(side_by_side([*ribbons, (start, words)], width), space=20, with_next=True)


def _named(deck: Deck, story: Story, teams: Sequence[int], heading: str, width: float) -> Frame:
    """Return what says, where the details of a heading go on, of which text and whose they are."""
    whose = [] if _is_for_all(deck, teams) else [_groups(deck, teams)]
    ribbon = teams[0] if whose and len(teams) == 1 else None
    return continued(" · ".join([*whose, _name(story), heading]), ribbon, width)


def _is_for_all(deck: Deck, teams: Sequence[int]) -> bool:
    return len(teams) == len(deck.owners) > 1


def _groups(deck: Deck, teams: Sequence[int]) -> str:
    return listed([deck.owners[team].name for team in teams], "and")


def _name(story: Story) -> str:
    return story.topic or "A text without a name"


def _heading(
    named: Frame, items: Sequence[Item], labels: dict[Item, str], deck: Deck, width: float
) -> list[Block]:
    """Return a heading over its details, in the order of their labels."""
    by_label = sorted(items, key=lambda item: int(labels[item]))
    numbers = [labels[item] for item in by_label]
    told = f"{'card' if len(numbers) == 1 else 'cards'} {listed(numbers, 'and')}"
    head = ruled(_head(items[0], told, deck, width), tone="frame")
    columns = [Column("Card", LABEL), Column("Detail", width - LABEL)]
    again = under_one_another([named, gap(ROW_AIR)])
    rows = [Block(_row(columns, labels[item], item, deck), head=again) for item in by_label]
    return kept_at_the_ends([Block(head, space=12), *rows], first=3, last=2)


def _head(first: Item, told: str, deck: Deck, width: float) -> Frame:
    room = (1 - CARDS) * width
    words = styled_of(first, back=True, fractions=deck.recipe.fractions)
    cells = [
        (0.0, paragraph(words, room - BESIDE, STRONG)),
        (room, paragraph(told, width - room, NOTE, first=0.8 * STRONG.size)),
    ]
    return side_by_side(cells, width, above=ROW_AIR, below=ROW_AIR)


def _row(columns: Sequence[Column], label: str, item: Item, deck: Deck) -> Frame:
    detail = styled_of(item, back=False, fractions=deck.recipe.fractions)
    cells = [
        (0.0, cell(columns[0], (label, FIGURE))),
        (columns[0].width, cell(columns[1], (detail, BODY))),
    ]
    width = columns[0].width + columns[1].width
    return ruled(side_by_side(cells, width, above=ROW_AIR, below=ROW_AIR))
