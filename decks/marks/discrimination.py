"""Whether those who did well on a whole guide also did better on one of its blanks.

The published formulas of item analysis, of one blank: its mark on each paper that is marked as a
whole, and the score of each of these papers, in the same order.
"""

from collections.abc import Sequence
from itertools import groupby

from decks.marks.matrix import correlation

TAIL = 0.27
"""The share of papers in the upper and in the lower group (Kelley 1939, Journal of Educational
Psychology 30, 17-24)."""


def upper_lower(marks: Sequence[int], totals: Sequence[int]) -> float | None:
    """Return the share right in the upper group less that in the lower, -1 to 1.

    Papers that tie where a group ends count with the share of them that belongs to it, so that
    their order plays no part. None where there are no papers or all have one score.
    """
    if len(set(totals)) < 2:  # noqa: PLR2004 (no upper and lower)
        return None
    ranked = sorted(zip(totals, marks, strict=True))
    size = TAIL * len(ranked)
    return _share_right(ranked[::-1], size) - _share_right(ranked, size)


def _share_right(ranked: Sequence[tuple[int, int]], size: float) -> float:
    """Return the share right among the first `size` papers, ties at the end averaged."""
    right, left = 0.0, size
    for _total, tied in groupby(ranked, key=lambda pair: pair[0]):
        group = [mark for _, mark in tied]
        taken = min(left, len(group))
        right += taken * sum(group) / len(group)
        left -= taken
        if left <= 0:
            break
    return right / size


def corrected_point_biserial(marks: Sequence[int], totals: Sequence[int]) -> float | None:
    """Return the correlation of a blank with the score of the other blanks.

    None where either does not vary: an item that all or none get right says nothing.
    """
    rests = [total - mark for total, mark in zip(totals, marks, strict=True)]
    return correlation(marks, rests)
