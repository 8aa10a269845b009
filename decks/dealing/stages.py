"""Goal after goal: each as small as it can be, given those before it."""

import random
from collections.abc import Sequence

from msgspec import Struct, field
from msgspec.structs import replace

from decks.dealing.cells import GOALS, LIKED, Cell, Table
from decks.dealing.even import Range, even_ranges
from decks.dealing.lot import Counts, draw
from decks.dealing.model import Limit, Model
from decks.dealing.solving import solve
from decks.evenly import even_sizes

_LOTS = 2  # how often levels and topics are settled anew before kinds are modelled
_BEFORE_KIND = ("cards", "level", "topic")


class Fairest(Struct, frozen=True):
    """The counts of the fairest deal, and per goal the difference that no deal goes below.

    A deal is as fair when it keeps the `limits`; every deal within the `ranges` does.
    """

    counts: Counts
    bounds: dict[str, int]
    limits: tuple[Limit, ...]
    ranges: tuple[Range, ...]


def fairest(table: Table, rng: random.Random) -> Fairest:
    """Find the fairest deal there is.

    Most tables can be dealt as evenly as counting alone allows: that is tried first, and proves
    itself. Only for the others are the goals taken one after the other.
    """
    even = {name: even_ranges(table, [attribute]) for name, attribute in GOALS.items()}
    ranges = tuple(span for spans in even.values() for span in spans)
    counts = _draw(table, ranges, rng)
    if counts is not None:
        limits = tuple(map(Limit, even.values()))
        bounds = {name: _widest(ranges) for name, ranges in even.items()}
        return Fairest(counts, bounds, limits, ranges)
    return _goal_by_goal(table, even, rng)


def _draw(table: Table, ranges: Sequence[Range], rng: random.Random) -> Counts | None:
    """Draw a deal within the ranges that keeps to the liked ranges too, as far as can be."""
    for liked in (LIKED, LIKED[:1]):
        counts = draw(table, [*ranges, *even_ranges(table, liked)], rng, tries=2)
        if counts is not None:
            return counts
    return draw(table, ranges, rng)


def _goal_by_goal(table: Table, even: dict[str, tuple[Range, ...]], rng: random.Random) -> Fairest:
    """Take the goals one after the other: first all but kinds, which triple the unknowns.

    Once levels and topics are settled, kinds mostly come out as even as counted; only where they
    do not are they modelled as well.
    """
    coarse = table.merged(_without_kind)
    stages = _Stages(coarse, _in_turn(coarse))
    for name in _BEFORE_KIND:
        stages.add(name, even_ranges(coarse, [GOALS[name]]))
    limits = [
        replace(limit, ranges=even[name])
        for name, limit in zip(_BEFORE_KIND, stages.limits, strict=True)
    ]
    for _ in range(_LOTS):
        settled = _refined(table, coarse, _settled(coarse, stages.limits, rng) or stages.counts)
        ranges = (*_kept(limits, settled), *even["kind"])
        counts = _draw(table, ranges, rng)
        if counts is not None:
            bounds = stages.bounds | {"kind": _widest(even["kind"])}
            return Fairest(counts, bounds, (*limits, Limit(even["kind"])), ranges)
    stages = _Stages(table, _refined(table, coarse, stages.counts), limits, stages.bounds)
    stages.add("kind", even["kind"])
    counts = _settled(table, stages.limits, rng) or stages.counts
    kept = _kept(stages.limits, counts)
    counts = _draw(table, kept, rng) or counts
    return Fairest(counts, stages.bounds, tuple(stages.limits), kept)


def _without_kind(cell: Cell) -> Cell:
    return cell._replace(kind=0)


class _Stages(Struct):
    """What the goals so far have led to."""

    table: Table
    counts: Counts
    limits: list[Limit] = field(default_factory=list)
    bounds: dict[str, int] = field(default_factory=dict)

    def add(self, name: str, ranges: tuple[Range, ...]) -> None:
        """Make one more goal as small as it can be."""
        stage = _Stage(self.table, tuple(self.limits), ranges)
        found = stage.as_even_as_counted() or stage.as_even_as_can_be(self.counts)
        self.counts, limit, self.bounds[name] = found
        self.limits.append(limit)


class _Stage(Struct, frozen=True):
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
    return (known if outcome.values is None else model.counts(outcome.values)), outcome.least


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


def liked_ranges(table: Table, counts: Counts) -> tuple[Range, ...]:
    """Return what counts keep to of the ranges that are not promised, but liked."""
    even = even_ranges(table, LIKED)
    return tuple(
        replace(span, least=min(span.least, had.least), most=max(span.most, had.most))
        for span, had in zip(even, _reached(even, counts), strict=True)
    )


def _widest(ranges: Sequence[Range]) -> int:
    return max((span.width for span in ranges), default=0)


def _kept(limits: Sequence[Limit], counts: Counts) -> tuple[Range, ...]:
    return tuple(span for limit in limits for span in _reached(limit.ranges, counts))


def _refined(table: Table, coarse: Table, counts: Counts) -> Counts:
    """Return counts of a merged table as counts of the table itself, kind after kind."""
    index = {cell: number for number, cell in enumerate(coarse.cells)}
    wanted = [list(row) for row in counts]
    refined = [[0] * len(table.cells) for _ in counts]
    for number, cell in enumerate(table.cells):
        left, place = table.free[number], index[_without_kind(cell)]
        for row, want in zip(refined, wanted, strict=True):
            row[number] = min(left, want[place])
            want[place] -= row[number]
            left -= row[number]
    return tuple(map(tuple, refined))


def _in_turn(table: Table) -> Counts:
    """Deal the free items round the table, whatever the teams have: a deal to begin with."""
    teams = len(table.pinned)
    shares = [even_sizes(free, teams) for free in table.free]
    return tuple(tuple(share[team] for share in shares) for team in range(teams))
