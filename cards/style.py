"""What is bold, raised or lowered inside a text."""

from enum import StrEnum

from msgspec import Struct


class TextStyle(StrEnum):
    """How some letters of a text are set: bold, superscript or subscript.

    The last two are parts of a built fraction; no cell holds them.
    """

    BOLD = "bold"
    RAISED = "raised"
    LOWERED = "lowered"
    NUMERATOR = "numerator"
    DENOMINATOR = "denominator"


class Span(Struct, frozen=True, order=True):
    """The letters from `start` to before `end` of a text, and their style. Spans do not overlap."""

    start: int
    end: int
    style: TextStyle


Spans = tuple[Span, ...]
