"""The chance to win, against scipy's Poisson-binomial distribution and against every outcome.

scipy.stats.poisson_binom came with scipy 1.15; it evaluates the distribution by a Fourier
transform (Hong, "On computing the distribution function for the Poisson binomial distribution",
Computational Statistics & Data Analysis 59, 2013, 41-51; citation from memory), the code under
test by adding one card after another.
"""

from itertools import product
from math import prod

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import card

from decks.dealing.chance import chance_to_win, points_distribution

stats = pytest.importorskip("scipy.stats")

SHARES = st.floats(0, 1)
HANDS = st.lists(st.lists(SHARES, max_size=4), min_size=1, max_size=3)


def chances(hands):
    """Return the chances of hands whose cards have the given shares."""
    cards = [[card(1000 * n + k) for k in range(len(hand))] for n, hand in enumerate(hands)]
    share = {
        one.prompt: share
        for dealt, hand in zip(cards, hands, strict=True)
        for one, share in zip(dealt, hand, strict=True)
    }
    return chance_to_win(cards, lambda item: share[item.prompt])


@settings(deadline=None, max_examples=50)
@given(st.lists(SHARES, min_size=1, max_size=60))
def test_points_are_distributed_as_scipy_has_it(shares):
    theirs = stats.poisson_binom(shares).pmf(range(len(shares) + 1))
    assert list(points_distribution(shares, len(shares))) == pytest.approx(list(theirs), abs=1e-12)


@pytest.mark.parametrize("sizes", [(60, 60, 60, 60), (30, 29, 29), (60,) * 12])
def test_the_chance_of_a_full_deck_is_what_scipys_distribution_gives(sizes):
    hands = [[0.9 - 0.01 * ((n * k) % 30) for k in range(size)] for n, size in enumerate(sizes)]
    expected = [by_scipy(hands, team) for team in range(len(hands))]
    assert chances(hands) == pytest.approx(expected, abs=1e-9)


def by_scipy(hands, team):
    """Sum over scores; a tie among n is 1/n, which is the integral of z to the n - 1 over 0 to 1.

    Gauss and Legendre's rule with eight nodes is exact for it up to sixteen teams.
    """
    np = pytest.importorskip("numpy")
    nodes, weights = np.polynomial.legendre.leggauss(8)
    score = np.arange(max(map(len, hands)) + 1)
    laws = [stats.poisson_binom(hand) for hand in hands]
    total = 0.0
    for node, weight in zip((nodes + 1) / 2, weights / 2, strict=True):
        others = prod(
            law.cdf(score - 1) + node * law.pmf(score) for n, law in enumerate(laws) if n != team
        )
        total += weight * float((laws[team].pmf(score) * others).sum())
    return total


@settings(deadline=None, max_examples=40)
@given(HANDS)
def test_the_chances_of_a_small_deck_are_those_of_all_its_outcomes(hands):
    assert chances(hands) == pytest.approx(by_every_outcome(hands), abs=1e-12)


def by_every_outcome(hands):
    cards = [(team, share) for team, hand in enumerate(hands) for share in hand]
    won = [0.0] * len(hands)
    for outcome in product((False, True), repeat=len(cards)):
        points = [0] * len(hands)
        chance = 1.0
        for (team, share), right in zip(cards, outcome, strict=True):
            points[team] += right
            chance *= share if right else 1 - share
        first = [team for team, have in enumerate(points) if have == max(points)]
        for team in first:
            won[team] += chance / len(first)
    return won


@settings(deadline=None, max_examples=50)
@given(HANDS, st.randoms(use_true_random=False))
def test_teams_that_change_places_take_their_chances_along(hands, rng):
    order = list(range(len(hands)))
    rng.shuffle(order)
    before, after = chances(hands), chances([hands[n] for n in order])
    assert after == pytest.approx([before[n] for n in order], abs=1e-12)
    assert sum(before) == pytest.approx(1)


@pytest.mark.parametrize("teams", [1, 2, 5, 12])
def test_equal_hands_have_equal_chances(teams):
    assert chances([[0.9, 0.6, 0.75]] * teams) == pytest.approx([1 / teams] * teams)


def test_of_two_hands_alike_the_smaller_has_the_smaller_chance():
    larger, smaller = chances([[0.75] * 9, [0.75] * 8])
    assert larger > 0.5 > smaller
