"""Where things of a back page go; sums stand beside the numbers."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from msgspec.structs import replace

from decks.layout.frame import Box, Frame, Line, Placed, Wedge
from decks.layout.page import page_to_cut
from decks.layout.paper import PAPERS
from decks.layout.shifting import Area, clipped, move_by, printable, shifted
from decks.layout.units import in_mm, mm
from decks.lengths import WHITE_EDGE, Shift
from decks.printers import Printer, Reading, shift_for
from decks.recipe import Flip, PaperName, Sides

PAGE = page_to_cut(PAPERS[PaperName.A4], WHITE_EDGE, Sides.DUPLEX, Flip.LONG, turned=False, bleed=0)
CARD = Frame(mm(60), mm(40), ())


def at(x, y):
    return pytest.approx((mm(x), mm(y)), abs=1e-6)


def test_without_skew_everything_goes_the_same_way():
    card, line, wedge = shifted(
        [
            Placed(mm(20), mm(30), CARD, half_turn=True),
            Line(mm(50), mm(20), mm(50), mm(24)),
            Wedge(((mm(20), mm(20)), (mm(23), mm(20)), (mm(20), mm(23)))),
        ],
        Shift(1.5, -2),
        PAGE,
    )
    assert (card.x, card.y) == at(21.5, 28)
    assert card.half_turn
    assert card.rotation == 0
    assert (line.x, line.y) == at(51.5, 18)
    assert (line.end_x, line.end_y) == at(51.5, 22)
    assert wedge.points[0] == at(21.5, 18)


def test_skew_moves_the_head_right_of_the_foot():
    # A4 has its middle at (105, 148.5); 75 mm above and below it are the scales, 150 mm apart
    move = move_by(Shift(skew=3), PAGE)
    head, foot = move.point(mm(105), mm(223.5)), move.point(mm(105), mm(73.5))
    assert in_mm(head[0] - foot[0]) == pytest.approx(3, abs=0.001)
    assert head[1] == pytest.approx(mm(223.5), abs=mm(0.02))


def test_a_turn_is_that_of_the_plane():
    # a quarter turn takes (x, y) to (-y, x), a third of that to (x cos 30 - y sin 30, …)
    move = move_by(Shift(), PAGE)
    quarter, third = (replace(move, angle=math.radians(angle)) for angle in (90, 30))
    assert quarter.point(mm(105 + 40), mm(148.5 + 10)) == at(105 - 10, 148.5 + 40)
    assert third.point(mm(105 + 40), mm(148.5 + 10)) == at(
        105 + 40 * math.sqrt(3) / 2 - 10 / 2, 148.5 + 40 / 2 + 10 * math.sqrt(3) / 2
    )


def test_a_card_turns_about_its_own_middle_and_goes_with_the_page():
    # tan a = 3 / 150; a card's middle 100 mm above the page's goes 100 sin a = 1.9996 mm right
    angle = math.atan(3 / 150)
    (card,) = shifted([Placed(mm(75), mm(228.5), CARD)], Shift(skew=3), PAGE)
    assert in_mm(card.x) == pytest.approx(75 + 100 * math.sin(angle))
    assert in_mm(card.y) == pytest.approx(228.5 - 100 * (1 - math.cos(angle)))
    assert card.rotation == pytest.approx(-math.degrees(angle))


def test_marks_stop_at_the_printable_edge():
    line, wedge = shifted(
        [
            Line(mm(6), mm(100), mm(9.5), mm(100)),
            Wedge(((mm(5.5), mm(5.5)), (mm(9), mm(5.5)), (mm(5.5), mm(9)))),
        ],
        Shift(-3, -3),
        PAGE,
    )
    assert (line.x, line.end_x) == at(5, 6.5)
    assert wedge.points == (at(5, 5), at(8.5, 5), at(5, 8.5))


def test_a_corner_mark_stops_at_the_other_edges_too():
    # A4 less 5 mm: the mark lies 3.5 mm wide against 205 and 292, and keeps its shape
    corner = Wedge(((mm(204.5), mm(291.5)), (mm(201), mm(291.5)), (mm(204.5), mm(288))))
    (wedge,) = shifted([corner], Shift(3, 3), PAGE)
    assert wedge.points == (at(205, 292), at(201.5, 292), at(205, 288.5))


def test_marks_stay_out_of_the_line_of_small_print():
    # the printable edge at 297 - 5, and 3.5 below it for the small print
    (line,) = shifted([Line(mm(50), mm(284), mm(50), mm(287.5))], Shift(up=3), PAGE)
    assert (line.y, line.end_y) == at(287, 288.5)
    (line,) = shifted([Line(mm(50), mm(13), mm(50), mm(9.5))], Shift(up=-3), PAGE)
    assert (line.y, line.end_y) == at(10, 8.5)


def test_a_mark_that_would_lie_outside_altogether_is_left_out():
    assert shifted([Line(mm(6), mm(100), mm(9.5), mm(100))], Shift(-8), PAGE) == []


def test_what_has_no_place_on_a_card_page_is_refused():
    with pytest.raises(TypeError):
        shifted([Box(0, 0, 1, 1)], Shift(1), PAGE)


AREA = Area(left=0, bottom=0, right=10, top=10)


@pytest.mark.parametrize(
    ("line", "inside"),
    [
        ((1, 1, 9, 9), (1, 1, 9, 9)),
        ((-5, 5, 5, 5), (0, 5, 5, 5)),
        ((5, 15, 5, -5), (5, 10, 5, 0)),
        ((-5, 0, 10, 15), (0, 5, 5, 10)),
        ((-5, 5, -1, 5), None),
        ((-5, 8, 8, 21), None),
        ((11, 0, 11, 10), None),
        # on the edge, and beside it by less than a point
        ((10, -1, 10, 4), (10, 0, 10, 4)),
        ((9.5, 0, 9.5, 10), (9.5, 0, 9.5, 10)),
        # shorter than a point, across the edge, and with its end on it
        ((9.6, 5, 10.4, 5), (9.6, 5, 10, 5)),
        ((10, 5, 15, 5), None),
    ],
)
def test_lines_are_cut_off(line, inside):
    found = clipped(Line(*line), AREA)
    assert (found and (found.x, found.y, found.end_x, found.end_y)) == inside


@given(
    paper=st.sampled_from(PaperName),
    turned=st.booleans(),
    right=st.floats(-8, 8),
    up=st.floats(-8, 8),
    skew=st.floats(-3, 3),
)
def test_text_never_leaves_the_printable_area(paper, turned, right, up, skew):
    """Text stands 5 mm inside the cards, which fill what is left round them at most."""
    assume(abs(right - skew) <= 8)
    printer = Printer("Attic", *[Reading(right, up, skew, Flip.LONG)] * 2)
    shift = shift_for(printer, flip=Flip.LONG, turned=turned)
    page = page_to_cut(PAPERS[paper], WHITE_EDGE, Sides.DUPLEX, Flip.LONG, turned=turned, bleed=0)
    move, area, around = move_by(shift, page), printable(page), page.around
    for x in (around.left + mm(5), page.width - around.right - mm(5)):
        for y in (around.bottom + mm(5), page.height - around.top - mm(5)):
            moved_x, moved_y = move.point(x, y)
            assert area.left <= moved_x <= area.right
            assert area.bottom <= moved_y <= area.top
