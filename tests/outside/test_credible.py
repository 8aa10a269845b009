"""The interval of an expected share against another library: scipy.stats.beta."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from decks.marks.credible import beta_cdf, credible
from decks.marks.estimate import Belief


@given(st.floats(0.01, 0.99), st.floats(0.5, 5000), st.sampled_from([0.5, 0.8, 0.95, 0.99]))
def test_the_interval_is_that_of_another_library(mean, strength, level):
    belief = Belief(mean, strength)
    theirs = stats.beta(belief.a, belief.b).interval(level)
    assert credible(belief, level) == pytest.approx(theirs, abs=1e-8)


@given(st.floats(0, 1), st.floats(0.1, 900), st.floats(0.1, 900))
def test_the_distribution_is_that_of_another_library(x, a, b):
    assert beta_cdf(x, a, b) == pytest.approx(stats.beta.cdf(x, a, b), abs=1e-9)


def test_with_nothing_known_the_interval_is_in_proportion():
    """Beta(1, 1) is uniform: its quantiles are the probabilities themselves."""
    assert credible(Belief(0.5, 2)) == pytest.approx((0.025, 0.975))


@pytest.mark.parametrize("belief", [Belief(1, 8), Belief(0, 8), Belief(0.5, 0)])
def test_where_there_is_no_doubt_or_no_belief_there_is_no_interval(belief):
    assert credible(belief) is None
