"""Filled outlines for the signs we draw, in thousandths of an em: strokes, arcs, discs, polygons.

An outline is a closed run of points. All run anticlockwise but holes, so that shapes laid over one
another are one shape.
"""

from collections.abc import Sequence
from itertools import pairwise
from math import atan2, cos, hypot, pi, radians, sin
from typing import TypeAlias

Point: TypeAlias = tuple[float, float]
Outline: TypeAlias = tuple[Point, ...]

STEP = 9
"""Degrees of an arc between one point and the next."""


def polygon(*points: Point) -> list[Outline]:
    """Return a filled polygon."""
    around = sum(
        ax * by - bx * ay for (ax, ay), (bx, by) in zip(points, _turned(points), strict=True)
    )
    return [points if around > 0 else points[::-1]]


def stroke(*points: Point, wide: float) -> list[Outline]:
    """Return a line through points, with round joints and ends."""
    bars = [_bar(a, b, wide) for a, b in pairwise(points)]
    return [*bars, *(o for point in points for o in disc(*point, wide / 2))]


def flat(start: Point, end: Point, *, wide: float) -> list[Outline]:
    """Return a straight line with square ends."""
    return [_bar(start, end, wide)]


def edged(*points: Point, wide: float) -> list[Outline]:
    """Return the edge of a polygon as a line."""
    return stroke(*points, points[0], wide=wide)


def arc(centre: Point, radius: float, start: float, end: float, *, wide: float) -> list[Outline]:
    """Return part of a circle as a line, from one angle in degrees to a greater one."""
    x, y = centre
    count = max(int((end - start) / STEP), 2)
    angles = [radians(start + (end - start) * n / count) for n in range(count + 1)]
    outer, inner = radius + wide / 2, radius - wide / 2
    out = [(x + outer * cos(a), y + outer * sin(a)) for a in angles]
    back = [(x + inner * cos(a), y + inner * sin(a)) for a in reversed(angles)]
    return [(*out, *back)]


def disc(x: float, y: float, radius: float) -> list[Outline]:
    """Return a filled circle."""
    angles = [2 * pi * n / 24 for n in range(24)]
    return [tuple((x + radius * cos(a), y + radius * sin(a)) for a in angles)]


def ring(x: float, y: float, radius: float, *, wide: float) -> list[Outline]:
    """Return a circle as a line."""
    outer, inner = disc(x, y, radius + wide / 2), disc(x, y, radius - wide / 2)
    return [*outer, inner[0][::-1]]


def box(x: float, y: float, width: float, height: float) -> list[Outline]:
    """Return a filled rectangle."""
    return [((x, y), (x + width, y), (x + width, y + height), (x, y + height))]


def hollow(x: float, y: float, width: float, height: float, *, wide: float) -> list[Outline]:
    """Return a rectangle as a line that lies inside its edges."""
    inner = box(x + wide, y + wide, width - 2 * wide, height - 2 * wide)
    return [*box(x, y, width, height), inner[0][::-1]]


def regular(
    corners: int, centre: Point, radius: float, *, first: float = 90, dent: float = 1
) -> tuple[Point, ...]:
    """Return the corners of a regular polygon; with a dent below 1, those of a star."""
    count = corners if dent == 1 else 2 * corners
    places = []
    for n in range(count):
        angle = radians(first + 360 * n / count)
        reach = radius * (dent if dent != 1 and n % 2 else 1)
        places.append((centre[0] + reach * cos(angle), centre[1] + reach * sin(angle)))
    return tuple(places)


def arrow(start: Point, end: Point, *, wide: float, head: float = 190) -> list[Outline]:
    """Return a line with an open arrowhead at its end."""
    return [*stroke(start, end, wide=wide), *tip(start, end, wide=wide, head=head)]


def tip(start: Point, end: Point, *, wide: float, head: float) -> list[Outline]:
    """Return the open arrowhead alone, at the end of a line."""
    angle = atan2(end[1] - start[1], end[0] - start[0])
    sides = [
        (end[0] - head * cos(angle + turn), end[1] - head * sin(angle + turn))
        for turn in (-pi / 4, pi / 4)
    ]
    return stroke(sides[0], end, sides[1], wide=wide)


def half_tip(start: Point, end: Point, *, wide: float) -> list[Outline]:
    """Return a line with half an arrowhead, on its left side."""
    angle = atan2(end[1] - start[1], end[0] - start[0]) - pi / 4
    side = (end[0] - 200 * cos(angle), end[1] - 200 * sin(angle))
    return stroke(start, end, side, wide=wide)


def _bar(start: Point, end: Point, wide: float) -> Outline:
    (ax, ay), (bx, by) = start, end
    length = hypot(bx - ax, by - ay)
    dx, dy = -(by - ay) / length * wide / 2, (bx - ax) / length * wide / 2
    return ((ax - dx, ay - dy), (bx - dx, by - dy), (bx + dx, by + dy), (ax + dx, ay + dy))


def _turned(points: Sequence[Point]) -> list[Point]:
    return [*points[1:], points[0]]
