"""The outline of a figure whose parts have room to write in; a drawing of our own."""

import math

from msgspec import Struct

from decks.layout.frame import Curve, Line
from decks.press.handouts.forms.writing import Point, straight

HEAD_HALF = 124.0
WAIST = 100.0
TALL = 480.0
"""From this height on the figure has a larger head and a longer waist."""

ARMS = 0.44
"""The share of the height below the shoulders that arms and chest have."""

ROUND, NEAR = 62.0, 24.0
"""How far from its corner a hand or a foot begins to be round, and where its control lies."""

INNER = 38.0
"""The same on the inner side of a foot, which is less round."""

IN = 15.0


class Room(Struct, frozen=True):
    """A part of the figure to write in: its upper left corner, width and height, in points."""

    x: float
    top: float
    width: float
    height: float


class Figure(Struct, frozen=True):
    """A figure of a width and height; its rooms are measured from the lower left corner."""

    width: float
    height: float

    @property
    def half(self) -> float:
        """Half the width."""
        return self.width / 2

    @property
    def head(self) -> float:
        """How far the chin lies below the top."""
        return 134 if self.height >= TALL else 110

    @property
    def shoulders(self) -> float:
        """How far the shoulders lie below the top."""
        return self.head + 20

    @property
    def gap(self) -> float:
        """From the arms down to the hips, and from there to where the legs part."""
        return 38 if self.height >= TALL else 30

    @property
    def arm(self) -> float:
        """How far the arms reach down from the top."""
        return self.shoulders + ARMS * (self.height - self.shoulders)

    @property
    def hip(self) -> float:
        """How far the hips lie below the top."""
        return self.arm + self.gap

    @property
    def arms(self) -> tuple[Room, Room]:
        """The rooms in the arms, left and right as one looks at it."""
        width = self.half - WAIST - 2 * IN
        top, height = self.height - self.shoulders - 6, self.arm - self.shoulders - 26
        return (
            Room(1.3 * IN, top, width, height),
            Room(self.half + WAIST + 0.7 * IN, top, width, height),
        )

    @property
    def chest(self) -> Room:
        """The room between the arms."""
        width = 2 * (WAIST - IN)
        top, height = self.height - self.shoulders - 6, self.hip - self.shoulders - 20
        return Room(self.half - width / 2, top, width, height)

    @property
    def legs(self) -> tuple[Room, Room]:
        """The rooms in the legs, left and right as one looks at it."""
        top = self.height - self.hip - self.gap + 8
        width = self.half - 4.8 * IN
        return (
            Room(2.2 * IN, top, width, top - 18),
            Room(self.half + 2.6 * IN, top, width, top - 18),
        )

    def head_width(self, down: float) -> float:
        """Return how wide a line in the head may be that lies so far below the top."""
        half = self.head / 2
        return 2 * HEAD_HALF * math.sqrt(max(0.0, 1 - ((down - half) / half) ** 2)) - 2 * IN

    @property
    def drawn(self) -> tuple[Curve | Line, ...]:
        """The outline, and the seams between its parts."""
        right = [*self._head(), *self._arm(), *self._leg()]
        left = [(-x, down) for x, down in reversed(right)]
        around = [*right, *left[1:]]
        points = tuple((self.half + x, self.height - down) for x, down in around)
        return Curve(points, width=1.6, stroke="quiet", fill="white"), *self._seams()

    def _head(self) -> list[Point]:
        """Return the right half from the crown to the chin."""
        side, half = HEAD_HALF, self.head / 2
        return [
            *[(0.0, 1.0), (0.55 * side, 1.0), (side, 0.45 * half), (side, half)],
            *[(side, 1.5 * half), (0.7 * side, self.head - 4), (38.0, self.head - 1)],
        ]

    def _arm(self) -> list[Point]:
        """Return the right half from the chin to the waist; the second value counts downwards."""
        hand, top, foot = self.half - 1, self.shoulders, self.arm
        path = [(30.0, self.head + 2), (30.0, self.head + 14), (46.0, self.head + 16)]
        path += [(80, top), (WAIST + 20, top), (hand - ROUND, top)]
        path += [(hand - NEAR, top), (hand, top + NEAR), (hand, top + ROUND)]
        path += straight(path[-1], (hand, max(top + ROUND, foot - ROUND)))
        path += [(hand, foot - NEAR), (hand - NEAR, foot), (hand - ROUND, foot)]
        return [*path, (WAIST + 50, foot), (WAIST + 12, foot), (WAIST + 2, foot + 0.6 * self.gap)]

    def _leg(self) -> list[Point]:
        """Return the right half from the waist to where the legs part."""
        side, end, hip = self.half - 5, self.height - 1, self.hip
        crotch = hip + self.gap
        path = [(WAIST - 2, hip - 4), (WAIST + 4, hip + 6), (WAIST + 22, hip + 10)]
        path += [(WAIST + 76, hip + 18), (side, hip + 14), (side, hip + 80)]
        path += straight(path[-1], (side, max(hip + 80, end - ROUND)))
        path += [(side, end - NEAR), (side - NEAR, end), (side - ROUND, end)]
        path += straight(path[-1], (24 + INNER, end))
        path += [(24 + INNER / 3, end), (24, end - INNER / 3), (23.5, end - INNER)]
        return [*path, (22, crotch + 40), (17, crotch), (0, crotch)]

    def _seams(self) -> list[Line]:
        """Return what parts the arms from the chest and the chest from the legs."""
        top, foot = self.height - self.shoulders - 6, self.height - self.arm - 4
        hip = self.height - self.hip
        upright = [(x, top, x, foot) for x in (self.half - WAIST, self.half + WAIST)]
        level = (self.half - WAIST + 6, hip, self.half + WAIST - 6, hip)
        return [Line(*ends, 0.8, "frame", dashed=True) for ends in (*upright, level)]
