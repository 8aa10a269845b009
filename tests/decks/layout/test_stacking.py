import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.layout.stacking import Pile, plan

hands_of = st.lists(st.integers(min_value=0, max_value=40), min_size=1, max_size=8)
slots_of = st.sampled_from([1, 2, 3, 4, 6, 8, 10])


def partitions(teams):
    """Yield every way to put teams in groups."""
    if not teams:
        yield []
        return
    first, *rest = teams
    for groups in partitions(rest):
        yield [[first], *groups]
        for n in range(len(groups)):
            yield [*groups[:n], [first, *groups[n]], *groups[n + 1 :]]


def fewest_leaves(cards, slots):
    """Try every depth: deal each team down one slot after another, and see whether slots do."""
    return next(
        depth
        for depth in range(1, max(cards) + 1)
        if sum(len(range(0, number, depth)) for number in cards) <= slots
    )


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


@given(
    hands=st.lists(st.integers(min_value=1, max_value=14), min_size=1, max_size=6), slots=slots_of
)
def test_no_way_to_put_teams_together_takes_fewer_leaves_or_as_few_in_fewer_stacks(hands, slots):
    stacks = plan(hands, slots)
    reached = sum(stack.leaves for stack in stacks), len(stacks)
    assert reached == min(
        (sum(fewest_leaves([hands[t] for t in group], slots) for group in groups), len(groups))
        for groups in partitions(range(len(hands)))
        if all(len(group) <= slots for group in groups)
    )


@given(hands=hands_of, slots=slots_of)
def test_apart_every_stack_holds_one_team_on_as_few_leaves_as_it_has_cards_for(hands, slots):
    stacks = plan(hands, slots, apart=True)
    assert [stack.teams for stack in stacks] == [(t,) for t, number in enumerate(hands) if number]
    assert [stack.leaves for stack in stacks] == [-(-number // slots) for number in hands if number]


@pytest.mark.parametrize(("teams", "slots"), [(4, 8), (8, 8), (2, 4), (4, 4), (5, 10), (3, 6)])
def test_equal_teams_that_divide_the_page_are_one_stack_without_a_blank_slot(teams, slots):
    (stack,) = plan([12] * teams, slots)
    assert len(stack.piles) == slots
    assert stack.leaves * slots == 12 * teams


def test_teams_that_are_not_neighbours_share_a_stack_where_that_saves_a_leaf():
    # two slots: the teams with one card share a leaf; apart or with a neighbour they take five
    stacks = plan([1, 6, 1], 2)
    assert [(stack.teams, stack.leaves) for stack in stacks] == [((0, 2), 1), ((1,), 3)]


def test_neighbours_stay_together_where_that_costs_nothing():
    # 11 with 12 and 11 with 11 take 23 leaves, whichever of the three goes with 12
    stacks = plan([11, 11, 11, 12], 2)
    assert [stack.teams for stack in stacks] == [(0, 1), (2, 3)]


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


@given(st.lists(st.integers(0, 30), min_size=1, max_size=6), st.integers(1, 12), st.booleans())
def test_spare_slots_are_kept_for_every_team_behind_its_last_card(hands, slots, apart):
    stacks = plan(hands, slots, apart=apart, spare=1)
    for team, count in enumerate(hands):
        piles = [(stack, pile) for stack in stacks for pile in stack.piles if pile.team == team]
        assert sum(pile.end - pile.first for _stack, pile in piles) == count
        assert sum(stack.leaves for stack, _pile in piles) >= (count + 1 if count else 0)
        assert bool(piles) == bool(count)
        assert all(pile.first <= pile.end <= count for _stack, pile in piles)
