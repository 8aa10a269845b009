"""Small decks: every deal is looked at, save those that cannot be the best."""

import random
from collections import Counter
from collections.abc import Iterator, Sequence

from msgspec.structs import replace

from decks.dealing.even import Range
from decks.dealing.holding import NOBODY, Holding, Standing
from decks.dealing.model import Limit
from decks.dealing.stock import Stock, fence_of

MOST_CARDS = 24
_STEPS = 60_000


class Exhausting:
    """A search, item by item, for a better deal within the limits than the known one.

    There are two teams or more, and the first of the limits is on the cards of each. `standing` and
    `owners` hold the best deal so far. `floor` is a standing that none is below.
    """

    def __init__(
        self,
        stock: Stock,
        limits: Sequence[Limit],
        floor: Standing,
        *,
        standing: Standing,
        owners: Sequence[int],
    ) -> None:
        self.standing, self.owners = standing, tuple(owners)
        self._limits, self._floor = limits, floor
        self._spans = [_loose(span, limit) for limit in limits for span in limit.ranges]
        pinned = [NOBODY if home is None else home for home in stock.homes]
        self._holding = Holding(stock, pinned, fence_of(self._spans, max(stock.cells) + 1))
        self._totals = [sum(load) for load in stock.loads]
        self._left = Counter(
            span
            for cell, home in zip(stock.cells, stock.homes, strict=True)
            for span in self._holding.fence.covers[cell]
            if home is None
        )
        self._steps = _STEPS

    def run(self, rng: random.Random) -> bool:
        """Search, and tell whether it is certain that no deal is better than the best found."""
        stock = self._holding.stock
        order = [item for item, home in enumerate(stock.homes) if home is None]
        rng.shuffle(order)
        order.sort(key=lambda item: tuple(load[item] for load in stock.loads))
        self._deal(order)
        return self._steps > 0

    def _deal(self, order: list[int]) -> None:
        if not order:
            standing = self._holding.standing()
            if standing < self.standing and self._keeps_limits():
                self.standing, self.owners = standing, tuple(self._holding.owners)
            return
        self._steps -= len(self._holding.held)  # every team is looked at
        item = order.pop()
        covers = self._holding.fence.covers[self._holding.stock.cells[item]]
        self._left.subtract(covers)
        for team in self._teams(covers):
            if self._steps <= 0 or self.standing == self._floor:
                break
            self._holding.give(item, team)
            if self._can_be_filled(covers) and self._bound() < self.standing:
                self._deal(order)
            self._holding.take(item)
        self._left.update(covers)
        order.append(item)

    def _teams(self, covers: Sequence[int]) -> Iterator[int]:
        """Yield the teams that have room; of teams without any card, one stands for all."""
        held, most = self._holding.held, self._holding.fence.most
        fresh = False
        for team in range(len(held)):
            if not any(held[team]):
                if fresh:
                    continue
                fresh = True
            if all(held[team][span] < most[span] for span in covers):
                yield team

    def _can_be_filled(self, covers: Sequence[int]) -> bool:
        """Whether what is left is enough for every team that still has too few."""
        least, held = self._holding.fence.least, self._holding.held
        return all(
            sum(max(0, least[span] - hand[span]) for hand in held) <= self._left[span]
            for span in covers
        )

    def _bound(self) -> Standing:
        """Return a standing that no way to deal the rest goes below."""
        others = len(self._holding.held) - 1
        spreads = []
        for sums, total in zip(self._holding.sums, self._totals, strict=True):
            high = max(sums)
            spreads.append(max(0, high - (total - high) // others))
        return (*spreads, self._holding.clashes)

    def _keeps_limits(self) -> bool:
        """Check the limits that are no fence of their own."""
        first = 0
        for limit in self._limits:
            numbers = range(first, first + len(limit.ranges))
            first += len(limit.ranges)
            if limit.largest is None or limit.total is None:
                continue
            hands = [[hand[n] for hand in self._holding.held] for n in numbers]
            apart = [max(hand) - min(hand) for hand in hands]
            if max(apart) > limit.largest or sum(apart) > limit.total:
                return False
        return True


def _loose(span: Range, limit: Limit) -> Range:
    if limit.largest is None:
        return span
    return replace(span, least=0, most=span.free + sum(span.pinned))
