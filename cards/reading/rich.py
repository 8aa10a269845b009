"""Bold, raised and lowered letters inside a cell."""

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from cards.reading.table import clean, composed
from cards.style import Span, Spans, TextStyle

if TYPE_CHECKING:
    from openpyxl.cell.rich_text import TextBlock

Part = tuple[str, TextStyle | None]

_VERTICAL = {"superscript": TextStyle.RAISED, "subscript": TextStyle.LOWERED}


def parts_of(value: Iterable["str | TextBlock"]) -> tuple[Part, ...]:
    """Return the parts of a rich text of a workbook's with the style of each."""
    return tuple((str(part), _style_of(part)) for part in value)


def has_struck(value: Iterable["str | TextBlock"]) -> bool:
    """Say whether any letters of a rich text are struck out."""
    return any(str(part).strip() and _is_struck(part) for part in value)


def _is_struck(part: "str | TextBlock") -> bool:
    font = getattr(part, "font", None)
    return font is not None and bool(font.strike)


def _style_of(part: "str | TextBlock") -> TextStyle | None:
    font = getattr(part, "font", None)
    if font is None:
        return None
    return _VERTICAL.get(font.vertAlign) or (TextStyle.BOLD if font.b else None)


def cleaned(parts: Sequence[Part]) -> tuple[str, Spans]:
    """Return the text of the parts as `clean` leaves it, and the spans of their styles in it.

    Where an accent belongs to a letter of the part before, so that composing them moves what
    follows, the text is kept and the styles are dropped.
    """
    plain = clean("".join(text for text, _ in parts))
    each = [(composed(text), style) for text, style in parts]
    whole = "".join(text for text, _ in each)
    if plain not in whole or not plain:
        return plain, ()
    return plain, tuple(_spans(each, whole.index(plain), len(plain)))


def _spans(parts: Iterable[Part], skipped: int, length: int) -> Iterable[Span]:
    """Yield the spans of styled parts, counted from where the cleaned text begins."""
    at = -skipped
    for text, style in parts:
        start, end = max(at, 0), min(at + len(text), length)
        if style and start < end:
            yield Span(start, end, style)
        at += len(text)
