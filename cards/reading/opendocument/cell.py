"""A cell of an OpenDocument spreadsheet: what it shows, and what may be amiss with it."""

import re
from collections.abc import Mapping

from msgspec import Struct, field

from cards.reading.error_values import is_error_value
from cards.reading.opendocument.names import name
from cards.reading.rich import Part, cleaned
from cards.reading.shown import shown
from cards.reading.table import Doubt
from cards.style import Spans, TextStyle

# Spreadsheet programs write and read several spaces as they are; only line ends are laid out.
_LINE_ENDS = re.compile(r"[\t\r\n][ \t\r\n]*")
_TYPE, _CALC_TYPE = name("office:value-type"), name("calcext:value-type")
_VALUE, _DATE = name("office:value"), name("office:date-value")
_FORMULA = name("table:formula")
# Where a text that is no number stands, if a program has left out what the cell shows.
_OTHER_VALUES = tuple(
    name(f"office:{kind}-value") for kind in ("string", "date", "time", "boolean")
)


class OpenCell(Struct):
    """A cell while it is read: its attributes, and the styled parts of the text that it shows."""

    attributes: Mapping[str, str]
    parts: list[Part] = field(default_factory=list)
    paragraphs: int = 0
    struck: bool = False

    def begin_paragraph(self) -> None:
        """Begin a line: each paragraph is one."""
        if self.paragraphs:
            self.parts.append(("\n", None))
        self.paragraphs += 1

    def add(self, text: str, style: TextStyle | None) -> None:
        """Add characters; a line end is a blank (OpenDocument 1.3, part 3, 6.1.2)."""
        self.parts.append((_LINE_ENDS.sub(" ", text), style))

    def add_kept(self, text: str, style: TextStyle | None) -> None:
        """Add blanks and line breaks that are kept."""
        self.parts.append((text, style))

    def seen(self) -> tuple[str, Spans, Doubt | None]:
        """Return the text, its styles, and what may be amiss.

        A formula without a stored value is returned as it is written.
        """
        text, spans = cleaned(self.parts)
        if not self.paragraphs:
            text = self._value()
        formula = self.attributes.get(_FORMULA)
        if formula and not text and _TYPE not in self.attributes:
            return formula, (), Doubt.NO_VALUE
        if self.attributes.get(_CALC_TYPE) == "error":
            return text, (), Doubt.ERROR_VALUE
        if is_error_value(text):
            is_text = formula is None and self.attributes.get(_TYPE, "string") == "string"
            return text, (), Doubt.ERROR_TEXT if is_text else Doubt.ERROR_VALUE
        if _DATE in self.attributes:
            return text, spans, Doubt.DATE
        return text, spans, Doubt.STRUCK if self.struck else None

    def _value(self) -> str:
        number = self.attributes.get(_VALUE)
        if number is not None:
            return _number_shown(number, self.attributes.get(_TYPE, ""))
        others = (self.attributes.get(other) for other in _OTHER_VALUES)
        return next((other for other in others if other is not None), "")


def _number_shown(number: str, kind: str) -> str:
    try:
        return shown(float(number), "0%" if kind == "percentage" else "General")
    except ValueError:
        return number
