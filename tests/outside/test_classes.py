"""Simulated classes: a harder deck is as hard for the class as it was meant to be.

An item's true share is drawn from the Beta distribution that a level stands for (mean .90, .75 or
.60, counting for 8 tries), so that the posterior means are the right estimates (Gelman et al.,
Bayesian Data Analysis, chapter 2) and choosing by them must not lead away from the truth. What 28
papers or four teams get right is drawn from the true shares; all draws are seeded.
"""

import random
from statistics import fmean

import pytest
from strategies import TOPICS, card
from support.classes import history, recipe

from decks.aims import plan_next

CLASSES = 12
UNIT = [card(n, 1 + n % 3, TOPICS[n // 3 % 5]) for n in range(120)]


def true_shares(rng):
    return {
        item: rng.betavariate(8 * mean, 8 * (1 - mean))
        for item in UNIT
        for mean in [item.level.expected_share]
    }


def marked(items, shares, tries, rng, deck):
    """Return what a class gets right, by item."""
    return {
        item: [(deck, sum(rng.random() < shares[item] for _ in range(tries)), tries)]
        for item in items
    }


@pytest.mark.parametrize("tries", [28, 4], ids=["papers", "teams"])
@pytest.mark.parametrize("target", [75, 80])
def test_a_harder_deck_hits_its_target_in_the_telling_and_in_truth(tries, target):
    truths = []
    for number in range(CLASSES):
        rng = random.Random(f"class {number}")
        shares = true_shares(rng)
        first = UNIT[:40]
        past = history([first], marked(first, shares, tries, rng, 1))
        plan = plan_next(recipe(cards=40, target=target), UNIT, past, seed=str(number))
        told = fmean(map(plan.share, plan.choice.items))
        assert told == pytest.approx(target / 100, abs=0.02)
        assert plan.choice.share == pytest.approx(told)
        truths.append(fmean(shares[item] for item in plan.choice.items))
    # 12 classes of 40 cards whose shares deviate by .16 at most: a standard error below .01
    assert fmean(truths) == pytest.approx(target / 100, abs=0.02)


def test_what_comes_back_is_what_the_class_finds_hardest():
    rng = random.Random("hardest")
    shares = true_shares(rng)
    first = UNIT[:40]
    past = history([first], marked(first, shares, 28, rng, 1))
    plan = plan_next(recipe(cards=40), UNIT, past, seed="s")
    assert len(plan.due) >= 3
    left = [item for item in first if item not in plan.due]
    assert fmean(shares[i] for i in plan.due) < fmean(shares[i] for i in left) - 0.2
