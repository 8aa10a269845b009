"""Evening out by exchanges: expected points first, then reading load, then rivals.

Every step makes two teams more alike and none of what comes before worse, so it ends. Where it
ends above the bound, hands are shaken and evened out again, as long as there is effort left.
"""

import random
from collections.abc import Iterator, Sequence
from heapq import nsmallest
from itertools import permutations

from msgspec import Struct

from decks.dealing.exchanges import SOURCES, Candidate, Source, alike, of_item, unlike, within
from decks.dealing.holding import Exchange, Holding, Room, Standing
from decks.dealing.stock import Fence

_EFFORT = 30_000
_EFFORT_PER_CARD = 30
_SHAKES = 30
_SWAPS = 3
_NEAREST = 8
_FEW = 16
_ANY = 10**12


class Effort:
    """What may still be tried, counted in exchanges: a slow machine tries as many as a fast one."""

    def __init__(self, cards: int) -> None:
        self.left = _EFFORT + _EFFORT_PER_CARD * cards

    def spend(self, candidates: Iterator[Candidate | None]) -> Iterator[Candidate]:
        """Yield the candidates as long as there is effort left."""
        for candidate in candidates:
            if self.left <= 0:
                return
            self.left -= 1
            if candidate is not None:
                yield candidate


class Evening(Struct, frozen=True):
    """A way to even out a holding until its standing is `best`, which none can be below."""

    holding: Holding
    best: Standing
    effort: Effort

    def run(self) -> None:
        """Even out as far as exchanges lead."""
        last = len(self.best) - 2
        for load in range(last):
            self._even(load, _ANY)
        self._part(last)
        self._even(last, self.holding.clashes)
        if self.holding.spread(last) > self.best[last] and self.holding.clashes < _ANY:
            self._even(last, _ANY)
            self._part(last + 1)

    def _even(self, load: int, clashes: int) -> None:
        while self.holding.spread(load) > self.best[load] and self._step(load, clashes):
            pass

    def _step(self, load: int, clashes: int) -> bool:
        """Make the first exchange that brings two teams nearer, the farthest apart first."""
        sums = self.holding.sums[load]
        pairs = [
            (sums[other] - sums[one], one, other)
            for one, other in permutations(range(len(sums)), 2)
            if sums[one] - sums[other] > 1
        ]
        return any(
            self._bring_nearer(load, one, other, source, clashes)
            for source in SOURCES[0 if self.holding.stock.varied[load] else 2 :]
            for _apart, one, other in sorted(pairs)
        )

    def _bring_nearer(self, load: int, one: int, other: int, source: Source, clashes: int) -> bool:
        holding = self.holding
        apart = holding.sums[load][one] - holding.sums[load][other]
        rooms = self._rooms(one, other, load)
        rooms[load] = (1, apart - 1)
        found = within(self.effort.spend(source(holding, one, other)), rooms)
        for candidate in nsmallest(_NEAREST, found, lambda c: abs(apart - 2 * c.lost[load])):
            self._try(one, other, candidate.what)
            if holding.clashes <= clashes:
                return True
            holding.exchange(other, one, candidate.what)
        return False

    def _try(self, one: int, other: int, what: Exchange) -> None:
        """Exchange; where cards are right for many blanks, to count their rivals has its price."""
        accepts = self.holding.stock.rivals.accepts
        self.effort.left -= sum(len(accepts[item]) for side in what for item in side) // _FEW
        self.holding.exchange(one, other, what)

    def _rooms(self, one: int, other: int, loads: int) -> list[Room]:
        """Return how much of each load may pass: the first `loads` must not come to differ more."""
        holding = self.holding
        return [
            holding.room(k, one, other, holding.spread(k)) if k < loads else (-_ANY, _ANY)
            for k in range(len(holding.stock.loads))
        ]

    def _part(self, loads: int) -> None:
        """Part rivals, without making the first `loads` worse."""
        holding = self.holding
        for item in range(len(holding.owners)):
            if holding.clashes <= self.best[-1]:
                return
            if holding.stock.homes[item] is None and holding.clashes_of(item):
                self._move_away(item, loads)

    def _move_away(self, item: int, loads: int) -> None:
        """Give the item to a team where it clashes less, if there is a card to be had for it."""
        holding = self.holding
        before, one = holding.clashes, holding.owners[item]
        for other in range(holding.stock.teams):
            if other == one:
                continue
            found = self.effort.spend(of_item(holding, item, other))
            for candidate in list(within(found, self._rooms(one, other, loads))):
                self._try(one, other, candidate.what)
                if holding.clashes < before:
                    return
                holding.exchange(other, one, candidate.what)
                if self.effort.left < 0:
                    return


def even_out(holding: Holding, fences: Sequence[Fence], best: Standing, rng: random.Random) -> None:
    """Even out a holding, within the first fence that leads to the best there is, or the last."""
    evening = Evening(holding, best, Effort(len(holding.owners)))
    for fence in fences:
        holding.restore(holding.owners, fence)
        evening.run()
        if evening.holding.standing() == best:
            return
    for _ in range(_SHAKES):
        _shake_and_even_out(evening, rng)
        if evening.effort.left <= 0 or evening.holding.standing() == best:
            return


def _shake_and_even_out(evening: Evening, rng: random.Random) -> None:
    holding = evening.holding
    before, owners = evening.holding.standing(), tuple(holding.owners)
    for _ in range(_SWAPS):
        _shake(evening, rng)
    evening.run()
    if evening.holding.standing() > before:
        holding.restore(owners, holding.fence)


def _shake(evening: Evening, rng: random.Random) -> None:
    holding = evening.holding
    one, other = rng.sample(range(holding.stock.teams), 2)
    found = list(evening.effort.spend(rng.choice((alike, unlike))(holding, one, other)))
    if found:
        holding.exchange(one, other, rng.choice(found).what)
