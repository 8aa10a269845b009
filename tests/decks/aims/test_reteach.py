"""To reteach: all that was missed, among the easier items of the same topics."""

from collections import Counter

import pytest
from msgspec.structs import replace
from strategies import TOPICS, card
from support.classes import history, recipe

from cards.item import Level
from decks.aims import NothingToReteachError, plan_next
from decks.recipe import Aim, Support

UNIT = [card(n, 1 + n % 3, TOPICS[n % 4]) for n in range(72)]
FIRST = UNIT[:24]
MISSED = [UNIT[0], UNIT[4], UNIT[8], UNIT[12], UNIT[1], UNIT[5]]
"""Four of Tides, two of Zones."""

MARKS = {item: [(1, 24, 28)] for item in FIRST} | {item: [(1, 8, 28)] for item in MISSED}


def plan_for(marks=MARKS, unit=UNIT, **choices):
    return plan_next(recipe(Aim.RETEACH, **choices), unit, history([FIRST], marks), seed="s")


def test_all_missed_items_are_in_among_as_many_neighbours():
    plan = plan_for()
    assert set(plan.due) == set(MISSED)
    assert len(plan.choice.items) == 12
    # twelve cards in the proportion of four missed to two
    assert Counter(item.topic for item in plan.choice.items) == {"Tides": 8, "Zones": 4}


def test_neighbours_are_the_easiest_of_their_topics():
    plan = plan_for()
    neighbours = [item for item in plan.choice.items if item not in MISSED]
    left = [item for item in UNIT if item not in plan.choice.items]
    for topic in ("Tides", "Zones"):
        easiest = min(plan.share(item) for item in neighbours if item.topic == topic)
        assert easiest >= max(plan.share(i) for i in left if i.topic == topic)


def test_items_that_have_been_back_are_in_until_they_are_marked_right():
    decks = [FIRST, [*MISSED[:3], *UNIT[24:40]]]
    plan = plan_next(recipe(Aim.RETEACH), UNIT, history(decks, MARKS), seed="s")
    assert set(plan.due) == set(MISSED)
    better = MARKS | {item: [(1, 8, 28), (2, 26, 28)] for item in MISSED[:3]}
    plan = plan_next(recipe(Aim.RETEACH), UNIT, history(decks, better), seed="s")
    assert set(plan.due) == set(MISSED[3:])


def test_items_of_a_topic_that_needs_another_lesson_are_in_among_its_easier_ones():
    known = history([FIRST], {item: [(1, 20, 28)] for item in FIRST})
    behind = [item for item in FIRST if item.topic == "Birds"]
    known = replace(known, behind=frozenset(item.key for item in behind))
    plan = plan_next(recipe(Aim.RETEACH), UNIT, known, seed="s")
    assert set(plan.behind) == set(behind)
    assert plan.due == ()
    assert plan.seen == len(behind)
    assert {item.topic for item in plan.choice.items} == {"Birds"}
    assert len(plan.choice.items) == 2 * len(behind)
    # another aim does not go over them
    assert plan_next(recipe(Aim.HARDER), UNIT, known, seed="s").behind == ()
    fewer = [item for item in UNIT if item is not behind[0]]
    assert plan_next(recipe(Aim.RETEACH), fewer, known, seed="s").gone == 1
    assert plan_next(recipe(Aim.HARDER), fewer, known, seed="s").gone == 0


def test_a_team_has_two_cards_at_least():
    plan = plan_for({FIRST[0]: [(1, 0, 4)]})
    assert len(plan.choice.items) == 8


def test_the_guide_gives_more_support():
    assert plan_for().recipe.extra_words == 0
    assert plan_for(support=Support.NONE).recipe.support is Support.HINTS
    assert plan_for(extra_words=0).means == ()


def test_with_nothing_missed_there_is_nothing_to_reteach():
    with pytest.raises(NothingToReteachError, match="no row was missed by so many"):
        plan_for({item: [(1, 28, 28)] for item in FIRST})
    with pytest.raises(NothingToReteachError, match=r"Fill in marks\.xlsx"):
        plan_for({})


def test_missed_items_that_are_no_longer_in_the_workbook_are_told_of():
    plan = plan_for(unit=[item for item in UNIT if item is not MISSED[0]])
    assert plan.gone == 1
    assert any("1 missed item left out" in told for told in plan.sentences)
    with pytest.raises(NothingToReteachError, match="No row that this deck can ask"):
        plan_for(unit=[card(200, Level.EASY)])


def test_a_mix_has_no_effect_and_that_is_said():
    plan = plan_for(mix=(40, 40, 20))
    assert set(plan.due) == set(MISSED)
    assert any(told.startswith("Mix has no effect here") for told in plan.sentences)


def test_too_few_items_for_the_cards_asked_for_are_told_of_as_those_of_their_topics():
    plan = plan_for(cards=40)
    assert len(plan.choice.items) == 36
    assert plan.choice.advice == (
        "The topics to go over have 36 items for the 40 cards asked for: 4 more in them would do.",
    )
    assert plan_for(cards=36).choice.advice == ()
