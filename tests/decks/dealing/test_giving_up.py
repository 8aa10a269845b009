"""A solver that gives up costs fairness at most: the deal is whole, and claims nothing untrue."""

import random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support.small_deals import every_deal, pinned_decks, unfairness

from decks.dealing import solver
from decks.dealing.cells import GOALS
from decks.dealing.model import Model
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
