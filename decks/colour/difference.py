"""How different two colours look: CIEDE2000, after Sharma, Wu & Dalal (2005)."""

from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

from decks.colour.spaces import Lab


def difference(one: Lab, other: Lab) -> float:
    """Return the colour difference ΔE00 of two colours, with all weights one.

    About 1 can just be seen side by side; 20 is plainly another colour. The names of the parts
    are those of the paper: chroma C′, hue h′ in degrees, and the weights S and T.
    """
    (chroma, hue), (chroma_2, hue_2) = _polar(one, other)
    mean_chroma = (chroma + chroma_2) / 2
    turn = _turn(hue, hue_2) if chroma * chroma_2 else 0.0
    mean_hue = _mean_hue(hue, hue_2) if chroma * chroma_2 else hue + hue_2
    in_lightness = (other.lightness - one.lightness) / _s_l((one.lightness + other.lightness) / 2)
    in_chroma = (chroma_2 - chroma) / (1 + 0.045 * mean_chroma)
    in_hue = 2 * sqrt(chroma * chroma_2) * sin(radians(turn) / 2)
    in_hue /= 1 + 0.015 * mean_chroma * _t(mean_hue)
    rotated = _rotation(mean_chroma, mean_hue) * in_chroma * in_hue
    return sqrt(in_lightness**2 + in_chroma**2 + in_hue**2 + rotated)


def _polar(one: Lab, other: Lab) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return chroma and hue of both, with the red-green axis stretched near grey."""
    mean = (hypot(one.a, one.b) + hypot(other.a, other.b)) / 2
    stretch = 1.5 - 0.5 * _towards_one(mean)
    return _chroma_and_hue(one, stretch), _chroma_and_hue(other, stretch)


def _chroma_and_hue(colour: Lab, stretch: float) -> tuple[float, float]:
    a = stretch * colour.a
    return hypot(a, colour.b), degrees(atan2(colour.b, a)) % 360


def _turn(hue: float, other: float) -> float:
    """Return the shorter way round from one hue to the other."""
    return (other - hue + 180) % 360 - 180 if abs(other - hue) != 180 else other - hue  # noqa: PLR2004


def _mean_hue(hue: float, other: float) -> float:
    middle = (hue + other) / 2
    if abs(hue - other) <= 180:  # noqa: PLR2004
        return middle
    return middle + 180 if middle < 180 else middle - 180  # noqa: PLR2004


def _s_l(mean: float) -> float:
    return 1 + 0.015 * (mean - 50) ** 2 / sqrt(20 + (mean - 50) ** 2)


def _t(hue: float) -> float:
    angle = radians(hue)
    return (
        1
        - 0.17 * cos(angle - radians(30))
        + 0.24 * cos(2 * angle)
        + 0.32 * cos(3 * angle + radians(6))
        - 0.20 * cos(4 * angle - radians(63))
    )


def _rotation(chroma: float, hue: float) -> float:
    angle = 30 * exp(-(((hue - 275) / 25) ** 2))
    return -2 * _towards_one(chroma) * sin(radians(2 * angle))


def _towards_one(chroma: float) -> float:
    return sqrt(chroma**7 / (chroma**7 + 25**7))
