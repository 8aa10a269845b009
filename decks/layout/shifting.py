"""Moving what is on a back page, so that a printer that is off lands it behind its front.

A shift turns the page's things a very little about the page's middle, then moves them. Only backs
are moved. Text on cards that are cut stays off the white edge of the paper with any shift that
can be measured: it stands 10.5 mm from that edge (`BESIDE` and the face's inset), and goes at
most 8 mm at the scales of the test page and a skew's worth farther beyond them. Lines are clipped
at the edge, and the mark in the corner stops there.
"""

import math
from collections.abc import Iterable
from functools import singledispatch

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.frame import Line, Placed, Thing, Wedge
from decks.layout.page import BESIDE, BEYOND, Page
from decks.layout.units import mm
from decks.lengths import Shift
from decks.printers import SPAN

STRIP = BEYOND - BESIDE
"""The line of small print at the head and the foot, which no mark is moved into."""


class Area(Struct, frozen=True, kw_only=True):
    """A rectangle by its edges, in points from the lower left of the page."""

    left: float
    bottom: float
    right: float
    top: float


class Move(Struct, frozen=True, kw_only=True):
    """A shift as a map of points: a turn about (`middle_x`, `middle_y`), then a way to go.

    Lengths are in points; `angle` is in radians, anticlockwise. `area` is what the printer can
    print on.
    """

    middle_x: float
    middle_y: float
    right: float
    up: float
    angle: float
    area: Area

    def point(self, x: float, y: float) -> tuple[float, float]:
        """Return where a point goes."""
        x, y = x - self.middle_x, y - self.middle_y
        sine, cosine = math.sin(self.angle), math.cos(self.angle)
        return (
            self.middle_x + self.right + x * cosine - y * sine,
            self.middle_y + self.up + x * sine + y * cosine,
        )


def printable(page: Page) -> Area:
    """Return what lies within the white edges of a page."""
    return Area(
        left=page.white.left,
        bottom=page.white.bottom,
        right=page.width - page.white.right,
        top=page.height - page.white.top,
    )


def angle_of(shift: Shift) -> float:
    """Return the turn of a shift in radians, anticlockwise.

    Where the head goes farther right than the foot, the page turns clockwise.
    """
    return -math.atan(shift.skew / SPAN)


def move_by(shift: Shift, page: Page) -> Move:
    """Return the map of points for a shift of a page."""
    return Move(
        middle_x=page.width / 2,
        middle_y=page.height / 2,
        right=mm(shift.right),
        up=mm(shift.up),
        angle=angle_of(shift),
        area=printable(page),
    )


def shifted(things: Iterable[Thing], shift: Shift, page: Page) -> list[Thing]:
    """Return the faces and marks of a back page, moved by a shift.

    A line that leaves the printable area is cut off there, and left out if nothing remains.
    Raises `TypeError` for what is neither `Placed` nor a line nor a wedge.
    """
    move = move_by(shift, page)
    return [moved for thing in things if (moved := _shifted(thing, move))]


@singledispatch
def _shifted(thing: Thing, move: Move) -> Thing | None:
    raise TypeError(thing, move)


@_shifted.register
def _(thing: Placed, move: Move) -> Thing | None:
    half_width, half_height = thing.frame.width / 2, thing.frame.height / 2
    x, y = move.point(thing.x + half_width, thing.y + half_height)
    return replace(
        thing,
        x=x - half_width,
        y=y - half_height,
        rotation=thing.rotation + math.degrees(move.angle),
    )


@_shifted.register
def _(thing: Line, move: Move) -> Thing | None:
    x, y = move.point(thing.x, thing.y)
    end_x, end_y = move.point(thing.end_x, thing.end_y)
    area = replace(move.area, bottom=move.area.bottom + STRIP, top=move.area.top - STRIP)
    return clipped(replace(thing, x=x, y=y, end_x=end_x, end_y=end_y), area)


@_shifted.register
def _(thing: Wedge, move: Move) -> Thing | None:
    points = [move.point(*point) for point in thing.points]
    across, along = [x for x, _y in points], [y for _x, y in points]
    back_x = _back_inside(across, move.area.left, move.area.right)
    back_y = _back_inside(along, move.area.bottom, move.area.top)
    return replace(thing, points=tuple((x + back_x, y + back_y) for x, y in points))


def _back_inside(values: list[float], least: float, most: float) -> float:
    return max(least - min(values), 0) - max(max(values) - most, 0)


def clipped(line: Line, area: Area) -> Line | None:
    """Return the part of a line that lies in an area, or None (after Liang and Barsky, 1984)."""
    run, rise = line.end_x - line.x, line.end_y - line.y
    start, end = 0.0, 1.0
    for step, room in (
        (-run, line.x - area.left),
        (run, area.right - line.x),
        (-rise, line.y - area.bottom),
        (rise, area.top - line.y),
    ):
        if step == 0 and room < 0:
            return None
        if step < 0:
            start = max(start, room / step)
        if step > 0:
            end = min(end, room / step)
    if start >= end:
        return None
    return replace(
        line,
        x=line.x + start * run,
        y=line.y + start * rise,
        end_x=line.x + end * run,
        end_y=line.y + end * rise,
    )
