"""Which items go in: k of n, with the levels and topics that were asked for."""

from decks.amounts import ALL
from decks.choosing.choice import Choice, Count, Goal
from decks.choosing.choose import choose

__all__ = ["ALL", "Choice", "Count", "Goal", "choose"]
