"""What a deck after the first is chosen for, and what is changed for it."""

from decks.aims.past import History, Last, Past, Result
from decks.aims.plan import NothingLeftError, NothingToReteachError, Plan
from decks.aims.planning import plan_next

__all__ = [
    "History",
    "Last",
    "NothingLeftError",
    "NothingToReteachError",
    "Past",
    "Plan",
    "Result",
    "plan_next",
]
