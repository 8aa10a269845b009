"""Grids: the pages that a teacher knows, with the sums beside them."""

import pytest

from decks.layout.grid import make_grid
from decks.layout.page import page_to_cut
from decks.layout.paper import PAPERS
from decks.layout.room import NoRoomError
from decks.layout.units import in_mm, mm
from decks.lengths import CardMeasure, Margins
from decks.recipe import CardSize, Flip, PaperName, Sides

TWO_SIDED = (Sides.DUPLEX, Sides.TWO_PASSES)


@pytest.mark.parametrize(
    ("paper", "size", "columns", "rows", "wide"),
    [
        (PaperName.LETTER, CardSize.SMALL, 2, 4, False),
        (PaperName.A4, CardSize.SMALL, 2, 4, False),
        (PaperName.LETTER, CardSize.MEDIUM, 2, 2, True),
        (PaperName.A4, CardSize.MEDIUM, 2, 2, True),
        (PaperName.LETTER, CardSize.LARGE, 1, 2, False),
        (PaperName.A4, CardSize.LARGE, 1, 2, False),
        (PaperName.TABLOID, CardSize.SMALL, 4, 4, True),
        (PaperName.A3, CardSize.SMALL, 3, 6, False),
        (PaperName.LEGAL, CardSize.SMALL, 2, 5, False),
        (PaperName.A5, CardSize.SMALL, 1, 2, False),
        (PaperName.INDEX_4X6, CardSize.SMALL, 1, 1, True),
        (PaperName.INDEX_3X5, CardSize.FULL, 1, 1, True),
    ],
)
def test_pages_hold_as_many_cards_as_they_should(paper, size, columns, rows, wide):
    grid = make_grid(paper, size, Sides.DUPLEX, Flip.LONG)
    assert (grid.columns, grid.rows, grid.width > grid.height) == (columns, rows, wide)
    assert grid.card_width > grid.card_height


@pytest.mark.parametrize("margin", [3.5, 4.2, 5, 6.35, 8])
@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
def test_margins_that_printers_have_do_not_cost_cards(paper, margin):
    for size, cards in ((CardSize.SMALL, 8), (CardSize.MEDIUM, 4), (CardSize.LARGE, 2)):
        grid = make_grid(
            paper, size, Sides.DUPLEX, Flip.LONG, margins=Margins(margin, margin, margin, margin)
        )
        assert len(grid.slots) >= cards


def test_a_small_letter_card_measures_what_the_sums_say():
    grid = make_grid(PaperName.LETTER, CardSize.SMALL, Sides.DUPLEX, Flip.LONG)
    assert in_mm(grid.card_width) == pytest.approx(97.45)  # (215.9 - 2 * 10.5) / 2
    assert in_mm(grid.card_height) == pytest.approx(62.85)  # (279.4 - 2 * 14) / 4


def test_of_two_edges_that_lie_behind_each_other_the_wider_counts_on_both_sides():
    margins = Margins(top=4, right=5, bottom=12, left=7)
    long = make_grid(PaperName.A4, CardSize.SMALL, Sides.DUPLEX, Flip.LONG, margins=margins)
    assert in_mm(long.card_width) == pytest.approx(92.5)  # (210 - 2 * (7 + 5.5)) / 2
    assert in_mm(long.card_height) == pytest.approx(65.75)  # (297 - 4 - 12 - 2 * 9) / 4
    short = make_grid(PaperName.A4, CardSize.SMALL, Sides.DUPLEX, Flip.SHORT, margins=margins)
    assert in_mm(short.card_width) == pytest.approx(93.5)  # (210 - 7 - 5 - 2 * 5.5) / 2
    assert in_mm(short.card_height) == pytest.approx(63.75)  # (297 - 2 * (12 + 9)) / 4


def test_a_card_that_fills_its_paper_reaches_its_white_edges_and_is_not_cut():
    grid = make_grid(PaperName.INDEX_4X6, CardSize.FULL, Sides.DUPLEX, Flip.LONG)
    (slot,) = grid.slots
    # 6 x 4 in; the face keeps 5 mm clear by itself, 8 mm are for the white edge and small print
    assert (in_mm(grid.card_width), in_mm(grid.card_height)) == pytest.approx((152.4, 85.6))
    assert (in_mm(slot.front.x), in_mm(slot.front.y)) == pytest.approx((0, 8))
    assert grid.cuts == 0
    bled = make_grid(PaperName.INDEX_4X6, CardSize.FULL, Sides.DUPLEX, Flip.LONG, bleed=3)
    assert (bled.bleed, bled.gutter) == (0, 0)


def test_backs_of_a_long_flip_stand_in_the_mirrored_column():
    grid = make_grid(PaperName.A4, CardSize.SMALL, Sides.DUPLEX, Flip.LONG)
    first, second = grid.slots[:2]
    assert (first.back.x, first.back.y) == pytest.approx((second.front.x, second.front.y))
    assert not first.back.half_turn


