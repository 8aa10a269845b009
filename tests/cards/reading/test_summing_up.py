"""Rows that are no content of their own: totals below the others, units above them."""

import pytest
from openpyxl.worksheet.table import Table
from support.workbooks import fill

from cards.checking import check
from cards.reading import read

HEADINGS = ["Prompt", "Answer"]
ROWS = [["Feet in a fathom", 6], ["Fathoms in a cable", 100], ["Points of a compass", 32]]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


@pytest.mark.parametrize(
    "last", [["Total", 138], ["AVERAGE:", "46.0"], ["Sum", "1,380"], ["Summe", "138 %"]]
)
def test_a_last_row_that_looks_like_a_total_is_warned_of(read_sheets, last) -> None:
    content = read_sheets({"Facts": [HEADINGS, *ROWS, last]})
    assert len(content.items) == 4
    assert found(content) == [("total-row", "warning", "Facts A5")]


def test_a_total_may_stand_before_the_first_side_or_on_the_second(read_sheets) -> None:
    numbered = [["No.", *HEADINGS], *([i, *row] for i, row in enumerate(ROWS)), ["Total", 3, 138]]
    assert found(read_sheets({"Facts": numbered})) == [("total-row", "warning", "Facts A5")]
    words = [["Word", "Meaning"], *([word, "at sea"] for word in "abc"), ["total", 3]]
    assert ("total-row", "warning", "Sea A5") in found(read_sheets({"Sea": words}))


def test_the_row_of_totals_of_a_table_is_warned_of(tmp_path) -> None:
    book = fill({"Facts": [HEADINGS, *ROWS, ["Total", 3]]})
    book["Facts"].add_table(Table(displayName="Sea", ref="A1:B5", totalsRowCount=1))
    book.save(tmp_path / "Sea.xlsx")
    assert found(read(tmp_path / "Sea.xlsx")) == [("total-row", "warning", "Facts A5")]


@pytest.mark.parametrize("rows", [[*ROWS, ["Total", 1], ["Knots", 1]], [ROWS[0], ["Total", 9]]])
def test_a_total_elsewhere_or_of_next_to_nothing_is_content(read_sheets, rows) -> None:
    assert found(read_sheets({"Facts": [HEADINGS, *rows]})) == []


@pytest.mark.parametrize("last", [["Total", "all of it"], ["Total of 3 and 4", 7]])
def test_a_last_row_with_more_words_is_content(read_sheets, last) -> None:
    assert found(read_sheets({"Facts": [HEADINGS, *ROWS, last]})) == []


def test_units_right_below_the_headings_are_warned_of(read_sheets) -> None:
    content = read_sheets({"Facts": [HEADINGS, ["(in m)", "[in s]"], *ROWS]})
    assert len(content.items) == 4
    assert found(content) == [("unit-row", "warning", "Facts A2")]


@pytest.mark.parametrize(
    "rows",
    [
        [["(2, 3)", "(3, 2)"], *ROWS],
        [["(in m)", "length"], *ROWS],
        [["(in m)", "(in s)"], ["(in g)", "(in l)"], *ROWS],
        [*ROWS, ["(in m)", "(in s)"]],
    ],
)
def test_other_brackets_are_content(read_sheets, rows) -> None:
    assert found(read_sheets({"Facts": [HEADINGS, *rows]})) == []
