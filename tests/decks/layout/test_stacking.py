from hypothesis import given
from hypothesis import strategies as st

from decks.layout.stacking import Pile, plan

hands_of = st.lists(st.integers(min_value=0, max_value=40), min_size=1, max_size=12)
slots_of = st.sampled_from([1, 2, 4, 8])


@given(hands=hands_of, slots=slots_of)
def test_every_card_lies_in_one_pile_and_every_pile_is_one_team_in_order(hands, slots):
    piles = [pile for stack in plan(hands, slots) for pile in stack.piles]
    for team, count in enumerate(hands):
        own = [pile for pile in piles if pile.team == team]
        assert [n for pile in own for n in range(pile.first, pile.end)] == list(range(count))


@given(hands=hands_of, slots=slots_of)
def test_no_pile_is_deeper_than_its_stack_and_no_stack_has_more_piles_than_slots(hands, slots):
    for stack in plan(hands, slots):
        assert 0 < len(stack.piles) <= slots
        assert all(0 < pile.end - pile.first <= stack.leaves for pile in stack.piles)


@given(hands=hands_of, slots=slots_of)
def test_pure_piles_cost_at_most_the_last_leaf_of_each_team(hands, slots):
    leaves = sum(stack.leaves for stack in plan(hands, slots))
    assert -(-sum(hands) // slots) <= leaves <= sum(-(-count // slots) for count in hands)


def test_four_equal_teams_share_one_stack_with_two_neighbouring_piles_each():
    (stack,) = plan([16, 16, 16, 16], 8)
    assert stack.leaves == 8  # 64 cards, 8 a leaf
    assert stack.piles[:3] == (Pile(0, 0, 8), Pile(0, 8, 16), Pile(1, 0, 8))


def test_five_teams_of_thirteen_take_nine_leaves_in_two_stacks():
    stacks = plan([13] * 5, 8)
    assert sum(stack.leaves for stack in stacks) == 9  # 65 cards, 8 a leaf, rounded up
    assert len(stacks) == 2


def test_a_team_without_cards_has_no_pile():
    assert {pile.team for stack in plan([3, 0, 2], 8) for pile in stack.piles} == {0, 2}


def test_no_cards_need_no_leaves():
    assert plan([0, 0], 8) == ()
