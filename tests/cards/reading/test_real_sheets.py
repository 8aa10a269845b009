"""Sheets as teachers keep them: odd, but innocent."""

import re
from collections.abc import Callable
from io import BytesIO
from pathlib import Path

import pytest
import xlsxwriter
from openpyxl import Workbook
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table
from support.packed import SHEET, pack, parts_of, sheet_xml, text_row
from support.pictures import coded, photograph
from support.workbooks import Sheets, fill

from cards.checking import check
from cards.content import Content
from cards.reading import read

ReadSheets = Callable[..., Content]
ReadCsv = Callable[..., Content]
PLAIN = [["heron", "garza"], ["limpet", "lapa"], ["tide", "marea"]]
HEADED = [["Prompt", "Answer", "Level"], ["Tides a day", 2, "hard"], ["Legs of a crab", 10, "easy"]]


def codes(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def reread(book: Workbook, folder: Path) -> Content:
    path = folder / "Shore.xlsx"
    book.save(path)
    return read(path)


@pytest.mark.parametrize(
    "headings",
    [
        ["Question", "Answer (cm)"],
        ["Question [round 1]", "Answer:"],
        ["Question\n(read aloud)", "Answer *"],
        ["No.", "Question", "Answer", "Page"],
        ["Questions", "Answers"],
        ["QUESTION", "answer "],
        ["\u00a0Question", "Answer\u00a0(in cm)"],
    ],
)
def test_headings_with_units_marks_and_extra_columns_are_known(
    read_sheets: ReadSheets, headings: list[str]
) -> None:
    row = ["12" if heading not in {"No.", "Page"} else "x" for heading in headings]
    content = read_sheets({"Sheet1": [headings, row]})
    assert [(item.prompt, item.answer) for item in content.items] == [("12", "12")]
    assert content.findings == ()


def test_a_sheet_with_everything_at_once(tmp_path: Path) -> None:
    book = fill(
        {
            "Rocky shore week": [
                ["Year 5: the rocky shore"],
                ["Ms Whelk", None, "Term 2"],
                [],
                [None, "Topic", "Question", "Notes", "Answer (cm)", "Level"],
                [],
                [None, "Tides", "How high\nis it?\u00a0", "old", " 120 ", "Easy"],
                [None, None, "What’s “ebb”?", None, "the tide’s going out", "hard"],
                [],
                [None, "Zones", "Where is the splash zone?", None, "at the top", None],
            ],
            "My birds": [["Front", "Back"], ["tall, grey, waits", "heron"]],
            "Register": [["Name"], ["A"], ["B"]],
        }
    )
    sheet = book["Rocky shore week"]
    sheet.merge_cells("A1:F1")
    sheet.merge_cells("B6:B7")
    content = reread(book, tmp_path)
    assert [(item.topic, item.prompt, item.answer) for item in content.items] == [
        ("Tides", "How high\nis it?", "120"),
        ("Tides", "What’s “ebb”?", "the tide’s going out"),
        ("Zones", "Where is the splash zone?", "at the top"),
        ("", "tall, grey, waits", "heron"),
    ]
    assert [str(item.answer_place) for item in content.items] == [
        "Rocky shore week E6",
        "Rocky shore week E7",
        "Rocky shore week E9",
        "My birds B2",
    ]
    assert codes(content) == [("sheet-left-out", "Register")]


# What spreadsheet programs put beside the cells


def test_what_stands_beside_the_cells_is_no_matter(tmp_path: Path) -> None:
    book = fill({"Facts": HEADED})
    sheet = book["Facts"]
    sheet["A2"].comment = Comment("ask about this", "someone")
    sheet["A3"].hyperlink = "http://example.org/"
    sheet.add_table(Table(displayName="Facts1", ref="A1:C3"))
    sheet.add_data_validation(DataValidation(type="list", formula1='"easy,hard"', sqref="C2:C99"))
    sheet.conditional_formatting.add("B2:B99", CellIsRule(operator="equal", formula=["2"]))
    book.defined_names["tides"] = DefinedName("tides", attr_text="Facts!$A$2")
    sheet.print_title_rows = "1:1"
    chart = book.create_chartsheet("Chart")
    chart.title = "Chart"
    content = reread(book, tmp_path)
    assert [item.prompt for item in content.items] == ["Tides a day", "Legs of a crab"]
    assert codes(content) == []


MACRO = "Shore macro.xlsm"


def test_macros_are_never_run_nor_even_unpacked(tmp_path: Path) -> None:
    parts = parts_of({"Facts": HEADED})
    types = parts["[Content_Types].xml"].replace(
        b"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
        b"application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    )
    assert types != parts["[Content_Types].xml"]
    # whoever opened this would find that it is no project of macros at all
    macros = {"[Content_Types].xml": types, "xl/vbaProject.bin": b"Auto_Open: not a project"}
    path = pack(tmp_path / MACRO, parts | macros)
    assert [item.answer for item in read(path).items] == ["2", "10"]
    assert sorted(tmp_path.iterdir()) == [path]


def test_cells_and_rows_need_not_say_where_they_stand(tmp_path: Path) -> None:
    rows = (
        "<row><c t='inlineStr'><is><t>Prompt</t></is></c><c/>"
        "<c t='inlineStr'><is><t>Answer</t></is></c></row><row/>"
        "<row><c t='inlineStr'><is><t>Tides a day</t></is></c><c/><c><v>2</v></c></row>"
    )
    parts = parts_of({"Facts": HEADED}) | {SHEET: sheet_xml(rows)}
    [item] = read(pack(tmp_path / "w.xlsx", parts)).items
    assert (item.prompt_place.cell, item.answer_place.cell) == ("A3", "C3")


def test_blank_cells_do_not_move_the_others(tmp_path: Path) -> None:
    rows = (
        text_row(1, "Prompt", "Answer")
        + '<row r="2" s="0"/><row r="3"><c r="A3" s="0"/><c r="B3" s="0"></c></row>\n'
        + '<row r="4"><c r="A4" s="0"/><c r="B4"><v>7</v></c><c r="C4" s="0"/></row>'
        + '<row r="5"><c r="A5" t="inlineStr"><is><t>Legs</t></is></c><c r="B5"><v>10</v></c></row>'
        + '<row r="6" hidden="1"/>'
    )
    parts = parts_of({"Facts": HEADED}) | {SHEET: sheet_xml(rows)}
    content = read(pack(tmp_path / "w.xlsx", parts))
    assert [str(item.answer_place) for item in content.items] == ["Facts B4", "Facts B5"]
    assert codes(content) == [("no-prompt", "Facts A4")]


def test_prefixes_are_a_matter_of_taste(tmp_path: Path) -> None:
    parts: dict[str, bytes] = parts_of({"Facts": [["Topic", "Prompt", "Answer"]]})
    rows = (
        text_row(1, "Topic", "Prompt", "Answer")
        + text_row(2, "Tides", "a", "b")
        + '<row r="3"><c r="B3"><v>7</v></c><c r="C3"><v>8</v></c></row>'
    )
    merged = '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>'
    plain = sheet_xml(rows, after=merged).split("?>", 1)[1]
    prefixed = plain.replace("</", "\0").replace("<", "<x:").replace("\0", "</x:")
    prefixed = prefixed.replace("xmlns=", "xmlns:x=")
    for xml in (plain, prefixed):
        content = read(pack(tmp_path / "w.xlsx", parts | {SHEET: xml.encode()}))
        assert [(i.topic, i.prompt, i.answer) for i in content.items] == [
            ("Tides", "a", "b"),
            ("Tides", "7", "8"),
        ]


def test_our_own_sheets_are_ignored_without_a_word(make_workbook: Callable[[Sheets], Path]) -> None:
    content = read(make_workbook({"Start here": [["Fairdeal"], ["1. Fill in"]], "Facts": HEADED}))
    assert len(content.items) == 2
    assert codes(content) == []


# ECMA-376 Part 1, 18.3.1.73 and .4: `r` is optional in rows and cells; XML 1.0, 2.3 and 3.1: either
# quotes, and any white space before an attribute and around its equals sign
@pytest.mark.parametrize("written", ["as usual", "without r", "single quotes", "new lines"])
def test_merged_cells_are_read_however_the_sheet_is_written(tmp_path: Path, written: str) -> None:
    rows = "".join(
        text_row(number, *texts)
        for number, texts in enumerate(
            [
                ("Topic", "Prompt", "Answer"),
                ("Tides", "What ebbs?", "sea"),
                ("", "What pulls?", "moon"),
                ("", "What is wet?", "mud"),
                ("Zones", "What is low?", "whelk"),
            ],
            1,
        )
    )
    sheet = sheet_xml(rows, after='<mergeCells><mergeCell ref="A2:A4"/></mergeCells>')
    if written == "without r":
        sheet = re.sub(r' r="\w+"', "", sheet)
    elif written == "single quotes":
        sheet = sheet.replace('"', "'")
    elif written == "new lines":
        sheet = re.sub(r' (r|ref)="', r'\n  \1 = "', sheet)
    content = read(pack(tmp_path / "w.xlsx", parts_of({"Facts": []}) | {SHEET: sheet}))
    assert [item.topic for item in content.items] == ["Tides", "Tides", "Tides", "Zones"]
    assert content.findings == ()


def test_a_text_may_be_written_as_the_value_of_its_cell(tmp_path: Path) -> None:
    row = '<row r="2"><c r="A2" t="inlineStr"><v>What ebbs?</v></c><c r="B2"><v>2</v></c></row>'
    parts = parts_of({"Facts": []}) | {SHEET: sheet_xml(text_row(1, "Prompt", "Answer") + row)}
    (item,) = read(pack(tmp_path / "w.xlsx", parts)).items
    assert (item.prompt, item.answer) == ("What ebbs?", "2")


def test_a_merged_formula_without_a_value_is_amiss_in_every_row_it_spans(tmp_path: Path) -> None:
    parts: dict[str, bytes] = parts_of({"Facts": [["Prompt", "Answer", "Topic"]]})
    rows = (
        text_row(1, "Prompt", "Topic", "Answer")
        + text_row(2, "What is low?", "Tides").replace(
            "</row>", '<c r="C2"><f>B1&amp;"x"</f></c></row>'
        )
        + text_row(3, "What is high?", "Tides")
    )
    merged = '<mergeCells count="1"><mergeCell ref="C2:C3"/></mergeCells>'
    content = read(pack(tmp_path / "w.xlsx", parts | {SHEET: sheet_xml(rows, after=merged)}))
    errors = [place for code, place in codes(content) if code == "formula-without-value"]
    assert errors == ["Facts C2", "Facts C3"]


def test_a_place_is_told_in_one_line_whatever_a_sheet_is_called(tmp_path: Path) -> None:
    parts: dict[str, bytes] = parts_of({"Facts": [["Prompt", "Answer"], ["Tides a day", None]]})
    name = "xl/workbook.xml"
    parts |= {name: parts[name].replace(b'"Facts"', b'"Facts&#10;error   Facts"')}
    (finding,) = check(read(pack(tmp_path / "w.xlsx", parts)), ())
    assert str(finding.place) == "Facts error   Facts B2"


@pytest.mark.parametrize(
    "look",
    [
        {"border": Border(left=Side(style="thin"), bottom=Side(style="thick"))},
        {"font": Font(bold=True)},
        {"fill": PatternFill("solid", fgColor="FFDDEEFF")},
        {"alignment": Alignment(horizontal="center")},
        {"number_format": "0.00"},
    ],
    ids=str,
)
def test_merged_cells_may_look_like_anything(tmp_path: Path, look: dict[str, object]) -> None:
    topic = [["Prompt", "Answer", "Topic"], ["Tides a day", "2", "Tides"], ["Legs of a crab", "10"]]
    book = fill({"Facts": [["Our shore"], *topic]})
    sheet = book["Facts"]
    for cells in ("A1:C1", "C3:C4"):
        sheet.merge_cells(cells)
        for name, value in look.items():
            setattr(sheet[cells.split(":")[0]], name, value)
    content = reread(book, tmp_path)
    assert [(item.answer, item.topic) for item in content.items] == [
        ("2", "Tides"),
        ("10", "Tides"),
    ]


def test_hidden_columns_that_overlap_are_read_at_once(tmp_path: Path) -> None:
    columns = "".join(f'<col min="{n}" max="16384" hidden="1"/>' for n in range(3, 4_000))
    rows = text_row(1, "Prompt", "Answer") + text_row(2, "Tides a day", "2")
    xml = sheet_xml(rows, before=f"<cols>{columns}</cols>")
    content = read(pack(tmp_path / "w.xlsx", parts_of({"Facts": HEADED}) | {SHEET: xml}))
    assert [item.answer for item in content.items] == ["2"]


def test_a_number_beyond_all_numbers_is_amiss(tmp_path: Path) -> None:
    parts: dict[str, bytes] = parts_of({"Facts": HEADED})
    rows = text_row(1, "Prompt", "Answer") + text_row(2, "How many?")
    many = rows.replace("</c></row>", '</c><c r="B2"><v>1e999</v></c></row>')
    content = read(pack(tmp_path / "w.xlsx", parts | {SHEET: sheet_xml(many)}))
    assert ("error-value", "Facts B2") in codes(content)


@pytest.mark.parametrize(("stored", "text"), [("true", "TRUE"), ("FALSE", "FALSE"), ("1", "TRUE")])
def test_what_is_true_may_be_stored_in_words(tmp_path: Path, stored: str, text: str) -> None:
    parts: dict[str, bytes] = parts_of({"Facts": HEADED})
    rows = text_row(1, "Prompt", "Answer") + text_row(2, "Is it so?")
    cell = f'</c><c r="B2" t="b"><v>{stored}</v></c></row>'
    rows = cell.join(rows.rsplit("</c></row>", 1))
    content = read(pack(tmp_path / "w.xlsx", parts | {SHEET: sheet_xml(rows)}))
    assert [item.answer for item in content.items] == [text]


def test_a_picture_placed_in_a_cell_is_not_taken_for_a_formula(tmp_path: Path) -> None:
    path = tmp_path / "w.xlsx"
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet("Facts")
        sheet.write_row("A1", ["Prompt", "Answer"])
        sheet.write("A2", "What is this?")
        png = BytesIO(coded(photograph(40, 30)))
        sheet.embed_image("B2", "shell.png", {"image_data": png})
    (finding,) = [one for one in read(path).findings if one.place.cell == "B2"]
    assert (finding.code, finding.severity) == ("no-text", "error")
    assert "no formula" in finding.wrong
