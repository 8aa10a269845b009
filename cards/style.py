"""What is bold, raised or lowered inside a text."""

from dataclasses import dataclass
from enum import StrEnum


class TextStyle(StrEnum):
    """How some letters of a text are set: bold, superscript or subscript.

    The last two are parts of a built fraction; no cell holds them.
    """

    BOLD = "bold"
    RAISED = "raised"
    LOWERED = "lowered"
    NUMERATOR = "numerator"
    DENOMINATOR = "denominator"


@dataclass(frozen=True, slots=True, order=True)
class Span:
    """The letters from `start` to before `end` of a text, and their style. Spans do not overlap."""

    start: int
    end: int
    style: TextStyle


Spans = tuple[Span, ...]
