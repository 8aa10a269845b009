"""Paper sizes against the standards."""

import pytest

from decks.layout.paper import PAPERS
from decks.layout.units import in_mm, inch, mm
from decks.recipe import PaperName

# ISO 216:2007: A3 297 x 420, A4 210 x 297, A5 148 x 210 mm. ASME Y14.1: size A (Letter) is
# 8.5 x 11 in, size B (Tabloid) 11 x 17 in. Legal, 8.5 x 14 in, and index cards of 3 x 5, 4 x 6 and
# 5 x 8 in carry their size in the trade (common practice). An inch is 25.4 mm.
PUBLISHED_MM = {
    PaperName.LETTER: (215.9, 279.4),
    PaperName.LEGAL: (215.9, 355.6),
    PaperName.TABLOID: (279.4, 431.8),
    PaperName.A3: (297, 420),
    PaperName.A4: (210, 297),
    PaperName.A5: (148, 210),
    PaperName.INDEX_3X5: (76.2, 127),
    PaperName.INDEX_4X6: (101.6, 152.4),
    PaperName.INDEX_5X8: (127, 203.2),
}
# The same in points, as most tables print them.
PUBLISHED_POINTS = {
    PaperName.LETTER: (612, 792),
    PaperName.LEGAL: (612, 1008),
    PaperName.TABLOID: (792, 1224),
    PaperName.A3: (841.8898, 1190.5512),
    PaperName.A4: (595.2756, 841.8898),
    PaperName.A5: (419.5276, 595.2756),
    PaperName.INDEX_3X5: (216, 360),
    PaperName.INDEX_4X6: (288, 432),
    PaperName.INDEX_5X8: (360, 576),
}


@pytest.mark.parametrize("name", PaperName)
def test_a_paper_has_its_published_size(name):
    paper = PAPERS[name]
    assert (in_mm(paper.width), in_mm(paper.height)) == pytest.approx(PUBLISHED_MM[name], abs=1e-9)
    assert (paper.width, paper.height) == pytest.approx(PUBLISHED_POINTS[name], abs=1e-4)


def test_an_inch_is_as_long_as_was_agreed():
    # 25.4 mm exactly (international yard and pound agreement, 1959); 72 points of PDF (ISO 32000-1)
    assert inch(1) == pytest.approx(mm(25.4)) == pytest.approx(72)
