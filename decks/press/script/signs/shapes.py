"""Shapes, solid and open: triangles, squares, diamonds, stars, hearts, dice."""

from functools import partial

from decks.press.script.signs import outlines as o
from decks.press.script.signs.sign import AXIS, Sign

LARGE, SMALL = 700, 460
"""The room of a shape of full size and of a small one."""

POINTING = {"△": 90, "▷": 0, "▽": 270, "◁": 180}
SMALL_OPEN = {"▵": 90, "▹": 0, "▿": 270, "◃": 180}
SMALL_SOLID = {"▴": 90, "▸": 0, "▾": 270, "◂": 180}
SOLID = {"▲": 90, "▶": 0, "▼": 270, "◀": 180, "►": 0, "◄": 180}
DICE = {
    "⚀": (4,),
    "⚁": (0, 8),
    "⚂": (0, 4, 8),
    "⚃": (0, 2, 6, 8),
    "⚄": (0, 2, 4, 6, 8),
    "⚅": (0, 2, 3, 5, 6, 8),
}
"""The spots of each face of a die, as places in three rows of three."""


def shapes() -> dict[str, Sign]:
    """Return triangles, squares, circles, polygons, stars and dice."""
    return {**_triangles(), **_squares(), **_round(), **_polygons(), **_suits(), **_dice()}


def _triangles() -> dict[str, Sign]:
    def hollow(room: float, radius: float, turn: float) -> Sign:
        return Sign(room, lambda w: _triangle(room / 2, radius, turn, 0.8 * w))

    def solid(room: float, radius: float, turn: float) -> Sign:
        return Sign(room, lambda _w: _solid_triangle(room / 2, radius, turn))

    return {
        **{letter: hollow(LARGE, 330, turn) for letter, turn in POINTING.items()},
        **{letter: solid(LARGE, 340, turn) for letter, turn in SOLID.items()},
        **{letter: hollow(SMALL, 200, turn) for letter, turn in SMALL_OPEN.items()},
        **{letter: solid(SMALL, 200, turn) for letter, turn in SMALL_SOLID.items()},
    }


def _triangle(x: float, radius: float, turn: float, w: float) -> list[o.Outline]:
    return o.edged(*o.regular(3, (x, AXIS - 30), radius - w / 2, first=turn), wide=w)


def _solid_triangle(x: float, radius: float, turn: float) -> list[o.Outline]:
    return o.polygon(*o.regular(3, (x, AXIS - 30), radius, first=turn))


def _squares() -> dict[str, Sign]:
    def solid(side: float) -> Sign:
        return Sign(side + 120, lambda _w: o.box(60, AXIS - side / 2, side, side))

    def open_(side: float) -> Sign:
        return Sign(side + 120, lambda w: _open(side, w))

    slanted = ((60, 180), (220, 480), (640, 480), (480, 180))
    return {
        "■": solid(580),
        "□": open_(580),
        "▪": solid(300),
        "▫": open_(300),
        "☐": open_(640),
        "☑": Sign(760, lambda w: [*_open(640, w), *_tick(w)]),
        "☒": Sign(760, lambda w: [*_open(640, w), *_cross(w)]),
        "◼": solid(480),
        "◻": open_(480),
        "◾": solid(380),
        "◽": open_(380),
        "⬛": solid(680),
        "⬜": open_(680),
        "▰": Sign(LARGE, lambda _w: o.polygon(*slanted)),
        "▱": Sign(LARGE, lambda w: o.edged(*slanted, wide=0.8 * w)),
    }


def _open(side: float, w: float) -> list[o.Outline]:
    return o.hollow(60, AXIS - side / 2, side, side, wide=0.8 * w)


def _tick(w: float) -> list[o.Outline]:
    return o.stroke((220, AXIS), (335, AXIS - 130), (550, AXIS + 190), wide=1.1 * w)


def _cross(w: float) -> list[o.Outline]:
    down = o.stroke((235, AXIS + 145), (525, AXIS - 145), wide=w)
    return [*down, *o.stroke((235, AXIS - 145), (525, AXIS + 145), wide=w)]


