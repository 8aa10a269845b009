"""Decks so small that every deal of them can be looked at, and counted without the code."""

from itertools import combinations, product
from typing import NamedTuple

from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import card

from cards.item import Kind
from decks.dealing.cells import GOALS, table_of
from decks.dealing.even import even_range
from decks.dealing.holding import Holding
from decks.dealing.model import Limit
from decks.dealing.stock import fence_of, stock_of

KINDS = tuple(Kind)


class Row(NamedTuple):
    """An item; those of equal answers are rivals, and `home` is the team that it is set to."""

    answer: str
    level: int = 1
    topic: str = "Tides"
    points: int = 0
    words: int = 0
    home: int | None = None
    kind: int = 0


class SmallDeck:
    """A few items, and limits that are as strict as a known deal of them allows.

    The limits are on the cards of every team, or for the goals `apart` on how far teams differ.
    """

    def __init__(self, teams, rows, known, apart=()):
        self.teams, self.rows, self.known = teams, rows, known
        self.homes = [row.home for row in rows]
        items = [
            card(n, row.level, row.topic, KINDS[row.kind], answer=row.answer)
            for n, row in enumerate(rows)
        ]
        self.table = table_of(items, self.homes, teams)
        loads = tuple(row.points for row in rows), tuple(row.words for row in rows)
        self.stock = stock_of(items, self.homes, self.table, loads)
        self.limits = [
            self._apart(name) if name in apart else self._within(name)
            for name in ("cards", "level", "topic")
        ]

    def holding(self):
        """Return the hands of the known deal, within a fence round what its teams have."""
        spans = [span for limit in self.limits for span in limit.ranges]
        return Holding(self.stock, self.known, fence_of(spans, len(self.table.cells)))

    def deals(self):
        """Return every deal within the limits."""
        homes = [range(self.teams) if home is None else [home] for home in self.homes]
        return [owners for owners in product(*homes) if self.keeps(owners)]

    def keeps(self, owners):
        """Say whether a deal is within the limits."""
        return all(self._kept(owners))

    def owners(self, counts):
        """Return the owners of a deal, from how many free items of each cell each team gets."""
        teams = [
            [team for team, count in enumerate(column) for _ in range(count)]
            for column in zip(*counts, strict=True)
        ]
        owners = tuple(
            teams[cell].pop() if home is None else home
            for cell, home in zip(self.stock.cells, self.homes, strict=True)
        )
        assert not any(teams)
        return owners

    def standing(self, owners):
        """Count the differences in points and in words, and the pairs of rivals in one hand."""
        hands = [
            [row for row, owner in zip(self.rows, owners, strict=True) if owner == team]
            for team in range(self.teams)
        ]
        points = [sum(row.points for row in hand) for hand in hands]
        words = [sum(row.words for row in hand) for hand in hands]
        rivals = sum(a.answer == b.answer for hand in hands for a, b in combinations(hand, 2))
        return max(points) - min(points), max(words) - min(words), rivals

    def _within(self, name):
        return Limit(
            tuple(
                replace(span, least=min(held), most=max(held))
                for span, held in self._held(self._spans(name), self.known)
            )
        )

    def _apart(self, name):
        spans = self._spans(name)
        apart = [max(held) - min(held) for _span, held in self._held(spans, self.known)]
        return Limit(spans, max(apart), sum(apart))

    def _spans(self, name):
        return tuple(even_range(self.table, group) for group in self.table.groups(GOALS[name]))

    def _held(self, spans, owners):
        """Yield for each span the cards of every team."""
        for span in spans:
            cells = zip(self.stock.cells, owners, strict=True)
            mine = [owner for cell, owner in cells if cell in span.group]
            yield span, [mine.count(team) for team in range(self.teams)]

    def _kept(self, owners):
        for limit in self.limits:
            spans = list(self._held(limit.ranges, owners))
            if limit.largest is None:
                yield all(span.least <= min(row) and max(row) <= span.most for span, row in spans)
            else:
                apart = [max(row) - min(row) for _span, row in spans]
                yield max(apart) <= limit.largest
                yield sum(apart) <= limit.total


def most_and_least(deck, owners, attribute):
    """Return what any team has at the most, and at the least, of each value of an attribute."""
    values = [getattr(row, attribute) for row in deck.rows]
    for value in sorted(set(values)):
        mine = [owner for v, owner in zip(values, owners, strict=True) if v == value]
        held = [mine.count(team) for team in range(deck.teams)]
        yield max(held), min(held)


def differences(deck, owners, attribute):
    """Return how far the teams differ in their cards of each value of an attribute."""
    return [most - least for most, least in most_and_least(deck, owners, attribute)]


def unfairness(deck, owners):
    """Return for each goal the largest difference and the sum of the differences."""
    sizes = [owners.count(team) for team in range(deck.teams)]
    counts = [differences(deck, owners, goal) for goal in ("level", "topic", "kind")]
    return [(max(apart), sum(apart)) for apart in ([max(sizes) - min(sizes)], *counts)]


def every_deal(deck):
    """Yield the owners of every deal that leaves the cards of teams where they are."""
    return product(*[range(deck.teams) if home is None else [home] for home in deck.homes])


@st.composite
def pinned_decks(draw):
    """Draw a few cards with much in common, many of them set to teams."""
    teams = draw(st.integers(2, 3))
    homes = st.sampled_from([None, None, *range(teams)])
    levels, topics, kinds = st.integers(1, 2), st.sampled_from("ab"), st.integers(0, 2)
    row = st.tuples(levels, topics, homes, kinds)
    rows = [
        Row(f"word {n}", level, topic, home=home, kind=kind)
        for n, (level, topic, home, kind) in enumerate(
            draw(st.lists(row, min_size=1, max_size=7 if teams == 2 else 6))
        )
    ]
    return SmallDeck(teams, rows, tuple(row.home or 0 for row in rows))
