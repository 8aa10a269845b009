"""Reading printed pages back, with readers that know nothing of how they were made."""

from functools import cached_property
from itertools import pairwise
from pathlib import Path

import pdfplumber
from msgspec import Struct

POINTS_PER_MM = 72 / 25.4


class CardPage(Struct, frozen=True, dict=True):
    """One page of cards.pdf as pdfplumber reads it, in points from the lower left."""

    width: float
    height: float
    lines: list[dict]
    rects: list[dict]
    chars: list[dict]

    @cached_property
    def upright_cuts(self) -> list[float]:
        """The x of the marks above and below the cards, left to right, folds included."""
        return sorted({round(line["x0"], 3) for line in self._marks if line["x0"] == line["x1"]})

    @cached_property
    def level_cuts(self) -> list[float]:
        """The y of the marks beside the cards, bottom to top, folds included."""
        return sorted({round(line["y0"], 3) for line in self._marks if line["y0"] == line["y1"]})

    @cached_property
    def upright_folds(self) -> list[float]:
        """The x of the dashed marks above and below the cards."""
        return sorted({round(line["x0"], 3) for line in self._dashed if line["x0"] == line["x1"]})

    @cached_property
    def level_folds(self) -> list[float]:
        """The y of the dashed marks beside the cards."""
        return sorted({round(line["y0"], 3) for line in self._dashed if line["y0"] == line["y1"]})

    @cached_property
    def cells(self) -> list[tuple[float, float, float, float]]:
        """The rectangles between neighbouring marks: left, bottom, right, top.

        Gutters between cards are no cells. Paper that is not cut ends at its edges.
        """
        whole = not self.upright_cuts
        across = [0, self.width] if whole else self.upright_cuts
        down = [0, *self.level_cuts, self.height] if whole else self.level_cuts
        return [
            (left, bottom, right, top)
            for bottom, top in _neighbours(down)
            for left, right in _neighbours(across)
        ]

    @property
    def _dashed(self) -> list[dict]:
        return [line for line in self._marks if line["dash"] and line["dash"][0]]

    @property
    def _marks(self) -> list[dict]:
        """Lines of 3 to 4 mm; the ticks of the check rule are shorter, the rule longer."""
        return [
            line
            for line in self.lines
            if 3.2 < max(line["x1"] - line["x0"], line["y1"] - line["y0"]) / POINTS_PER_MM < 4
        ]

    def text_in(self, cell: tuple[float, float, float, float]) -> str:
        """Return the characters in a rectangle in the order they were printed, without spaces."""
        left, bottom, right, top = cell
        return "".join(
            char["text"]
            for char in self.chars
            if left < (char["x0"] + char["x1"]) / 2 < right
            and bottom < (char["y0"] + char["y1"]) / 2 < top
        ).replace(" ", "")

    def directions_in(self, cell: tuple[float, float, float, float]) -> set[int]:
        """Return +1 where letters stand upright, -1 where they stand on their heads."""
        left, bottom, right, top = cell
        return {
            1 if char["matrix"][0] > 0 else -1
            for char in self.chars
            if left < char["x0"] < right and bottom < char["y0"] < top
        }

    def ribbon_in(self, cell: tuple[float, float, float, float]) -> tuple[float, ...]:
        """Return the edges of the one filled rectangle in a cell."""
        left, bottom, right, top = cell
        (ribbon,) = {
            tuple(round(rect[edge], 3) for edge in ("x0", "y0", "x1", "y1"))
            for rect in self.rects
            if rect["fill"]
            and left < rect["x0"] < rect["x1"] < right
            and bottom < rect["y0"] < rect["y1"] < top
        }
        return ribbon


def _neighbours(lines: list[float]) -> list[tuple[float, float]]:
    """Return the pairs of neighbouring lines that are farther apart than any gutter is wide."""
    return [(one, other) for one, other in pairwise(lines) if other - one > 20 * POINTS_PER_MM]


def card_pages(path: Path) -> list[CardPage]:
    """Return the pages of a cards.pdf."""
    with pdfplumber.open(path) as pdf:
        return [
            CardPage(page.width, page.height, page.lines, page.rects, page.chars)
            for page in pdf.pages
        ]