def _round() -> dict[str, Sign]:
    return {
        "●": Sign(LARGE, lambda _w: o.disc(350, AXIS, 290)),
        "○": Sign(LARGE, lambda w: o.ring(350, AXIS, 290 - 0.4 * w, wide=0.8 * w)),
        "◯": Sign(860, lambda w: o.ring(430, AXIS, 370 - 0.4 * w, wide=0.8 * w)),
        "◎": Sign(
            LARGE,
            lambda w: [d for r in (150, 290) for d in o.ring(350, AXIS, r - 0.4 * w, wide=0.7 * w)],
        ),
        "◉": Sign(
            LARGE,
            lambda w: [*o.ring(350, AXIS, 290 - 0.4 * w, wide=0.7 * w), *o.disc(350, AXIS, 150)],
        ),
        "⚫": Sign(LARGE, lambda _w: o.disc(350, AXIS, 290)),
        "⬤": Sign(860, lambda _w: o.disc(430, AXIS, 370)),
        "⚪": Sign(LARGE, lambda w: o.ring(350, AXIS, 290 - 0.4 * w, wide=0.8 * w)),
    }


def _polygons() -> dict[str, Sign]:
    def solid(corners: int, first: float, dent: float = 1) -> Sign:
        places = o.regular(corners, (350, AXIS), 310, first=first, dent=dent)
        return Sign(LARGE, lambda _w: o.polygon(*places))

    def open_(corners: int, first: float, dent: float = 1) -> Sign:
        places = o.regular(corners, (350, AXIS), 290, first=first, dent=dent)
        return Sign(LARGE, lambda w: o.edged(*places, wide=0.7 * w))

    return {
        "★": solid(5, 90, 0.42),
        "⭐": solid(5, 90, 0.42),
        "☆": open_(5, 90, 0.42),
        "✦": solid(4, 90, 0.36),
        "✧": open_(4, 90, 0.36),
        "✶": solid(6, 90, 0.5),
        "☀": Sign(LARGE, _sun),
        "◆": solid(4, 90),
        "◇": open_(4, 90),
        "⬥": solid(4, 90),
        "⬦": open_(4, 90),
        "⬟": solid(5, 90),
        "⬠": open_(5, 90),
        "⬢": solid(6, 0),
        "⬡": open_(6, 0),
        "⚠": Sign(760, _warning),
    }


def _sun(w: float) -> list[o.Outline]:
    rays = zip(o.regular(8, (350, AXIS), 230), o.regular(8, (350, AXIS), 320), strict=True)
    lines = [line for a, b in rays for line in o.stroke(a, b, wide=0.7 * w)]
    return [*o.disc(350, AXIS, 150), *lines]


def _warning(w: float) -> list[o.Outline]:
    frame = o.edged((70, 20), (690, 20), (380, 600), wide=0.9 * w)
    mark = o.stroke((380, 400), (380, 220), wide=0.9 * w)
    return [*frame, *mark, *o.disc(380, 115, 0.55 * w)]


def _suits() -> dict[str, Sign]:
    return {
        "♡": Sign(LARGE, lambda w: _heart(0.8 * w)),
        "♢": Sign(
            600, lambda w: o.edged((300, 640), (110, 310), (300, -20), (490, 310), wide=0.8 * w)
        ),
    }


def _heart(w: float) -> list[o.Outline]:
    left = o.arc((220, 430), 140, 27, 205, wide=w)
    right = o.arc((480, 430), 140, -25, 153, wide=w)
    sides = o.stroke((93, 371), (350, 50), (607, 371), wide=w)
    return [*left, *right, *sides]


def _dice() -> dict[str, Sign]:
    return {letter: Sign(760, partial(_die, spots)) for letter, spots in DICE.items()}


def _die(spots: tuple[int, ...], w: float) -> list[o.Outline]:
    frame = o.hollow(70, AXIS - 310, 620, 620, wide=0.7 * w)
    places = [(380 + 160 * (n % 3 - 1), AXIS + 160 * (1 - n // 3)) for n in spots]
    return [*frame, *(line for x, y in places for line in o.disc(x, y, 56))]
