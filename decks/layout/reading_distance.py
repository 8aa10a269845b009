"""How large letters must be to be read from a distance, and from how far a size can be read.

A letter of height h at a distance d is seen under the angle α with h = 2·d·tan(α/2).
"""

from functools import cache
from math import radians, tan

from decks.layout.fitting import LADDER
from decks.layout.units import mm

LEAST_ANGLE = 16.0
"""Minutes of arc: the least for letters to be read, ISO 9241-3 and 9241-303; 20 to 22 is better."""


def letter_height(distance: float, *, angle: float = LEAST_ANGLE) -> float:
    """Return the height of letters seen under an angle in minutes, in the unit of the distance."""
    return 2 * distance * tan(radians(angle / 60) / 2)


def size_for(distance: float, letter: float) -> float:
    """Return the least size in points to be read from so many millimetres.

    `letter` is the height of the letters that must be made out, in ems.
    """
    return mm(letter_height(distance)) / letter


def distance_for(size: float, letter: float) -> float:
    """Return from how many millimetres a size in points can be read; `letter` as above."""
    return size * letter / mm(letter_height(1))


@cache
def least_step(distance: float, letter: float) -> float:
    """Return the least size of the ladder to be read from so many millimetres.

    Where the largest step is too small, that is the size itself.
    """
    needed = size_for(distance, letter)
    return min((size for size in LADDER if size >= needed), default=needed)
