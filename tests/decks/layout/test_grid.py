"""Grids: what holds for every page."""

from itertools import combinations

import pytest
from hypothesis import example, given, reject
from hypothesis import strategies as st

from decks.layout.grid import grid_of, make_grid
from decks.layout.paper import PAPERS
from decks.layout.room import LEAST, NoRoomError
from decks.layout.units import in_mm, mm
from decks.lengths import WHITE_EDGE, CardMeasure, Margins
from decks.recipe import CardSize, Flip, PaperName, Recipe, Sides
from decks.team import make_teams

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


# a hair less than 279 mm is left
@example(paper=PaperName.A4, sides=Sides.DUPLEX, white=Margins(1e-6, 0, 0, 0))
@given(paper=st.sampled_from(PaperName), sides=st.sampled_from(Sides), white=margins)
def test_what_is_said_to_fit_fits(paper, sides, white):
    with pytest.raises(NoRoomError) as raised:
        make_grid(paper, CardMeasure(430, 430), sides, Flip.LONG, margins=white)
    assert raised.value.paper is PAPERS[paper]
    for size in (*raised.value.fitting, *filter(None, [raised.value.most])):
        assert make_grid(paper, size, sides, Flip.LONG, margins=white).slots


UNEVEN = Margins(top=3, right=4, bottom=12, left=9)


def white_of(*, flip, sides=Sides.DUPLEX, margins=UNEVEN):
    page = make_grid(PaperName.A4, CardMeasure(60, 40), sides, flip, margins=margins).page
    assert not page.turned
    white = page.white
    return [in_mm(edge) for edge in (white.top, white.right, white.bottom, white.left)]


@pytest.mark.parametrize(
    ("how", "edges_in_mm"),
    [
        # the wider of the edges that lie on each other counts for both, and no other
        ({"flip": Flip.LONG}, (3, 9, 12, 9)),
        ({"flip": Flip.SHORT}, (12, 4, 12, 9)),
        ({"flip": Flip.LONG, "sides": Sides.FRONTS}, (3, 4, 12, 9)),
        ({"flip": Flip.LONG, "margins": Margins(12, 9, 3, 4)}, (12, 9, 3, 9)),
        ({"flip": Flip.SHORT, "margins": Margins(12, 9, 3, 4)}, (12, 9, 12, 4)),
    ],
)
def test_only_edges_that_lie_on_each_other_are_made_even(how, edges_in_mm):
    assert white_of(**how) == pytest.approx(edges_in_mm)


@pytest.mark.parametrize("sides", [Sides.DUPLEX, Sides.FRONTS])
def test_a_card_that_is_the_whole_paper_stands_in_its_middle(sides):
    grid = make_grid(PaperName.A4, CardSize.FULL, sides, Flip.LONG, margins=UNEVEN, bleed=3)
    ((left, bottom, right, top),) = [box(grid, slot.front) for slot in grid.slots]
    # on its side the wider of 3 and 12 mm lies at the sides, of 4 and 9 at the head and the foot;
    # the face has its 5 mm within the white at the sides, and 3 mm stay for small print
    assert (in_mm(left), in_mm(bottom)) == pytest.approx((12 - 5, 9 + 3))
    assert (grid.width - right, grid.height - top) == pytest.approx((left, bottom))
    assert grid.bleed == 0


@pytest.mark.parametrize("sides", FOLDED)
def test_a_folded_card_that_is_the_whole_paper_is_half_as_high(sides):
    grid = make_grid(PaperName.A4, CardSize.FULL, sides, Flip.LONG, margins=UNEVEN)
    assert len(grid.slots) == 1
    # upright, 210 × 297 mm, with the white edges and small print as above
    assert in_mm(grid.card_width) == pytest.approx(210 - 2 * (9 - 5))
    assert in_mm(grid.card_height) == pytest.approx((297 - 2 * (12 + 3)) / 2)


def test_a_grid_is_what_its_recipe_asks_for():
    recipe = Recipe(
        title="Shore",
        teams=make_teams(["Otter"], [None]),
        paper=PaperName.A4,
        sides=Sides.TWO_PASSES,
        flip=Flip.SHORT,
        margins=UNEVEN,
        bleed=2,
        card_size=CardMeasure(60, 40),
    )
    grid = grid_of(recipe)
    assert (grid.sides, grid.flip, grid.paper) == (Sides.TWO_PASSES, Flip.SHORT, PAPERS["a4"])
    assert (in_mm(grid.bleed), in_mm(grid.card_width)) == pytest.approx((2, 60))
    assert in_mm(max(grid.page.white.top, grid.page.white.right)) == pytest.approx(12)
