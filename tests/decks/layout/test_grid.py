"""Grids: what holds for every page, and the pages that a teacher knows."""

from itertools import combinations

import pytest
from hypothesis import given, reject
from hypothesis import strategies as st

from decks.layout.grid import make_grid
from decks.layout.page import page_to_cut
from decks.layout.paper import PAPERS
from decks.layout.room import LEAST, NoRoomError
from decks.layout.units import in_mm, mm
from decks.lengths import WHITE_EDGE, CardMeasure, Margins
from decks.recipe import CardSize, Flip, PaperName, Sides

NEAR = 1e-6
TWO_SIDED = (Sides.DUPLEX, Sides.TWO_PASSES)
FOLDED = (Sides.FOLD, Sides.TENT)
edges = st.floats(0, 15)
any_sides = st.sampled_from(Sides)
sizes = st.one_of(
    st.sampled_from(CardSize),
    st.builds(CardMeasure, width=st.floats(25, 150), height=st.floats(25, 150)),
)
margins = st.one_of(st.just(WHITE_EDGE), st.builds(Margins, edges, edges, edges, edges))


@st.composite
def grids(draw, sides=any_sides, sizes=sizes):
    """Any grid with the margins that it was made with, in points as the page is read."""
    white = draw(margins)
    try:
        grid = make_grid(
            draw(st.sampled_from(PaperName)),
            draw(sizes),
            draw(sides),
            draw(st.sampled_from(Flip)),
            margins=white,
            bleed=draw(st.sampled_from([0, 1.5, 3, 5])),
        )
    except NoRoomError:
        reject()
    return grid, white


def box(grid, spot):
    return spot.x, spot.y, spot.x + grid.card_width, spot.y + grid.card_height


def apart(one, other):
    beside = one[2] <= other[0] + NEAR or other[2] <= one[0] + NEAR
    return beside or one[3] <= other[1] + NEAR or other[3] <= one[1] + NEAR


def pages_of_spots(grid):
    fronts = [box(grid, slot.front) for slot in grid.slots]
    if grid.sides is Sides.FRONTS:
        return [fronts]
    backs = [box(grid, slot.back) for slot in grid.slots]
    return [fronts + backs] if grid.sides in FOLDED else [fronts, backs]


def whites(grid, white):
    """Every way the white edges may lie: paper on its side may be turned either way."""
    upright = (white.left, white.bottom, white.right, white.top)
    if grid.width < grid.height:
        return [upright]
    return [
        (white.top, white.left, white.bottom, white.right),
        (white.bottom, white.right, white.top, white.left),
    ]


@given(grids())
def test_no_two_sides_share_paper(made):
    grid, _white = made
    for spots in pages_of_spots(grid):
        assert all(apart(one, other) for one, other in combinations(spots, 2))


@given(grids())
def test_every_side_keeps_to_what_the_printer_can_print(made):
    grid, white = made
    # a card that fills its paper keeps clear by the face's own inset of 5 mm
    inside = mm(5) if grid.whole else 0
    for left, bottom, right, top in (box for spots in pages_of_spots(grid) for box in spots):
        for edge in whites(grid, white):
            assert left + inside >= mm(edge[0]) - NEAR
            assert bottom + inside >= mm(edge[1]) - NEAR
            assert right - inside <= grid.width - mm(edge[2]) + NEAR
            assert top - inside <= grid.height - mm(edge[3]) + NEAR
            assert left >= -NEAR
            assert right <= grid.width + NEAR


@given(grids(st.sampled_from(TWO_SIDED)))
def test_the_back_of_a_back_is_its_front(made):
    grid, _white = made
    for slot in grid.slots:
        x, y = grid.turning.corner(
            slot.back.x, slot.back.y, width=grid.card_width, height=grid.card_height
        )
        assert (x, y) == pytest.approx((slot.front.x, slot.front.y), abs=NEAR)


