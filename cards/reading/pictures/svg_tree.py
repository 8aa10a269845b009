"""An SVG file becomes a tree of what is kept of it, in bounds."""

import re
from base64 import b64decode, b64encode
from codecs import BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Mapping
from xml.etree import ElementTree as ET

from msgspec import Struct, field

from cards.finding import UnusablePictureError
from cards.picture import PictureKind
from cards.reading.pictures.kinds import is_drawing, kind_in_pixels, of_another_kind
from cards.reading.pictures.svg_parts import (
    KEPT,
    LINK,
    SVG,
    XLINK,
    embedded,
    kept_attributes,
    references_of,
    safe_style,
)
from cards.reading.pictures.unusable import broken, text_for_browsers, too_much_to_draw

_MOST_CHARACTERS = 6_000_000
_MOST_ELEMENTS = 30_000
_DEEPEST = 60
_MOST_DRAWN = 200_000
"""How many elements are drawn in the end, those drawn again counted again."""
_A_LETTER = 8
"""As many elements a letter counts for."""

_PAGE, _SWITCH = SVG + "foreignObject", SVG + "switch"
_NAMES = {PictureKind.PNG: "png", PictureKind.JPEG: "jpeg"}
# A plain document type says nothing; one with declarations of its own may say anything.
_DOCTYPE = re.compile(r"<!DOCTYPE[^\[<>]*>", re.IGNORECASE)
_DECLARED = re.compile(r"<!(?:DOCTYPE|ENTITY|ELEMENT|ATTLIST)", re.IGNORECASE)
_XML = re.compile(r"^\s*<\?xml[^>]*\?>")


class _Keeper(Struct):
    """Builds the tree of what is kept as the file is read."""

    builder: ET.TreeBuilder = field(default_factory=ET.TreeBuilder)
    elements: int = 0
    open: int = 0
    skipped: int = 0
    switches: int = 0
    in_page: bool = False

    def start(self, tag: str, attributes: dict[str, str]) -> None:
        """Take up an element, unless it or one that it stands in is left out."""
        self.elements += 1
        if self.elements > _MOST_ELEMENTS or self.open + self.skipped > _DEEPEST:
            raise too_much_to_draw("of far too many parts")
        if self.skipped or tag not in KEPT:
            # a switch has something else for those who do not show a page
            self.in_page = self.in_page or (tag == _PAGE and not self.switches)
            self.skipped += 1
            return
        self.open += 1
        self.switches += tag == _SWITCH
        kept = dict(kept_attributes(attributes))
        if tag == SVG + "image":
            kept[XLINK + LINK] = _sound_picture(attributes)
        self.builder.start(tag, kept)

    def end(self, tag: str) -> None:
        """Close an element."""
        if self.skipped:
            self.skipped -= 1
            self.in_page = self.in_page and self.skipped > 0
            return
        self.open -= 1
        self.switches -= tag == _SWITCH
        self.builder.end(tag)

    def data(self, text: str) -> None:
        """Take up text."""
        if self.in_page and text.strip():
            raise text_for_browsers()
        if not self.skipped:
            self.builder.data(text)

    def close(self) -> ET.Element:
        """Return the tree."""
        return self.builder.close()


def svg_tree(data: bytes) -> ET.Element:
    """Return what is kept of a drawing.

    Raises `UnusablePictureError` if it is too large, damaged, or shows what is not in it.
    """
    text = _XML.sub("", _DOCTYPE.sub("", _text_of(data), count=1))
    if len(text) > _MOST_CHARACTERS:
        raise too_much_to_draw("of far too many parts")
    if _DECLARED.search(text):
        raise UnusablePictureError(
            "picture-broken",
            "holds declarations that a drawing does not need, and was not read",
            "Open it in a drawing program and save it as plain SVG, or as PNG.",
        )
    try:
        root = _parsed(text)
    except (ET.ParseError, AssertionError, IndexError) as error:
        raise broken() from error
    if root.tag != SVG + "svg":
        raise broken()
    for style in root.iter(SVG + "style"):
        text = "".join(style.itertext())
        style[:] = []
        style.text = safe_style(text)
    _refuse_endless(root)
    return root


def _parsed(text: str) -> ET.Element:
    parser = ET.XMLParser(target=_Keeper())  # noqa: S314 (declarations have been refused)
    parser.feed(text)
    # The builder has no root at all if nothing of the file is kept.
    root: ET.Element | None = parser.close()
    if root is None:
        raise broken()
    return root


def _text_of(data: bytes) -> str:
    wide = data.startswith((BOM_UTF16_LE, BOM_UTF16_BE)) or b"\0" in data[:4]
    try:
        return data.decode("utf-16" if wide else "utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("latin-1")


def _sound_picture(attributes: Mapping[str, str]) -> str:
    """Return the picture that an image element holds in itself.

    Raises `UnusablePictureError` if it is elsewhere, or cannot be used.
    """
    from cards.reading.pictures.pixels import pixels_in  # noqa: PLC0415 (takes long to load)

    link = embedded(attributes)
    if link is None:
        raise UnusablePictureError(
            "picture-broken",
            "is a drawing that shows another file, which is not in it",
            "Put that file into the drawing (“embed” it) and save it again, or save it as PNG.",
        )
    try:
        data = b64decode(link.partition(",")[2])
    except ValueError as error:
        raise broken() from error
    kind = kind_in_pixels(data)
    if kind is None:
        raise broken() if not data or is_drawing(data) else of_another_kind(data)
    # a white background or a strip is part of what the drawing shows
    held = pixels_in(data, kind, may_be_blank=True)
    return f"data:image/{_NAMES[held.kind]};base64,{b64encode(held.data).decode()}"


def _refuse_endless(root: ET.Element) -> None:
    """Raise if a few parts that use each other would be drawn far too often."""
    named = {element.get("id", ""): element for element in root.iter()}
    weights: dict[ET.Element, int] = {}

    def weight(element: ET.Element, above: frozenset[ET.Element]) -> int:
        if element in weights:
            return weights[element]
        if element in above or len(above) > 2 * _DEEPEST:
            raise broken()
        inside = above | {element}
        used = [named[name] for name in references_of(element) if name in named]
        points = 1 + len(element.get("d", "")) // 8 if "marker" in str(element.attrib) else 1
        total = 1 + _A_LETTER * _letters(element) + sum(weight(child, inside) for child in element)
        total += points * sum(weight(part, inside) for part in used)
        weights[element] = total
        if total > _MOST_DRAWN:
            raise too_much_to_draw("of far too many parts")
        return total

    weight(root, frozenset())


def _letters(element: ET.Element) -> int:
    if element.tag == SVG + "style":
        return 0
    texts = (element.text, *(child.tail for child in element))
    return sum(len(word) for text in texts if text for word in text.split())
