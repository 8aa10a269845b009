from itertools import pairwise, permutations
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.items import item

from cards.item import Level
from decks.lesson.calling import calling_order, rounds_for


def items_of(*kinds):
    return [
        item(f"Prompt {n}", f"answer {n}", level=level, topic=topic)
        for n, (level, topic) in enumerate(kinds)
    ]


KINDS = st.lists(st.tuples(st.sampled_from(Level), st.sampled_from("ABC")), min_size=1, max_size=40)


@given(KINDS, st.integers(1, 6), st.integers(0, 99))
def test_every_question_is_called_once_and_rounds_differ_in_length_by_one_at_most(
    kinds, rounds, seed
):
    items = items_of(*kinds)
    called = calling_order(items, rounds_for(len(items), rounds), Random(seed))
    assert sorted(i.prompt for each in called for i in each) == sorted(i.prompt for i in items)
    lengths = [len(each) for each in called]
    assert max(lengths) - min(lengths) <= 1


@given(KINDS, st.integers(1, 6), st.integers(0, 99))
def test_levels_rise_in_every_round_but_for_the_last_question_of_all(kinds, rounds, seed):
    items = items_of(*kinds)
    called = calling_order(items, rounds_for(len(items), rounds), Random(seed))
    for n, each in enumerate(called):
        levels = [i.level for i in (each[:-1] if n == len(called) - 1 else each)]
        assert levels == sorted(levels)


@given(KINDS, st.integers(1, 6), st.integers(0, 99))
def test_rounds_hold_as_many_of_each_level_as_one_another_within_two(kinds, rounds, seed):
    items = items_of(*kinds)
    called = calling_order(items, rounds_for(len(items), rounds), Random(seed))
    for level in Level:
        counts = [sum(i.level is level for i in each) for each in called]
        assert max(counts) - min(counts) <= 2


def test_a_lesson_ends_with_a_question_that_most_get():
    items = items_of(*[(level, "A") for level in Level for _ in range(4)])
    for seed in range(20):
        assert calling_order(items, 2, Random(seed))[-1][-1].level is Level.MEDIUM


def repeats(topics):
    return sum(a == b for a, b in pairwise(topics))


@pytest.mark.parametrize("topics", ["AAB", "AABB", "AAAB", "ABCABC", "AAABBC", "AAAABC", "AABBCC"])
def test_topics_change_as_often_as_any_order_could_make_them(topics):
    """Against every order there is."""
    least = min(repeats(order) for order in permutations(topics))
    items = items_of(*[(Level.HARD, topic) for topic in topics])
    for seed in range(10):
        (called,) = calling_order(items, 1, Random(seed))
        assert repeats([i.topic for i in called]) == least


def test_the_same_seed_calls_the_same_order_and_another_seed_another():
    items = items_of(*[(level, "ABC"[n % 3]) for level in Level for n in range(6)])
    assert calling_order(items, 2, Random(1)) == calling_order(items, 2, Random(1))
    assert calling_order(items, 2, Random(1)) != calling_order(items, 2, Random(2))


@pytest.mark.parametrize(
    ("items", "wanted", "rounds"),
    [(1, None, 1), (10, None, 1), (11, None, 2), (72, None, 8), (5, 3, 3), (2, 9, 2)],
)
def test_rounds_are_of_ten_at_most_unless_another_number_is_wanted(items, wanted, rounds):
    assert rounds_for(items, wanted) == rounds
