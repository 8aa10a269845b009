"""Which items go in: k of n, with the levels and topics that were asked for."""

from decks.amounts import ALL
from decks.choosing.choice import Choice, Count, Goal
from decks.choosing.choose import choose, mean_share
from decks.choosing.size import most_cards
from decks.choosing.stock import Again

__all__ = [
    "ALL",
    "Again",
    "Choice",
    "Count",
    "Goal",
    "choose",
    "mean_share",
    "most_cards",
]