def test_backs_of_a_short_flip_stand_in_the_mirrored_row_on_their_heads():
    grid = make_grid(PaperName.A4, CardSize.SMALL, Sides.DUPLEX, Flip.SHORT)
    first, last_row = grid.slots[0], grid.slots[6]
    assert (first.back.x, first.back.y) == pytest.approx((last_row.front.x, last_row.front.y))
    assert first.back.half_turn


def test_backs_are_on_the_other_side_of_the_paper_in_duplex_and_in_two_passes_alone():
    for sides in Sides:
        grid = make_grid(PaperName.A4, CardSize.SMALL, sides, Flip.LONG)
        assert grid.two_sided == (sides in TWO_SIDED)


def test_on_turned_paper_the_wider_of_two_edges_counts_for_both_since_it_may_lie_either_way():
    white = Margins(top=5, right=6, bottom=12, left=7)
    upright, turned = (
        page_to_cut(PAPERS[PaperName.A4], white, Sides.FRONTS, Flip.LONG, turned=way, bleed=0).white
        for way in (False, True)
    )
    assert (in_mm(upright.top), in_mm(upright.bottom)) == pytest.approx((5, 12))
    assert (in_mm(upright.left), in_mm(upright.right)) == pytest.approx((7, 6))
    assert (in_mm(turned.left), in_mm(turned.right)) == pytest.approx((12, 12))
    assert (in_mm(turned.top), in_mm(turned.bottom)) == pytest.approx((7, 7))


def test_two_passes_have_the_geometry_of_duplex():
    for flip in Flip:
        duplex, passes = (
            make_grid(PaperName.A4, CardSize.MEDIUM, sides, flip).slots for sides in TWO_SIDED
        )
        assert duplex == passes


def test_a_folded_card_has_its_back_beside_it_or_below_it():
    beside = make_grid(PaperName.A4, CardSize.SMALL, Sides.FOLD, Flip.LONG)
    for slot in beside.slots:
        assert slot.back.x - slot.front.x == pytest.approx(beside.card_width)
        assert slot.back.y == slot.front.y
    below = make_grid(PaperName.A4, CardSize.LARGE, Sides.FOLD, Flip.LONG)
    (slot,) = below.slots
    assert slot.front.y - slot.back.y == pytest.approx(below.card_height)
    assert slot.back.half_turn


@pytest.mark.parametrize(
    ("paper", "size", "sides", "cuts"),
    [
        (PaperName.LETTER, CardSize.SMALL, Sides.FOLD, 6),  # folded first: outer edges are one, 1+5
        (PaperName.LETTER, CardSize.LARGE, Sides.FOLD, 3),  # the same above and below: 2 + 1
        (PaperName.TABLOID, CardSize.SMALL, Sides.FOLD, 8),  # two folds, cut first: (5 - 2) + 5
        (PaperName.LETTER, CardSize.SMALL, Sides.TENT, 6),  # tents are cut flat: 3 + (5 - 2)
        (PaperName.LETTER, CardSize.FULL, Sides.TENT, 0),
    ],
)
def test_a_fold_is_not_a_cut(paper, size, sides, cuts):
    assert make_grid(paper, size, sides, Flip.LONG).cuts == cuts


def test_paper_without_room_says_what_would_fit():
    with pytest.raises(NoRoomError) as raised:
        make_grid(PaperName.INDEX_4X6, CardSize.MEDIUM, Sides.DUPLEX, Flip.LONG)
    assert raised.value.fitting == (CardSize.SMALL, CardSize.FULL)
    # 152.4 - 2 * 10.5 and 101.6 - 2 * 14, in whole millimetres
    assert raised.value.most == CardMeasure(131, 73)


def test_the_largest_card_of_about_the_wanted_shape_is_named():
    # A4 on its side leaves 297 - 2 * 10.5 by 210 - 2 * 14; folded over, half of either
    for wanted, most in (((270, 95), (276, 91)), ((140, 190), (138, 182))):
        with pytest.raises(NoRoomError) as raised:
            make_grid(PaperName.A4, CardMeasure(*wanted), Sides.FOLD, Flip.LONG)
        assert raised.value.most == CardMeasure(*most)


def test_margins_may_leave_room_for_nothing():
    wide = Margins(40, 40, 40, 40)
    with pytest.raises(NoRoomError) as raised:
        make_grid(PaperName.INDEX_3X5, CardSize.FULL, Sides.FRONTS, Flip.LONG, margins=wide)
    assert (raised.value.fitting, raised.value.most) == ((), None)


def test_where_both_ways_hold_as_many_cards_the_paper_stands_upright():
    for paper in (PaperName.LETTER, PaperName.A4):
        grid = make_grid(paper, CardMeasure(70, 70), Sides.FRONTS, Flip.LONG)
        assert grid.width < grid.height


def test_units_convert_both_ways():
    assert mm(25.4) == pytest.approx(72)
    assert in_mm(72) == pytest.approx(25.4)
