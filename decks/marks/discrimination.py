"""Whether those who did well on a whole guide also did better on one of its blanks.

The published formulas of item analysis. Of papers with blanks left unmarked only the whole ones
count.
"""

from collections.abc import Sequence
from itertools import groupby

from decks.marks.matrix import Papers, correlation, scores, whole_papers

TAIL = 0.27
"""The share of papers in the upper and in the lower group (Kelley 1939, Journal of Educational
Psychology 30, 17-24)."""


def upper_lower(papers: Papers, blank: int, tail: float = TAIL) -> float | None:
    """Return the share right in the upper group less that in the lower, -1 to 1.

    Papers that tie where a group ends count with the share of them that belongs to it, so that
    their order plays no part. None where there are no whole papers or all have one score.
    """
    whole = whole_papers(papers)
    totals = scores(whole)
    if len(set(totals)) < 2:  # noqa: PLR2004 (no upper and lower)
        return None
    marks = sorted(zip(totals, (paper[blank] for paper in whole), strict=True))
    size = tail * len(marks)
    return _share_right(marks[::-1], size) - _share_right(marks, size)


def _share_right(marks: Sequence[tuple[int, int]], size: float) -> float:
    """Return the share right among the first `size` papers, ties at the end averaged."""
    right, left = 0.0, size
    for _total, tied in groupby(marks, key=lambda pair: pair[0]):
        group = [mark for _, mark in tied]
        taken = min(left, len(group))
        right += taken * sum(group) / len(group)
        left -= taken
        if left <= 0:
            break
    return right / size


def corrected_point_biserial(papers: Papers, blank: int) -> float | None:
    """Return the correlation of a blank with the score of the other blanks.

    None where either does not vary: an item that all or none get right says nothing.
    """
    whole = whole_papers(papers)
    rests = [total - paper[blank] for total, paper in zip(scores(whole), whole, strict=True)]
    return correlation([paper[blank] for paper in whole], rests)
