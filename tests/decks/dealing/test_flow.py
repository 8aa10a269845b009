"""A flow finds the hand that the solver finds."""

from hypothesis import given, settings
from hypothesis import strategies as st

from decks.dealing.cells import GOALS, LIKED, Cell, Table
from decks.dealing.even import even_ranges
from decks.dealing.flow import cheapest
from decks.dealing.nests import two_nests
from decks.dealing.program import Program
from decks.dealing.solving import solve

LEVELS_AND_TOPICS = [Cell(level, topic, 0) for level in (1, 2, 3) for topic in ("", "ebb", "flood")]


def solved(spans, groups, have, cost):
    """Return what HiGHS finds."""
    program = Program()
    for most, weight in zip(have, cost, strict=True):
        program.column(0, most, cost=weight)
    for (least, most), group in zip(spans, groups, strict=True):
        program.row(least, most, [(cell, 1) for cell in group])
    return solve(program).values


def spent(hand, cost):
    return None if hand is None else sum(map(lambda n, each: n * each, hand, cost))


@settings(max_examples=30, deadline=None)
@given(st.lists(st.integers(0, 9), min_size=9, max_size=9), st.integers(2, 5), st.randoms())
def test_the_cheapest_hand_costs_what_the_solver_says(free, teams, rng):
    table = Table(tuple(sorted(LEVELS_AND_TOPICS)), tuple(free), ((0,) * 9,) * teams)
    ranges = even_ranges(table, [*GOALS.values(), *LIKED])
    groups = [span.group for span in ranges]
    spans = [(max(0, span.least - rng.randrange(2)), span.most) for span in ranges]
    cost = [rng.randrange(100) for _ in free]
    hand = cheapest(two_nests(groups, 9), spans, free, cost)
    assert spent(hand, cost) == spent(solved(spans, groups, free, cost), cost)


def test_there_is_no_hand_where_a_group_needs_more_than_there_is():
    nests = two_nests([(0, 1), (0,)], 2)
    assert cheapest(nests, [(0, 2), (2, 2)], [1, 5], [1, 1]) is None
    assert cheapest(nests, [(3, 2), (0, 1)], [1, 5], [1, 1]) is None


def test_groups_that_overlap_three_ways_are_no_flow():
    cells = [Cell(level, topic, kind) for level in (1, 2) for topic in "ab" for kind in (0, 1)]
    table = Table(tuple(sorted(cells)), (1,) * 8, ((0,) * 8,) * 2)
    groups = [span.group for span in even_ranges(table, GOALS.values())]
    assert two_nests(groups, 8) is None


def test_a_deal_of_one_kind_needs_no_solver():
    cells = tuple(sorted(LEVELS_AND_TOPICS))
    table = Table(cells, (7,) * 9, ((0,) * 9,) * 4)
    groups = [span.group for span in even_ranges(table, [*GOALS.values(), *LIKED])]
    assert two_nests(groups, 9) is not None
