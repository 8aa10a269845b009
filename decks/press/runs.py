"""What is printed at one go: the sheets to load, and the pages that go on to them."""

from collections.abc import Sequence

from msgspec import Struct

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.recipe import Ink, Sides
from decks.team import Team, stock_name


class Run(Struct, frozen=True):
    """Sheets of one kind and the pages of the file, `first` to `last` from 1, printed on them.

    `team` is whose stock it is, None where all teams share white paper.
    """

    sheets: int
    first: int
    last: int
    team: Team | None = None

    @property
    def paper(self) -> str:
        """The stock to load, empty where any will do."""
        return stock_name(self.team) if self.team else ""

    @property
    def pages(self) -> str:
        """The pages to print."""
        if self.first == self.last:
            return f"page {self.first}"
        return f"pages {self.first} to {self.last}"


def runs_of(deck: Deck, grid: Grid, stacks: Sequence[Stack]) -> list[Run]:
    """Return the runs of a deck: one for each team's stock, else one for all."""
    each = 2 if grid.sides is Sides.DUPLEX else 1
    if deck.recipe.ink is not Ink.STOCK:
        sheets = sum(stack.leaves for stack in stacks)
        return [Run(sheets, 1, sheets * each)]
    runs = []
    first = 1
    for stack in stacks:
        last = first + stack.leaves * each - 1
        runs.append(Run(stack.leaves, first, last, deck.owners[stack.teams[0]]))
        first = last + 1
    return runs
