"""Breaking a row of widths into lines, as even as can be or as full."""

from collections.abc import Sequence
from typing import TypeAlias

LOST = 100.0
"""The price of a line that holds one lone thing: higher than that of any unevenness."""

Row: TypeAlias = dict[int, tuple[float, int]]
"""Things set so far -> the least cost, and where the last line began."""


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
    if not widths:
        return [0]
    count = len(break_full(widths, space, column))
    if count == 1:
        return [len(widths)]
    unit = ((sum(widths) + space * (len(widths) - count)) / count) ** 2
    prices = [price * unit for price in prices or [0.0] * len(widths)]
    lost = [LOST * unit if it else 0.0 for it in lone or [False] * len(widths)]
    return _ends(_table(widths, space, column, count, prices, lost), len(widths))


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


def _ends(table: Sequence[Row], last: int) -> list[int]:
    ends = [last]
    for row in reversed(table[1:]):
        ends.append(row[ends[-1]][1])
    return ends[-2::-1]


def _table(  # noqa: PLR0913, PLR0917 (what a line costs, plainly)
    widths: Sequence[float],
    space: float,
    column: float,
    count: int,
    prices: Sequence[float],
    lost: Sequence[float],
) -> list[Row]:
    """Return the row for each number of lines."""
    rows: list[Row] = [{0: (0.0, 0)}]
    for _ in range(count):
        row: Row = {}
        for start, (before, _start) in rows[-1].items():
            used = -space
            for end in range(start, len(widths)):
                used += space + widths[end]
                if used > column:
                    break
                cost = before + used * used + (lost[end] if end == start else 0.0)
                if end + 1 < len(widths):
                    cost += prices[end]
                least = row.get(end + 1)
                if least is None or cost < least[0]:
                    row[end + 1] = (cost, start)
        rows.append(row)
    return rows
