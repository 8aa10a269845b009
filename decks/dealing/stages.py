"""Goal after goal: each as small as it can be, given those before it."""

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass, replace

from decks.dealing.cells import GOALS, LIKED, Table
from decks.dealing.even import Range, even_ranges
from decks.dealing.lot import Counts, draw
from decks.dealing.model import Limit, Model
from decks.dealing.program import solve


@dataclass(frozen=True, slots=True)
class Fairest:
    """The counts of the fairest deal, and per goal the difference that no deal goes below."""

    counts: Counts
    bounds: dict[str, int]


def fairest(table: Table, rng: random.Random) -> Fairest:
    """Find the fairest deal there is.

    Most tables can be dealt as evenly as counting alone allows: that is tried first, and proves
    itself. Only for the others are the goals taken one after the other.
    """
    even = {name: even_ranges(table, [attribute]) for name, attribute in GOALS.items()}
    counts = _draw(table, [span for ranges in even.values() for span in ranges], rng)
    if counts is not None:
        return Fairest(counts, {name: _widest(ranges) for name, ranges in even.items()})
    return _goal_by_goal(table, even, rng)


def _draw(table: Table, ranges: Sequence[Range], rng: random.Random) -> Counts | None:
    """Draw a deal within the ranges that keeps to the liked ranges too, as far as can be."""
    for liked in (LIKED, LIKED[:1], ()):
        counts = draw(table, [*ranges, *even_ranges(table, liked)], rng)
        if counts is not None:
            return counts
    return None


def _goal_by_goal(table: Table, even: dict[str, tuple[Range, ...]], rng: random.Random) -> Fairest:
    limits: list[Limit] = []
    bounds: dict[str, int] = {}
    counts = _in_turn(table)
    for name, ranges in even.items():
        stage = _Stage(table, tuple(limits), ranges)
        counts, limit, bounds[name] = stage.as_even_as_counted() or stage.as_even_as_can_be(counts)
        limits.append(limit)
    counts = _settled(table, limits, rng) or counts
    kept = [span for limit in limits for span in _reached(limit.ranges, counts)]
    return Fairest(_draw(table, kept, rng) or counts, bounds)


@dataclass(frozen=True, slots=True)
class _Stage:
    """One goal, after the limits that the goals before it have set."""

    table: Table
    limits: tuple[Limit, ...]
    ranges: tuple[Range, ...]

    def as_even_as_counted(self) -> tuple[Counts, Limit, int] | None:
        limit = Limit(self.ranges)
        model = Model(self.table, [*self.limits, limit])
        values = solve(model.program).values
        return None if values is None else (model.counts(values), limit, _widest(self.ranges))

    def as_even_as_can_be(self, known: Counts) -> tuple[Counts, Limit, int]:
        """Make the largest difference small, then their sum; `known` counts meet the limits."""
        model = Model(self.table, self.limits)
        model.minimise_largest(self.ranges)
        known, bound = _solved(model, known)
        largest = _widest(_reached(self.ranges, known))
        model = Model(self.table, self.limits)
        model.minimise_total(self.ranges, largest)
        known, _ = _solved(model, known)
        total = sum(span.width for span in _reached(self.ranges, known))
        return known, Limit(self.ranges, largest, total), max(bound, _widest(self.ranges))


def _solved(model: Model, known: Counts) -> tuple[Counts, int]:
    outcome = solve(model.program)
    # the solver's tolerance must not lift a bound over a whole number
    bound = math.ceil(outcome.bound - 1e-6) if math.isfinite(outcome.bound) else 0
    return (known if outcome.values is None else model.counts(outcome.values)), bound


def _settled(table: Table, limits: Sequence[Limit], rng: random.Random) -> Counts | None:
    model = Model(table, limits)
    model.minimise_by_lot(rng)
    values = solve(model.program).values
    return None if values is None else model.counts(values)


def _reached(ranges: Sequence[Range], counts: Counts) -> list[Range]:
    """Return the ranges with the least and the most that the counts come to."""
    reached = []
    for span in ranges:
        held = [
            have + sum(row[cell] for cell in span.group)
            for have, row in zip(span.pinned, counts, strict=True)
        ]
        reached.append(replace(span, least=min(held), most=max(held)))
    return reached


def _widest(ranges: Sequence[Range]) -> int:
    return max((span.width for span in ranges), default=0)


def _in_turn(table: Table) -> Counts:
    """Deal the free items round the table, whatever the teams have: a deal to begin with."""
    teams = len(table.pinned)
    return tuple(
        tuple(free // teams + (team < free % teams) for free in table.free) for team in range(teams)
    )
