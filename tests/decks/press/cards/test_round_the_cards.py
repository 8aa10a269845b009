"""What stands round the cards: it keeps to its place on every page there can be."""

import math

import pytest
from hypothesis import example, given, reject
from hypothesis import strategies as st

from decks.layout.frame import Line, Text, Wedge
from decks.layout.grid import make_grid
from decks.layout.room import NoRoomError
from decks.layout.units import in_mm, mm
from decks.lengths import WHITE_EDGE, CardMeasure, Margins
from decks.press.cards.foot import foot
from decks.press.cards.head import head
from decks.press.cards.leaf_side import Side, first_edge, loading
from decks.press.cards.marks import corner, marks
from decks.press.type.fonts import measure
from decks.recipe import CardSize, Flip, PaperName, Sides

NEAR = 0.05
edges = st.floats(4, 15)


def side_of(*, back=False, load=None, title="Saltmarsh week", stack=(2, 4)):
    return Side(title=title, deck=1, stack=stack, leaf=(10, 72), back=back, load=load)


def box_of(thing):
    if isinstance(thing, Text):
        right = thing.x + measure(thing.text, thing.strong) * thing.size
        return thing.x, thing.y - 0.22 * thing.size, right, thing.y + 0.75 * thing.size
    if isinstance(thing, Line):
        points = [(thing.x, thing.y), (thing.end_x, thing.end_y)]
    else:
        points = thing.points
    xs, ys = [x for x, _y in points], [y for _x, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def clear(one, other):
    beside = one[2] <= other[0] + NEAR or other[2] <= one[0] + NEAR
    return beside or one[3] <= other[1] + NEAR or other[3] <= one[1] + NEAR


@st.composite
def pages(draw):
    size = st.one_of(
        st.sampled_from(CardSize),
        st.builds(CardMeasure, width=st.floats(25, 120), height=st.floats(25, 120)),
    )
    try:
        grid = make_grid(
            draw(st.sampled_from(PaperName)),
            draw(size),
            draw(st.sampled_from(Sides)),
            draw(st.sampled_from(Flip)),
            margins=draw(st.one_of(st.just(WHITE_EDGE), st.builds(Margins, *[edges] * 4))),
            bleed=draw(st.sampled_from([0, 3])),
        )
    except NoRoomError:
        reject()
    side = side_of(
        back=grid.two_sided and draw(st.booleans()),
        load=draw(st.sampled_from([None, "light green"])),
        title=draw(
            st.sampled_from(["Tides", "A week on the saltmarsh and the rocky shore, group B"])
        ),
        stack=draw(st.sampled_from([None, (2, 4)])),
    )
    return grid, side


NARROW = make_grid(
    PaperName.INDEX_3X5,
    CardMeasure(25, 25),
    Sides.TWO_PASSES,
    Flip.LONG,
    margins=WHITE_EDGE,
    bleed=3,
)


@example((NARROW, side_of(load="light green", title="Tides", stack=None)))
@given(pages())
def test_small_print_keeps_clear_of_cards_marks_and_itself(page):
    grid, side = page
    texts = [
        thing
        for thing in (*head(grid, side), *foot(grid, back=side.back))
        if isinstance(thing, Text)
    ]
    others = [box_of(mark) for mark in marks(grid)]
    if grid.two_sided:
        others.append(box_of(corner(grid, back=side.back)))
    inset = mm(5) if grid.whole else 0
    for slot in grid.slots:
        spot = slot.back if side.back else slot.front
        others.append(
            (
                spot.x + inset,
                spot.y + inset,
                spot.x + grid.card_width - inset,
                spot.y + grid.card_height - inset,
            )
        )
    boxes = [box_of(text) for text in texts]
    for n, one in enumerate(boxes):
        assert all(clear(one, other) for other in [*boxes[n + 1 :], *others])


@given(pages())
def test_everything_round_the_cards_keeps_off_the_white_edge(page):
    grid, side = page
    white = grid.page.white
    things = [*head(grid, side), *foot(grid, back=side.back), *marks(grid)]
    if grid.two_sided:
        things.append(corner(grid, back=side.back))
    for left, bottom, right, top in map(box_of, things):
        assert left >= white.left - NEAR
        assert bottom >= white.bottom - NEAR
        assert right <= grid.width - white.right + NEAR
        assert top <= grid.height - white.top + NEAR


@given(pages())
def test_marks_stand_outside_cards_and_what_runs_over_their_cut(page):
    grid, _side = page
    if grid.whole:
        assert all(mark.dashed for mark in marks(grid))
        return
    for mark in map(box_of, marks(grid)):
        for slot in grid.slots:
            for spot in (slot.front, slot.back) if grid.folded else (slot.front,):
                reach = (
                    spot.x - grid.bleed,
                    spot.y - grid.bleed,
                    spot.x + grid.card_width + grid.bleed,
                    spot.y + grid.card_height + grid.bleed,
                )
                assert clear(mark, reach)
    dashed = [mark for mark in marks(grid) if mark.dashed]
    assert bool(dashed) == grid.folded
    assert len(marks(grid)) == 2 * (len(grid.upright_lines) + len(grid.level_lines))


@pytest.mark.parametrize("paper", PaperName)
def test_every_paper_has_a_rule_of_100_mm_at_its_foot(paper):
    for size in (CardSize.SMALL, CardSize.FULL):
        try:
            grid = make_grid(paper, size, Sides.DUPLEX, Flip.LONG)
        except NoRoomError:
            continue
        for back in (False, True):
            lines = [thing for thing in foot(grid, back=back) if isinstance(thing, Line)]
            longest = max(line.end_x - line.x for line in lines)
            assert in_mm(longest) == pytest.approx(100)


def test_a_name_that_has_no_room_is_cut_and_then_left_out():
    whole = "A week on the saltmarsh and the rocky shore, group B"

    def said(paper):
        grid = make_grid(paper, CardSize.FULL, Sides.DUPLEX, Flip.LONG)
        things = head(grid, side_of(title=whole))
        return "".join(thing.text for thing in things if isinstance(thing, Text))

    assert "group B · deck 1 · stack 2 of 4 · leaf 10 of 72 · front" in said(PaperName.A3)
    assert said(PaperName.INDEX_4X6).startswith("A week on")
    words, _, _ = said(PaperName.INDEX_4X6).partition("… · deck 1")
    assert whole.startswith(f"{words} ")
    assert said(PaperName.INDEX_3X5).startswith(("deck 1", "stack 2"))
    assert "flip on the long edge" in said(PaperName.INDEX_3X5)


@pytest.mark.parametrize(
    ("sides", "size", "said"),
    [
        (Sides.DUPLEX, CardSize.SMALL, "both sides · flip on the short edge"),
        (Sides.TWO_PASSES, CardSize.SMALL, "one side · fronts, then backs"),
        (Sides.FRONTS, CardSize.SMALL, "one side"),
        (Sides.FOLD, CardSize.SMALL, "one side · fold on the dashes, then cut"),
        (Sides.TENT, CardSize.SMALL, "one side · cut, then fold on the dashes"),
        (Sides.FOLD, CardSize.FULL, "one side · fold on the dashes"),
    ],
)
def test_one_line_says_how_to_print(sides, size, said):
    grid = make_grid(PaperName.LETTER, size, sides, Flip.SHORT)
    assert loading(grid) == f"Letter · actual size (100 %) · {said}"


@pytest.mark.parametrize(
    ("size", "flip", "front", "back"),
    [
        # upright: the back's head lies behind the front's head, or behind its foot
        (CardSize.SMALL, Flip.LONG, (0, 1), (0, 1)),
        (CardSize.SMALL, Flip.SHORT, (0, -1), (0, 1)),
        # on its side: the back's right edge lies behind the front's right edge, or its left edge
        (CardSize.MEDIUM, Flip.LONG, (1, 0), (1, 0)),
        (CardSize.MEDIUM, Flip.SHORT, (-1, 0), (1, 0)),
    ],
)
def test_the_arrow_points_at_the_edge_that_goes_in_first_on_the_second_pass(
    size, flip, front, back
):
    grid = make_grid(PaperName.A4, size, Sides.TWO_PASSES, flip)
    for behind, edge in ((False, front), (True, back)):
        side = side_of(back=behind)
        assert first_edge(grid, back=behind) == edge
        things = (*head(grid, side), *foot(grid, back=side.back))
        (arrow,) = [thing for thing in things if isinstance(thing, Wedge)]
        tip, *base = arrow.points
        middle = [sum(axis) / 2 for axis in zip(*base, strict=True)]
        away = (tip[0] - middle[0], tip[1] - middle[1])
        assert (away[0] / math.hypot(*away), away[1] / math.hypot(*away)) == pytest.approx(edge)
        assert any(
            "this edge goes in first on pass 2" in thing.text
            for thing in things
            if isinstance(thing, Text)
        )


def test_paper_of_a_teams_own_is_named_first_on_every_page():
    grid = make_grid(PaperName.LETTER, CardSize.SMALL, Sides.DUPLEX, Flip.LONG)
    for back in (False, True):
        first = head(grid, side_of(back=back, load="light green"))[0]
        assert first.text == "Load light green paper"
        assert first.strong
