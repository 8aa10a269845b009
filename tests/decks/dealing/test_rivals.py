"""Cards that could answer each other's blank are parted where that costs nothing."""

from itertools import combinations, product

from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import TEAMS, card

from decks.dealing import Goal, deal_shares
from decks.dealing.rivals import NO_RIVALS, clashes_in, fewest_clashes, rivals_among


def clashes(items, teams):
    return deal_shares(items, TEAMS[:teams], "shore").goals[-1]


def test_equal_answers_go_to_different_teams():
    items = [card(n, answer="spring tide" if n < 4 else f"neap tide{n}") for n in range(16)]
    for hand in deal_shares(items, TEAMS[:4], "shore").hands:
        assert sum(item.answer == "spring tide" for item in hand) == 1


def test_an_answer_that_is_also_right_elsewhere_counts_whatever_its_capitals():
    items = [card(n) for n in range(8)]
    items[0] = card(0, answer="word one")
    items[1] = card(1, answer="word two", also_right=("Word  One",))
    hands = deal_shares(items, TEAMS[:2], "shore").hands
    assert [items[0] in hand for hand in hands] != [items[1] in hand for hand in hands]


def test_sums_that_come_to_the_same_however_it_is_written_go_to_different_teams():
    sums = {"1.5 × 0.4": "0.6", "2/5 + 1/5": "3/5", "1/2 + 1/10": "6/10", "3 × 0.2": "0.60"}
    items = [replace(card(n, answer=sums[s]), prompt=s) for n, s in enumerate(sums)]
    items += [replace(card(n, answer=str(n)), prompt=f"{n - 1} + 1") for n in range(4, 16)]
    for hand in deal_shares(items, TEAMS[:4], "shore").hands:
        assert sum(item.prompt in sums for item in hand) == 1


def test_where_one_number_is_asked_for_in_two_ways_each_way_is_right_for_one():
    asked = {"Write 3/5 as a decimal": "0.6", "Write 0.6 as a fraction": "3/5"}
    items = [replace(card(n, answer=asked[text]), prompt=text) for n, text in enumerate(asked)]
    assert clashes_in(items) == 0


def test_where_answers_are_more_than_teams_the_fewest_pairs_are_told():
    # five equal answers to two teams: three and two, that is 3 pairs and 1 pair
    items = [card(n, answer="yes") for n in range(5)]
    goal = clashes(items, 2)
    assert (goal.reached, goal.bound) == (4, 4)
    assert sorted(goal.counts[0][1]) == [1, 3]


def test_a_deck_of_two_answers_only_is_dealt_at_once():
    # 1,000 and 1,000 to four teams: 250 of each, 8 hands of C(250, 2) = 31,125 pairs
    items = [card(n, answer=("yes", "no")[n % 2]) for n in range(2000)]
    assert (clashes(items, 4).reached, clashes(items, 4).bound) == (249_000, 249_000)


def test_without_rivals_nothing_clashes():
    assert clashes([card(n) for n in range(9)], 3) == Goal(
        "clashes", 0, 0, (("all", (0, 0, 0)),), "pairs of cards"
    )


def test_levels_are_not_made_uneven_to_part_rivals():
    # one easy and one hard card a team; both easy ones say the same as both hard ones
    items = [
        card(0, 1, answer="ebb"),
        card(1, 1, answer="ebb"),
        card(2, 3, answer="ebb"),
        card(3, 3, answer="ebb"),
    ]
    deal = deal_shares(items, TEAMS[:2], "shore")
    assert [goal.reached for goal in deal.goals] == [0, 0, 0, 0, 0, 0, 2]


@given(st.lists(st.tuples(*[st.sampled_from(["ebb", "flood", "slack", "neap"])] * 2), max_size=9))
def test_a_pair_clashes_once_if_the_answer_of_one_is_right_for_the_other(texts):
    right = [{answer, also} for answer, also in texts]
    pairs = sum(
        texts[one][0] in right[other] or texts[other][0] in right[one]
        for one, other in combinations(range(len(texts)), 2)
    )
    hand = [card(n, answer=answer, also_right=(also,)) for n, (answer, also) in enumerate(texts)]
    assert clashes_in(hand) == pairs


def pairs_in(hand):
    return sum(one == other for one, other in combinations(hand, 2))


@given(
    st.lists(st.tuples(st.sampled_from("xy"), st.sampled_from([None, None, 0, 1, 2])), max_size=6)
)
def test_of_equal_answers_no_deal_has_fewer_pairs_than_are_told(drawn):
    homes = [home for _answer, home in drawn]
    deals = product(*[range(3) if home is None else [home] for home in homes])
    fewest = min(
        sum(
            pairs_in(
                [answer for (answer, _), owner in zip(drawn, owners, strict=True) if owner == n]
            )
            for n in range(3)
        )
        for owners in deals
    )
    items = [card(n, answer=answer) for n, (answer, _home) in enumerate(drawn)]
    assert fewest_clashes(items, homes, 3) == fewest


def test_an_item_whose_answer_is_right_nowhere_else_has_no_rivals():
    items = [card(0, answer="ebb"), card(1, answer="flood"), card(2, also_right=("ebb",))]
    alone = [number == NO_RIVALS for number in rivals_among(items).answer]
    assert alone == [False, True, False]
