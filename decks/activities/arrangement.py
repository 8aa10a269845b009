"""What an activity makes of the chosen items."""

from collections.abc import Sequence

from msgspec import Struct

from cards.item import Item
from decks.bank import Guide
from decks.card import Card
from decks.dealing import Deal
from decks.lesson import Lesson
from decks.recipe import Ink
from decks.team import Team, make_teams


class Arrangement(Struct, frozen=True):
    """Owners with their cards; the deal where the owners are teams; guides and lesson if any."""

    owners: tuple[Team, ...]
    hands: tuple[tuple[Card, ...], ...]
    deal: Deal | None = None
    guides: tuple[Guide, ...] = ()
    lesson: Lesson | None = None


def labelled(hands: Sequence[Sequence[Item]], *, run_on: bool) -> tuple[tuple[Card, ...], ...]:
    """Give every card its number: running on from owner to owner, or from 1 for each."""
    cards = []
    first = 1
    for owner, hand in enumerate(hands):
        cards.append(tuple(Card(str(first + n), owner, item) for n, item in enumerate(hand)))
        if run_on:
            first += len(hand)
    return tuple(cards)


def owners_called(word: str, count: int, ink: Ink) -> tuple[Team, ...]:
    """Return owners that are no teams, such as Round 1 and Round 2, each with an ink of its own."""
    names = [f"{word} {n}" for n in range(1, count + 1)]
    return make_teams(names, [None] * count, on_stock=ink is Ink.STOCK)
