"""The dealt result: cards with their labels, and the study guides that belong to them."""

from collections.abc import Sequence
from dataclasses import dataclass

from cards.item import Item, Kind
from decks.amounts import ALL
from decks.bank import Guide, make_guide
from decks.choosing import Choice, choose
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
    """A dealt deck; `hands` holds each team's cards in the order of their labels.

    `pool` holds all items that could be in it, `choice` how some of them were chosen, or None
    where all are in.
    """

    recipe: Recipe
    number: int
    seed: str
    pool: tuple[Item, ...]
    choice: Choice | None
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
    """Choose, deal the items to the recipe's teams, label the cards and write the study guides.

    Pure: the same arguments give the same deck.
    """
    pool = tuple(item for item in items if item.kind in REVIEW_KINDS)
    choice = _choice(recipe, pool, seed)
    chosen = pool if choice is None else choice.items
    names = [team.name for team in recipe.teams]
    dealt = deal_copies if recipe.deal is Dealing.COPIES else deal_shares
    deal = dealt(chosen, names, seed)
    asked = _asked(recipe, deal, chosen)
    guides = tuple(
        make_guide(team, blanks, pool, extra_words=recipe.extra_words, seed=seed)
        for team, blanks in asked
        if blanks
    )
    hands = _label_hands(recipe, deal)
    return Deck(recipe, number, seed, pool, choice, deal, hands, guides)


def _choice(recipe: Recipe, pool: Sequence[Item], seed: str) -> Choice | None:
    if recipe.cards == ALL and recipe.mix is None:
        return None
    return choose(pool, count=recipe.cards, mix=recipe.mix, seed=seed)


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


def _asked(
    recipe: Recipe, deal: Deal, items: Sequence[Item]
) -> list[tuple[str | None, Sequence[Item]]]:
    """Return for each guide whose it is, None for the class, and what it asks."""
    if recipe.guide is GuideFor.TEAM:
        return [(team.name, hand) for team, hand in zip(recipe.teams, deal.hands, strict=True)]
    return [(None, items)] if recipe.guide is GuideFor.CLASS else []
