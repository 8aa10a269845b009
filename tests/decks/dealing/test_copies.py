"""Every team gets every item."""

from collections import Counter

from hypothesis import given
from strategies import TEAMS, card, decks

from decks.dealing import deal_copies


@given(decks(pins=True))
def test_every_team_has_every_item_once_in_one_order_for_all(deck):
    items, teams = deck
    hands = deal_copies(items, teams, "shore").hands
    assert len(hands) == len(teams)
    assert set(hands) == {hands[0]}
    assert Counter(hands[0]) == Counter(items)


def test_the_order_is_the_seeds():
    items = [card(number) for number in range(20)]
    orders = {deal_copies(items, TEAMS[:3], seed).hands[0] for seed in ("a", "a", "b")}
    assert len(orders) == 2
    assert tuple(items) not in orders


def test_no_two_hands_differ():
    deal = deal_copies([card(0), card(1, 3)], TEAMS[:3], "shore")
    assert [(goal.name, goal.reached, goal.bound) for goal in deal.goals] == [
        ("cards", 0, 0),
        ("level", 0, 0),
        ("topic", 0, 0),
        ("kind", 0, 0),
    ]
