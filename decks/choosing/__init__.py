"""Which items go in: k of n, with the levels and topics that were asked for."""

from decks.choosing.choice import Choice, Goal
from decks.choosing.choose import choose
from decks.choosing.size import most_cards
from decks.choosing.stock import Again

__all__ = [
    "Again",
    "Choice",
    "Goal",
    "choose",
    "most_cards",
]
