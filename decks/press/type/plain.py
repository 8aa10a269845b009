"""Fira Sans in its two weights: the plain type of every page, measured letter by letter."""

import pkgutil
import unicodedata
from functools import cache

import uharfbuzz as hb

REGULAR = "FiraSans-Regular"
STRONG = "FiraSans-SemiBold"


def font_name(*, strong: bool) -> str:
    """Return the name that the press knows a weight by."""
    return STRONG if strong else REGULAR


def font_data(name: str) -> bytes:
    """Return the file of a weight (TrueType)."""
    return file_in("fontpkg_fira_sans", f"{name}.ttf")


def file_in(package: str, name: str) -> bytes:
    """Return a file of a package of fonts; raise `FileNotFoundError` if it has none of the name."""
    data = pkgutil.get_data(package, f"files/{name}")
    if data is None:
        raise FileNotFoundError(name)
    return data


class _Weight:
    """A weight, and how wide its letters are."""

    def __init__(self, name: str) -> None:
        face = hb.Face(hb.Blob(font_data(name)))
        self.font, self.em = hb.Font(face), face.upem
        self.advances = _Advances(self.font)

    def has(self, letter: str) -> bool:
        return self.font.get_nominal_glyph(ord(letter)) is not None


class _Advances(dict[str, int]):
    """The widths of letters in the font's own units, each looked up once."""

    def __init__(self, font: hb.Font) -> None:
        super().__init__()
        self._font = font

    def __missing__(self, letter: str) -> int:
        glyph = self._font.get_nominal_glyph(ord(letter)) or 0
        self[letter] = self._font.get_glyph_h_advance(glyph)
        return self[letter]


@cache
def _weight(name: str) -> _Weight:
    return _Weight(name)


@cache
def has(letter: str) -> bool:
    """Return whether both weights can set a letter beside another.

    Combining marks have their place over a letter, so that they are none, nor are controls and
    codes for private use.
    """
    if unicodedata.category(letter) in {"Mn", "Me", "Cc", "Cf", "Co"}:
        return False
    return all(_weight(name).has(letter) for name in (REGULAR, STRONG))


def is_plain(text: str) -> bool:
    """Whether plain type sets a text as it stands."""
    return (text.isascii() and text.isprintable()) or all(map(has, text))


def width_of(text: str, *, strong: bool) -> float:
    """Return the width of a plain text in ems."""
    weight = _weight(font_name(strong=strong))
    return float(sum(map(weight.advances.__getitem__, text)) / weight.em)


@cache
def top_of(letter: str, *, strong: bool) -> float:
    """Return how far a letter's outline rises above the baseline, in ems."""
    return rise_of(letter, _weight(font_name(strong=strong)).font)


def rise_of(letter: str, font: hb.Font) -> float:
    """Return how far the outline of a letter that a font has rises above the baseline, in ems."""
    box = font.get_glyph_extents(font.get_nominal_glyph(ord(letter)))
    return float(box.y_bearing / font.face.upem)
