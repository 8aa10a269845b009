"""Hidden columns, and rows that are set apart as headings are."""

from collections.abc import Callable
from pathlib import Path

import pytest
from openpyxl import Workbook
from openpyxl.styles import Font, PatternFill
from support.workbooks import fill

from cards.checking import check
from cards.content import Content
from cards.item import Level
from cards.reading import read

PLAIN = [["heron", "garza"], ["limpet", "lapa"], ["tide", "marea"]]
HEADED = [["Prompt", "Answer", "Level"], ["Tides a day", 2, "hard"], ["Legs of a crab", 10, "easy"]]


def codes(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def reread(book: Workbook, folder: Path) -> Content:
    path = folder / "Shore.xlsx"
    book.save(path)
    return read(path)


# Hidden columns


def hide(book: Workbook, sheet: str, column: str) -> Workbook:
    book[sheet].column_dimensions[column].hidden = True
    return book


def test_a_hidden_column_under_a_known_heading_is_read_and_told_of(tmp_path: Path) -> None:
    content = reread(hide(fill({"Facts": HEADED}), "Facts", "C"), tmp_path)
    assert [item.level for item in content.items] == [Level.HARD, Level.EASY]
    assert codes(content) == [("hidden-column", "Facts C1")]


def test_of_two_columns_with_one_heading_the_hidden_one_is_left_out(tmp_path: Path) -> None:
    rows = [["Prompt", "Answer", "Answer"], ["Tides a day", "3 (old)", "2"]]
    content = reread(hide(fill({"Facts": rows}), "Facts", "B"), tmp_path)
    assert [item.answer for item in content.items] == ["2"]
    assert codes(content) == []


def test_a_hidden_column_under_another_heading_is_no_matter(tmp_path: Path) -> None:
    rows = [["Prompt", "Answer", "Remarks"], ["Tides a day", "2", "old"]]
    assert codes(reread(hide(fill({"Facts": rows}), "Facts", "C"), tmp_path)) == []


def test_without_headings_hidden_columns_are_left_out(tmp_path: Path) -> None:
    rows = [[number, *pair] for number, pair in enumerate(PLAIN)]
    content = reread(hide(fill({"Sheet1": rows}), "Sheet1", "A"), tmp_path)
    assert [item.answer for item in content.items] == ["garza", "lapa", "marea"]
    assert codes(content) == []


def test_hidden_columns_may_come_in_groups(tmp_path: Path) -> None:
    rows = [["a", "b", *pair] for pair in PLAIN]
    book = fill({"Sheet1": rows})
    book["Sheet1"].column_dimensions.group("A", "B", hidden=True)
    assert [item.prompt for item in reread(book, tmp_path).items] == ["heron", "limpet", "tide"]


# A row that is set apart


def bold(book: Workbook) -> None:
    for cell in book["Sheet1"][1]:
        cell.font = Font(bold=True)


def frozen(book: Workbook) -> None:
    book["Sheet1"].freeze_panes = "A2"


def filtered(book: Workbook) -> None:
    book["Sheet1"].auto_filter.ref = "A1:B4"


@pytest.mark.parametrize("mark", [bold, frozen, filtered])
def test_a_first_row_that_is_set_apart_makes_no_card_and_is_told_of(
    tmp_path: Path, mark: Callable[[Workbook], None]
) -> None:
    book = fill({"Sheet1": [["Ave", "Ave en inglés"], *PLAIN]})
    mark(book)
    content = reread(book, tmp_path)
    assert [item.prompt for item in content.items] == ["heron", "limpet", "tide"]
    assert codes(content) == [("row-set-apart", "Sheet1 A1")]


def all_bold(book: Workbook) -> None:
    for row in book["Sheet1"].iter_rows():
        for cell in row:
            cell.font = Font(bold=True)


def first_bold(book: Workbook) -> None:
    for row in book["Sheet1"].iter_rows(max_col=1):
        row[0].font = Font(bold=True)


def frozen_column(book: Workbook) -> None:
    book["Sheet1"].freeze_panes = "B1"


def coloured(book: Workbook) -> None:
    for cell in book["Sheet1"][1]:
        cell.fill = PatternFill("solid", fgColor="FFEEAA")


def nothing(_: Workbook) -> None:
    pass


@pytest.mark.parametrize("mark", [all_bold, first_bold, frozen_column, coloured, nothing])
def test_a_first_row_like_the_others_is_content(
    tmp_path: Path, mark: Callable[[Workbook], None]
) -> None:
    book = fill({"Sheet1": PLAIN})
    mark(book)
    content = reread(book, tmp_path)
    assert len(content.items) == 3
    assert codes(content) == []


def test_known_headings_need_not_be_set_apart_nor_told_of(tmp_path: Path) -> None:
    book = fill({"Sheet1": HEADED})
    bold(book)
    frozen(book)
    assert codes(reread(book, tmp_path)) == []
