"""From a `#RRGGBB` code to light, and from light to what is seen of it."""

import math
from typing import NamedTuple

Light = tuple[float, float, float]
"""Red, green and blue as amounts of light, 0 to 1 (linear sRGB)."""

Matrix = tuple[Light, Light, Light]

TO_XYZ: Matrix = (
    (0.4123908, 0.3575843, 0.1804808),
    (0.2126390, 0.7151687, 0.0721923),
    (0.0193308, 0.1191948, 0.9505322),
)
"""Linear sRGB to CIE XYZ, from the primaries and the white D65 of IEC 61966-2-1."""

WHITE = tuple(sum(row) for row in TO_XYZ)

BEND = 6 / 29
"""Below the cube of this, CIELAB is a straight line (CIE 15)."""


class Lab(NamedTuple):
    """A colour in CIELAB under D65: lightness from 0 to 100, red over green, yellow over blue.

    Lightness is what a grey copier keeps of a colour.
    """

    lightness: float
    a: float
    b: float


def light(code: str) -> Light:
    """Return the light of a `#RRGGBB` code (IEC 61966-2-1)."""
    red, green, blue = (int(code[n : n + 2], 16) / 255 for n in (1, 3, 5))
    return _linear(red), _linear(green), _linear(blue)


def luminance(code: str) -> float:
    """Return how much light a code gives beside white, 0 to 1."""
    return _dot(TO_XYZ[1], light(code))


def lab(code: str) -> Lab:
    """Return the CIELAB coordinates of a `#RRGGBB` code."""
    return lab_of(light(code))


def lab_of(amounts: Light) -> Lab:
    """Return the CIELAB coordinates of an amount of light."""
    x, y, z = (_bent(value / full) for value, full in zip(by(TO_XYZ, amounts), WHITE, strict=True))
    return Lab(116 * y - 16, 500 * (x - y), 200 * (y - z))


def by(matrix: Matrix, amounts: Light) -> Light:
    """Return the product of a matrix with an amount of light."""
    one, two, three = matrix
    return _dot(one, amounts), _dot(two, amounts), _dot(three, amounts)


def _dot(row: Light, amounts: Light) -> float:
    return row[0] * amounts[0] + row[1] * amounts[1] + row[2] * amounts[2]


def _linear(channel: float) -> float:
    if channel <= 0.04045:  # noqa: PLR2004 (as in the standard)
        return channel / 12.92
    return math.pow((channel + 0.055) / 1.055, 2.4)


def _bent(ratio: float) -> float:
    if ratio > BEND**3:
        return math.cbrt(ratio)
    return ratio / (3 * BEND**2) + 4 / 29
