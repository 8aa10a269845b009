"""Drawings with letters that no face has: boxes would be printed in their place."""

import re
from collections.abc import Iterator
from unicodedata import category
from xml.etree import ElementTree as ET

from cards.finding import Finding, Severity
from cards.item import Item
from cards.picture import Picture, PictureKind
from cards.quoting import quoted
from cards.reading.pictures.svg_parts import SVG
from decks.press.type.plain import is_plain

_UNSEEN = "Cf"
_TOLD = frozenset(SVG + name for name in ("title", "desc", "style"))
_HIDDEN = re.compile(r"(?:^|;)\s*display\s*:\s*none\b")


def proofread_drawing(item: Item) -> Iterator[Finding]:
    """Find letters in the text of an item's drawing that no face has."""
    if item.image is None or item.image.kind is not PictureKind.SVG:
        return
    missing = _without_face(_text_in(item.image))
    if missing:
        yield Finding(
            "drawing-cannot-be-printed",
            Severity.ERROR,
            item.picture_place or item.prompt_place,
            item.picture,
            f"The text in this drawing has letters that the cards’ typefaces lack, such as "
            f"{quoted(missing[0])}: boxes would be printed in their place.",
            "Turn the text into paths in a drawing program, or save the drawing as PNG.",
        )


def _text_in(drawing: Picture) -> str:
    root = ET.fromstring(drawing.data)  # noqa: S314 (made safe in reading)
    for element in filter(_is_not_drawn, list(root.iter())):
        element.text = ""
        del element[:]
    return "".join(part for text in root.iter(f"{SVG}text") for part in text.itertext())


def _is_not_drawn(element: ET.Element) -> bool:
    """Say whether an element is hidden, only told about, or one of several for some languages.

    Of such the one that is for every language is drawn.
    """
    hidden = element.get("display") == "none" or _HIDDEN.search(element.get("style", ""))
    return bool(hidden) or element.tag in _TOLD or "systemLanguage" in element.attrib


def _without_face(text: str) -> list[str]:
    if is_plain(text.replace("\n", "")):
        return []
    from decks.press.script.faces import source_of  # noqa: PLC0415 (loaded when it is needed)

    letters = (one for one in dict.fromkeys(text) if not one.isspace() and category(one) != _UNSEEN)
    return [letter for letter in letters if source_of(letter) is None]
