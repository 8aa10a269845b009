from io import BytesIO

import pdfplumber
import pytest

from decks.layout.frame import Curve, Frame, Placed
from decks.press.pdf import make_pdf


def drawn(curve):
    page = Frame(200, 100, (Placed(10, 20, Frame(100, 50, (curve,))),))
    with pdfplumber.open(BytesIO(make_pdf([page], title="Curve"))) as pdf:
        return pdf.pages[0].curves


def test_a_curve_is_drawn_where_its_points_say():
    # from (0, 0) by its controls to (60, 30), in a frame at (10, 20)
    (curve,) = drawn(Curve(((0, 0), (20, 0), (40, 30), (60, 30)), width=1.5))
    assert [curve[edge] for edge in ("x0", "y0", "x1", "y1")] == pytest.approx([10, 20, 70, 50])
    assert curve["linewidth"] == 1.5
    assert (curve["stroke"], curve["fill"]) == (True, False)


def test_a_curve_may_be_filled_without_a_line():
    points = ((0, 0), (20, 0), (40, 30), (60, 30), (40, 40), (20, 40), (0, 0))
    (curve,) = drawn(Curve(points, stroke=None, fill="panel"))
    assert (curve["stroke"], curve["fill"]) == (False, True)
