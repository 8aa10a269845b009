"""The picture of time against cards, as SVG: both axes logarithmic, a line for each way."""

from collections.abc import Mapping
from html import escape
from math import log10

WIDTH, HEIGHT = 760, 380
LEFT, RIGHT, TOP, BOTTOM = 56, 236, 40, 46
INK, QUIET, RULE, OURS = "#1b1f24", "#57606a", "#d0d7de", "#0b5cad"


def picture(seconds: Mapping[tuple[str, int], float], ours: str) -> str:
    """Return the picture of seconds by way and number of cards; the line of `ours` stands out."""
    numbers = sorted({number for _, number in seconds})
    lowest, highest = 0.1, 10 ** -(-log10(max(seconds.values())) // 1)
    across = _scale(numbers[0], numbers[-1], LEFT, WIDTH - RIGHT)
    up = _scale(lowest, highest, HEIGHT - BOTTOM, TOP)
    parts = [_text(LEFT, 22, "Seconds to make the pages of so many cards", INK, strong=True)]
    mark = lowest
    while mark <= highest * 1.01:
        parts += [_rule(up(mark)), _text(LEFT - 8, up(mark) + 4, f"{mark:g}", QUIET, "end")]
        mark *= 10
    parts += [
        _text(across(number), HEIGHT - BOTTOM + 20, f"{number:,}", QUIET, "middle")
        for number in numbers
    ]
    names = sorted({name for name, _ in seconds}, key=lambda name: seconds[name, numbers[-1]])
    floor = HEIGHT - BOTTOM
    for name in names:
        points = [(across(number), up(seconds[name, number])) for number in numbers]
        floor = min(points[-1][1], floor - 18)
        parts.append(_line(name, points, floor, stands_out=name == ours))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" '
        f'font-family="sans-serif" font-size="13"><rect width="{WIDTH}" height="{HEIGHT}" '
        f'fill="#ffffff"/>{"".join(parts)}</svg>\n'
    )


def _scale(low: float, high: float, start: float, end: float):
    span = log10(high) - log10(low)
    return lambda value: start + (log10(value) - log10(low)) / span * (end - start)


def _rule(y: float) -> str:
    return f'<path d="M{LEFT} {y:.1f}H{WIDTH - RIGHT}" stroke="{RULE}"/>'


def _line(name: str, points: list[tuple[float, float]], y: float, *, stands_out: bool) -> str:
    ink, width = (OURS, 3) if stands_out else (QUIET, 1.5)
    path = " ".join(f"{x:.1f},{at:.1f}" for x, at in points)
    dots = "".join(f'<circle cx="{x:.1f}" cy="{at:.1f}" r="3" fill="{ink}"/>' for x, at in points)
    drawn = f'<polyline points="{path}" fill="none" stroke="{ink}" stroke-width="{width}"/>{dots}'
    return drawn + _text(points[-1][0] + 12, y + 4, name, ink, strong=stands_out)


def _text(  # noqa: PLR0913 (a place and a look)
    x: float, y: float, text: str, ink: str, anchor: str = "start", *, strong: bool = False
) -> str:
    weight = "bold" if strong else "normal"
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" fill="{ink}" text-anchor="{anchor}" '
        f'font-weight="{weight}">{escape(text)}</text>'
    )
