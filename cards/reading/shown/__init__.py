"""The text that a spreadsheet shows for a value under a number format.

Format codes are those of ECMA-376 Part 1, 18.8.30 and 18.8.31. Names of months and days are in the
language that the code asks for, or in English. Spaces that only line columns up (`?`, `_x`, `*x`)
are not kept at the ends of the text.
"""

import re

from cards.reading.shown.dates import date_shown
from cards.reading.shown.format import Style, sections_of
from cards.reading.shown.fractions import fraction_shown
from cards.reading.shown.numbers import general_shown, number_shown, scientific_shown
from cards.reading.shown.serial import Value, as_number
from cards.reading.shown.text import text_shown

__all__ = ["Value", "shown"]

# Spreadsheet programs take no longer ones.
_LONGEST_FORMAT = 255
# A number that is rounded to nothing is shown without its sign.
_ANY_DIGIT_BUT_0 = re.compile(r"[1-9]")
# The code of built-in format 14 stands for the short date of the reader's own country; which one
# that is no file says.
_SHORT_DATE, _SHORT_DATE_SHOWN = "mm-dd-yy", "m/d/yyyy"
_WRITERS = {
    Style.DATE: date_shown,
    Style.FRACTION: fraction_shown,
    Style.SCIENTIFIC: scientific_shown,
    Style.GENERAL: general_shown,
    Style.NUMBER: number_shown,
}


def shown(value: Value, number_format: str) -> str:
    """Return the text that a cell shows which holds `value` formatted as `number_format`."""
    if value is None:
        return ""
    if len(number_format) > _LONGEST_FORMAT:
        number_format = "General"
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    sections = sections_of(_SHORT_DATE_SHOWN if number_format == _SHORT_DATE else number_format)
    if isinstance(value, str):
        return text_shown(value, sections)
    number = as_number(value)
    if number is None:
        return str(value)
    section, minus = sections.pick(number)
    try:
        text = _WRITERS[section.style](abs(number), section).strip()
    # Codes such as a hundred percent signs ask for more digits than are to be had.
    except ArithmeticError:
        return str(value)
    return f"{minus}{text}" if _ANY_DIGIT_BUT_0.search(text) else text
