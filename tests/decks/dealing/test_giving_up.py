"""Giving up costs fairness at most: the deal is whole, and claims nothing that is untrue."""

import random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck, every_deal, pinned_decks, unfairness

from decks.dealing import evening, exhausting, solver
from decks.dealing.cells import GOALS
from decks.dealing.model import Model
from decks.dealing.placing import place
from decks.dealing.stages import fairest


@pytest.fixture
def giving_up(monkeypatch):
    """Let the solver look at no node of its tree, and settle nothing before that."""
    options = (*solver.OPTIONS, ("presolve", "off"), ("mip_max_nodes", 0))
    monkeypatch.setattr(solver, "OPTIONS", options)


@pytest.mark.usefixtures("giving_up")
@settings(deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(pinned_decks(), st.integers(0, 9))
def test_the_deal_is_whole_and_no_deal_goes_below_its_bounds(deck, seed):
    assert solver.solve(Model(deck.table, []).program).values is None
    found = fairest(deck.table, random.Random(seed))
    owners = deck.owners(found.counts)
    every = [unfairness(deck, deal) for deal in every_deal(deck)]
    reached = unfairness(deck, owners)
    for n, (goal, limit) in enumerate(zip(GOALS, found.limits, strict=True)):
        assert found.bounds[goal] <= min(deal[n][0] for deal in every)
        largest, total = reached[n]
        if limit.largest is None:
            assert largest == found.bounds[goal]
        else:
            assert largest <= limit.largest
            assert total <= limit.total


@pytest.mark.parametrize("seed", range(5))
def test_a_search_that_is_given_up_proves_nothing(monkeypatch, seed):
    monkeypatch.setattr(exhausting, "_STEPS", 0)
    monkeypatch.setattr(evening, "_EFFORT", 0)
    monkeypatch.setattr(evening, "_EFFORT_PER_CARD", 0)
    rows = [Row(f"word {n}", points=points) for n, points in enumerate((1, 2, 4, 8, 16, 32, 64, 9))]
    deck = SmallDeck(2, rows, (0, 0, 0, 0, 1, 1, 1, 1))
    rng = random.Random(seed)
    found = place(deck.stock, deck.table, fairest(deck.table, rng), rng)
    assert found.owners in deck.deals()
    assert found.bound <= min(map(deck.standing, deck.deals())) < deck.standing(found.owners)
