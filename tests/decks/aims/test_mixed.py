"""Mixed: older items come back among new ones, the longest unseen first."""

import pytest
from strategies import TOPICS, card
from support.classes import history, recipe

from decks.aims import plan_next
from decks.aims.telling import gap_advice
from decks.recipe import Aim

UNIT = [card(n, 1 + n % 3, TOPICS[n % 4]) for n in range(72)]
FIRST, SECOND = UNIT[:24], UNIT[24:48]


def plan_for(decks, marks=(), **choices):
    past = history(decks, dict(marks))
    return plan_next(recipe(Aim.MIXED, cards=20, **choices), UNIT, past, seed="s")


def test_about_the_asked_share_comes_back():
    assert len(plan_for([FIRST]).again) == 6  # 30 % of 20
    assert len(plan_for([FIRST], seen_before=50).again) == 10


def test_those_come_back_that_were_longest_unseen():
    plan = plan_for([FIRST, SECOND])
    assert set(plan.again) <= set(FIRST)
    assert set(plan.new) <= set(UNIT[48:])


def test_missed_items_are_always_among_them():
    plan = plan_for([FIRST, SECOND], {SECOND[0]: [(2, 1, 4)], SECOND[5]: [(2, 0, 4)]})
    assert set(plan.due) == {SECOND[0], SECOND[5]}
    assert len(plan.due) + len(plan.again) == 6


def test_where_nothing_is_new_all_that_is_there_comes_back():
    past = history([FIRST, SECOND], {})
    plan = plan_next(recipe(Aim.MIXED, cards=30), UNIT[:48], past, seed="s")
    assert len(plan.choice.items) == 30
    assert set(FIRST) <= set(plan.choice.items)
    assert any("have been seen before" in line for line in plan.sentences)


def test_the_gap_is_two_to_four_days_for_a_test_in_ten():
    # from Cepeda et al. 2008
    assert "2 to 4 days" in gap_advice(10)
    assert "two to four days" in gap_advice(None)


@pytest.mark.parametrize("days", [1, 2, 3, 60])
def test_a_gap_is_a_day_at_least_and_scaled_gaps_say_so(days):
    assert "0 day" not in gap_advice(days).replace(f"{days} day", "")
    assert "scaled" in gap_advice(days)


def test_an_aim_draws_the_same_deck_from_the_same_seed_only():
    past = history([FIRST], {})
    drawn = {
        seed: plan_next(recipe(Aim.MIXED, cards=20), UNIT, past, seed=seed).choice.items
        for seed in "abcdef"
    }
    assert len(set(drawn.values())) > 3
    again = plan_next(recipe(Aim.MIXED, cards=20), UNIT, past, seed="a").choice.items
    assert again == drawn["a"]
