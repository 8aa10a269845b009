"""Where the back of a point is, against the printer language's own reference.

HP PCL 5 Printer Language Technical Reference Manual, 5961-0509, pp. 4-7 and 4-8: long-edge and
short-edge binding, for portrait and landscape pages. The numbers are its sums for a point 30 mm
from the left and 40 mm from the foot of an A4 page, 210 x 297 mm.
"""

import pytest

from decks.layout.turning import duplex, fold
from decks.layout.units import in_mm, mm
from decks.recipe import Flip


@pytest.mark.parametrize(
    ("page", "flip", "back", "on_its_head"),
    [
        ((210, 297), Flip.LONG, (180, 40), False),  # 210 - 30
        ((210, 297), Flip.SHORT, (30, 257), True),  # 297 - 40
        ((297, 210), Flip.LONG, (30, 170), True),  # 210 - 40
        ((297, 210), Flip.SHORT, (267, 40), False),  # 297 - 30
    ],
)
def test_a_point_of_the_front_lies_where_the_printer_puts_it(page, flip, back, on_its_head):
    turning = duplex(width=mm(page[0]), height=mm(page[1]), flip=flip)
    x, y = turning.point(mm(30), mm(40))
    assert (in_mm(x), in_mm(y)) == pytest.approx(back)
    assert turning.half_turn is on_its_head


@pytest.mark.parametrize(
    ("line", "back", "on_its_head"),
    [({"x": 100}, (170, 40), False), ({"y": 100}, (30, 160), True)],
)
def test_a_fold_mirrors_at_its_line(line, back, on_its_head):
    """By a fold at x = f a point (x, y) meets (2f - x, y), at y = f it meets (x, 2f - y).

    Plane geometry: a fold is a reflection in its line.
    """
    turning = fold(**{axis: mm(at) for axis, at in line.items()})
    x, y = turning.point(mm(30), mm(40))
    assert (in_mm(x), in_mm(y)) == pytest.approx(back)
    assert turning.half_turn is on_its_head
