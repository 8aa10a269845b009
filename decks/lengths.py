"""Lengths as teachers write them, in millimetres."""

import re

from msgspec import Struct

MM = {
    "mm": 1.0,
    "cm": 10.0,
    "m": 1000.0,
    "in": 25.4,
    "inch": 25.4,
    "inches": 25.4,
    '"': 25.4,
    "″": 25.4,
    "”": 25.4,
    "ft": 304.8,
    "foot": 304.8,
    "feet": 304.8,
    "'": 304.8,
    "′": 304.8,
    "’": 304.8,
}
"""Units by their signs; the inch is 25.4 mm by definition (international yard and pound, 1959)."""

NUMBER = r"([0-9]{1,5}(?:[.,][0-9]{1,3})?|[0-9]/[1-9][0-9]?)"
UNIT = r"\s*([a-z]+|[\"″”'′’])"

_LAST_UNIT = re.compile(r"""(?<![a-z])[a-z]+$|["″”'′’]$""")
LEAST_CARD, MOST_CARD = 25.0, 430.0
MOST_MARGIN = 40.0
MOST_BLEED = 5.0
LEAST_DISTANCE, MOST_DISTANCE = 200.0, 10_000.0
LEAST_WALK, MOST_WALK = 1_000.0, 200_000.0


class CardMeasure(Struct, frozen=True):
    """A card's own size in millimetres."""

    width: float
    height: float

    def __str__(self) -> str:
        return f"{self.width:g} × {self.height:g} mm"


class Margins(Struct, frozen=True):
    """The white edge that the printer leaves on each side of the upright paper, in millimetres.

    The default is what school printers manage: lasers leave 4 to 4.2 mm, most inkjets up to 5.
    """

    top: float = 5
    right: float = 5
    bottom: float = 5
    left: float = 5


WHITE_EDGE = Margins()


class Shift(Struct, frozen=True):
    """What backs are moved by, in millimetres, to land behind their fronts.

    `right` and `up` as seen on the upright back; `skew` is how much farther right the head of the
    page is moved than its foot.
    """

    right: float = 0
    up: float = 0
    skew: float = 0


NO_SHIFT = Shift()


def read_length(text: str, least: float, most: float) -> float | None:
    """Return a length such as `40 cm`, `1.5 m` or `5 ft` in millimetres, or None."""
    found = re.fullmatch(NUMBER + UNIT, text.strip().casefold())
    if not found or found[2] not in MM:
        return None
    length = _number(found[1]) * MM[found[2]]
    return length if least <= length <= most else None


def read_distance(text: str) -> float | None:
    """Return a distance to read from in millimetres, or None."""
    return read_length(text, LEAST_DISTANCE, MOST_DISTANCE)


def read_walk(text: str) -> float | None:
    """Return the way from a team's home to its cards in millimetres, or None."""
    return read_length(text, LEAST_WALK, MOST_WALK)


def read_bleed(text: str) -> float | None:
    """Return a bleed in millimetres, or None; no bleed may be written `0` or `none`."""
    if text.strip().casefold() in {"0", "none", "no"}:
        return 0.0
    return read_length(text, 0, MOST_BLEED)


def read_measure(text: str) -> CardMeasure | None:
    """Return a card's size such as `90 x 60 mm` or `3.5 x 2.5 in`, or None."""
    found = re.fullmatch(NUMBER + f"(?:{UNIT})?\\s*[x×*]\\s*" + NUMBER + UNIT, _plain(text))
    if not found:
        return None
    width_unit, height_unit = MM.get(found[2] or found[4]), MM.get(found[4])
    if not width_unit or not height_unit:
        return None
    width, height = _number(found[1]) * width_unit, _number(found[3]) * height_unit
    fits = min(width, height) >= LEAST_CARD and max(width, height) <= MOST_CARD
    return CardMeasure(width, height) if fits else None


def read_margins(text: str) -> Margins | None:
    """Return margins from one length for all, or from four: top, right, bottom, left; or None."""
    parts = [part for part in re.split(r"[;,]\s+|\s*;\s*", _plain(text)) if part]
    last = _LAST_UNIT.search(parts[-1]) if parts else None
    if not last:
        return None
    lengths = [
        read_length(part if re.search(r"\D$", part) else part + last[0], 0, MOST_MARGIN)
        for part in parts
    ]
    if len(lengths) == 1:
        lengths *= 4
    known = [length for length in lengths if length is not None]
    return Margins(*known) if len(known) == len(lengths) == 4 else None  # noqa: PLR2004


def _plain(text: str) -> str:
    return " ".join(text.casefold().split())


def _number(text: str) -> float:
    whole, _slash, parts = text.replace(",", ".").partition("/")
    return float(whole) / float(parts or 1)
