"""Where lines break: as few lines as can be; on cards as even as can be, in running text as full.

Texts break at white space only, never inside a word, and always where the teacher broke the line.
A non-breaking space holds its words together.
"""

import re
from collections.abc import Callable, Sequence
from typing import TypeAlias

Measure: TypeAlias = Callable[[str, bool], float]
"""Width of a text in ems; the second argument says whether it is set in the strong weight."""


def words_of(line: str) -> list[str]:
    """Return the parts of a line that must stay whole."""
    return [word for word in re.split(r"[ \t]+", line) if word]


def split_word(word: str, width: float, *, measure: Measure, strong: bool = False) -> list[str]:
    """Part a word that is wider than `width` ems into pieces that are not; a last resort."""
    pieces = [""]
    for letter in word:
        if pieces[-1] and measure(pieces[-1] + letter, strong) > width:
            pieces.append("")
        pieces[-1] += letter
    return pieces


def break_text(
    text: str, width: float, *, measure: Measure, strong: bool = False
) -> list[str] | None:
    """Return the even lines of a text in a column of `width` ems; None where a word is wider."""
    lines: list[str] = []
    for line in text.split("\n"):
        words = words_of(line)
        widths = [measure(word, strong) for word in words]
        ends = break_evenly(widths, measure(" ", strong), width)
        if ends is None:
            return None
        lines += _joined(words, ends)
    return lines


def fill_text(text: str, width: float, *, measure: Measure, strong: bool = False) -> list[str]:
    """Return the full lines of running text in a column of `width` ems.

    A word that is wider than the column is split.
    """
    lines: list[str] = []
    for line in text.split("\n"):
        words = [
            piece
            for word in words_of(line)
            for piece in split_word(word, width, measure=measure, strong=strong)
        ]
        widths = [measure(word, strong) for word in words]
        lines += _joined(words, break_full(widths, measure(" ", strong), width))
    return lines


def _joined(words: Sequence[str], ends: Sequence[int]) -> list[str]:
    return [" ".join(words[a:b]) for a, b in zip([0, *ends[:-1]], ends, strict=True)]


def break_evenly(widths: Sequence[float], space: float, column: float) -> list[int] | None:
    """Return where each line ends, as counts of words; None where a word is wider than the column.

    The number of lines is the least there can be; among breaks into so many lines the one with the
    least sum of squared line widths is taken, which is the most even one.
    """
    if any(width > column for width in widths):
        return None
    if not widths:
        return [0]
    count = len(break_full(widths, space, column))
    ends = [len(widths)]
    table = _table(widths, space, column, count)
    for row in reversed(table[1:]):
        ends.append(row[ends[-1]][1])
    return ends[-2::-1]


def break_full(widths: Sequence[float], space: float, column: float) -> list[int]:
    """Return where each line ends, as counts of words, every line as full as can be.

    These are as few lines as there can be. A word that is wider than the column has its own line.
    """
    ends = []
    used = -space
    for n, width in enumerate(widths):
        used += space + width
        if used > column and n:
            ends.append(n)
            used = width
    return [*ends, len(widths)]


def _table(
    widths: Sequence[float], space: float, column: float, count: int
) -> list[dict[int, tuple[float, int]]]:
    """For each number of lines: words set so far -> (least cost, where the last line began)."""
    rows: list[dict[int, tuple[float, int]]] = [{0: (0.0, 0)}]
    for _ in range(count):
        row: dict[int, tuple[float, int]] = {}
        for start, (cost, _start) in rows[-1].items():
            used = -space
            for end in range(start, len(widths)):
                used += space + widths[end]
                if used > column:
                    break
                least = row.get(end + 1)
                if least is None or cost + used * used < least[0]:
                    row[end + 1] = (cost + used * used, start)
        rows.append(row)
    return rows
