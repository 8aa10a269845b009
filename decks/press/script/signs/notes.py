"""Notes of music: a crotchet, a quaver, and pairs that are joined by beams."""

from functools import partial
from math import cos, pi, radians, sin

from decks.press.script.signs import outlines as o
from decks.press.script.signs.sign import CAP, Sign

HEAD = 135, 98
TILT = radians(20)
FOOT = 100
BEAM = 95
"""Half the width and height of a head, how it leans, its middle, and how thick a beam is."""

FIRST, SECOND = 160.0, 540.0
"""Where the middles of heads lie."""


def notes() -> dict[str, Sign]:
    """Return the four notes that Unicode has among its signs."""
    return {
        "♩": Sign(340, partial(_note, FIRST)),
        "♪": Sign(500, _quaver),
        "♫": Sign(720, partial(_joined, 1)),
        "♬": Sign(720, partial(_joined, 2)),
    }


def _note(x: float, w: float) -> list[o.Outline]:
    side = _stem(x, w)
    return [*_head(x), *o.flat((side, FOOT + 20), (side, CAP), wide=0.7 * w)]


def _stem(x: float, w: float) -> float:
    """Return the middle of the stem at the right side of a head."""
    return x + HEAD[0] - 0.35 * w


def _head(x: float) -> list[o.Outline]:
    wide, high = HEAD
    angles = [2 * pi * n / 24 for n in range(24)]
    return [
        tuple(
            (
                x + wide * cos(a) * cos(TILT) - high * sin(a) * sin(TILT),
                FOOT + wide * cos(a) * sin(TILT) + high * sin(a) * cos(TILT),
            )
            for a in angles
        )
    ]


def _quaver(w: float) -> list[o.Outline]:
    side = _stem(FIRST, w)
    flag = o.stroke(
        (side, CAP - 0.35 * w),
        (side + 70, CAP - 160),
        (side + 140, CAP - 260),
        (side + 120, CAP - 400),
        wide=0.7 * w,
    )
    return [*_note(FIRST, w), *flag]


def _joined(beams: int, w: float) -> list[o.Outline]:
    left, right = _stem(FIRST, w) - 0.35 * w, _stem(SECOND, w) + 0.35 * w
    tops = [CAP - n * 1.7 * BEAM for n in range(beams)]
    bars = [outline for top in tops for outline in o.box(left, top - BEAM, right - left, BEAM)]
    return [*_note(FIRST, w), *_note(SECOND, w), *bars]
