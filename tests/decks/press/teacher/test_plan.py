"""The cut plan: its lines and numbers, before they are drawn."""

import pytest

from decks.layout.grid import make_grid
from decks.press.teacher.plan import level_cuts, upright_cuts
from decks.recipe import CardSize, Flip, PaperName, Sides


def numbers(cuts):
    return [cut.number for cut in cuts]


def grid(sides, *, paper=PaperName.LETTER, size=CardSize.SMALL, bleed=0.0):
    return make_grid(paper, size, sides, Flip.LONG, bleed=bleed)


def test_level_cuts_come_first_from_the_head_then_upright_ones_from_the_left():
    letter = grid(Sides.DUPLEX)
    assert numbers(level_cuts(letter)) == [1, 2, 3, 4, 5]
    assert numbers(upright_cuts(letter)) == [6, 7, 8]
    assert level_cuts(letter)[0].at > level_cuts(letter)[-1].at


def test_a_leaf_that_is_folded_first_has_one_cut_for_both_its_outer_edges():
    folded = grid(Sides.FOLD)
    assert numbers(upright_cuts(folded)) == [6, 0, 6]  # 0: the fold


def test_folds_of_cards_that_are_cut_flat_have_no_number():
    tents = grid(Sides.TENT, size=CardSize.MEDIUM)
    assert numbers(level_cuts(tents)) == [1, 0, 2]
    assert numbers(upright_cuts(tents)) == [3, 4, 5]


def test_both_edges_of_a_gap_are_cuts():
    apart = grid(Sides.DUPLEX, bleed=3.0)
    assert numbers(upright_cuts(apart)) == [7, 8, 9, 10]  # 2 x 3 cards: 2 * 3, then 2 * 2


@pytest.mark.parametrize("sides", Sides)
@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4, PaperName.TABLOID])
def test_the_highest_number_is_the_number_of_cuts(sides, paper):
    for bleed in (0.0, 3.0):
        one = grid(sides, paper=paper, bleed=bleed)
        told = {*numbers(level_cuts(one)), *numbers(upright_cuts(one))} - {0}
        assert told == set(range(1, one.cuts + 1))
