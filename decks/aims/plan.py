"""What is done for the aim of a deck, and why."""

from msgspec import Struct

from cards.finding import FairdealError
from cards.item import Item
from decks.aims.past import History
from decks.choosing import Choice
from decks.recipe import Aim, Recipe


class NothingToReteachError(FairdealError):
    """No marks say that anything was missed."""


class NothingLeftError(FairdealError):
    """No item is left that a harder deck could be made of."""


class Means(Struct, frozen=True):
    """A way in which the deck is made harder or easier: what, and how or why."""

    title: str
    text: str


class Plan(Struct, frozen=True):
    """The next deck: its items, its recipe with what is changed, and what is told about it.

    `due` are the missed items that are back, and `behind` those of topics that need another lesson;
    `again` are others that were in an earlier deck, `new` the rest. Of what is not in: `known` are
    those that the class is sure of, `waiting` those that are too hard for this aim. `dropped`
    counts the last deck's items that are not in this one, `gone` those to go over that the workbook
    no longer has.
    """

    aim: Aim
    recipe: Recipe
    choice: Choice
    history: History
    target: float | None
    new: tuple[Item, ...]
    due: tuple[Item, ...]
    behind: tuple[Item, ...]
    again: tuple[Item, ...]
    known: tuple[Item, ...]
    waiting: tuple[Item, ...]
    dropped: int
    gone: int
    means: tuple[Means, ...]
    sentences: tuple[str, ...]

    @property
    def seen(self) -> int:
        """How many of the items were in an earlier deck."""
        return len(self.due) + len(self.behind) + len(self.again)

    def share(self, item: Item) -> float:
        """Return the share expected to get an item right."""
        return self.history.share(item)


class Chosen(Struct, frozen=True):
    """What an aim has chosen, what it changes of the recipe, and by which means."""

    choice: Choice
    recipe: Recipe
    target: float | None = None
    waiting: tuple[Item, ...] = ()
    means: tuple[Means, ...] = ()
