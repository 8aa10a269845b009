"""What a cell shows, against texts that a spreadsheet program showed.

Runs of spaces are compared as one: how many line a column up is a matter of its width.
"""

from datetime import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.shown_texts import SHOWN

from cards.reading.shown import Value, shown

at = datetime.fromisoformat

# Where LibreOffice differs from the rules of ECMA-376 Part 1, 18.8.30 and 18.8.31, or from what the
# teacher's card needs; the texts are from memory of those rules.
SHOWN_BY_RULE = [
    (1.5e16, "General", "1.5E+16"),
    (1e20, "General", "1E+20"),
    (False, "0", "FALSE"),
    (5, "#.##", "5."),
    (1234, "0.", "1234."),
    (-0.5, "# ?/?", "-1/2"),
    (9, "0\\/10", "9/10"),
    (at("1900-01-15"), "d/m/yyyy", "15/1/1900"),
    (at("2026-03-04T12:05:09"), "h:mm A/P", "12:05 P"),
    (9.58 / 86_400, "[ss].00", "09.58"),
    (86.4 / 86_400, "[s].00", "86.40"),
    (0.1 / 86_400, "[s].0", "0.1"),
    (7, "", "7"),
    (None, "0", ""),
    (12345678901234567890, "0", "12345678901234600000"),
    (float("inf"), "0", "inf"),
    (3e6, "d/m/yyyy", "3000000"),
]


@pytest.mark.parametrize(("value", "number_format", "text"), [*SHOWN, *SHOWN_BY_RULE])
def test_a_value_is_shown_as_the_spreadsheet_shows_it(
    value: Value, number_format: str, text: str
) -> None:
    assert " ".join(shown(value, number_format).split()) == text


@given(st.text())
def test_text_is_never_changed_by_a_format_for_numbers(text: str) -> None:
    for number_format in ("General", "0.00", "# ?/?", "@", "d-mmm"):
        assert shown(text, number_format) == text


@given(st.integers(-(10**15) + 1, 10**15 - 1))
def test_a_whole_number_is_shown_with_all_its_digits(number: int) -> None:
    assert shown(number, "General") == str(number)
    assert shown(number, "0") == str(number)
    assert shown(number, "#,##0") == f"{number:,}"


@given(st.floats(), st.text('0#?.,%/E+-;@_*[]<>=\\"dmyhs AP$€', max_size=12))
def test_any_format_shows_something(number: float, number_format: str) -> None:
    assert isinstance(shown(number, number_format), str)
