"""Signs of mathematics, chemistry and music."""

from decks.press.script.signs import outlines as o
from decks.press.script.signs.sign import AXIS, CAP, Sign, laid

DEPTH = -110
"""How far tall brackets and bars reach below the baseline."""


def maths() -> dict[str, Sign]:
    """Return relations, operators and signs of geometry."""
    return {
        "∓": Sign(560, lambda w: [*_cross(280, AXIS - 70, 190, w), *_level(90, 470, 570, w)]),
        "∗": Sign(480, lambda w: _star(240, w)),
        "⋆": Sign(480, lambda _w: o.polygon(*o.regular(5, (240, AXIS), 200, dent=0.4))),
        "∘": Sign(400, lambda w: o.ring(200, AXIS, 105, wide=0.8 * w)),
        "⋄": Sign(480, lambda w: o.edged(*o.regular(4, (240, AXIS), 190), wide=0.8 * w)),
        "∼": Sign(600, lambda w: _wave(AXIS, w)),
        "≃": Sign(600, lambda w: [*_wave(AXIS + 90, w), *_level(90, 510, AXIS - 110, w)]),
        "≅": Sign(
            600,
            lambda w: [
                *_wave(AXIS + 160, 0.9 * w),
                *_level(90, 510, AXIS - 10, 0.9 * w),
                *_level(90, 510, AXIS - 160, 0.9 * w),
            ],
        ),
        "≔": Sign(
            760,
            lambda w: [
                *(d for y in (-90, 90) for d in o.disc(120, AXIS + y, 0.75 * w)),
                *_equals(250, 670, w),
            ],
        ),
        "∷": Sign(
            480,
            lambda w: [
                d for x in (130, 350) for y in (-120, 120) for d in o.disc(x, AXIS + y, 0.8 * w)
            ],
        ),
        "≦": Sign(
            600, lambda w: [*_less(300, w, lift=110), *_equals(90, 510, w, low=300, gap=130)]
        ),
        "≧": Sign(
            600, lambda w: [*_more(300, w, lift=110), *_equals(90, 510, w, low=300, gap=130)]
        ),
        "≪": Sign(820, lambda w: [*_less(220, w), *_less(530, w)]),
        "≫": Sign(820, lambda w: [*_more(290, w), *_more(600, w)]),
        "≮": Sign(600, lambda w: [*_less(300, w), *o.stroke((200, 20), (400, 640), wide=w)]),
        "≯": Sign(600, lambda w: [*_more(300, w), *o.stroke((200, 20), (400, 640), wide=w)]),
        "∝": Sign(700, _proportional),
        "∠": Sign(680, _angle),
        "∡": Sign(680, lambda w: [*_angle(w), *o.arc((90, 40), 330, -8, 58, wide=0.7 * w)]),
        "∟": Sign(620, lambda w: o.stroke((110, 600), (110, 40), (530, 40), wide=w)),
        "⊿": Sign(680, lambda w: o.edged((80, 40), (580, 40), (580, 600), wide=w)),
        "⟂": Sign(680, lambda w: [*_level(90, 590, 40, w), *_upright(340, 40, CAP, w)]),
        "∣": Sign(320, lambda w: _upright(160, DEPTH, CAP + 60, w)),
        "∤": Sign(440, lambda w: [*_upright(220, DEPTH, CAP + 60, w), *_slash(220, w)]),
        "∥": Sign(460, _parallel),
        "∦": Sign(520, lambda w: [*_moved(_parallel(w), 30), *_slash(260, w)]),
        "⊕": Sign(740, laid(_circled, lambda w: _cross(370, AXIS, 260, 0.8 * w))),
        "⊖": Sign(740, laid(_circled, lambda w: _level(110, 630, AXIS, 0.8 * w))),
        "⊗": Sign(740, laid(_circled, lambda w: _slanted(w, 1), lambda w: _slanted(w, -1))),
        "⊘": Sign(740, laid(_circled, lambda w: _slanted(w, 1))),
        "⊙": Sign(740, laid(_circled, lambda w: o.disc(370, AXIS, 0.9 * w))),
        "⋃": Sign(740, _union),
        "⋂": Sign(740, lambda w: _upside_down(_union(w))),
        "⋁": Sign(740, lambda w: o.stroke((110, CAP), (370, 0), (630, CAP), wide=w)),
        "⋀": Sign(740, lambda w: o.stroke((110, 0), (370, CAP), (630, 0), wide=w)),
        "∐": Sign(740, _coproduct),
        "∎": Sign(560, lambda _w: o.box(90, 0, 380, 380)),
        "⋯": Sign(900, lambda w: [d for x in (170, 450, 730) for d in o.disc(x, AXIS, 0.8 * w)]),
        "⋮": Sign(320, lambda w: [d for y in (60, 330, 600) for d in o.disc(160, y, 0.8 * w)]),
        "⋱": Sign(
            760,
            lambda w: [d for n in (0, 1, 2) for d in o.disc(150 + 230 * n, 560 - 230 * n, 0.8 * w)],
        ),
    }


def brackets() -> dict[str, Sign]:
    """Return brackets for rounding, double brackets, and signs of music."""
    return {
        "⌊": Sign(380, lambda w: _bracket(w, feet=True, tops=False)),
        "⌈": Sign(380, lambda w: _bracket(w, feet=False, tops=True)),
        "⌋": Sign(380, lambda w: _mirrored(_bracket(w, feet=True, tops=False), 380)),
        "⌉": Sign(380, lambda w: _mirrored(_bracket(w, feet=False, tops=True), 380)),
        "⟦": Sign(460, _double_bracket),
        "⟧": Sign(460, lambda w: _mirrored(_double_bracket(w), 460)),
        "♯": Sign(520, _sharp),
        "♮": Sign(460, _natural),
        "♭": Sign(440, _flat),
    }


