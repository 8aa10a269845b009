"""Choosing as a program in whole numbers: unknown counts per group."""

from collections.abc import Sequence

from decks.choosing.stock import Range, Stock
from decks.dealing.program import INFINITY, Outcome, Program
from decks.dealing.solving import solve


class Model:
    """A program whose first columns are the items taken of each group, `count` in all."""

    def __init__(self, stock: Stock, count: int) -> None:
        self.program = Program()
        self._stock = stock
        for must, have in zip(stock.must, stock.have, strict=True):
            self.program.column(must, have)
        self.program.row(count, count, [(group, 1) for group in range(len(stock.groups))])

    def solve(self) -> tuple[tuple[int, ...] | None, Outcome]:
        """Minimise the cost; return the counts by group, or None, and all of the outcome."""
        outcome = solve(self.program)
        if outcome.values is None:
            return None, outcome
        return outcome.values[: len(self._stock.groups)], outcome

    def keep(self, ranges: Sequence[Range], off: int = 0) -> None:
        """Let no more than `off` cards lie outside the ranges."""
        if off:
            self.program.row(-INFINITY, off, [(column, 1) for column in self._strays(ranges)])
            return
        for span in ranges:
            self.program.row(span.least, span.most, [(group, 1) for group in span.members])

    def minimise_strays(self, ranges: Sequence[Range], cost: float = 1) -> None:
        """Add to the cost for each card that lies outside the ranges."""
        for column in self._strays(ranges):
            self.program.cost[column] = cost

    def minimise_gap(self, target: int) -> None:
        """Make the difference between the sum of steps and the target the cost."""
        self.program.cost[self._gap(target)] = 1

    def keep_gap(self, target: int, gap: int) -> None:
        """Let the sum of steps lie no further from the target than `gap`."""
        self.program.upper[self._gap(target)] = gap

    def minimise_excess(self, target: int, near: int) -> None:
        """Make the cost how far the sum of steps lies outside `near` of the target."""
        gap, excess = self._gap(target), self.program.column(cost=1)
        self.program.row(-INFINITY, near, [(gap, 1), (excess, -1)])

    def weigh(self, weights: Sequence[int]) -> None:
        """Add a cost for each item taken of a group."""
        for group, weight in enumerate(weights):
            self.program.cost[group] = weight

    def _strays(self, ranges: Sequence[Range]) -> list[int]:
        """Add for each range the cards that it lacks and those it has too many; return columns."""
        strays = []
        for span in ranges:
            under, over = self.program.column(), self.program.column()
            terms = [(group, 1.0) for group in span.members]
            self.program.row(span.least, span.most, [*terms, (under, 1), (over, -1)])
            strays += [under, over]
        return strays

    def _gap(self, target: int) -> int:
        gap = self.program.column()
        terms = [(group, float(kind.steps)) for group, kind in enumerate(self._stock.groups)]
        self.program.row(-INFINITY, target, [*terms, (gap, -1)])
        self.program.row(target, INFINITY, [*terms, (gap, 1)])
        return gap
