"""Exchanges between two teams that leave every count of cards where it is, or within its fence.

They come from the cheap and plentiful to the dear: one card for one of the same cell, two such
exchanges at once, one card for one of another cell (or for none), two or three for as many.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import combinations, islice, product, repeat
from math import comb
from typing import NamedTuple

from decks.dealing.holding import Exchange, Holding, Room
from decks.dealing.stock import Load

_ALIKE = 40
_ENOUGH = 2_000
_TWICE = 70
_UNLIKE = 4
_LOOKS = 16
_NOTHING = -1  # no cell: a card is given for none
_SETS = 3_000
_MATCHES = 40


class Candidate(NamedTuple):
    """An exchange, and what the giving team loses of each load by it."""

    lost: tuple[int, int]
    what: Exchange


Source = Callable[[Holding, int, int], Iterator[Candidate | None]]


def alike(holding: Holding, one: int, other: int) -> Iterator[Candidate]:
    """Yield exchanges of one card for one of the same cell, if not all in a large deck."""
    return islice(_alike(holding, one, other), _ENOUGH)


def _alike(holding: Holding, one: int, other: int) -> Iterator[Candidate]:
    for cell, mine in holding.free[one].items():
        theirs = holding.free[other].get(cell)
        if mine and theirs:
            yield from _each(holding, mine[:_ALIKE], theirs[:_ALIKE])


def twice_alike(holding: Holding, one: int, other: int) -> Iterator[Candidate]:
    """Yield two exchanges of like cards at once."""
    few = list(alike(holding, one, other))
    step = max(1, len(few) // _TWICE)
    for first, second in combinations(few[::step], 2):
        given = first.what[0] + second.what[0]
        taken = first.what[1] + second.what[1]
        if given[0] != given[1] and taken[0] != taken[1]:
            points, reading = (a + b for a, b in zip(first.lost, second.lost, strict=True))
            yield Candidate((points, reading), (given, taken))


def unlike(holding: Holding, one: int, other: int) -> Iterator[Candidate | None]:
    """Yield exchanges of a card for one of another cell or for none, within the fence.

    Every few pairs of cells that are looked at, None is yielded: looking has its price too.
    """
    finder = _Finder(holding, one, other)
    for cell, given in [*_cells(holding, one).items(), (_NOTHING, [])]:
        yield from finder.exchanges(cell, given[:_UNLIKE])


def of_item(holding: Holding, item: int, other: int) -> Iterator[Candidate | None]:
    """Yield exchanges of one item with another team: for a like card first."""
    cell, one = holding.stock.cells[item], holding.owners[item]
    theirs = holding.free[other].get(cell)
    if theirs:
        yield from _each(holding, [item], theirs[:_ALIKE])
    yield from _Finder(holding, one, other).exchanges(cell, [item])


class _Finder:
    """Finds what one team may take of another for a card of a given cell."""

    def __init__(self, holding: Holding, one: int, other: int) -> None:
        self._holding = holding
        self._mask = [*holding.fence.mask, 0]
        self._covers = [*holding.fence.covers, ()]
        self._stuck_out, self._stuck_in = _stuck(holding, one, other), _stuck(holding, other, one)
        self._theirs = _cells(holding, other)
        self._theirs[_NOTHING] = []
        self._by_span: dict[int, list[int]] = {}
        for cell in self._theirs:
            for span in self._covers[cell]:
                self._by_span.setdefault(span, []).append(cell)

    def exchanges(self, cell: int, given: Sequence[int]) -> Iterator[Candidate | None]:
        """Yield the exchanges of cards of a cell, or of none, for one of another cell."""
        cells = self._cells_for(cell)
        yield from repeat(None, 1 + len(cells) // _LOOKS)
        for match in cells:
            if cell != match and self._keeps_fence(self._mask[cell], self._mask[match]):
                yield from _each(self._holding, given, self._theirs[match][:_UNLIKE])

    def _keeps_fence(self, out: int, into: int) -> bool:
        return not (out & ~into & self._stuck_out or into & ~out & self._stuck_in)

    def _cells_for(self, cell: int) -> list[int]:
        """Return the cells that count for the scarcest span that cannot do with one card less."""
        spans = [span for span in self._covers[cell] if self._stuck_out >> span & 1]
        found = (self._by_span.get(span, []) for span in spans)
        return min(found, key=len, default=list(self._theirs))


def several(holding: Holding, one: int, other: int) -> Iterator[Candidate]:
    """Yield exchanges of two or three cards that count for the same spans in all."""
    for size in (2, 3):
        mine, theirs = _sets(holding, one, size), _sets(holding, other, size)
        for sign, given in mine.items():
            taken = theirs.get(sign, [])
            for (lost, out), (won, into) in product(given[:_MATCHES], taken[:_MATCHES]):
                yield Candidate((lost[0] - won[0], lost[1] - won[1]), (out, into))


SOURCES: tuple[Source, ...] = (alike, twice_alike, unlike, several)


def _each(holding: Holding, mine: Sequence[int], theirs: Sequence[int]) -> Iterator[Candidate]:
    """Yield every exchange of one for one; where a side is empty, of one for none."""
    loads = holding.stock.loads
    taken = _weighed(loads, theirs)
    for p, r, out in _weighed(loads, mine):
        for q, s, into in taken:
            yield Candidate((p - q, r - s), (out, into))


def _weighed(
    loads: tuple[Load, Load], items: Sequence[int]
) -> list[tuple[int, int, tuple[int, ...]]]:
    points, reading = loads
    return [(points[item], reading[item], (item,)) for item in items] or [(0, 0, ())]


def _cells(holding: Holding, team: int) -> dict[int, list[int]]:
    return {cell: items for cell, items in holding.free[team].items() if items}


def _stuck(holding: Holding, giver: int, taker: int) -> int:
    """Return, as bits, the spans of which no card may pass from one team to the other."""
    least, most = holding.fence.least, holding.fence.most
    gives, takes = holding.held[giver], holding.held[taker]
    return sum(
        1 << span
        for span in range(len(least))
        if gives[span] <= least[span] or takes[span] >= most[span]
    )


_Sets = dict[int, list[tuple[tuple[int, int], tuple[int, ...]]]]


def _sets(holding: Holding, team: int, size: int) -> _Sets:
    """Return the sets of items of a hand (loads, items) by what they count for; none if many."""
    items = [item for cell in _cells(holding, team).values() for item in cell]
    found: _Sets = {}
    if comb(len(items), size) > _SETS:
        return found
    (points, reading), cells = holding.stock.loads, holding.stock.cells
    covers = holding.fence.covers
    signs = {item: sum(1 << 2 * span for span in covers[cells[item]]) for item in items}
    for chosen in combinations(items, size):
        sign = sum(signs[item] for item in chosen)
        weight = sum(points[item] for item in chosen), sum(reading[item] for item in chosen)
        found.setdefault(sign, []).append((weight, chosen))
    return found


def within(candidates: Iterable[Candidate], rooms: Sequence[Room]) -> Iterator[Candidate]:
    """Yield the candidates that lose of each load what there is room for."""
    (fewest, most), (least, longest) = rooms
    for candidate in candidates:
        points, reading = candidate.lost
        if fewest <= points <= most and least <= reading <= longest:
            yield candidate
