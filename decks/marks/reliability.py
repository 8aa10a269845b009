"""How far the scores of a guide can be relied on.

Kuder & Richardson 1937, Psychometrika 2, 151-160, formula 20, with one divisor: the variances of
blanks and of scores are both divided by the number of papers. Only papers that are marked as a
whole have a score.
"""

from math import sqrt

from decks.marks.matrix import Whole, scores, variance


def kr20(papers: Whole) -> float | None:
    """Return KR-20, at most 1; None for fewer than two blanks or where scores do not vary."""
    blanks = len(papers[0]) if papers else 0
    if blanks < 2:  # noqa: PLR2004 (the formula divides by one less)
        return None
    of_scores = variance(scores(papers))
    if not of_scores:
        return None
    of_blanks = sum(variance([paper[blank] for paper in papers]) for blank in range(blanks))
    return blanks / (blanks - 1) * (1 - of_blanks / of_scores)


def standard_error(papers: Whole) -> float | None:
    """Return the standard error of measurement in points, or None where KR-20 is undefined.

    The standard deviation of scores times the root of one less the reliability.
    """
    reliability = kr20(papers)
    if reliability is None:
        return None
    spread = sqrt(variance(scores(papers)))
    return spread * sqrt(1 - max(0.0, reliability))
