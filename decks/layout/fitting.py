"""The largest size at which a text fits its box, by measured widths."""

import re
from dataclasses import dataclass

from decks.layout.breaking import break_text
from decks.layout.runs import Line, Measure, Styled, width_of

LADDER = (40, 34, 28, 24, 20, 17, 14, 12)
"""Sizes for what is to be read, in points. Clear print is 12 at the least (RNIB)."""

LEADING = 1.22
"""From one baseline to the next, in ems."""

CAPITAL = 0.689
ASCENT = 0.78
DESCENT = 0.22
"""Fira Sans: height of its capitals, of its tallest plain letters, and depth below the line."""


@dataclass(frozen=True, slots=True)
class Setting:
    """A text set in lines of one size (points); `widths` are the lines' in points."""

    lines: tuple[Line, ...]
    widths: tuple[float, ...]
    size: float

    @property
    def height(self) -> float:
        """From the top of the first line's letters to the foot of the last line's, in points."""
        return height(len(self.lines), self.size)


def height(lines: int, size: float) -> float:
    """Return the height in points of so many lines of a size."""
    return ((lines - 1) * LEADING + ASCENT + DESCENT) * size


def fit(styled: Styled, *, width: float, height_: float, measure: Measure) -> Setting | None:
    """Return the text at the largest size of the ladder that fits a box, or None."""
    for size in LADDER:
        setting = set_at(styled, size, width=width, measure=measure)
        if setting and setting.height <= height_:
            return setting
    return None


def set_at(styled: Styled, size: float, *, width: float, measure: Measure) -> Setting | None:
    """Return the text at one size in a column of `width` points, or None where a word is wider."""
    lines = break_text(styled, width / size, measure=measure)
    if lines is None:
        return None
    widths = tuple(width_of(line, measure) * size for line in lines)
    return Setting(tuple(lines), widths, size)


def words_that_fit(styled: Styled, *, width: float, height_: float, measure: Measure) -> int:
    """Return how many words from the start of the text would fit at the smallest size."""
    words = list(re.finditer(r"[^ \t\n]+", styled.text))
    fitting, failing = 0, len(words) + 1
    while failing - fitting > 1:
        middle = (fitting + failing) // 2
        start = Styled(styled.text[: words[middle - 1].end()], styled.strong)
        setting = set_at(start, LADDER[-1], width=width, measure=measure)
        if setting and setting.height <= height_:
            fitting = middle
        else:
            failing = middle
    return fitting


def shorten(text: str, width: float, *, measure: Measure, strong: bool = False) -> str:
    """Return the text, cut and ended with an ellipsis where it is wider than `width` ems."""
    if measure(text, strong) <= width:
        return text
    while text and measure(text + "…", strong) > width:
        text = text[:-1].rstrip()
    return text + "…"
