"""Drawings with letters that no face has: boxes would be printed in their place."""

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
    texts = ET.fromstring(drawing.data).iter(f"{SVG}text")  # noqa: S314 (made safe in reading)
    return "".join(part for text in texts for part in text.itertext())


def _without_face(text: str) -> list[str]:
    if is_plain(text.replace("\n", "")):
        return []
    from decks.press.script.faces import source_of  # noqa: PLC0415 (loaded when it is needed)

    letters = (one for one in dict.fromkeys(text) if not one.isspace() and category(one) != _UNSEEN)
    return [letter for letter in letters if source_of(letter) is None]
