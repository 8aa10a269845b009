"""Where lines break: as few lines as can be; on cards as even as can be, in running text as full.

Texts break at white space only, never inside a word, and always where the teacher broke the line.
A non-breaking space holds its words together.
"""

from collections.abc import Sequence
from dataclasses import replace

from decks.layout.runs import (
    Line,
    Measure,
    Styled,
    Word,
    lines_of,
    runs_of,
    set_line,
    width_of,
    words_of,
)


def break_text(styled: Styled, width: float, *, measure: Measure) -> list[Line] | None:
    """Return the even lines of a text in a column of `width` ems; None where a word is wider."""
    lines: list[Line] = []
    for line in lines_of(styled):
        words = words_of(runs_of(line))
        widths = [width_of(word, measure) for word in words]
        ends = break_evenly(widths, measure(" ", styled.strong), width)
        if ends is None:
            return None
        lines += _joined(words, ends, strong=styled.strong)
    return lines


def fill_text(styled: Styled, width: float, *, measure: Measure) -> list[Line]:
    """Return the full lines of running text in a column of `width` ems.

    A word that is wider than the column is split.
    """
    lines: list[Line] = []
    for line in lines_of(styled):
        words = [part for word in words_of(runs_of(line)) for part in _split(word, width, measure)]
        widths = [width_of(word, measure) for word in words]
        ends = break_full(widths, measure(" ", styled.strong), width)
        lines += _joined(words, ends, strong=styled.strong)
    return lines


def _joined(words: Sequence[Word], ends: Sequence[int], *, strong: bool) -> list[Line]:
    starts = [0, *ends[:-1]]
    return [set_line(words[a:b], strong=strong) for a, b in zip(starts, ends, strict=True)]


def _split(word: Word, width: float, measure: Measure) -> list[Word]:
    """Part a word that is wider than `width` ems into pieces that are not; a last resort."""
    if width_of(word, measure) <= width:
        return [word]
    pieces: list[Word] = [()]
    for run in word:
        for letter in run.text:
            longer = set_line([(*pieces[-1], replace(run, text=letter))], strong=run.strong)
            if pieces[-1] and width_of(longer, measure) > width:
                longer = (replace(run, text=letter),)
                pieces.append(())
            pieces[-1] = longer
    return pieces


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
