"""The sentence about fairness: true, and short enough for a student."""

from strategies import TEAMS, card

from cards.item import Kind
from decks.dealing import (
    Deal,
    Goal,
    deal_copies,
    deal_shares,
    deal_warnings,
    fairness_sentence,
)

WITHIN_ONE = "no two teams differ by more than one card: no deal can be more even."


def sentence(items, teams=4, deal=deal_shares):
    names = TEAMS[:teams]
    return fairness_sentence(deal(items, names, "shore"), names)


def test_equal_hands_and_attributes_within_one():
    items = [card(n, n % 3 + 1, f"Topic {n % 5}") for n in range(64)]
    assert sentence(items) == f"Every team has 16 cards. Of every level and topic, {WITHIN_ONE}"


def test_hands_that_differ_by_one():
    items = [card(n, n % 3 + 1, kind=list(Kind)[n % 2]) for n in range(65)]
    assert sentence(items) == (
        f"One team has 17 cards, 3 teams have 16. Of every level and kind, {WITHIN_ONE}"
    )


def test_attributes_that_are_quite_equal():
    items = [card(n, n % 2 + 1) for n in range(8)]
    assert sentence(items) == (
        "Every team has 2 cards. Of every level, every team has the same number of cards: "
        "no deal can be more even."
    )


def test_an_attribute_with_one_value_is_no_news():
    assert sentence([card(n) for n in range(8)]) == "Every team has 2 cards."


def test_items_set_to_a_team_are_named_as_what_stands_in_the_way():
    pinned = [card(n, 3, team="Otter") for n in range(5)]
    free = [card(n, 1) for n in range(5, 17)]
    assert sentence(pinned + free) == (
        "One team has 5 cards, 3 teams have 4. Cards of level “hard” differ by up to 5. "
        "With 5 cards set to Otter, no deal can be more even."
    )


def test_hands_of_unlike_size():
    pinned = [card(n, team="Otter") for n in range(7)]
    assert sentence([*pinned, card(7), card(8, team="heron")]) == (
        "The smallest hand has 0 cards, the largest 7 cards. "
        "With 1 card set to Heron and 7 cards set to Otter, no deal can be more even."
    )


def test_hands_that_differ_by_two():
    pinned = [card(n, team="Otter") for n in range(4)]
    assert sentence([*pinned, *map(card, range(4, 10))]) == (
        "The smallest hand has 2 cards, the largest 4 cards. "
        "With 4 cards set to Otter, no deal can be more even."
    )


def test_up_to_three_teams_with_items_of_their_own_are_listed():
    pinned = [card(n, team=TEAMS[n % 3]) for n in range(6)]
    skewed = [card(n, team="Heron") for n in range(6, 10)]
    assert sentence(pinned + skewed).endswith(
        "With 6 cards set to Heron, 2 cards set to Otter and 2 cards set to Samphire, "
        "no deal can be more even."
    )


def test_many_teams_with_items_of_their_own_are_not_listed():
    pinned = [card(n, team=TEAMS[n % 4]) for n in range(8)]
    skewed = [card(n, team="Heron") for n in range(8, 12)]
    assert sentence(pinned + skewed).endswith(
        "With 12 cards set to teams beforehand, no deal can be more even."
    )


def test_kinds_give_way_to_levels_and_topics():
    items = [
        card(0, 1, "Tides", Kind.FACT),
        card(1, 1, "Zones", Kind.QUESTION),
        card(2, 2, "Zones", Kind.FACT),
    ]
    assert sentence(items, teams=2) == (
        f"One team has 2 cards, one team has 1. Of every level and topic, {WITHIN_ONE} "
        "Cards of kind “fact” differ by up to 2. "
        "With levels and topics evened out before kinds, no deal can be more even."
    )


def test_what_is_not_proven_is_not_claimed():
    hand = tuple(card(n) for n in range(4))
    counts = (("Tides", (3, 1)), ("Zones", (1, 3)))
    deal = Deal((hand, hand[::-1]), (Goal("topic", 2, 1, counts),))
    assert fairness_sentence(deal, TEAMS[:2]) == (
        "Every team has 4 cards. Cards of some topics differ by up to 2. "
        "Whether a difference of 1 by topic can be had is not known."
    )


def test_the_one_value_of_which_cards_differ_most_is_named():
    hand = tuple(card(n) for n in range(4))
    counts = (("Zones", (1, 1)), ("Birds", (0, 1)), ("Tides", (3, 1)))
    deal = Deal((hand, hand[:3]), (Goal("topic", 2, 1, counts),))
    assert "Cards of topic “Tides” differ by up to 2." in fairness_sentence(deal, TEAMS[:2])


def test_copies_one_team_and_no_cards():
    items = [card(n, n % 3 + 1) for n in range(24)]
    assert sentence(items, deal=deal_copies) == "Every team has the same 24 cards."
    assert sentence(items, teams=1) == "The one team has all 24 cards."
    assert sentence(items[:2], teams=1) == "The one team has all 2 cards."
    assert sentence(items[:1], teams=1) == "The one team has the only card."
    assert sentence([]) == "There are no cards to deal."
    assert sentence([card(0)]) == "One team has 1 card, 3 teams have none."


def test_teams_without_a_card_are_warned_of():
    pinned = [card(0, team="Heron"), card(1, team="Otter")]
    assert deal_warnings(deal_shares(pinned, TEAMS[:4], "shore"), TEAMS[:4]) == [
        (
            "Samphire and Curlew get no card: 2 cards for 4 teams. "
            "Add rows, clear cells of the Team column, or have fewer teams."
        )
    ]


def test_one_team_without_a_card_is_warned_of():
    dealt = deal_shares([card(n) for n in range(3)], TEAMS[:3], "shore").hands
    assert deal_warnings(Deal((*dealt, ()), ()), TEAMS[:4]) == [
        (
            "Curlew gets no card: 3 cards for 4 teams. "
            "Add rows, clear cells of the Team column, or have fewer teams."
        )
    ]


def test_a_deal_that_leaves_nobody_out_warns_of_nothing():
    assert deal_warnings(deal_shares([card(n) for n in range(4)], TEAMS[:4], "x"), TEAMS[:4]) == []
    assert deal_warnings(deal_shares([], TEAMS[:4], "x"), TEAMS[:4]) == []
