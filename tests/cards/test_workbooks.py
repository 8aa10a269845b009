"""Workbooks: the text on the card is the text that the teacher sees."""

import re
import zipfile
from collections.abc import Callable
from datetime import datetime, time
from pathlib import Path

import pytest
from openpyxl import Workbook
from support.packed import pack, parts_of
from support.workbooks import Sheets, fill

from cards.checking import check
from cards.content import Content
from cards.digest import digest_of
from cards.reading import read

ReadSheets = Callable[..., Content]
HEADINGS = ["Prompt", "Answer", "Topic", "Level"]


def codes(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def saved(book: Workbook, folder: Path) -> Path:
    path = folder / "Rocky shore.xlsx"
    book.save(path)
    return path


@pytest.mark.parametrize(
    "text",
    [
        "NA", "None", "null", "007", "1E5", "3/4", "64%", "=1+1", "-5", "+5", "@here", "<b>",
        "AT&T", "x<y", '<img src="...">', "{x}", "TRUE", "two\nlines", "'so'", "#N", "é", "水",
    ],
)  # fmt: skip
def test_text_comes_through_as_typed(tmp_path: Path, text: str) -> None:
    book = fill({"Facts": [HEADINGS]})
    cell = book["Facts"].cell(2, 1)
    cell.value = text
    cell.data_type = "s"
    book["Facts"]["B2"].value = "answer"
    content = read(saved(book, tmp_path))
    assert [item.prompt for item in content.items] == [text]
    assert codes(content) == []


@pytest.mark.parametrize(
    ("typed", "seen"),
    [
        ("  heron ", "heron"),
        ("\u00a0heron\u00a0", "heron"),
        ("\ufeffheron", "heron"),
        ("one\r\ntwo\rthree", "one\ntwo\nthree"),
        ("e\u0301tang", "\u00e9tang"),
        ("tall  grey bird", "tall  grey bird"),
    ],
)
def test_ends_are_stripped_and_letters_composed(
    read_sheets: ReadSheets, typed: str, seen: str
) -> None:
    content = read_sheets({"Facts": [HEADINGS, ["Bird", typed]]})
    assert [item.answer for item in content.items] == [seen]


@pytest.mark.parametrize(
    ("value", "number_format", "seen"),
    [
        (0.64, "0%", "64%"),
        (0.75, "# ?/?", "3/4"),
        (7, "000", "007"),
        (100000, "0.00E+00", "1.00E+05"),
        (7, "General", "7"),
        (2.5, "0.00", "2.50"),
        (True, "General", "TRUE"),
        (time(7, 30), "h:mm", "7:30"),
    ],
)
def test_numbers_come_through_as_shown(
    tmp_path: Path, value: object, number_format: str, seen: str
) -> None:
    book = fill({"Facts": [HEADINGS, ["How much?", value]]})
    book["Facts"]["B2"].number_format = number_format
    content = read(saved(book, tmp_path))
    assert [item.answer for item in content.items] == [seen]
    assert codes(content) == []


def test_a_date_is_shown_as_formatted_and_told_of(tmp_path: Path) -> None:
    book = fill({"Facts": [HEADINGS, ["Three quarters", datetime(2026, 3, 4)]]})  # noqa: DTZ001
    book["Facts"]["B2"].number_format = "d-mmm"
    content = read(saved(book, tmp_path))
    assert [item.answer for item in content.items] == ["4-Mar"]
    assert codes(content) == [("turned-into-date", "Facts B2")]


def test_a_formula_without_a_stored_value_is_an_error(read_sheets: ReadSheets) -> None:
    rows = [HEADINGS, ["Six sevens", "=6*7"], ["Tides a day", "2", "=A1"]]
    content = read_sheets({"Facts": rows})
    assert codes(content) == [
        ("formula-without-value", "Facts B2"),
        ("formula-without-value", "Facts C3"),
    ]


def with_stored_values(path: Path, values: dict[str, str]) -> Path:
    """Write the values that formulas come to into the first sheet, as a spreadsheet program does.

    A formula's cell is `<c r="B2"><f>6*7</f><v></v></c>`, and its value stands in `v`; the type of
    a value that is no number is the attribute `t` (ECMA-376 Part 1, 18.3.1.4).
    """
    part = "xl/worksheets/sheet1.xml"
    with zipfile.ZipFile(path) as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    sheet = parts[part].decode()
    for cell, stored in values.items():
        old = re.search(rf'<c r="{cell}"[^>]*><f>(.*?)</f><v ?/?>(</v>)?</c>', sheet)
        assert old
        sheet = sheet.replace(old[0], f'<c r="{cell}" {stored.format(f=f"<f>{old[1]}</f>")}</c>')
    parts[part] = sheet.encode()
    with zipfile.ZipFile(path, "w") as archive:
        for name, data in parts.items():
            archive.writestr(name, data)
    return path


def test_a_formula_shows_its_stored_value(make_workbook: Callable[[Sheets], Path]) -> None:
    rows = [HEADINGS, ["=A9", "=6*7"], ["Tides", "=A9"], ["=A9", "=A9"], ["Salt", "=1/0"]]
    path = make_workbook({"Facts": rows})
    content = read(
        with_stored_values(
            path,
            {
                "A2": 't="str">{f}<v>Six sevens</v>',
                "B2": ">{f}<v>42</v>",
                "B3": 't="str">{f}<v></v>',
                "A4": 't="str">{f}<v></v>',
                "B4": 't="str">{f}<v></v>',
                "B5": 't="e">{f}<v>#DIV/0!</v>',
            },
        )
    )
    sides = [(item.prompt, item.answer) for item in content.items]
    assert sides == [("Six sevens", "42"), ("Tides", ""), ("Salt", "#DIV/0!")]
    assert codes(content) == [("no-answer", "Facts B3"), ("error-value", "Facts B5")]


def test_an_error_value_may_be_stored_as_a_text(make_workbook: Callable[[Sheets], Path]) -> None:
    rows = [HEADINGS, ["Tides", "=A9"], ["Moon", "=A9"], ["No. 1", "#1"], ["Shout", "#WOW!"]]
    stored = {"B2": 't="str">{f}<v>#REF!</v>', "B3": 't="str"><v>#WERT!</v>'}
    content = read(with_stored_values(make_workbook({"Facts": rows}), stored))
    assert [(one.code, str(one.severity), str(one.place)) for one in check(content, ())] == [
        ("error-value", "error", "Facts B2"),
        ("error-value-as-text", "warning", "Facts B3"),
    ]


def test_a_formula_beside_the_content_is_no_matter(read_sheets: ReadSheets) -> None:
    rows = [[*HEADINGS, "Count"], ["Tides a day", "2", None, None, "=COUNTA(A:A)"]]
    assert codes(read_sheets({"Facts": rows})) == []


def test_merged_cells_hold_for_every_row_they_span(tmp_path: Path) -> None:
    rows = [HEADINGS, ["Tides a day", 2, "Tides"], ["Highest tide", "spring"], ["Lowest", "neap"]]
    book = fill({"Facts": [*rows, ["Legs of a crab", 10]]})
    book["Facts"].merge_cells("C2:C4")
    content = read(saved(book, tmp_path))
    assert [item.topic for item in content.items] == ["Tides", "Tides", "Tides", ""]
    assert codes(content) == []


def test_rows_that_a_merged_cell_fills_by_itself_stay_blank(tmp_path: Path) -> None:
    book = fill({"Facts": [HEADINGS, ["Tides a day", 2], [], ["Legs of a crab", 10]]})
    book["Facts"].merge_cells("A2:A3")
    book["Facts"].merge_cells("B2:B3")
    content = read(saved(book, tmp_path))
    assert [item.answer for item in content.items] == ["2", "10"]
    assert codes(content) == []


def test_hidden_rows_and_sheets_are_left_out_and_told_of(tmp_path: Path) -> None:
    rows = [HEADINGS, *([f"Prompt {i}", f"Answer {i}"] for i in range(2, 9))]
    book = fill({"Facts": rows, "Questions": [["Question", "Answer"], ["Why?", "salt"]]})
    for row in (3, 5, 6, 7, 20):
        book["Facts"].row_dimensions[row].hidden = True
    book["Questions"].sheet_state = "hidden"
    content = read(saved(book, tmp_path))
    assert [item.prompt_place.row for item in content.items] == [2, 4, 8]
    assert codes(content) == [("hidden-rows", "Facts row 3"), ("hidden-sheet", "Questions")]
    assert content.findings[0].wrong == "Rows 3, 5 to 7 are hidden and were left out."


def test_blank_rows_between_items_are_nothing(read_sheets: ReadSheets) -> None:
    rows = [HEADINGS, [], ["Tides a day", 2], [" "], [None, None, "Tides", "easy"], ["Legs", 10]]
    content = read_sheets({"Facts": rows})
    assert [item.prompt_place.row for item in content.items] == [3, 6]
    assert codes(content) == []


def test_a_sheet_without_content_is_left_out_and_told_of(read_sheets: ReadSheets) -> None:
    content = read_sheets(
        {
            "Notes": [["Ask about the minibus"], ["Wellingtons", "all"]],
            "My shore list": [["Word", "Meaning"], ["limpet", "a shellfish"]],
            "Empty": [],
        }
    )
    assert [item.answer for item in content.items] == ["limpet"]
    assert codes(content) == [("sheet-left-out", "Notes")]


def test_items_keep_the_order_of_the_sheets(read_sheets: ReadSheets) -> None:
    content = read_sheets(
        {
            "Questions": [["Question", "Answer"], ["Why?", "salt"]],
            "Facts": [["Prompt", "Answer"], ["Tides a day", 2]],
        }
    )
    assert [item.answer for item in content.items] == ["salt", "2"]


def test_teams_and_settings_are_read_with_their_places(read_sheets: ReadSheets) -> None:
    content = read_sheets(
        {
            "Facts": [["Prompt", "Answer"], ["Tides a day", 2]],
            "Team": [["Our teams"], ["Name", "Color"], ["Heron", "blue"], ["Otter", None]],
            "Deck": [["Setting", "Value"], ["Title", "Shore week"], ["Teams", 2], ["Deal", None]],
        }
    )
    assert [(str(row.name.place), row.name.text) for row in content.teams] == [
        ("Team A3", "Heron"),
        ("Team A4", "Otter"),
    ]
    assert [row.colour.text if row.colour else None for row in content.teams] == ["blue", None]
    assert [(row.name.text, row.value.text, str(row.value.place)) for row in content.settings] == [
        ("Title", "Shore week", "Deck B2"),
        ("Teams", "2", "Deck B3"),
    ]
    assert codes(content) == []


def test_teams_and_settings_need_no_headings(read_sheets: ReadSheets) -> None:
    content = read_sheets(
        {
            "Facts": [["Prompt", "Answer"], ["Tides a day", 2]],
            "Teams": [["Team 1", "blue"], ["Team 2", "orange"]],
            "Deck": [["Title", "Shore week"]],
        }
    )
    assert [row.name.text for row in content.teams] == ["Team 1", "Team 2"]
    assert [row.value.text for row in content.settings] == ["Shore week"]


def test_the_digest_is_of_what_is_said(make_workbook: Callable[[Sheets], Path]) -> None:
    plain = {"Facts": [["Prompt", "Answer"], ["Tides a day", "2"]]}
    moved = {"Facts": [["Shore"], [], ["Answer", "Prompt"], ["2", " Tides a day"]]}
    other = {"Facts": [["Prompt", "Answer"], ["Tides a day", "3"]]}
    digests = [digest_of(read(make_workbook(sheets))) for sheets in (plain, moved, other)]
    assert digests[0] == digests[1]
    assert digests[0] != digests[2]


def test_the_file_is_not_changed(make_workbook: Callable[[Sheets], Path]) -> None:
    path = make_workbook({"Facts": [["Prompt", "Answer"], ["Tides a day", "=1+1"]]})
    before = path.read_bytes()
    read(path)
    assert path.read_bytes() == before


def test_a_sheet_that_is_listed_and_not_there_is_told_of(tmp_path: Path) -> None:
    parts = parts_of(
        {
            "Facts": [HEADINGS, ["Tides a day", 2]],
            "Vocabulary": [["Word", "Meaning"], ["ebb", "going out"]],
        }
    )
    ties = "xl/_rels/workbook.xml.rels"
    parts[ties] = parts[ties].replace(b"worksheets/sheet2.xml", b"worksheets\\\\sheet2.xml")
    content = read(pack(tmp_path / "Shore.xlsx", parts))
    assert len(content.items) == 1
    assert codes(content) == [("absent-sheet", "Vocabulary")]
