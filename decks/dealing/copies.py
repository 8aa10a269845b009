"""Every team gets every item."""

import random
from collections.abc import Sequence

from cards.item import Item
from decks.dealing.cells import GOALS
from decks.dealing.counts import goal
from decks.dealing.deal import Deal


def deal_copies(items: Sequence[Item], team_names: Sequence[str], seed: str) -> Deal:
    """Deal every item to every team, in one seeded order for all; no two hands differ."""
    order = list(items)
    random.Random(f"{seed}/deal").shuffle(order)
    hands = (tuple(order),) * len(team_names)
    chances = tuple(1 / len(team_names) for _ in team_names)
    return Deal(hands, tuple(goal(hands, name, 0, items) for name in GOALS), chances)
