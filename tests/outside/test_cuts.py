"""The number of straight cuts, against the printing trade's count.

Common practice in imposition: c x r cards that butt and have margins all round take
(c + 1) + (r + 1) cuts; with gutters between them 2c + 2r. 2 x 4: 8 and 12, 3 x 3: 8 and 12,
2 x 5: 9 and 14.
"""

import pytest

from decks.layout.grid import make_grid
from decks.lengths import CardMeasure
from decks.recipe import Flip, PaperName, Sides


@pytest.mark.parametrize(
    ("paper", "card", "shape", "butting", "apart"),
    [
        (PaperName.LETTER, CardMeasure(88, 57), (2, 4), 8, 12),
        (PaperName.A4, CardMeasure(57, 80), (3, 3), 8, 12),
        (PaperName.LEGAL, CardMeasure(90, 58), (2, 5), 9, 14),
    ],
)
def test_cuts_are_as_many_as_the_trade_counts(paper, card, shape, butting, apart):
    for bleed, cuts in ((0, butting), (3, apart)):
        grid = make_grid(paper, card, Sides.DUPLEX, Flip.LONG, bleed=bleed)
        assert (grid.columns, grid.rows) == shape
        assert grid.cuts == cuts
        assert len(grid.upright_lines) + len(grid.level_lines) == cuts
