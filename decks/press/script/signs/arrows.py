"""Ticks, crosses and arrows."""

from decks.press.script.signs import outlines as o
from decks.press.script.signs.sign import AXIS, Drawing, Sign, laid


def ticks() -> dict[str, Sign]:
    """Return ticks, crosses and heavy signs of sums."""
    cross = laid(
        lambda w: o.stroke((90, 100), (530, 540), wide=w),
        lambda w: o.stroke((90, 540), (530, 100), wide=w),
    )
    return {
        "✓": Sign(700, lambda w: o.stroke((90, 300), (270, 90), (600, 610), wide=w)),
        "✔": Sign(700, lambda w: o.stroke((90, 300), (270, 90), (600, 610), wide=1.7 * w)),
        "✕": Sign(620, cross),
        "✗": Sign(620, cross),
        "✖": Sign(620, lambda w: cross(1.7 * w)),
        "✘": Sign(620, lambda w: cross(1.7 * w)),
        "❌": Sign(620, lambda w: cross(1.7 * w)),
        "✚": Sign(640, lambda w: _plus(2 * w)),
        "➕": Sign(640, lambda w: _plus(1.5 * w)),
        "➖": Sign(640, lambda w: o.flat((90, AXIS), (550, AXIS), wide=1.5 * w)),
        "➗": Sign(
            640,
            lambda w: [
                *o.flat((90, AXIS), (550, AXIS), wide=1.5 * w),
                *o.disc(320, AXIS + 200, 0.9 * w),
                *o.disc(320, AXIS - 200, 0.9 * w),
            ],
        ),
    }


def _plus(w: float) -> list[o.Outline]:
    level = o.flat((90, AXIS), (550, AXIS), wide=w)
    return [*level, *o.flat((320, AXIS - 230), (320, AXIS + 230), wide=w)]


def arrows() -> dict[str, Sign]:
    """Return arrows."""

    def double(start: o.Point, end: o.Point, *, back: bool = False) -> Drawing:
        return lambda w: _double(start, end, w, back=back)

    right, left = (830, AXIS), (90, AXIS)
    up, down = (320, 690), (320, -30)
    return {
        "⇒": Sign(920, double(left, right)),
        "⇐": Sign(920, double(right, left)),
        "⇔": Sign(920, double(left, right, back=True)),
        "⇑": Sign(640, double(down, up)),
        "⇓": Sign(640, double(up, down)),
        "↦": Sign(
            920,
            lambda w: [
                *o.arrow((110, AXIS), right, wide=w),
                *o.stroke((110, AXIS - 150), (110, AXIS + 150), wide=w),
            ],
        ),
        "➔": Sign(920, lambda w: o.arrow(left, right, wide=1.6 * w, head=240)),
        "➜": Sign(920, lambda w: o.arrow(left, right, wide=1.6 * w, head=240)),
        "⇄": Sign(920, lambda w: _pair(w, upper_right=True)),
        "⇆": Sign(920, lambda w: _pair(w, upper_right=False)),
        "⇌": Sign(
            920,
            lambda w: [
                *o.half_tip((90, AXIS + 75), (830, AXIS + 75), wide=0.8 * w),
                *o.half_tip((830, AXIS - 75), (90, AXIS - 75), wide=0.8 * w),
            ],
        ),
        "↻": Sign(760, lambda w: _round(w, mirrored=False)),
        "↺": Sign(760, lambda w: _round(w, mirrored=True)),
    }


def _double(start: o.Point, end: o.Point, w: float, *, back: bool) -> list[o.Outline]:
    w *= 0.8
    level = start[1] == end[1]
    off, inset = 85, 90
    lines = []
    for side in (-off, off):
        ax, ay, bx, by = *start, *end
        step = inset if (bx if level else by) > (ax if level else ay) else -inset
        if level:
            shaft = ((ax + (step if back else 0), ay + side), (bx - step, by + side))
        else:
            shaft = ((ax + side, ay), (bx + side, by - step))
        lines += o.stroke(*shaft, wide=w)
    lines += o.tip(start, end, wide=w, head=300)
    return [*lines, *(o.tip(end, start, wide=w, head=300) if back else [])]


def _pair(w: float, *, upper_right: bool) -> list[o.Outline]:
    high, low = AXIS + 140, AXIS - 140
    to_right, to_left = (high, low) if upper_right else (low, high)
    first = o.arrow((90, to_right), (830, to_right), wide=0.8 * w, head=150)
    return [*first, *o.arrow((830, to_left), (90, to_left), wide=0.8 * w, head=150)]


def _round(w: float, *, mirrored: bool) -> list[o.Outline]:
    lines = o.arc((380, AXIS), 270, 60, 360, wide=w)
    lines += o.tip((380, AXIS + 300), (530, AXIS + 232), wide=w, head=170)
    if not mirrored:
        return lines
    return [tuple((760 - x, y) for x, y in reversed(outline)) for outline in lines]
