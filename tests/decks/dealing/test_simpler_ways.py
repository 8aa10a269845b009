"""No simpler way of dealing is fairer on any goal, in their order: largest first, and snake."""

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card, decks

from decks.dealing import deal_shares, share_by_level

ATTRIBUTES = (
    lambda _item: "any",
    lambda item: item.level,
    lambda item: item.topic,
    lambda item: item.kind,
)
LENGTHS = st.lists(st.integers(1, 12), min_size=40, max_size=40)


def points(item):
    return round(1000 * share_by_level(item))


def words(item):
    return len(f"{item.prompt} {item.answer}".split())


def weight(item):
    return points(item), words(item)


def unfairness(hands):
    """For each goal the largest difference, with the sum of the differences for counts."""
    counts = [_differences([Counter(map(value, hand)) for hand in hands]) for value in ATTRIBUTES]
    sums = [[sum(map(weigh, hand)) for hand in hands] for weigh in (points, words)]
    return (*counts, *(max(have) - min(have) for have in sums))


def _differences(held):
    values = {key for counter in held for key in counter}
    apart = [max(c[v] for c in held) - min(c[v] for c in held) for v in values]
    return max(apart, default=0), sum(apart)


def largest_first(items, teams, key):
    hands = [[] for _ in range(teams)]
    for item in sorted(items, key=key, reverse=True):
        min(hands, key=lambda hand: (sum(map(words, hand)), len(hand))).append(item)
    return hands


def snake(items, teams, key):
    hands = [[] for _ in range(teams)]
    for n, item in enumerate(sorted(items, key=key, reverse=True)):
        turn, place = divmod(n, teams)
        hands[place if turn % 2 == 0 else teams - 1 - place].append(item)
    return hands


@settings(deadline=None, max_examples=60)
@given(decks(), LENGTHS)
def test_the_deal_is_at_least_as_fair(deck, lengths):
    drawn, teams = deck
    items = [
        card(n, item.level, item.topic, item.kind, answer="tide " * length)
        for n, (item, length) in enumerate(zip(drawn, lengths, strict=False))
    ]
    ours = unfairness(deal_shares(items, teams, "shore").hands)
    for way in (largest_first, snake):
        for key in (weight, words, lambda item: (item.topic, item.level, words(item))):
            assert ours <= unfairness(way(items, len(teams), key))


@pytest.mark.parametrize("cards", [240, 600])
def test_a_full_deck_is_dealt_to_the_bound_of_every_goal(cards):
    items = [
        card(n, n * n % 3 + 1, f"Topic {n % 7}", answer=f"{n} " + "tide " * (n * n % 13))
        for n in range(cards)
    ]
    deal = deal_shares(items, TEAMS[:4], "shore")
    assert all(goal.proven for goal in deal.goals)
