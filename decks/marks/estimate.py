"""What share of students to expect to get an item right, once there are marks.

The share is taken to be drawn from a Beta distribution whose mean is what was expected and whose
strength is counted in tries; after the marks it is the mean of the posterior (Gelman et al.,
Bayesian Data Analysis, chapter 2 and section 5.1).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

STRENGTH = 8.0
"""A level counts as much as so many tries, our own judgement: a third of a class of 24, so that one
marked class weighs three times as much as what the teacher thought before."""


@dataclass(frozen=True, slots=True)
class Belief:
    """A Beta distribution, by its mean and by how many tries it counts for."""

    mean: float
    strength: float

    @property
    def a(self) -> float:
        """The first parameter: what counts as right."""
        return self.mean * self.strength

    @property
    def b(self) -> float:
        """The second parameter: what counts as wrong."""
        return (1 - self.mean) * self.strength

    @property
    def deviation(self) -> float:
        """The standard deviation of the share."""
        return sqrt(self.mean * (1 - self.mean) / (self.strength + 1))


def after(before: Belief, right: float, tries: float) -> Belief:
    """Return what is believed after so many right of so many tries.

    Raises `ValueError` for more right than tried.
    """
    if not 0 <= right <= tries:
        raise ValueError(right, tries)
    strength = before.strength + tries
    if not strength:
        return before
    return Belief((before.a + right) / strength, strength)


def belief_by_moments(groups: Sequence[tuple[float, float]]) -> Belief | None:
    """Return the belief that the shares of earlier groups suggest, each (right, tries).

    The method of moments on the observed shares, as in Bayesian Data Analysis, section 5.1; None
    where the shares do not differ or there are fewer than two groups.
    """
    shares = [right / tries for right, tries in groups if tries]
    if len(shares) < 2:  # noqa: PLR2004 (a spread needs two)
        return None
    mean = sum(shares) / len(shares)
    variance = sum((share - mean) ** 2 for share in shares) / (len(shares) - 1)
    if not variance or not 0 < mean < 1:
        return None
    strength = mean * (1 - mean) / variance - 1
    return Belief(mean, strength) if strength > 0 else None
