"""The cheapest flow through two nests of groups: a hand drawn without the solver.

Cards flow from the groups of one nest, largest first, through the cells to the groups of the
other. Where every bound is on a group of one nest or the other, the cheapest hand in whole numbers
is a cheapest flow, found path by path (Jewell 1958; Busacker and Gowen 1961).
"""

from collections import deque
from collections.abc import Sequence

from msgspec import Struct, field

from decks.dealing.nests import ROOT, Nests

Span = tuple[int, int]
"""The least and the most that a group may hold."""

_NEEDED = -(10**12)
"""What a card costs that a group needs: every need is met before any cost counts."""
_NO_WAY = 10**18


def cheapest(
    nests: Nests, spans: Sequence[Span], have: Sequence[int], cost: Sequence[int]
) -> tuple[int, ...] | None:
    """Return how many cards to take of each cell, at the least cost, or None if none will do.

    `spans[group]` bounds the cards of a group, `have[cell]` those of a cell; costs are not below
    nought, and in all less than a need counts for.
    """
    if any(least > most for least, most in spans):
        return None
    network = _Network([[] for _ in range(2 * len(spans) + 2)])
    near, far = nests
    for group, parent in near.parents.items():
        network.bounded(_near(parent), _near(group), spans[group])
    for group, parent in far.parents.items():
        network.bounded(_far(group), _far(parent), spans[group])
    arcs = [
        network.arc(_near(near.deepest[cell]), _far(far.deepest[cell]), most, cost[cell])
        for cell, most in enumerate(have)
    ]
    network.fill(_near(ROOT), _far(ROOT))
    return tuple(network.room[arc + 1] for arc in arcs) if network.needs_are_met() else None


def _near(group: int) -> int:
    return 2 * (group + 1)


def _far(group: int) -> int:
    return 2 * (group + 1) + 1


class _Network(Struct):
    """Nodes, and arcs by their numbers; the arc after an even one leads back over it."""

    leaving: list[list[int]]
    ends: list[int] = field(default_factory=list)
    room: list[int] = field(default_factory=list)
    cost: list[int] = field(default_factory=list)
    needs: list[int] = field(default_factory=list)

    def arc(self, start: int, end: int, room: int, cost: int) -> int:
        """Add an arc and return its number."""
        number = len(self.ends)
        self.ends += (end, start)
        self.room += (max(0, room), 0)
        self.cost += (cost, -cost)
        self.leaving[start].append(number)
        self.leaving[end].append(number + 1)
        return number

    def bounded(self, start: int, end: int, span: Span) -> None:
        """Add an arc that is to carry a least and may carry a most."""
        least, most = max(0, span[0]), max(0, span[1])
        if least:
            self.needs.append(self.arc(start, end, least, _NEEDED))
        self.arc(start, end, most - least, 0)

    def needs_are_met(self) -> bool:
        """Say whether every arc carries its least."""
        return not any(self.room[need] for need in self.needs)

    def fill(self, source: int, sink: int) -> None:
        """Send what can be sent, path by path, as long as that makes the flow cheaper."""
        while way := self._way(source, sink):
            sent = min(self.room[arc] for arc in way)
            for arc in way:
                self.room[arc] -= sent
                self.room[arc ^ 1] += sent

    def _way(self, source: int, sink: int) -> list[int]:
        """Return the arcs of the cheapest path, from its end; none if it would cost anything."""
        least, last = self._paths(source)
        way: list[int] = []
        node = sink
        while least[sink] < 0 and node != source:
            way.append(last[node])
            node = self.ends[last[node] ^ 1]
        return way

    def _paths(self, source: int) -> tuple[list[int], list[int]]:
        """Return the cost of the cheapest path to each node, and its last arc (Bellman, Ford)."""
        nodes = len(self.leaving)
        least, last = [_NO_WAY] * nodes, [0] * nodes
        least[source] = 0
        line, waiting = deque([source]), [False] * nodes
        while line:
            node = line.popleft()
            waiting[node] = False
            for arc in self.leaving[node]:
                end, cost = self.ends[arc], least[node] + self.cost[arc]
                if self.room[arc] and cost < least[end]:
                    least[end], last[end] = cost, arc
                    if not waiting[end]:
                        waiting[end] = True
                        line.append(end)
        return least, last
