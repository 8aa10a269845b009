"""What is read, against what LibreOffice shows and writes."""

import csv
from datetime import date, time
from pathlib import Path

from openpyxl import Workbook
from openpyxl.comments import Comment
from support.office import AS_SHOWN, converted, needs_office
from support.shown_texts import SHOWN
from support.workbooks import fill

from cards.checking import check
from cards.reading import read

pytestmark = needs_office


def test_the_table_of_texts_is_what_libreoffice_shows(tmp_path: Path) -> None:
    book = Workbook()
    sheet = book.active
    assert sheet
    for row, (value, number_format, _) in enumerate(SHOWN, start=1):
        cell = sheet.cell(row, 1, value)
        cell.number_format = number_format
        if isinstance(value, str):
            cell.data_type = "s"
        sheet.cell(row, 2, "end")
    path = tmp_path / "shown.xlsx"
    book.save(path)
    with converted(path, AS_SHOWN, tmp_path).open(encoding="utf-8", newline="") as file:
        texts = [" ".join(record[0].split()) for record in csv.reader(file)]
    differing = [
        (value, number_format, text, theirs)
        for (value, number_format, text), theirs in zip(SHOWN, texts, strict=True)
        if text != theirs
    ]
    assert differing == []


def test_a_workbook_and_its_opendocument_twin_say_the_same(tmp_path: Path) -> None:
    book = fill(
        {
            "Facts": [
                ["The rocky shore"],
                [],
                ["Prompt", "Answer (cm)", "Topic", "Level"],
                ["Three  quarters of the tide", 0.75, "Tides", "easy"],
                ["64 of 100", 0.64],
                ["The fourth of March", date(2026, 3, 4)],
                ["two\nlines", "‘curly’ “quotes”"],
                ["hidden", "row"],
                ["low water", time(7, 30)],
                [None, None, None, None],
                ["a code", 7],
                ["AT&T <b> =1+1", "a, b; c"],
            ],
            "Teams": [["Team", "Colour"], ["Heron", "blue"]],
            "Deck": [["Setting", "Value"], ["Title", "Shore week"]],
            "Old": [["Prompt", "Answer"], ["a", "b"]],
        }
    )
    sheet = book["Facts"]
    for cell, number_format in {"B4": "# ?/?", "B5": "0%", "B6": "d-mmm", "B11": "000"}.items():
        sheet[cell].number_format = number_format
    sheet["B7"].comment = Comment("only between us", "someone")
    sheet.row_dimensions[8].hidden = True
    sheet.merge_cells("C4:C7")
    sheet.column_dimensions["D"].hidden = True
    book["Old"].sheet_state = "hidden"
    path = tmp_path / "Shore.xlsx"
    book.save(path)
    ours, twin = read(path), read(converted(path, "ods", tmp_path))
    assert [item.answer for item in ours.items] == [
        "3/4",
        "64%",
        "4-Mar",
        "‘curly’ “quotes”",
        "7:30:00",
        "007",
        "a, b; c",
    ]
    assert twin == ours
    assert check(twin, ["Heron"]) == check(ours, ["Heron"])


def test_formulas_are_read_as_libreoffice_works_them_out(tmp_path: Path) -> None:
    rows = [["Prompt", "Answer"], ["Six sevens", "=6*7"], ['=B2&" eggs"', "=1/0"]]
    path = tmp_path / "Shore.xlsx"
    fill({"Facts": rows}).save(path)
    for kind in ("ods", "xlsx:Calc MS Excel 2007 XML"):
        (tmp_path / kind[:3]).mkdir()
        content = read(converted(path, kind, tmp_path / kind[:3]))
        assert [(item.prompt, item.answer) for item in content.items] == [
            ("Six sevens", "42"),
            ("42 eggs", "#DIV/0!"),
        ]
        assert [(f.code, f.place.cell) for f in content.findings] == [("error-value", "B3")]
