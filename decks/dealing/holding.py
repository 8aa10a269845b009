"""Who holds what, and what follows from it; the one thing in dealing that changes."""

from collections.abc import Sequence

from decks.dealing.rivals import NO_RIVALS, Meeting
from decks.dealing.stock import Fence, Stock

Standing = tuple[int, ...]  # the spread of every load, then the number of clashes
Room = tuple[int, int]  # the least and the most of a load that may pass
NOBODY = -1
Exchange = tuple[tuple[int, ...], tuple[int, ...]]  # items given by one team, items taken


class Holding:
    """The hands of all teams, by number of item, within a fence.

    `sums[k][team]` is the team's load k, `held[team][span]` its cards of a span of the fence,
    `free[team][cell]` its items that are not pinned, and `clashes` the number of pairs of rivals
    in one hand. All of them are kept up with every exchange.
    """

    __slots__ = ("_meetings", "clashes", "fence", "free", "held", "owners", "stock", "sums")

    def __init__(self, stock: Stock, owners: Sequence[int], fence: Fence) -> None:
        self.stock = stock
        self.restore(owners, fence)

    def restore(self, owners: Sequence[int], fence: Fence) -> None:
        """Begin anew with other hands or another fence."""
        teams = range(self.stock.teams)
        self.fence = fence
        self.owners = [NOBODY] * len(owners)
        self.sums = [[0 for _ in teams] for _ in self.stock.loads]
        self.held = [[0] * len(fence.least) for _ in teams]
        self.free: list[dict[int, list[int]]] = [{} for _ in teams]
        self._meetings = [Meeting(self.stock.rivals) for _ in teams]
        self.clashes = 0
        for item, owner in enumerate(owners):
            if owner != NOBODY:
                self.give(item, owner)

    def spread(self, load: int) -> int:
        """Return the largest difference between two teams in a load."""
        return max(self.sums[load]) - min(self.sums[load])

    def standing(self) -> Standing:
        """Return how near to even the hands are: the smaller, the better."""
        return (*map(self.spread, range(len(self.sums))), self.clashes)

    def exchange(self, one: int, other: int, what: Exchange) -> None:
        """Let a team give items to another and take items for them."""
        given, taken = what
        for item in (*given, *taken):
            self.take(item)
        for item in given:
            self.give(item, other)
        for item in taken:
            self.give(item, one)

    def clashes_of(self, item: int) -> int:
        """Return how many rivals an item has in its hand."""
        if self.stock.rivals.answer[item] == NO_RIVALS:
            return 0
        return self._meetings[self.owners[item]].rivals_of(item)

    def room(self, load: int, one: int, other: int, most: int) -> Room:
        """Return the least and the most of a load that one team may lose to the other.

        No two teams then differ by more than `most`.
        """
        sums = self.sums[load]
        mine, theirs = sums[one], sums[other]
        rest = [have for team, have in enumerate(sums) if team not in (one, other)]
        # after the exchange the teams have mine - d and theirs + d, which differ by this much
        low, high = -((most - mine + theirs) // 2), (mine - theirs + most) // 2
        if rest:
            floor, roof = max(rest) - most, min(rest) + most
            low = max(low, mine - roof, floor - theirs)
            high = min(high, mine - floor, roof - theirs)
        return low, high

    def take(self, item: int) -> None:
        """Take an item out of its hand; it must be given before anything else is asked."""
        team = self.owners[item]
        if self.stock.rivals.answer[item] != NO_RIVALS:
            self.clashes -= self.clashes_of(item)
            self._meetings[team].add(item, -1)
        self._count(item, team, -1)
        if self.stock.homes[item] is None:
            self.free[team][self.stock.cells[item]].remove(item)

    def give(self, item: int, team: int) -> None:
        """Put an item that is in no hand into a team's."""
        self.owners[item] = team
        if self.stock.rivals.answer[item] != NO_RIVALS:
            self._meetings[team].add(item)
            self.clashes += self.clashes_of(item)
        self._count(item, team, 1)
        if self.stock.homes[item] is None:
            self.free[team].setdefault(self.stock.cells[item], []).append(item)

    def _count(self, item: int, team: int, by: int) -> None:
        cell = self.stock.cells[item]
        for span in self.fence.covers[cell]:
            self.held[team][span] += by
        for load, sums in zip(self.stock.loads, self.sums, strict=True):
            sums[team] += by * load[item]
