"""Intervals and expected shares against published figures.

Newcombe 1998, Statistics in Medicine 17, 857-872, Table I (method 3 is Wilson's); Gelman et al.,
Bayesian Data Analysis, section 5.1 (71 groups of rats, Tarone 1982).
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats
from support.tables import table

from decks.marks.estimate import Belief, after
from decks.marks.interval import wilson

NEWCOMBE = table("wilson_newcombe_1998.csv")


@pytest.mark.parametrize("row", NEWCOMBE, ids=lambda row: f"{row['x']}/{row['n']}")
def test_the_interval_of_a_share_is_the_published_one(row):
    low, high = wilson(int(row["x"]), int(row["n"]))
    assert low == pytest.approx(float(row["wilson_lo"]), abs=6e-5)
    assert high == pytest.approx(float(row["wilson_hi"]), abs=6e-5)


@given(st.integers(1, 400).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_the_interval_is_that_of_another_library(pair):
    right, tries = pair
    theirs = stats.binomtest(right, tries).proportion_ci(method="wilson")
    assert wilson(right, tries) == pytest.approx((theirs.low, theirs.high), abs=1e-9)


def test_nothing_tried_has_no_interval():
    assert wilson(0, 0) is None


@pytest.mark.parametrize("count", [(3, 2), (-1, 2)])
def test_more_right_than_tried_is_refused(count):
    with pytest.raises(ValueError, match=str(count[0])):
        wilson(*count)
    with pytest.raises(ValueError, match=str(count[0])):
        after(Belief(0.5, 4), *count)


def test_what_was_believed_before_shrinks_a_small_group_as_in_the_handbook():
    # 70 earlier groups of rats suggest a = 1.356, b = 8.615 there; the last is 4 of 14
    belief = Belief(1.356 / (1.356 + 8.615), 1.356 + 8.615)
    assert after(belief, 4, 14).mean == pytest.approx(0.2234, abs=6e-5)


@given(st.floats(0.05, 0.95), st.floats(1, 50), st.integers(0, 60), st.integers(0, 60))
def test_what_is_believed_after_marks_is_the_conjugate_posterior(mean, strength, right, wrong):
    """Beta(a + right, b + wrong), by scipy.stats.beta."""
    belief = after(Belief(mean, strength), right, right + wrong)
    theirs = stats.beta(mean * strength + right, (1 - mean) * strength + wrong)
    assert belief.mean == pytest.approx(theirs.mean(), rel=1e-9)
    assert stats.beta(belief.a, belief.b).std() == pytest.approx(theirs.std(), rel=1e-9)


@given(st.floats(0.05, 0.95), st.lists(st.tuples(st.integers(0, 9), st.integers(0, 9)), max_size=5))
def test_marks_may_come_in_any_order_and_in_any_portions(mean, portions):
    one_by_one = Belief(mean, 8)
    for right, wrong in portions:
        one_by_one = after(one_by_one, right, right + wrong)
    right = sum(right for right, _ in portions)
    at_once = after(Belief(mean, 8), right, right + sum(wrong for _, wrong in portions))
    assert one_by_one.mean == pytest.approx(at_once.mean)
    assert one_by_one.strength == at_once.strength
