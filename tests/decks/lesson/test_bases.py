from itertools import permutations
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.items import item

from cards.item import Level
from decks.lesson.bases import at_bases, equal_sets, repeats_at_bases, rising_sets, sets_for


def items_of(*kinds):
    return [
        item(f"Prompt {n}", f"answer {n}", level=lv, topic=t) for n, (lv, t) in enumerate(kinds)
    ]


TOPICS = st.lists(st.sampled_from("ABC"), min_size=5, max_size=5)


def same(sets):
    return repeats_at_bases(sets, lambda one: one.topic)


@given(TOPICS, TOPICS)
@settings(max_examples=40)
def test_a_base_keeps_its_topic_as_seldom_as_any_order_of_the_next_set_allows(first, second):
    """Against every order there is."""
    items = items_of(*[(Level.EASY, topic) for topic in first + second])
    least = min(
        sum(a == b for a, b in zip(first, order, strict=True)) for order in permutations(second)
    )
    assert same(at_bases([items[:5], items[5:]])) == least


@given(st.lists(TOPICS, min_size=2, max_size=4))
def test_ordering_sets_for_the_bases_loses_and_doubles_nothing(sets):
    items = items_of(*[(Level.EASY, topic) for topics in sets for topic in topics])
    given_sets = [items[n : n + 5] for n in range(0, len(items), 5)]
    placed = at_bases(given_sets)
    assert [sorted(i.prompt for i in each) for each in placed] == [
        sorted(i.prompt for i in each) for each in given_sets
    ]


KINDS = st.lists(st.tuples(st.sampled_from(Level), st.sampled_from("ABC")), min_size=4, max_size=30)


@given(KINDS, st.integers(1, 4))
def test_rising_sets_never_fall_in_difficulty(kinds, sets):
    parted = rising_sets(items_of(*kinds), sets, Random(1))
    hardest = [max(i.level for i in each) for each in parted]
    easiest = [min(i.level for i in each) for each in parted]
    assert all(low >= high for low, high in zip(easiest[1:], hardest[:-1], strict=True))
    assert max(map(len, parted)) - min(map(len, parted)) <= 1


@given(KINDS, st.integers(1, 4))
@settings(max_examples=15, deadline=None)
def test_equal_sets_hold_as_many_of_each_level_within_one(kinds, sets):
    parted = equal_sets(items_of(*kinds), sets, "seed")
    for level in Level:
        counts = [sum(i.level is level for i in each) for each in parted]
        assert max(counts) - min(counts) <= 1


@pytest.mark.parametrize(
    ("items", "wanted", "sets"),
    [(24, 3, 3), (72, None, 9), (5, None, 1), (1, None, 1), (2, 5, 2), (240, None, 12)],
)
def test_sets_are_as_many_as_wanted_or_of_about_eight_bases(items, wanted, sets):
    assert sets_for(items, wanted, 12) == sets