def _level(left: float, right: float, y: float, w: float) -> list[o.Outline]:
    return o.flat((left, y), (right, y), wide=w)


def _upright(x: float, foot: float, top: float, w: float) -> list[o.Outline]:
    return o.flat((x, foot), (x, top), wide=w)


def _cross(x: float, y: float, reach: float, w: float) -> list[o.Outline]:
    return [*_level(x - reach, x + reach, y, w), *_upright(x, y - reach, y + reach, w)]


def _star(x: float, w: float) -> list[o.Outline]:
    ends = o.regular(6, (x, AXIS), 170)
    return [line for n in range(3) for line in o.flat(ends[n], ends[n + 3], wide=0.9 * w)]


def _equals(
    left: float, right: float, w: float, *, low: float = 90, gap: float = 180
) -> list[o.Outline]:
    return [*_level(left, right, AXIS - low, w), *_level(left, right, AXIS - low + gap, w)]


def _wave(y: float, w: float) -> list[o.Outline]:
    left = o.arc((195, y - 55), 118, 25, 165, wide=w)
    return [*left, *o.arc((405, y + 55), 118, 205, 345, wide=w)]


def _less(x: float, w: float, *, lift: float = 0) -> list[o.Outline]:
    y = AXIS + lift
    return o.stroke((x + 130, y + 190), (x - 130, y), (x + 130, y - 190), wide=0.9 * w)


def _more(x: float, w: float, *, lift: float = 0) -> list[o.Outline]:
    y = AXIS + lift
    return o.stroke((x - 130, y + 190), (x + 130, y), (x - 130, y - 190), wide=0.9 * w)


def _proportional(w: float) -> list[o.Outline]:
    loop = o.ring(220, AXIS, 130, wide=w)
    return [
        *loop,
        *o.stroke((325, AXIS + 85), (460, AXIS - 105), (590, AXIS - 130), wide=w),
        *o.stroke((325, AXIS - 85), (460, AXIS + 105), (590, AXIS + 130), wide=w),
    ]


def _angle(w: float) -> list[o.Outline]:
    return o.stroke((560, 520), (90, 40), (590, 40), wide=w)


def _parallel(w: float) -> list[o.Outline]:
    return [*_upright(150, DEPTH, CAP + 60, w), *_upright(310, DEPTH, CAP + 60, w)]


def _slash(x: float, w: float) -> list[o.Outline]:
    return o.stroke((x - 150, AXIS - 130), (x + 150, AXIS + 130), wide=0.8 * w)


def _circled(w: float) -> list[o.Outline]:
    return o.ring(370, AXIS, 270, wide=0.8 * w)


def _slanted(w: float, up: int) -> list[o.Outline]:
    return o.flat((185, AXIS - 185 * up), (555, AXIS + 185 * up), wide=0.8 * w)


def _union(w: float) -> list[o.Outline]:
    bowl = o.arc((370, 260), 250, 180, 360, wide=w)
    return [*bowl, *_upright(120, 255, CAP, w), *_upright(620, 255, CAP, w)]


def _coproduct(w: float) -> list[o.Outline]:
    posts = [*_upright(190, 0, CAP, w), *_upright(550, 0, CAP, w)]
    return [*posts, *_level(90, 650, w / 2, w)]


def _bracket(w: float, *, feet: bool, tops: bool) -> list[o.Outline]:
    lines = _upright(150, DEPTH, CAP + 60, 0.9 * w)
    lines += _level(150 - 0.45 * w, 310, DEPTH + 0.45 * w, 0.9 * w) if feet else []
    return lines + (_level(150 - 0.45 * w, 310, CAP + 60 - 0.45 * w, 0.9 * w) if tops else [])


def _double_bracket(w: float) -> list[o.Outline]:
    outer = _bracket(w * 0.8, feet=True, tops=True)
    return [*outer, *_upright(270, DEPTH, CAP + 60, 0.7 * w), *_moved(outer, 70)[1:]]


def _sharp(w: float) -> list[o.Outline]:
    posts = [*_upright(190, -60, 680, 0.6 * w), *_upright(330, -20, 720, 0.6 * w)]
    bars = [o.flat((90, y), (430, y + 70), wide=1.2 * w) for y in (170, 420)]
    return [*posts, *(line for bar in bars for line in bar)]


def _natural(w: float) -> list[o.Outline]:
    posts = [*_upright(130, 150, 720, 0.6 * w), *_upright(330, -60, 510, 0.6 * w)]
    bars = [o.flat((130 - 0.3 * w, y), (330 + 0.3 * w, y + 50), wide=1.2 * w) for y in (190, 420)]
    return [*posts, *(line for bar in bars for line in bar)]


def _flat(w: float) -> list[o.Outline]:
    bowl = o.arc((150, 190), 170, -50, 110, wide=0.9 * w)
    return [
        *_upright(110, -10, 720, 0.6 * w),
        *bowl,
        *o.stroke((258, 62), (110, -10), wide=0.6 * w),
    ]


def _moved(lines: list[o.Outline], x: float) -> list[o.Outline]:
    return [tuple((px + x, py) for px, py in line) for line in lines]


def _mirrored(lines: list[o.Outline], room: float) -> list[o.Outline]:
    return [tuple((room - x, y) for x, y in reversed(line)) for line in lines]


def _upside_down(lines: list[o.Outline]) -> list[o.Outline]:
    return [tuple((x, CAP - y) for x, y in reversed(line)) for line in lines]
