"""Marked papers as figures: a row for each paper, a column for each blank, 1, 0 or None."""

from collections.abc import Sequence
from math import sqrt
from typing import TypeAlias

Mark: TypeAlias = int | None
Papers: TypeAlias = Sequence[Sequence[Mark]]
Whole: TypeAlias = list[list[int]]


def whole_papers(papers: Papers) -> Whole:
    """Return the papers that have a mark in every blank; only those can be added up."""
    return [
        [mark for mark in paper if mark is not None]
        for paper in papers
        if all(mark is not None for mark in paper)
    ]


def scores(papers: Whole) -> list[int]:
    """Return each paper's number right."""
    return [sum(paper) for paper in papers]


def variance(values: Sequence[float]) -> float:
    """Return the mean squared distance from the mean: divided by the number of values."""
    mean = sum(values) / len(values)
    return sum((value - mean) ** 2 for value in values) / len(values)


def correlation(one: Sequence[float], other: Sequence[float]) -> float | None:
    """Return Pearson's correlation, or None where one of the two does not vary."""
    if len(one) < 2:  # noqa: PLR2004 (a line needs two points)
        return None
    mean_one, mean_other = sum(one) / len(one), sum(other) / len(other)
    together = sum((a - mean_one) * (b - mean_other) for a, b in zip(one, other, strict=True))
    spread = sqrt(sum((a - mean_one) ** 2 for a in one) * sum((b - mean_other) ** 2 for b in other))
    return together / spread if spread else None
