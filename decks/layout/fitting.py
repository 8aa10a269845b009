"""The largest size at which a text fits its box, by measured widths."""

from bisect import bisect_right
from collections.abc import Sequence
from functools import cache
from itertools import count
from math import inf, nextafter

from msgspec import Struct

from decks.layout.breaking import break_prose, count_lines, count_words
from decks.layout.joints import HELD, NAME
from decks.layout.prose import Prose, prose_of
from decks.layout.runs import Line, Measure, Styled

LADDER = (150, 128, 108, 92, 78, 66, 56, 48, 40, 34, 28, 24, 20, 17, 14, 12)
"""Sizes for what is to be read, in points. Clear print is 12 at the least (RNIB)."""

LEADING = 1.22
"""From one baseline to the next, in ems."""

CAPITAL = 0.689
ASCENT = 0.78
DESCENT = 0.22
"""Fira Sans: height of its capitals, of its tallest plain letters, and depth below the line."""

MOST_OF = 2 / 3
"""A text is shortened between words only where so much of what fits is left."""

WORTH_PARTING = 1.5
"""A formula is broken only where its letters grow by more than this."""


class Setting(Struct, frozen=True):
    """A text set in lines of one size (points); `widths` are the lines' in points."""

    lines: tuple[Line, ...]
    widths: tuple[float, ...]
    size: float

    @property
    def height(self) -> float:
        """From the top of the first line's letters to the foot of the last line's, in points."""
        return lines_height(len(self.lines), self.size)


class _Box(Struct, frozen=True):
    width: float
    height: float
    most: float


def lines_height(lines: float, size: float) -> float:
    """Return the height in points of so many lines of a size."""
    return ((lines - 1) * LEADING + ASCENT + DESCENT) * size


def fit(
    styled: Styled, *, width: float, height: float, measure: Measure, most: float = inf
) -> Setting | None:
    """Return the text at the largest size of the ladder, up to `most`, that fits a box, or None.

    What belongs together stays on one line. A formula is broken where that gains much; anything
    else that belongs together only where the text fits in no other way.
    """
    prose = prose_of(styled, measure)
    box = _Box(width, height, most)
    if not _may_fit(prose, box, LADDER[-1]):
        return None  # and nothing is worked out for a text that is far too long
    size = _largest(prose, box, HELD)
    held = _held_in(prose) if size < _top(box.most) else []
    for joint in held:
        parted = _largest(prose, box, nextafter(joint, inf))
        if (joint < NAME and parted > WORTH_PARTING * size) or not size:
            size = parted
    return _set(prose, size, width) if size else None


@cache
def _top(most: float) -> float:
    """Return the largest size of the ladder up to `most`, or nought."""
    return next((size for size in LADDER if size <= most), 0)


def _held_in(prose: Sequence[Prose]) -> list[float]:
    """Return the joints at which words stay together, the weakest first."""
    return sorted({joint for line in prose for joint in line.joints if joint >= HELD})


def _largest(prose: Sequence[Prose], box: _Box, whole: float) -> float:
    """Return the largest size that fits, or nought; words joined at `whole` or more never part."""
    for size in LADDER:
        if size <= box.most and _may_fit(prose, box, size):
            lines = count_lines(prose, box.width / size, whole=whole)
            if lines is not None and lines_height(lines, size) <= box.height:
                return size
    return 0


def _may_fit(prose: Sequence[Prose], box: _Box, size: float) -> bool:
    """Return whether a size is worth trying: most are told to be too large by the sum of widths."""
    column = box.width / size
    return lines_height(sum([line.least_lines(column) for line in prose]), size) <= box.height


def _set(prose: Sequence[Prose], size: float, width: float) -> Setting | None:
    broken = break_prose(prose, width / size)
    if broken is None:
        return None
    lines, widths = zip(*broken, strict=True)
    return Setting(lines, tuple([width * size for width in widths]), size)


def height_at(styled: Styled, size: float, *, width: float, measure: Measure) -> float | None:
    """Return the height in points of a text of one size in a column of `width` points.

    None where a word is wider than the column.
    """
    lines = count_lines(prose_of(styled, measure), width / size)
    return None if lines is None else lines_height(lines, size)


def words_that_fit(
    styled: Styled, *, width: float, height: float, measure: Measure, size: float = LADDER[-1]
) -> int:
    """Return how many words from the start of the text would fit at a size, usually the least."""
    lines = next(n for n in count() if lines_height(n + 1, size) > height)
    return count_words(prose_of(styled, measure), width / size, lines)


def shorten(
    text: str, width: float, *, measure: Measure, strong: bool = False, between: bool = False
) -> str:
    """Return the text, cut and ended with an ellipsis where it is wider than `width` ems.

    It is cut after any letter, or, where `between` says so and most of what fits is left, between
    two words.
    """
    if measure(text, strong) <= width:
        return text

    def cut(letters: int) -> str:
        return text[:letters].rstrip(" ,;:·–—") + "…"

    sizes = range(1, len(text))
    most = bisect_right(sizes, width, key=lambda size: measure(cut(size), strong))
    word = text.rfind(" ", 0, most + 1) if between else -1
    return cut(word if word >= MOST_OF * most else most)
