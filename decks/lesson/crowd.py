"""How many bases and catchers a class wants; our own judgements, all of them."""

from msgspec import Struct

STUDENTS_A_CATCHER = 12
WALKERS_A_BASE = 2.5
WALKERS_A_BASE_AT_LAST = 5
LEAST_BASES = 2


class Crowd(Struct, frozen=True):
    """A number of students, and the catchers and bases for them: at first and at last."""

    students: int
    catchers: int
    first: int
    last: int


def crowd(students: int, cards: int) -> Crowd:
    """Return what so many students want where a set has so many cards.

    At first a base for two or three who walk, at last one for five.
    """
    catchers = max(1, students // STUDENTS_A_CATCHER)
    walkers = max(0, students - catchers)
    first = min(cards, max(LEAST_BASES, round(walkers / WALKERS_A_BASE)))
    last = min(first, max(LEAST_BASES, round(walkers / WALKERS_A_BASE_AT_LAST)))
    return Crowd(students, catchers, first, last)
