"""What can be marked in a deck: its cards as rows, the blanks of its guides as columns."""

import re
from collections.abc import Mapping

from msgspec import Struct

from cards.entries import entry_of
from cards.item import Item
from cards.raised import written_out
from decks.bank import Guide
from decks.deck import Deck
from decks.recipe import Activity

TALLY_SHEET = "Tally"
SCORE_SHEET = "Score"
GUIDES_TITLE = "Marked study guides"
TALLY_TITLE = "What was right"
LONGEST_TEXT = 64
"""How much of what a card says tells it from others in a row."""

_BLANK = re.compile(r"(?:part\s*(\d{1,3})\D+)?(\d{1,4})", re.IGNORECASE)


class TallyRow(Struct, frozen=True):
    """A row of the tally: a card, or an item where all teams have the same cards.

    `owner` is whose pile the card is in, or None where it is in every team's.
    """

    label: str
    owner: str | None
    text: str
    item: Item


class Blank(Struct, frozen=True, order=True):
    """A blank as the guide itself numbers it: its part, and its number there, both from 1."""

    part: int
    number: int


def tally_rows(deck: Deck) -> tuple[TallyRow, ...]:
    """Return the rows of the tally: one a card, pile by pile; one an item for copies."""
    same = deck.has_copies
    words = deck.recipe.activity is Activity.COLLECT
    return tuple(
        TallyRow(
            card.label,
            None if same else deck.owners[card.owner].name,
            in_short(entry_of(card.item) if words else question_of(card.item)),
            card.item,
        )
        for hand in (deck.hands[:1] if same else deck.hands)
        for card in hand
    )


def question_of(item: Item) -> str:
    """Return what tells an item in a cell: its prompt, or its answer where a picture asks.

    A cell has no styles here: 10²³ is written in signs, as 1023 would be another number.
    """
    return written_out(item.prompt, item.prompt_spans) if item.prompt else entry_of(item)


def in_short(text: str, longest: int = LONGEST_TEXT) -> str:
    """Return a text on one line, cut at a word where it is long."""
    line = " ".join(text.split())
    if len(line) <= longest:
        return line
    cut = line[: longest - 1]
    return f"{cut.rpartition(' ')[0] or cut}…"


def blanks_of(guide: Guide) -> dict[Blank, Item]:
    """Return the blanks of a guide in their order, each with the item that it asks."""
    return {
        Blank(part, number): item
        for part, content in enumerate(guide.parts, start=1)
        for number, item in enumerate(content.blanks, start=1)
    }


def columns_of(deck: Deck) -> tuple[Blank, ...]:
    """Return the blanks that any guide of the deck has: the columns that serve them all."""
    return tuple(sorted({blank for guide in deck.guides for blank in blanks_of(guide)}))


def papers_for(deck: Deck) -> int:
    """Return how many papers of each guide to have rows for."""
    students = deck.recipe.students
    shared = any(guide.team is not None for guide in deck.guides)
    return -(-students // len(deck.recipe.teams)) if shared else students


def blank_heading(blank: Blank, *, parts: bool) -> str:
    """Return the heading of a blank's column; `parts` where any guide has more than one part."""
    return f"Part {blank.part}\n{blank.number}" if parts else str(blank.number)


def blank_named(text: str) -> Blank | None:
    """Return the blank that a heading names, or None where it names none."""
    found = _BLANK.fullmatch(" ".join(text.split()))
    return Blank(int(found[1] or 1), int(found[2])) if found else None


def guides_by_team(deck: Deck) -> Mapping[str | None, Guide]:
    """Return the guides by team, None for the class."""
    return {guide.team: guide for guide in deck.guides}
