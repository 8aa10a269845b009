"""What the solver finds is the least of all deals: small decks are dealt in every way there is."""

import random
from copy import copy
from math import isclose

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from support.small_deals import Row, SmallDeck, differences, most_and_least

from decks.dealing.cells import GOALS
from decks.dealing.even import even_ranges
from decks.dealing.model import Model
from decks.dealing.solving import solve

LOT = random.Random(1)
BY_LEVEL = {1: 9, 2: 5, 3: 2}


def spread(deck, owners):
    return deck.standing(owners)[0]


def solved(deck, model):
    """Return the owners of a deal that the solver finds, and its bound on the cost."""
    outcome = solve(model.program)
    owners = deck.owners(model.counts(outcome.values))
    assert deck.keeps(owners)
    return owners, outcome.bound


@st.composite
def decks(draw):
    """Draw a few cards that weigh by level, some of them set to teams, and limits on a deal."""
    teams = draw(st.integers(2, 3))
    homes = st.sampled_from([None, None, *range(teams)])
    card = st.tuples(st.integers(1, 3), st.sampled_from("abc"), homes)
    rows = [
        Row(f"word {n}", level, topic, BY_LEVEL[level], 0, home)
        for n, (level, topic, home) in enumerate(draw(st.lists(card, min_size=1, max_size=6)))
    ]
    known = tuple(draw(st.integers(0, teams - 1)) if r.home is None else r.home for r in rows)
    return SmallDeck(teams, rows, known, draw(st.sets(st.sampled_from(("level", "topic")))))


def loosened(deck):
    """Return the deck with more room for the teams to differ, where there was some."""
    more = copy(deck)
    more.limits = [
        limit
        if limit.largest is None
        else replace(limit, largest=limit.largest + 1, total=limit.total + 2)
        for limit in deck.limits
    ]
    return more


@settings(deadline=None, max_examples=60)
@given(decks(), st.sampled_from(["level", "topic"]))
def test_the_largest_difference_and_then_their_sum_are_the_least_there_are(deck, goal):
    ranges = even_ranges(deck.table, [GOALS[goal]])
    every = [differences(deck, owners, goal) for owners in deck.deals()]
    model = Model(deck.table, deck.limits)
    model.minimise_largest(ranges)
    owners, bound = solved(deck, model)
    largest = max(differences(deck, owners, goal))
    assert largest == min(map(max, every))
    assert isclose(bound, largest, abs_tol=1e-6)

    model = Model(deck.table, deck.limits)
    model.minimise_total(ranges, largest)
    owners, bound = solved(deck, model)
    total = min(sum(apart) for apart in every if max(apart) == largest)
    assert max(differences(deck, owners, goal)) == largest
    assert sum(differences(deck, owners, goal)) == total
    assert isclose(bound, total, abs_tol=1e-6)


@settings(deadline=None, max_examples=60)
@given(decks())
def test_the_difference_between_the_heaviest_and_the_lightest_hand_is_the_least_there_is(deck):
    model = Model(deck.table, deck.limits)
    model.minimise_spread([BY_LEVEL[cell.level] for cell in deck.table.cells])
    owners, bound = solved(deck, model)
    assert spread(deck, owners) == min(spread(deck, owners) for owners in deck.deals())
    assert isclose(bound, spread(deck, owners), abs_tol=1e-6)


@pytest.mark.parametrize(("largest", "total"), [(1, 2), (2, 1)])
def test_no_evener_points_are_had_by_what_a_limit_forbids(largest, total):
    # 2 + 2 + 2 + 4, 2 + 8 and 2 + 8 weigh the same, but one team has two “a” more than another
    rows = [Row(f"word {n}", 1, "a", 2) for n in range(5)]
    rows += [Row("last", level, "b", weight) for level, weight in ((1, 8), (2, 8), (3, 4))]
    deck = SmallDeck(3, rows, (0, 0, 0, 1, 2, 1, 2, 0), {"topic"})
    cards, _level, topic = deck.limits
    deck.limits = [cards, replace(topic, largest=largest, total=total)]
    model = Model(deck.table, deck.limits)
    model.minimise_spread([2, 8, 8, 4])
    owners, bound = solved(deck, model)
    assert spread(deck, owners) == min(map(deck.standing, deck.deals()))[0] > 0
    assert isclose(bound, spread(deck, owners), abs_tol=1e-6)


# four cards to three teams: 2, 1 and 1 come before 2, 2 and 0
@example(SmallDeck(3, [Row(f"word {n}") for n in range(4)], (0, 0, 0, 1), {"level"}), LOT)
@settings(deadline=None, max_examples=100)
@given(decks(), st.randoms(use_true_random=False))
def test_where_teams_may_differ_no_value_differs_more_than_the_others_make_it(deck, rng):
    deck = loosened(deck)
    open_goals = [n for n, limit in enumerate(deck.limits) if limit.largest is not None]

    def ends(owners):
        """Return numbers that are the smaller the less the teams differ in each value."""
        for n in open_goals:
            for most, least in most_and_least(deck, owners, ("cards", "level", "topic")[n]):
                yield from (most, -least)

    model = Model(deck.table, deck.limits)
    model.minimise_by_lot(rng)
    owners, _bound = solved(deck, model)
    found = list(ends(owners))
    for other in map(list, map(ends, deck.deals())):
        assert other == found or any(b > a for a, b in zip(found, other, strict=True))
