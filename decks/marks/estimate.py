"""What share of students to expect to get an item right, once there are marks.

The share is taken to be drawn from a Beta distribution whose mean is what was expected and whose
strength is counted in tries; after the marks it is the mean of the posterior (Gelman et al.,
Bayesian Data Analysis, chapter 2 and section 5.1).
"""

from msgspec import Struct

STRENGTH = 8.0
"""A level counts as much as so many tries, our own judgement: a third of a class of 24, so that one
marked class weighs three times as much as what the teacher thought before."""


class Belief(Struct, frozen=True):
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
