import pytest

from decks.layout.grid import END_MARGIN, SIDE_MARGIN, make_grid
from decks.layout.units import in_mm, mm
from decks.recipe import CardSize, Flip, PaperName, Sides

every_grid = pytest.mark.parametrize(
    "grid",
    [
        make_grid(paper, size, sides, flip)
        for paper in PaperName
        for size in CardSize
        for sides in Sides
        for flip in Flip
    ],
    ids=lambda grid: f"{grid.paper.name}-{grid.columns}x{grid.rows}-{grid.sides}-{grid.flip}",
)


@every_grid
def test_no_two_sides_share_paper(grid):
    spots = [slot.front for slot in grid.slots]
    if grid.folded:
        spots += [slot.back for slot in grid.slots]
    corners = {(round(spot.x, 6), round(spot.y, 6)) for spot in spots}
    assert len(corners) == len(spots) == grid.columns * grid.rows


@every_grid
def test_every_side_keeps_the_margins(grid):
    for slot in grid.slots:
        for spot in (slot.front, slot.back):
            assert spot.x >= SIDE_MARGIN - 1e-9
            assert spot.y >= END_MARGIN - 1e-9
            assert spot.x + grid.card_width <= grid.width - SIDE_MARGIN + 1e-9
            assert spot.y + grid.card_height <= grid.height - END_MARGIN + 1e-9


@every_grid
def test_cards_are_wider_than_high_and_butt(grid):
    assert grid.card_width > grid.card_height
    across = grid.columns * grid.card_width
    assert across == pytest.approx(grid.width - 2 * SIDE_MARGIN)


def test_a_small_letter_card_measures_what_the_sums_say():
    grid = make_grid(PaperName.LETTER, CardSize.SMALL, Sides.DUPLEX, Flip.LONG)
    assert in_mm(grid.card_width) == pytest.approx(97.45)  # (215.9 - 2 * 10.5) / 2
    assert in_mm(grid.card_height) == pytest.approx(62.85)  # (279.4 - 2 * 14) / 4


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
    ("size", "sides", "cuts"),
    [
        (CardSize.SMALL, Sides.DUPLEX, 8),  # 2 x 4: (2 + 1) + (4 + 1)
        (CardSize.MEDIUM, Sides.DUPLEX, 6),  # 2 x 2: (2 + 1) + (2 + 1)
        (CardSize.LARGE, Sides.DUPLEX, 5),  # 1 x 2: (1 + 1) + (2 + 1)
        (CardSize.SMALL, Sides.FOLD, 6),  # folded first: its two outer edges are one cut, 1 + 5
        (CardSize.LARGE, Sides.FOLD, 3),  # the same for its upper and lower edge: 2 + 1
    ],
)
def test_the_number_of_cuts_is_that_of_the_lines_of_a_leaf_as_it_is_cut(size, sides, cuts):
    assert make_grid(PaperName.LETTER, size, sides, Flip.LONG).cuts == cuts


def test_units_convert_both_ways():
    assert mm(25.4) == pytest.approx(72)
    assert in_mm(72) == pytest.approx(25.4)
