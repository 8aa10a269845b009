"""How many words a team can be expected to bring home, so that a deck is of the right size.

One walker of a team is out at a time, as in a relay: a trip is the way there and back at a walk,
with a moment to find and take a card and another to hand over.
"""

import math
from enum import Enum, auto

from msgspec import Struct

WALKING_SPEED = 1.1176
"""Metres a second: 2.5 miles an hour, one of the unhurried walks that the Youth Compendium of
Physical Activities (Butte et al. 2018) lists, between 2.0 and about 3; 1 mile is 1609.344 m."""

SECONDS_TO_TAKE = 5.0
SECONDS_TO_HAND_OVER = 3.0
"""Our own judgement; whoever has watched a class may set others."""

CAUGHT = 0.25
"""The share of carriers that a catcher stops; our own judgement."""

TOO_SOON = 0.5
"""Words that are all home before so much of the time has gone are too few."""

ROUNDING = 1e-9


class Amount(Enum):
    """Whether there are as many words as the time is for."""

    TOO_FEW = auto()
    ENOUGH = auto()
    TOO_MANY = auto()


class Reckoning(Struct, frozen=True):
    """What a team can bring home in `minutes`, of `cards` that lie there for it.

    `trips` is how many walks there and back the time is for, `words` how many of the cards come
    home. `rounds` is how often the words of all trips would fill every blank of the study guide,
    if the cards were laid out again; blanks for the words of other teams stay open.
    `minutes_for_all` is when the last card is home. `walks` is how often a student walks until
    then, at the least and at the most.
    """

    minutes: float
    cards: int
    seconds_a_trip: float
    trips: int
    words: int
    rounds: float
    minutes_for_all: float
    walks: tuple[int, int]

    @property
    def amount(self) -> Amount:
        """Whether the cards are too few, enough or too many for the time."""
        if self.words < self.cards:
            return Amount.TOO_MANY
        soon = self.minutes_for_all < TOO_SOON * self.minutes
        return Amount.TOO_FEW if soon else Amount.ENOUGH


def reckon(  # noqa: PLR0913 (each is one figure that the teacher can change)
    *,
    metres: float,
    minutes: float,
    cards: int,
    blanks: int,
    students: int = 1,
    caught: float = 0,
    speed: float = WALKING_SPEED,
    handling: float = SECONDS_TO_TAKE + SECONDS_TO_HAND_OVER,
) -> Reckoning:
    """Return what one team can bring home in the time.

    `metres` is the way from home to the cards, one way; `cards` how many lie there for the team;
    `blanks` how many the team's study guide has; `students` how many walk in turn; `caught` the
    share of them that come home without their card; `handling` the seconds a trip takes besides
    walking. Raises `ValueError` for a speed or a trip of no length, a team of nobody, and carriers
    who are all caught.
    """
    if speed <= 0 or metres < 0 or metres + handling <= 0:
        raise ValueError(metres, speed)
    if students < 1 or not 0 <= caught < 1:
        raise ValueError(students, caught)
    trip = 2 * metres / speed + handling
    trips = int(minutes * 60 / trip + ROUNDING)
    home = int(trips * (1 - caught) + ROUNDING)
    for_all = math.ceil(cards / (1 - caught) - ROUNDING)
    least, more = divmod(min(trips, for_all), students)
    return Reckoning(
        minutes,
        cards,
        trip,
        trips,
        words=min(home, cards),
        rounds=(home if cards >= blanks else min(home, cards)) / blanks if blanks else 0.0,
        minutes_for_all=for_all * trip / 60,
        walks=(least, least + bool(more)),
    )


def metres_for(
    *,
    minutes: float,
    cards: int,
    speed: float = WALKING_SPEED,
    handling: float = SECONDS_TO_TAKE + SECONDS_TO_HAND_OVER,
) -> float:
    """Return the way, one way, at which the last card comes home as the time ends."""
    return max(0.0, (minutes * 60 / cards - handling) * speed / 2) if cards else 0.0
