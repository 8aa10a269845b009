"""All teams in one program: unknown counts per team and cell, and what the goals demand of them."""

import random
from collections.abc import Sequence

from msgspec import Struct

from decks.dealing.cells import Table
from decks.dealing.even import Range
from decks.dealing.lot import Counts
from decks.dealing.program import INFINITY, Program

_WEIGHTS = 100_000
_Terms = list[tuple[int, float]]


class Limit(Struct, frozen=True):
    """How far the teams may differ over the values of one attribute.

    `ranges` are those that counting alone allows. Where no deal keeps within them, `largest` is
    the largest difference and `total` the sum of the differences; where one does, both are None.
    """

    ranges: tuple[Range, ...]
    largest: int | None = None
    total: int | None = None


class Model:
    """A program whose first columns are the free items that each team gets of each cell."""

    def __init__(self, table: Table, limits: Sequence[Limit]) -> None:
        self.program = Program()
        self._pinned = table.pinned
        self._x = [[self.program.column(0, free) for free in table.free] for _ in table.pinned]
        self._spans: list[tuple[int, int]] = []
        for cell, free in enumerate(table.free):
            self.program.row(free, free, [(row[cell], 1) for row in self._x])
        for limit in limits:
            self._keep(limit)

    def counts(self, values: Sequence[int]) -> Counts:
        """Return the counts that a solution stands for."""
        return tuple(tuple(values[column] for column in row) for row in self._x)

    def minimise_largest(self, ranges: Sequence[Range]) -> None:
        """Make the largest difference between two teams the cost."""
        largest = self.program.column(max(span.width for span in ranges), cost=1)
        for high, low in self._add_spans(ranges):
            self.program.row(-INFINITY, 0, [(high, 1), (low, -1), (largest, -1)])

    def minimise_total(self, ranges: Sequence[Range], largest: int) -> None:
        """Make the sum of the differences the cost, none of them above `largest`."""
        for high, low in self._add_spans(ranges):
            self.program.row(-INFINITY, largest, [(high, 1), (low, -1)])
            self.program.cost[high], self.program.cost[low] = 1, -1

    def minimise_spread(self, weights: Sequence[int]) -> None:
        """Make the difference between the heaviest and the lightest hand the cost.

        `weights` holds what a card of each cell weighs.
        """
        high, low = self.program.column(cost=1), self.program.column(cost=-1)
        for have, row in zip(self._pinned, self._x, strict=True):
            held = sum(count * weight for count, weight in zip(have, weights, strict=True))
            terms: _Terms = list(zip(row, weights, strict=True))
            self.program.row(-INFINITY, -held, [*terms, (high, -1)])
            self.program.row(-held, INFINITY, [*terms, (low, -1)])

    def minimise_by_lot(self, rng: random.Random) -> None:
        """Let weights that are drawn decide which values differ more, where a limit leaves open."""
        for high, low in self._spans:
            self.program.cost[high] = rng.randrange(1, _WEIGHTS)
            self.program.cost[low] = -rng.randrange(1, _WEIGHTS)

    def _keep(self, limit: Limit) -> None:
        if limit.largest is None or limit.total is None:
            for span in limit.ranges:
                for have, terms in self._hands(span):
                    self.program.row(span.least - have, span.most - have, terms)
            return
        spans = self._add_spans(limit.ranges)
        for high, low in spans:
            self.program.row(-INFINITY, limit.largest, [(high, 1), (low, -1)])
        every = [term for high, low in spans for term in ((high, 1), (low, -1))]
        self.program.row(-INFINITY, limit.total, every)
        self._spans += spans

    def _add_spans(self, ranges: Sequence[Range]) -> list[tuple[int, int]]:
        """Add for each range the most and the least that a team holds, and return the columns."""
        spans = []
        for span in ranges:
            high, low = self.program.column(span.most), self.program.column(0, span.least)
            for have, terms in self._hands(span):
                self.program.row(-INFINITY, -have, [*terms, (high, -1)])
                self.program.row(-have, INFINITY, [*terms, (low, -1)])
            spans.append((high, low))
        return spans

    def _hands(self, span: Range) -> list[tuple[int, _Terms]]:
        """Return what each team has of a group: pinned, and as terms of the program."""
        return [
            (have, [(row[cell], 1) for cell in span.group])
            for have, row in zip(span.pinned, self._x, strict=True)
        ]