@given(grids(st.sampled_from(FOLDED)))
def test_both_halves_of_a_folded_card_meet_at_a_dashed_line(made):
    grid, _white = made
    for slot in grid.slots:
        front, back = box(grid, slot.front), box(grid, slot.back)
        if grid.upright_folds:
            assert front[2] == pytest.approx(back[0])
            assert min(abs(front[2] - fold) for fold in grid.upright_folds) < NEAR
            assert not slot.back.half_turn
        else:
            low, high = sorted([front, back], key=lambda one: one[1])
            assert low[3] == pytest.approx(high[1])
            assert min(abs(low[3] - fold) for fold in grid.level_folds) < NEAR
            assert slot.back.half_turn


@given(grids(st.just(Sides.TENT)))
def test_a_tent_stands_on_its_feet_with_the_fold_on_top(made):
    """The front's head is at the fold; so is the back's, which is printed on its head above it."""
    grid, _white = made
    for slot in grid.slots:
        assert slot.back.y == pytest.approx(slot.front.y + grid.card_height)
        assert slot.back.x == pytest.approx(slot.front.x)
        assert slot.back.half_turn


@given(grids(sizes=st.sampled_from(list(LEAST))))
def test_a_card_with_a_name_is_as_large_as_its_name_says(made):
    grid, _white = made
    named = [least for least in LEAST.values() if in_mm(grid.card_width) >= least.width - NEAR]
    assert any(in_mm(grid.card_height) >= least.height - NEAR for least in named)


@given(grids())
def test_every_edge_of_a_card_is_a_line_to_cut_or_to_fold_at(made):
    grid, _white = made
    for spots in pages_of_spots(grid):
        for left, bottom, right, top in spots:
            for x in (left, right):
                assert min(abs(x - line) for line in grid.upright_lines) < mm(0.02)
            for y in (bottom, top):
                assert min(abs(y - line) for line in grid.level_lines) < mm(0.02)


@given(
    paper=st.sampled_from(PaperName),
    width=st.floats(25, 200),
    height=st.floats(25, 200),
    bleed=st.sampled_from([0, 3]),
)
def test_a_measured_card_is_exact_in_the_middle_and_as_often_as_it_fits(
    paper, width, height, bleed
):
    try:
        grid = make_grid(paper, CardMeasure(width, height), Sides.DUPLEX, Flip.LONG, bleed=bleed)
    except NoRoomError:
        reject()
    assert (in_mm(grid.card_width), in_mm(grid.card_height)) == pytest.approx((width, height))
    fronts = [box(grid, slot.front) for slot in grid.slots]
    assert min(spot[0] for spot in fronts) == pytest.approx(
        grid.width - max(spot[2] for spot in fronts)
    )
    assert min(spot[1] for spot in fronts) == pytest.approx(
        grid.height - max(spot[3] for spot in fronts)
    )
    # beside the cards 5 mm white and 5.5 mm for marks, 9 mm above and below; with bleed 2.5 more
    more, gutter = (2.5, 6) if bleed else (0, 0)
    short, long = in_mm(grid.paper.width), in_mm(grid.paper.height)
    held = [
        int((across - 2 * (10.5 + more) + gutter + NEAR) / (width + gutter))
        * int((down - 2 * (14 + more) + gutter + NEAR) / (height + gutter))
        for across, down in ((short, long), (long, short))
        if across > 30
        if down > 35
    ]
    assert len(grid.slots) == max(held)


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


@given(paper=st.sampled_from(PaperName), sides=st.sampled_from(Sides), white=margins)
def test_what_is_said_to_fit_fits(paper, sides, white):
    with pytest.raises(NoRoomError) as raised:
        make_grid(paper, CardMeasure(430, 430), sides, Flip.LONG, margins=white)
    for size in (*raised.value.fitting, *filter(None, [raised.value.most])):
        assert make_grid(paper, size, sides, Flip.LONG, margins=white).slots


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
