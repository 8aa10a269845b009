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
_GENERAL = "General"
_VALUE, _DATE = name("office:value"), name("office:date-value")
_TIME, _BOOLEAN = name("office:time-value"), name("office:boolean-value")
_CURRENCY, _FORMULA = name("office:currency"), name("table:formula")
# Where a text that is no number stands, if a program has left out what the cell shows.
_OTHER_VALUES = (name("office:string-value"), _DATE)
# A duration (XML Schema Part 2, 3.2.6), of which spreadsheet programs use this much.
_DURATION = re.compile(r"PT(\d{1,6})H(\d{1,2})M(\d{1,2})(?:[.,]\d+)?S")


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
            unit = self.attributes.get(_CURRENCY, "")
            return f"{_number_shown(number, self.attributes.get(_TYPE, ''))} {unit}".rstrip()
        if _BOOLEAN in self.attributes:
            return self.attributes[_BOOLEAN].upper()
        if _TIME in self.attributes:
            return _time_shown(self.attributes[_TIME])
        others = (self.attributes.get(other) for other in _OTHER_VALUES)
        return next((other for other in others if other is not None), "")


def _number_shown(number: str, kind: str) -> str:
    try:
        value = float(number)
    except ValueError:
        return number
    if kind == "percentage":
        # a hundredfold share has digits at its end that nobody wrote
        return f"{shown(round(100 * value, 10), _GENERAL)}%"
    return shown(value, _GENERAL)


def _time_shown(text: str) -> str:
    """Return a duration as a time of day is written, without seconds that are none."""
    found = _DURATION.fullmatch(text)
    if not found:
        return text
    hours, minutes, seconds = map(int, found.groups())
    return f"{hours}:{minutes:02}" + (f":{seconds:02}" if seconds else "")
