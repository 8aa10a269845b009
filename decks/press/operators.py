"""Operators of a PDF's content streams (ISO 32000-1, Annex A), for what most pages are made of.

They are written out here because there are tens of thousands of them in a large deck: reportlab's
own calls take three times as long. Whatever is rare is left to reportlab.
"""

from collections.abc import Sequence
from functools import cache, lru_cache

from decks.press.inks import TONES

CIRCLE = 0.5523
"""How far the controls of a quarter of a circle lie from its ends, in radii."""

BOX_LINE = 0.8


def in_place(x: float, y: float, operators: str) -> str:
    """Return operators with (x, y) as their origin; what they set holds for them only."""
    return f"q 1 0 0 1 {x:.3f} {y:.3f} cm {operators} Q"


def turned(x: float, y: float, cosine: float, sine: float) -> str:
    """Return the operator that moves the origin to (x, y) and turns what follows about it."""
    return f"{cosine:.6f} {sine:.6f} {-sine:.6f} {cosine:.6f} {x:.3f} {y:.3f} cm"


@cache
def filling(tone: str) -> str:
    """Return the operator that fills with a tone from here on."""
    return f"{_colour(tone)} rg"


@cache
def drawing(tone: str) -> str:
    """Return the operator that draws lines in a tone from here on."""
    return f"{_colour(tone)} RG"


def _colour(tone: str) -> str:
    value = TONES[tone]
    return " ".join(f"{int(value[n : n + 2], 16) / 255:.4g}" for n in (1, 3, 5))


@lru_cache(maxsize=512)
def line(ends: tuple[float, float, float, float], width: float, tone: str, *, dashed: bool) -> str:
    """Return a straight line; those of cut marks are the same on page after page."""
    x, y, end_x, end_y = ends
    look = f"{drawing(tone)} {width:.5g} w {'[2 2]' if dashed else '[]'} 0 d"
    return f"{look} {x:.3f} {y:.3f} m {end_x:.3f} {end_y:.3f} l S"


@cache
def box(width: float, height: float, radius: float, fill: str | None, stroke: str | None) -> str:
    """Return a rectangle with its lower left corner at the origin, filled, framed or both."""
    return painted(rounded(width, height, radius), BOX_LINE, fill, stroke)


def painted(outline: str, width: float, fill: str | None, stroke: str | None) -> str:
    """Return a path in its colours, its line so many points wide."""
    inks = [filling(fill)] if fill else []
    if stroke:
        inks.append(f"{drawing(stroke)} {width:.5g} w [] 0 d")
    return " ".join([*inks, outline, painting(fill, stroke)])


def painting(fill: str | None, stroke: str | None) -> str:
    """Return the operator that paints a path: filled, drawn, both, or not at all."""
    return {(True, True): "B", (True, False): "f", (False, True): "S"}.get(
        (fill is not None, stroke is not None), "n"
    )


def path(points: Sequence[tuple[float, float]]) -> str:
    """Return a closed path with straight sides."""
    start, *others = [f"{x:.3f} {y:.3f}" for x, y in points]
    return " ".join([f"{start} m", *(f"{point} l" for point in others), "h"])


def curves(points: Sequence[tuple[float, float]]) -> str:
    """Return curves that follow one another: their start, then two controls and an end for each."""
    start, *others = [f"{x:.3f} {y:.3f}" for x, y in points]
    parts = (others[n : n + 3] for n in range(0, len(others), 3))
    return " ".join([f"{start} m", *(f"{' '.join(part)} c" for part in parts)])


def rounded(width: float, height: float, radius: float) -> str:
    """Return the path of a rectangle with rounded corners, its lower left corner at the origin."""
    if not radius:
        return f"0 0 {width:.3f} {height:.3f} re"
    near, right, top = radius * (1 - CIRCLE), width - radius, height - radius
    corners = (
        ((width - near, 0), (width, near), (width, radius), (width, top)),
        ((width, height - near), (width - near, height), (right, height), (radius, height)),
        ((near, height), (0, height - near), (0, top), (0, radius)),
        ((0, near), (near, 0), (radius, 0), None),
    )
    parts = [f"{radius:.3f} 0 m {right:.3f} 0 l"]
    for *curve, along in corners:
        parts.append(" ".join(f"{x:.3f} {y:.3f}" for x, y in curve if curve) + " c")
        if along:
            parts.append(f"{along[0]:.3f} {along[1]:.3f} l")
    return " ".join([*parts, "h"])
