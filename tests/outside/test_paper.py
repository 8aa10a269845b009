"""Paper sizes against the standards, through the pages of a printed deck."""

import pytest

from decks.layout.paper import PAPERS
from decks.layout.units import in_mm
from decks.recipe import PaperName

# ISO 216:2007: A4 is 210 x 297 mm. ASME Y14.1: size A (Letter) is 8.5 x 11 in.
PUBLISHED_MM = {PaperName.A4: (210, 297), PaperName.LETTER: (8.5 * 25.4, 11 * 25.4)}
# The same in points, rounded as most tables print them: 595.2756 x 841.8898 and 612 x 792.
PUBLISHED_POINTS = {PaperName.A4: (595.2756, 841.8898), PaperName.LETTER: (612, 792)}


@pytest.mark.parametrize("name", PaperName)
def test_a_paper_has_its_published_size(name):
    paper = PAPERS[name]
    assert (in_mm(paper.width), in_mm(paper.height)) == pytest.approx(PUBLISHED_MM[name], abs=1e-9)
    assert (paper.width, paper.height) == pytest.approx(PUBLISHED_POINTS[name], abs=1e-4)
