"""The dealt result: cards with their labels, and the study guides that belong to them."""

from collections.abc import Sequence
from dataclasses import dataclass

from cards.item import Item, Kind
from decks.bank import Guide, make_guide
from decks.dealing import Deal, deal_copies, deal_shares
from decks.recipe import Dealing, GuideFor, Recipe

REVIEW_KINDS = (Kind.VOCABULARY, Kind.FACT, Kind.QUESTION)
"""What a review deck is made of; supporting details are for sorting, not for asking."""


@dataclass(frozen=True, slots=True)
class Card:
    """One card of a deck: its label, the number of its team (from 0), and what it asks."""

    label: str
    team: int
    item: Item


@dataclass(frozen=True, slots=True)
class Deck:
    """A dealt deck; `hands` holds each team's cards in the order of their labels."""

    recipe: Recipe
    number: int
    seed: str
    deal: Deal
    hands: tuple[tuple[Card, ...], ...]
    guides: tuple[Guide, ...]

    @property
    def name(self) -> str:
        """Return what the papers call the deck."""
        return f"{self.recipe.title} · deck {self.number}"

    @property
    def cards(self) -> tuple[Card, ...]:
        """All cards, team by team."""
        return tuple(card for hand in self.hands for card in hand)


def make_deck(recipe: Recipe, items: Sequence[Item], *, number: int, seed: str) -> Deck:
    """Deal the items to the recipe's teams, label the cards and write the study guides.

    Pure: the same arguments give the same deck.
    """
    items = [item for item in items if item.kind in REVIEW_KINDS]
    names = [team.name for team in recipe.teams]
    dealt = deal_copies if recipe.deal is Dealing.COPIES else deal_shares
    deal = dealt(items, names, seed)
    guides = _guides(recipe, deal, items, seed)
    return Deck(recipe, number, seed, deal, _label_hands(recipe, deal), guides)


def _label_hands(recipe: Recipe, deal: Deal) -> tuple[tuple[Card, ...], ...]:
    """Give every card its number.

    In shares the numbers run on from team to team, in copies every team has the same ones. A
    hand's order is the seed's, so that a number says nothing of level, topic or answer, and a
    team's numbers follow one another, so that a lost card shows.
    """
    hands = []
    first = 1
    for team, hand in enumerate(deal.hands):
        hands.append(tuple(Card(str(first + n), team, item) for n, item in enumerate(hand)))
        if recipe.deal is Dealing.SHARES:
            first += len(hand)
    return tuple(hands)


def _guides(recipe: Recipe, deal: Deal, items: Sequence[Item], seed: str) -> tuple[Guide, ...]:
    asked: list[tuple[str | None, Sequence[Item]]] = []
    if recipe.guide is GuideFor.TEAM:
        asked = [(team.name, hand) for team, hand in zip(recipe.teams, deal.hands, strict=True)]
    elif recipe.guide is GuideFor.CLASS:
        asked = [(None, items)]
    return tuple(
        make_guide(team, blanks, items, extra_words=recipe.extra_words, seed=seed)
        for team, blanks in asked
        if blanks
    )
