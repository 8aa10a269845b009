"""The dealt result: cards with their labels, and what belongs to them for the lesson."""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from msgspec import Struct, field
from msgspec.structs import replace

from cards.item import Item
from decks.card import Card
from decks.recipe import Activity, Points, Recipe
from decks.team import Team

if TYPE_CHECKING:
    # a deck that was read back or dealt before is drawn without what dealt it
    from decks.aims import Plan
    from decks.bank import Guide
    from decks.choosing import Choice
    from decks.dealing import Deal
    from decks.lesson import Lesson

_OWNERS = {Activity.ROUNDS: "round", Activity.STATIONS: "set"}


class Deck(Struct, frozen=True):
    """A dealt deck; `hands` holds each owner's cards in the order of their labels.

    The owners are those whose cards make a pile: the teams, or the rounds or sets of a lesson
    where the cards are nobody's. `deal` is None there. `pool` holds all items that could be in the
    deck, `choice` how some of them were chosen, or None where all are in. `lesson` is what the
    activity needs besides cards; `plan` is what a next deck was chosen for, `shares` what share is
    expected to get an item right, by its key, where marks say more than its level.

    A deck that was read back from its record has what cards and marks need: it has no seed, pool,
    choice, deal, lesson or plan, its guides have no words, its items no team and no other right
    answers.
    """

    recipe: Recipe
    number: int
    owners: tuple[Team, ...]
    hands: tuple[tuple[Card, ...], ...]
    guides: "tuple[Guide, ...]"
    seed: str = ""
    pool: tuple[Item, ...] = ()
    choice: "Choice | None" = None
    deal: "Deal | None" = None
    lesson: "Lesson | None" = None
    plan: "Plan | None" = None
    shares: Mapping[str, float] = field(default_factory=dict)

    @property
    def name(self) -> str:
        """Return what the papers call the deck."""
        return f"{self.recipe.title} · deck {self.number}"

    @property
    def cards(self) -> tuple[Card, ...]:
        """All cards, owner by owner."""
        return tuple(card for hand in self.hands for card in hand)

    @property
    def owner_word(self) -> str:
        """What the owners of the piles are: a `team`, a `round` or a `set`."""
        return _OWNERS.get(self.recipe.activity, "team")

    @property
    def has_copies(self) -> bool:
        """Whether there are several teams, and each has the same items under the same labels."""
        if self.owner_word != "team" or not self.hands[1:]:
            return False
        first, *others = ([(card.label, card.item) for card in hand] for hand in self.hands)
        return all(hand == first for hand in others)

    @property
    def is_one_team(self) -> bool:
        """Whether the class is one team, which has no other to play with."""
        return len(self.recipe.teams) == 1

    @property
    def points(self) -> Points:
        """The points that can be earned: a lone team is always first, which earns none."""
        given = self.recipe.points
        return replace(given, first=0) if self.is_one_team else given

    def expected(self, item: Item) -> float:
        """Return the share expected to get an item right: by marks where there are any."""
        return self.shares.get(item.key, item.level.expected_share)
