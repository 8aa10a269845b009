"""Cut and stack, as the printing trade does it: slot j of leaf s holds card j·S + s.

Common practice in imposition; the two tables are worked from that rule by hand.
"""

from decks.layout.stacking import plan


def leaf(stack, number):
    """Return the cards on one leaf of a stack for one team, slot by slot; None for a blank."""
    return [pile.first + number if pile.first + number < pile.end else None for pile in stack.piles]


def test_twenty_cards_eight_to_a_leaf():
    (stack,) = plan([20], 8)
    assert stack.leaves == 3  # 20 / 8, rounded up
    assert leaf(stack, 0) == [0, 3, 6, 9, 12, 15, 18]
    assert leaf(stack, 1) == [1, 4, 7, 10, 13, 16, 19]
    assert leaf(stack, 2) == [2, 5, 8, 11, 14, 17, None]


def test_a_thousand_cards_four_to_a_leaf():
    (stack,) = plan([1000], 4)
    assert stack.leaves == 250
    assert leaf(stack, 1) == [1, 251, 501, 751]


def test_leaves_apart_are_a_teams_cards_over_eight_rounded_up():
    """Worked by hand: 17, 8 and 9 cards on pages of eight."""
    stacks = plan([17, 8, 9], 8, apart=True)
    assert [stack.leaves for stack in stacks] == [3, 1, 2]
    assert leaf(stacks[0], 0) == [0, 3, 6, 9, 12, 15]
    assert leaf(stacks[0], 2) == [2, 5, 8, 11, 14, None]
