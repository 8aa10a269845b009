"""Breaking a row of widths into lines, as even as can be or as full."""

from collections.abc import Sequence
from itertools import accumulate
from typing import TypeAlias

LOST = 100.0
"""The price of a line that holds one lone thing: higher than that of any unevenness."""

HAIR = 1e-9
"""What the rounding of sums may make a line wider by, in ems."""

Row: TypeAlias = dict[int, tuple[float, int]]
"""Where a line ends -> the least cost up to there, and where that line began."""


def break_evenly(
    widths: Sequence[float],
    space: float,
    column: float,
    *,
    prices: Sequence[float] = (),
    lone: Sequence[bool] = (),
) -> list[int] | None:
    """Return where each line ends, as counts of things; None where one is wider than the column.

    The number of lines is the least there can be. Among breaks into so many lines that one is taken
    for which the sum of squared line widths, which is least where lines are most even, and of the
    prices of its breaks is least. `prices[n]` is that of a break after thing `n`, as a share of the
    mean line squared; a line that is a thing marked `lone` and nothing else is avoided.
    """
    if any(width > column for width in widths):
        return None
    latest = break_full(widths, space, column)
    count = len(latest)
    if count == 1:
        return latest
    unit = ((sum(widths) + space * (len(widths) - count)) / count) ** 2
    return _ends(
        _table(
            list(accumulate((width + space for width in widths), initial=0.0)),
            [*(price * unit for price in prices[:-1] or [0.0] * (len(widths) - 1)), 0.0],
            [LOST * unit if it else 0.0 for it in lone or [False] * len(widths)],
            list(zip(_earliest(widths, space, column), latest, strict=True)),
            (space, column + HAIR),
        )
    )


def break_full(widths: Sequence[float], space: float, column: float) -> list[int]:
    """Return where each line ends, as counts of things, every line as full as can be.

    These are as few lines as there can be. A thing that is wider than the column has its own line.
    """
    ends = []
    used = -space
    for n, width in enumerate(widths):
        used += space + width
        if used > column and n:
            ends.append(n)
            used = width
    return [*ends, len(widths)]


def _earliest(widths: Sequence[float], space: float, column: float) -> list[int]:
    """Return the ends of the lines where every line is as full as can be from the last one on."""
    from_last = break_full(widths[::-1], space, column)
    return [len(widths) - end for end in from_last[-2::-1]] + [len(widths)]


def _table(
    places: Sequence[float],
    breaks: Sequence[float],
    lost: Sequence[float],
    windows: Sequence[tuple[int, int]],
    line: tuple[float, float],
) -> list[Row]:
    """Return the row for each line: where it can end, at what least cost up to there.

    `places` are where things begin that stand on one line, `windows` the first and last end of each
    line, `line` the space after its last thing and the width that it may have.
    """
    space, most = line
    rows: list[Row] = []
    before: Row = {0: (0.0, 0)}
    for first, last in windows:
        row: Row = {}
        for end in range(first, last + 1):
            foot, price = places[end] - space, breaks[end - 1]
            for start, (so_far, _) in before.items():
                width = foot - places[start]
                if start >= end or width > most:
                    continue
                cost = so_far + width * width + price + (lost[start] if end == start + 1 else 0)
                if end not in row or cost < row[end][0]:
                    row[end] = (cost, start)
        rows.append(row)
        before = row
    return rows


def _ends(rows: Sequence[Row]) -> list[int]:
    ends = list(rows[-1])
    for row in reversed(rows[1:]):
        ends.append(row[ends[-1]][1])
    return ends[::-1]
