from itertools import accumulate, pairwise, permutations, product
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


def sets_of(*topics):
    """Return sets of items with these topics, written as letters."""
    items = items_of(*[(Level.EASY, topic) for each in topics for topic in each])
    ends = [0, *accumulate(map(len, topics))]
    return [items[start:end] for start, end in pairwise(ends)]


def fewest_repeats(sets):
    """Return the fewest repeats of any order of all sets but the first, tried one and all."""
    first, *others = [[one.topic for one in each] for each in sets]
    orders = product(*(sorted(set(permutations(topics))) for topics in [first, *others]))
    return min(
        sum(a == b for one, other in pairwise(order) for a, b in zip(one, other, strict=False))
        for order in orders
    )


@given(TOPICS, TOPICS)
@settings(max_examples=40)
def test_a_base_keeps_its_topic_as_seldom_as_any_order_of_the_next_set_allows(first, second):
    """Against every order there is."""
    sets = sets_of(first, second)
    assert repeats_at_bases(at_bases(sets)) == fewest_repeats(sets)


SHORT = st.lists(st.sampled_from("ABC"), min_size=4, max_size=4)
SHORTER = st.lists(st.sampled_from("ABC"), min_size=3, max_size=3)


@given(st.lists(SHORT, min_size=1, max_size=2), st.lists(SHORTER, min_size=1, max_size=2))
@settings(max_examples=60, deadline=None)
def test_also_where_the_last_sets_are_shorter_no_order_of_all_sets_repeats_less(long, short):
    """Against every order of every set: which base is given up matters."""
    sets = sets_of(*long, *short)
    assert repeats_at_bases(at_bases(sets)) == fewest_repeats(sets)


def test_the_base_that_is_given_up_is_of_the_topic_that_stays():
    assert repeats_at_bases(at_bases(sets_of("ABA", "AA"))) == 1
    assert repeats_at_bases(sets_of("ABA", "AA")) == 1
    assert repeats_at_bases(sets_of("AAB", "AA")) == 2
    assert repeats_at_bases(at_bases(sets_of("AAB", "AA"))) == 1


def test_items_without_a_topic_repeat_none_and_a_topic_is_one_however_it_is_written():
    assert repeats_at_bases(at_bases(sets_of(["", ""], ["", ""]))) == 0
    assert repeats_at_bases([*sets_of(["Tides"]), *sets_of([" TIDES"])]) == 1


@given(st.lists(TOPICS, min_size=2, max_size=4))
def test_ordering_sets_for_the_bases_loses_and_doubles_nothing(sets):
    given_sets = sets_of(*sets)
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


def test_sets_of_thousands_are_laid_out_without_running_deep():
    sets = [[item(base + 3000 * n, topic="Tides") for base in range(3000)] for n in range(2)]
    assert [len(each) for each in at_bases(sets)] == [3000, 3000]
