"""How many words a team can be expected to bring home, so that a deck is of the right size.

One walker of a team is out at a time, as in a relay: a trip is the way there and back at a walk,
with a moment to find and take a card and another to hand over.
"""

from dataclasses import dataclass

WALKING_SPEED = 1.1176
"""Metres a second: 2.5 miles an hour, the slower of the two walks that the Youth Compendium of
Physical Activities (Butte et al. 2018) gives nearest to a stroll; 1 mile is 1609.344 m."""

SECONDS_TO_TAKE = 5.0
SECONDS_TO_HAND_OVER = 3.0
"""Our own judgement; whoever has watched a class may set others."""


@dataclass(frozen=True, slots=True)
class Reckoning:
    """What a team can bring home: `trips` in the time, `words` of them new, `rounds` of a guide.

    `rounds` is how often the words brought home would fill all blanks of the study guide.
    """

    seconds_a_trip: float
    trips: int
    words: int
    rounds: float


def reckon(  # noqa: PLR0913 (each is one figure that the teacher can change)
    *,
    metres: float,
    minutes: float,
    cards: int,
    blanks: int,
    speed: float = WALKING_SPEED,
    handling: float = SECONDS_TO_TAKE + SECONDS_TO_HAND_OVER,
) -> Reckoning:
    """Return what one team can bring home in the time.

    `metres` is the way from home to the cards, one way; `cards` how many lie there for the team;
    `blanks` how many the team's study guide has; `handling` the seconds a trip takes besides
    walking. Raises `ValueError` for a speed or a trip of no length.
    """
    if speed <= 0 or metres < 0 or metres + handling <= 0:
        raise ValueError(metres, speed)
    trip = 2 * metres / speed + handling
    trips = int(minutes * 60 / trip)
    words = min(trips, cards)
    return Reckoning(trip, trips, words, words / blanks if blanks else 0.0)
