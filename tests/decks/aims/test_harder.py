"""A harder deck: at the target, without what is known, with what was missed, mostly new."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import TOPICS, card
from support.classes import history, recipe

from cards.item import Level
from decks.aims import Last, NothingLeftError, plan_next
from decks.aims.harder import risen
from decks.recipe import GuideFor, Support

UNIT = [card(n, 1 + n % 3, TOPICS[n % 4]) for n in range(72)]  # six of each level and topic
FIRST = UNIT[:24]
SURE = {item: [(1, 25, 28)] for item in FIRST}
"""A class that is sure of nearly all: 89 % of 28 papers."""


def goals(plan):
    return {goal.name: goal for goal in plan.choice.goals}


def mean(plan):
    return sum(map(plan.share, plan.choice.items)) / len(plan.choice.items)


def test_the_mean_share_comes_to_the_target():
    plan = plan_next(recipe(cards=24), UNIT, history([FIRST], SURE), seed="s")
    assert len(plan.choice.items) == 24
    assert mean(plan) == pytest.approx(0.80, abs=0.01)
    assert goals(plan)["target"].reached == goals(plan)["seen"].reached == 0


@pytest.mark.parametrize("target", [70, 75, 85])
def test_another_target_is_met_as_well(target):
    plan = plan_next(recipe(cards=20, target=target), UNIT, history([FIRST], SURE), seed="s")
    assert mean(plan) == pytest.approx(target / 100, abs=0.01)


def test_known_items_are_out_and_told_of():
    marks = {item: [(1, 28, 28)] for item in FIRST[:6]} | {i: [(1, 21, 28)] for i in FIRST[6:]}
    # easy (7.2 + 28) / 36 = .98, medium .94, hard (4.8 + 28) / 36 = .91: all above .90
    plan = plan_next(recipe(cards=24), UNIT, history([FIRST], marks), seed="s")
    assert not set(FIRST[:6]) & set(plan.choice.items)
    assert plan.known == tuple(FIRST[:6])
    assert "6 items left out because whoever was asked knows them." in plan.sentences


def test_missed_items_come_back_once():
    missed = FIRST[:4]
    marks = SURE | {item: [(1, 9, 28)] for item in missed}
    second = plan_next(recipe(cards=24), UNIT, history([FIRST], marks), seed="s")
    assert set(missed) <= set(second.choice.items)
    assert set(second.due) == set(missed)
    decks = [FIRST, second.choice.items]
    third = plan_next(recipe(cards=24), UNIT, history(decks, marks), seed="s")
    assert not set(missed) & set(third.choice.items)
    assert set(missed) <= set(third.waiting)


def test_missed_items_wait_for_the_deck_after_where_they_would_make_it_too_hard():
    marks = {item: [(1, 9, 28)] for item in FIRST}
    past = history([FIRST], marks)
    plan = plan_next(recipe(cards=24, seen_before=100), UNIT, past, seed="s")
    assert mean(plan) == pytest.approx(0.80, abs=0.01)
    assert 0 < len(plan.due) < 24
    (told,) = [line for line in plan.sentences if "to wait" in line]
    assert told.startswith(f"{24 - len(plan.due)} missed items have to wait")
    decks = [FIRST, plan.choice.items]
    after = plan_next(recipe(cards=24, seen_before=100), UNIT, history(decks, marks), seed="s")
    assert after.due
    assert set(after.due).isdisjoint(plan.due)


def test_an_item_that_is_missed_again_comes_back_again():
    marks = SURE | {FIRST[0]: [(1, 9, 28), (2, 9, 28)]}
    decks = [FIRST, [FIRST[0], *UNIT[24:40]]]
    plan = plan_next(recipe(cards=24), UNIT, history(decks, marks), seed="s")
    assert plan.due == (FIRST[0],)


def test_no_item_below_the_floor_is_in_but_those_that_were_missed():
    unsure = {item: [(1, 17, 28)] for item in FIRST}  # .61 of the papers: not missed
    # hard: (4.8 + 17) / 36 = .606; medium .639; easy .672; below .65 are the first two
    plan = plan_next(recipe(cards=24, floor=65), UNIT, history([FIRST], unsure), seed="s")
    assert all(plan.share(item) >= 0.65 for item in plan.choice.items)
    assert {item.level for item in plan.choice.items} <= {Level.EASY, Level.MEDIUM}
    asked = plan_next(recipe(cards=24, floor=0), UNIT, history([FIRST], unsure), seed="s")
    assert asked.waiting == ()


def test_no_more_of_the_cards_were_seen_before_than_asked_for():
    plan = plan_next(recipe(cards=20), UNIT, history([FIRST], SURE), seed="s")
    assert len(plan.again) + len(plan.due) <= 6  # 30 % of 20
    none = plan_next(recipe(cards=20, seen_before=0), UNIT, history([FIRST], SURE), seed="s")
    assert len(none.new) == 20


def test_levels_rise_where_the_class_is_past_the_target():
    assert risen((10, 10, 4)) == (8, 10, 6)  # a tenth of 24 is 2
    assert risen((1, 10, 9)) == (0, 9, 11)
    assert risen((0, 0, 5)) == (0, 0, 5)
    assert risen((0, 0, 0)) == (0, 0, 0)


def test_a_class_below_the_target_gets_a_gentler_deck_and_keeps_its_study_guide():
    unsure = {item: [(1, 18, 28)] for item in FIRST}
    plan = plan_next(recipe(cards=24), UNIT, history([FIRST], unsure), seed="s")
    assert mean(plan) == pytest.approx(0.80, abs=0.01)
    assert plan.means == ()
    assert plan.recipe.extra_words == 2
    assert any("stays as it was" in line for line in plan.sentences)


def test_without_marks_the_levels_alone_make_it_harder():
    plan = plan_next(recipe(cards=24), UNIT, history([FIRST], {}), seed="s")
    # 8, 8 and 8 become 6, 8 and 10: (6 * .90 + 8 * .75 + 10 * .60) / 24 = .725
    assert mean(plan) == pytest.approx(0.725, abs=0.01)
    assert "no marks yet" in plan.sentences[0]
    # a third each of .90, .75 and .60 was expected of deck 1; .725 is told halves up
    assert "(target 73 %: at 80 % it would be no harder than deck 1)" in plan.sentences[0]


def test_where_all_was_seen_before_that_is_told_with_what_to_write():
    plan = plan_next(recipe(cards=20), FIRST, history([FIRST], {}), seed="s")
    assert len(plan.choice.items) == 20
    assert goals(plan)["seen"].reached == goals(plan)["seen"].bound == 14  # 6 would be 30 %
    assert any("20 of 20 items have been seen before" in line for line in plan.sentences)
    (advice,) = [line for line in plan.choice.advice if line.startswith("Write ")]
    assert sum(int(word) for word in advice.split(":")[0].split() if word.isdigit()) == 14


def test_where_the_class_knows_everything_there_is_nothing_left():
    marks = {item: [(1, 28, 28)] for item in FIRST}
    with pytest.raises(NothingLeftError, match="Write new ones"):
        plan_next(recipe(), FIRST, history([FIRST], marks), seed="s")


def test_without_a_number_there_are_as_many_cards_as_in_the_last_deck():
    plan = plan_next(recipe(), UNIT, history([FIRST], SURE), seed="s")
    assert len(plan.choice.items) == 24


def test_without_a_number_a_deck_is_smaller_where_only_that_meets_the_target():
    # 12 items near .80 and 12 of .60: all 24 would come to .70
    unit = [card(n, 1) for n in range(12)] + [card(n, 3) for n in range(12, 24)]
    marks = {item: [(1, 20, 28)] for item in unit[:12]} | {i: [(1, 17, 28)] for i in unit[12:]}
    # easy (7.2 + 20) / 36 = .756, hard .606: with a target of 73 a third of the deck can be hard
    plan = plan_next(recipe(target=73), unit, history([unit], marks), seed="s")
    assert mean(plan) == pytest.approx(0.73, abs=0.01)
    assert 12 <= len(plan.choice.items) < 24
    assert any(line.startswith("Fewer than the 24 of before") for line in plan.sentences)


def test_the_guide_has_more_and_closer_extra_words_or_no_hints_any_more():
    past = history([FIRST], SURE)
    bank = plan_next(recipe(cards=24), UNIT, past, seed="s").recipe
    assert (bank.extra_words, bank.closer_words) == (4, True)
    hints = plan_next(recipe(cards=24, support=Support.HINTS), UNIT, past, seed="s").recipe
    assert hints.support is Support.NONE
    none = plan_next(recipe(cards=24, guide=GuideFor.NONE), UNIT, past, seed="s").recipe
    assert (none.extra_words, none.closer_words) == (2, False)


@pytest.mark.parametrize("fixed", ["extra_words", "support"])
def test_what_the_teacher_asked_for_is_not_changed(fixed):
    plan = plan_next(recipe(cards=24), UNIT, history([FIRST], SURE), seed="s", fixed={fixed})
    assert (plan.recipe.extra_words, plan.recipe.support) == (2, Support.BANK)


@settings(deadline=None, max_examples=60)
@given(
    st.lists(st.tuples(st.integers(1, 3), st.integers(0, 28)), min_size=4, max_size=30),
    st.integers(0, 20),
    st.integers(1, 20),
)
def test_whatever_was_marked_a_plan_keeps_its_promises(rows, more, cards):
    first = [card(n, level, TOPICS[n % 3]) for n, (level, _right) in enumerate(rows)]
    unit = first + [card(100 + n, 1 + n % 3, TOPICS[n % 3]) for n in range(more)]
    marks = {item: [(1, right, 28)] for item, (_level, right) in zip(first, rows, strict=True)}
    past = history([first], marks)
    if all(past.known(item) for item in unit):
        return
    plan = plan_next(recipe(cards=cards), unit, past, seed="s")
    chosen = set(plan.choice.items)
    missed = {item for item in first if marks[item][0][1] / 28 < 0.6}
    assert set(plan.due) == missed & chosen
    assert not any(past.share(item) < 0.6 for item in chosen - missed)
    assert not any(past.known(item) for item in chosen)
    assert len(plan.new) + len(plan.due) + len(plan.again) == len(chosen)
    assert chosen.isdisjoint({*plan.known, *plan.waiting})
    for goal in plan.choice.goals:
        assert goal.bound <= goal.reached + 1e-12


def test_a_deck_is_rather_smaller_than_without_what_was_missed():
    marks = {item: [(1, 24, 28)] for item in UNIT} | {item: [(1, 9, 28)] for item in UNIT[:12:3]}
    # easy (7.2 + 24) / 36 = .867, medium .833, hard .80; missed easy .45
    plan = plan_next(recipe(), UNIT, history([UNIT], marks), seed="s")
    assert set(plan.due) == set(UNIT[:12:3])
    assert mean(plan) == pytest.approx(0.80, abs=0.011)


def test_a_deck_to_reteach_does_not_say_how_large_the_next_one_is():
    few = replace(history([FIRST], SURE), last=Last(2, (FIRST[0].key,), (1, 0, 0), (8, 8, 8), 0.9))
    assert len(plan_next(recipe(), UNIT, few, seed="s").choice.items) == 24


def test_levels_that_nobody_asked_for_are_no_news():
    plan = plan_next(recipe(cards=20), FIRST, history([FIRST], {}), seed="s")
    assert not any("the mix" in line for line in plan.choice.advice)
    asked = plan_next(recipe(cards=20, mix=(0, 0, 1)), UNIT, history([FIRST], SURE), seed="s")
    assert "The mix and the target cannot both be had; the target goes first." in asked.sentences
