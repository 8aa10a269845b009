"""SVG drawings: a size, and nothing but what is drawn."""

import re
from xml.etree import ElementTree as ET

from cards.finding import UnusablePictureError
from cards.picture import Picture, PictureKind
from cards.reading.pictures.drawn import drawn
from cards.reading.pictures.svg_parts import SVG, XLINK
from cards.reading.pictures.svg_tree import svg_tree
from cards.reading.pictures.unusable import blank, refuse_narrow

_LENGTH = re.compile(
    r"\s*((?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\s*(px|pt|pc|mm|cm|in|Q)?\s*"
)
# Pixels in each unit, CSS Values and Units Module Level 3, 5.2.
_INCH = 96
_PIXELS = {
    "px": 1,
    "pt": _INCH / 72,
    "pc": _INCH / 6,
    "mm": _INCH / 25.4,
    "cm": _INCH / 2.54,
    "in": _INCH,
    "Q": _INCH / 101.6,
}
_BETWEEN = re.compile(r"[\s,]+")
_LONG_SIDE = 1000
_SMALL = 3
_NOTHING = b'<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d"/>'

ET.register_namespace("", SVG[1:-1])
ET.register_namespace("xlink", XLINK[1:-1])


def drawing_in(data: bytes, *, may_be_blank: bool = False) -> Picture:
    """Return a drawing that fetches nothing and runs nothing.

    Raises `UnusablePictureError` if it is too large or narrow, damaged, or has no size, or if it is
    blank and may not be so.
    """
    root = svg_tree(data)
    width, height = _size_of(root)
    refuse_narrow(width, height)
    root.set("viewBox", root.get("viewBox") or f"0 0 {width:g} {height:g}")
    scale = _LONG_SIDE / max(width, height)
    pixels = round(width * scale), round(height * scale)
    root.set("width", str(pixels[0]))
    root.set("height", str(pixels[1]))
    svg = ET.tostring(root, encoding="utf-8")
    small = _drawn_small(svg, pixels)
    # letters have no typeface yet, and are taken to be seen
    must_show = not may_be_blank and root.find(f".//{SVG}text") is None
    if must_show and small == _drawn_small(_NOTHING % pixels, pixels):
        raise blank()
    return Picture.of(svg, PictureKind.SVG, width=pixels[0], height=pixels[1], alpha=True)


def _drawn_small(svg: bytes, pixels: tuple[int, int]) -> bytes:
    """Return a drawing small, on white paper: what cannot be drawn so cannot be drawn at all."""
    width, height = (max(side // _SMALL, 1) for side in pixels)
    return drawn(svg, width=width, height=height, background="white")


def _size_of(root: ET.Element) -> tuple[float, float]:
    """Return the drawing's size in pixels: its own, else that of its view."""
    own = _pixels(root.get("width", "")), _pixels(root.get("height", ""))
    view = [_pixels(side) for side in _BETWEEN.split(root.get("viewBox", "").strip())[2:]]
    width, height = own if all(own) else view if len(view) == 2 else (0, 0)  # noqa: PLR2004
    if not (width and height):
        raise UnusablePictureError(
            "picture-broken",
            "is a drawing that does not say how large it is",
            "Open it in a drawing program and save it with a width and a height, or as PNG.",
        )
    return width, height


def _pixels(length: str) -> float:
    found = _LENGTH.fullmatch(length)
    if not found or not 1e-3 < float(found[1]) < 1e6:  # noqa: PLR2004 (what a page can be)
        return 0
    return float(found[1]) * _PIXELS[found[2] or "px"]
