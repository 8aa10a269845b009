"""Sharing out the items: what holds for every deck."""

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card, decks

from decks.dealing import deal_shares

SEEDS = st.text(max_size=5)
NAMES = [*("cards", "level", "topic", "kind"), *("expected points", "reading load", "clashes")]
always = settings(deadline=None, max_examples=60)


def largest_difference(hands, value):
    """Count afresh, beside the code under test."""
    held = [Counter(map(value, hand)) for hand in hands]
    values = {key for counter in held for key in counter}
    return max((max(c[v] for c in held) - min(c[v] for c in held) for v in values), default=0)


@always
@given(decks(pins=True), SEEDS)
def test_nothing_is_lost_and_nothing_doubled(deck, seed):
    items, teams = deck
    hands = deal_shares(items, teams, seed).hands
    assert len(hands) == len(teams)
    assert Counter(item for hand in hands for item in hand) == Counter(items)


@always
@given(decks(), SEEDS)
def test_sizes_levels_and_topics_are_within_one_where_no_item_is_set_to_a_team(deck, seed):
    hands = deal_shares(*deck, seed).hands
    assert largest_difference(hands, lambda _item: "any") <= 1
    assert largest_difference(hands, lambda item: item.level) <= 1
    assert largest_difference(hands, lambda item: item.topic) <= 1


@always
@given(decks(pins=True), SEEDS)
def test_an_item_set_to_a_team_goes_there(deck, seed):
    items, teams = deck
    for name, hand in zip(teams, deal_shares(items, teams, seed).hands, strict=True):
        assert {item.team for item in hand} <= {None, name}


@always
@given(decks(pins=True), SEEDS)
def test_every_goal_tells_what_the_hands_show(deck, seed):
    deal = deal_shares(*deck, seed)
    attributes = [lambda _item: "any", *map(attribute, ("level", "topic", "kind"))]
    assert [goal.name for goal in deal.goals] == NAMES
    for goal, value in zip(deal.goals, attributes, strict=False):
        assert goal.reached == largest_difference(deal.hands, value)
    for goal in deal.goals:
        assert 0 <= goal.bound <= goal.reached


def attribute(name):
    return lambda item: getattr(item, name)


@always
@given(decks(pins=True), SEEDS)
def test_the_same_seed_deals_the_same(deck, seed):
    assert deal_shares(*deck, seed) == deal_shares(*deck, seed)


def test_another_seed_deals_otherwise():
    items = [card(number, number % 3 + 1) for number in range(24)]
    deals = {deal_shares(items, TEAMS[:4], str(seed)).hands for seed in range(10)}
    assert len(deals) == 10


def test_the_odd_card_goes_to_any_team():
    items = [card(number) for number in range(9)]
    longest = {
        max(range(4), key=lambda team: len(hands[team]))
        for hands in (deal_shares(items, TEAMS[:4], str(seed)).hands for seed in range(40))
    }
    assert longest == {0, 1, 2, 3}


def test_a_hand_does_not_lie_in_the_order_of_the_rows():
    items = [card(number) for number in range(40)]
    for hand in deal_shares(items, TEAMS[:2], "shore").hands:
        rows = [item.prompt_place.row for item in hand]
        assert rows != sorted(rows)


def test_fewer_items_than_teams_leave_hands_empty():
    hands = deal_shares([card(0), card(1)], TEAMS[:5], "shore").hands
    assert sorted(map(len, hands)) == [0, 0, 0, 1, 1]


def test_no_items_leave_every_hand_empty():
    deal = deal_shares([], TEAMS[:3], "shore")
    assert deal.hands == ((), (), ())
    assert {goal.reached for goal in deal.goals} == {0}


def test_a_team_is_known_whatever_its_capitals():
    items = [card(number, team="OTTER ") for number in range(3)]
    assert [len(hand) for hand in deal_shares(items, ["Heron", "Otter"], "shore").hands] == [0, 3]


def test_topics_that_differ_in_capitals_are_one_topic():
    items = [card(0, topic="Tides"), card(1, topic="tides"), card(2), card(3, topic="TIDES")]
    (topic,) = [goal for goal in deal_shares(items, TEAMS[:2], "x").goals if goal.name == "topic"]
    assert topic.counts == (("Tides", (2, 2)),)


def test_an_item_set_to_no_team_of_the_deal_is_refused():
    with pytest.raises(ValueError, match="Vocabulary B2: there is no team “Gannet”"):
        deal_shares([card(0, team="Gannet")], TEAMS[:2], "shore")


def test_a_deal_says_what_each_hand_weighs_and_the_chances_it_gives():
    # 1,000 points a card, times the share of a level: .90, .75, .60; a word and a word each
    items = [card(0, level=1, team="Heron"), card(1, level=3, team="Otter")]
    deal = deal_shares(items, TEAMS[:2], "shore")
    goals = {goal.name: goal for goal in deal.goals}
    assert goals["expected points"].counts == (("all", (900, 600)),)
    assert goals["expected points"].unit == "thousandths of a point"
    assert goals["clashes"].counts == (("all", (0, 0)),)
    # Heron alone right: .9 * .4; Otter alone: .1 * .6; both or none: a draw, shared
    assert deal.chances == pytest.approx((0.65, 0.35))
    # where both cards are as easy as each other, so are the teams' chances
    told = deal_shares(items, TEAMS[:2], "shore", lambda _item: 0.7)
    assert told.chances == pytest.approx((0.5, 0.5))


def test_a_deal_without_teams_is_refused():
    with pytest.raises(ValueError, match=r"^A deal needs at least one team\.$"):
        deal_shares([], [], "shore")


def test_the_rest_is_dealt_round_the_items_that_are_set_to_teams():
    pinned = [card(number, 3, team="Heron") for number in range(4)]
    free = [card(number, 1 + (number > 9)) for number in range(4, 16)]
    heron, *others = deal_shares(pinned + free, TEAMS[:4], "shore").hands
    assert set(heron) == set(pinned)
    assert [len(hand) for hand in others] == [4, 4, 4]
    assert [sum(item.level == 1 for item in hand) for hand in others] == [2, 2, 2]
