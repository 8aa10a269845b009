"""Workbooks that are formatted to their ends, or hold far more than a class needs."""

import re

import pytest
from support.packed import SHEET, parts_of, sheet_xml, text_row, workbook_with
from support.workbooks import fill

bounded = pytest.importorskip("support.bounded", reason="memory is bounded in another way here")
content, refusal = bounded.content, bounded.refusal
parted, pieces = bounded.parted, bounded.pieces
HEADINGS = text_row(1, "Prompt", "Answer")
TIDES = text_row(2, "Tides a day", "2")
READ = "Tides a day: 2"


# Sheets that are formatted to their ends


def test_a_sheet_with_a_format_in_every_row_is_read(tmp_path):
    blank = b'<row r="1048576" spans="1:5" s="0" customFormat="1" ht="18" customHeight="1"/>'
    start, end = parted(sheet_xml(f"{HEADINGS}{TIDES}<!-- here -->"))
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: pieces(start, blank, 1_048_574, end)})
    assert content(path) == READ


def test_millions_of_blank_cells_with_a_format_are_read(tmp_path):
    cells = "".join(f'<c r="{column}9" s="0"/>' for column in "ABCDE")
    row = f'<row r="9">{cells}</row>'.encode()
    start, end = parted(sheet_xml(f"{HEADINGS}{TIDES}<!-- here -->"))
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: pieces(start, row, 600_000, end)})
    assert content(path) == READ


def test_a_row_with_a_format_in_every_column_is_read(tmp_path):
    cells = "".join(f'<c r="ABC{row}" s="0"/>' * 16_382 for row in (3,))
    rows = f'{HEADINGS}{TIDES}<row r="3">{cells}</row>'
    before = '<cols><col min="1" max="16384" width="9"/></cols>'
    xml = sheet_xml(rows, before=before)
    assert content(workbook_with(tmp_path / "w.xlsx", {SHEET: xml})) == READ


@pytest.mark.parametrize("ref", ["A1:XFD1048576", "A1", "A1:A9999999999999999999", "no range"])
def test_a_sheet_that_lies_about_its_size_is_read(tmp_path, ref):
    xml = sheet_xml(HEADINGS + TIDES, before=f'<dimension ref="{ref}"/>')
    assert content(workbook_with(tmp_path / "w.xlsx", {SHEET: xml})) == READ


EVERYWHERE = [
    '<mergeCells><mergeCell ref="A9:XFD1048576"/></mergeCells>',
    '<mergeCells><mergeCell ref="C1:XFD1048576"/></mergeCells>',
    '<hyperlinks><hyperlink ref="A1:XFD1048576" location="x"/></hyperlinks>',
    '<autoFilter ref="A1:XFD1048576"/>',
    '<conditionalFormatting sqref="A1:XFD1048576"></conditionalFormatting>',
    '<dataValidations><dataValidation sqref="A1:XFD1048576"/></dataValidations>',
    '<legacyDrawing xmlns:r="http://x" r:id="rId7"/>',
]


@pytest.mark.parametrize("everywhere", EVERYWHERE)
def test_what_reaches_over_a_whole_sheet_is_no_matter(tmp_path, everywhere):
    xml = sheet_xml(HEADINGS + TIDES, after=everywhere)
    assert content(workbook_with(tmp_path / "w.xlsx", {SHEET: xml})) == READ


@pytest.mark.parametrize("everywhere", EVERYWHERE[:3])
def test_what_stands_in_the_wrong_place_is_not_read(tmp_path, everywhere):
    before = sheet_xml(HEADINGS + TIDES, before=everywhere)
    assert content(workbook_with(tmp_path / "w.xlsx", {SHEET: before})) == READ
    inside = sheet_xml(HEADINGS + everywhere + TIDES)
    assert "damaged" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: inside}))


def test_merged_cells_without_end_are_refused(tmp_path):
    rows = HEADINGS + "".join(text_row(row, "Tides", "2") for row in range(2, 10_000))
    merged = "".join(["<mergeCells>", *['<mergeCell ref="A1:IV9999"/>'] * 50, "</mergeCells>"])
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: sheet_xml(rows, after=merged)})
    assert "far larger" in refusal(path)


# Too much content


def test_more_rows_than_a_class_can_need_are_told_of(tmp_path):
    row = text_row(5, "Tides", "2").encode()
    start, end = parted(sheet_xml(f"{HEADINGS}<!-- here -->"))
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: pieces(start, row, 60_000, end)})
    assert "more than 12,000 rows with content" in refusal(path)
    assert "Part it into several files" in refusal(path)


def test_more_cells_than_a_class_can_need_are_told_of(tmp_path):
    cell = b"<c><v>7</v></c>"
    start, end = parted(sheet_xml(f'{HEADINGS}<row r="2"><!-- here --></row>'))
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: pieces(start, cell, 3_000_000, end)})
    assert "more than 120,000 cells with content" in refusal(path)


def test_absurdly_many_shared_texts_are_refused(tmp_path):
    strings = pieces("<sst>", b"<si><t>x</t></si>", 2_000_000, "</sst>")
    path = workbook_with(tmp_path / "w.xlsx", {"xl/sharedStrings.xml": strings})
    assert "far larger" in refusal(path)


def test_a_long_formula_for_many_cells_is_not_worked_out(tmp_path):
    long = "+".join(["A1"] * 2000)
    first = f'<row r="2"><c r="A2"><f t="shared" si="0" ref="A2:A9999">{long}</f><v>1</v></c></row>'
    rows = "".join(
        f'<row r="{row}"><c r="A{row}"><f t="shared" si="0"/><v>{row}</v></c>'
        f'<c r="B{row}"><v>2</v></c></row>'
        for row in range(3, 10_000)
    )
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: sheet_xml(HEADINGS + first + rows)})
    assert content(path).startswith("1: ; 3: 2; 4: 2")


def test_elements_without_end_are_refused(tmp_path):
    deep = pieces(sheet_xml("").partition("</sheetData>")[0], b"<row>", 3_000_000, "")
    assert "12,000 rows" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: deep}))
    deep = pieces(sheet_xml("").partition("</sheetData>")[0], b"<a>", 200_000, "")
    assert "damaged" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: deep}))


def test_a_sheet_of_ten_thousand_rows_is_read(tmp_path):
    rows = [[f"Clue {number} of the shore", number, "Tides", "hard"] for number in range(10_000)]
    path = tmp_path / "w.xlsx"
    fill({"Facts": [["Prompt", "Answer", "Topic", "Level"], *rows]}).save(path)
    assert content(path).endswith("; Clue 9999 of the shore: 9999")


def test_letters_formatted_one_by_one_without_end_are_refused(tmp_path):
    start, end = parted(
        sheet_xml(f'{HEADINGS}<row r="2"><c r="A2" t="inlineStr"><is><!-- here --></is></c></row>')
    )
    runs = pieces(start, b"<r><rPr><b/></rPr><t>x</t></r>", 300_000, end)
    assert "far larger" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: runs}))


def test_marks_piled_on_one_letter_are_cut_down(tmp_path):
    pile = "e" + "\u0301\u0327" * 200_000
    xml = sheet_xml(HEADINGS + text_row(2, pile, "2"))
    read = content(workbook_with(tmp_path / "w.xlsx", {SHEET: xml}))
    assert read.endswith(": 2")
    assert len(read) < 40


STYLES = parts_of({"Facts": [[1]]})["xl/styles.xml"].decode()


def test_formats_without_end_are_refused(tmp_path):
    formats = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>' * 120_000
    styles = re.sub("(<cellXfs[^>]*>).*?(?=</cellXfs>)", rf"\1{formats}", STYLES)
    assert styles.count("<xf ") > 120_000
    assert "far larger" in refusal(workbook_with(tmp_path / "w.xlsx", {"xl/styles.xml": styles}))


ABSURD = [
    "0." + "0" * 250,
    "0" * 255,
    "0" * 100_000,
    "0" + "%" * 250,
    "#" + "," * 250,
    "?" * 120 + "/" + "?" * 120,
    "[h]" * 80,
    "0E+" + "0" * 250,
    "[" * 255,
    "\\" * 255,
]


@pytest.mark.parametrize("code", ABSURD)
def test_an_absurd_number_format_does_no_harm(tmp_path, code):
    numbers = f'<numFmts count="1"><numFmt numFmtId="200" formatCode="{code}"/></numFmts>'
    styles = re.sub("<numFmts.*?(/>|</numFmts>)", numbers, STYLES, count=1)
    styles = re.sub('(<cellXfs.*?numFmtId=)"0"', r'\1"200"', styles)
    assert styles.count('"200"') == 2
    row = '<row r="3"><c r="A3" s="0"><v>1234.567</v></c><c r="B3" s="0"><v>1e300</v></c></row>'
    parts = {"xl/styles.xml": styles, SHEET: sheet_xml(HEADINGS + TIDES + row)}
    assert content(workbook_with(tmp_path / "w.xlsx", parts)).startswith(READ)


ODD_LOOKS = {
    "a fill of nothing": ("<fill><patternFill/></fill>", "<fill/>"),
    "a colour by name": ('<color theme="1"/>', '<color rgb="red"/>'),
    "a family of none": ('<family val="2"/>', '<family val="99"/>'),
    "a border of another kind": ("<left/>", '<left style="wavy"/>'),
    "an alignment of another kind": (
        'pivotButton="0" quotePrefix="0" xfId="0"/>',
        'xfId="0"><alignment horizontal="askew"/></xf>',
    ),
}


@pytest.mark.parametrize(("usual", "odd"), ODD_LOOKS.values(), ids=ODD_LOOKS)
def test_looks_that_no_card_needs_may_be_what_they_like(tmp_path, usual, odd):
    assert usual in STYLES
    styles = STYLES.replace(usual, odd)
    parts = {"xl/styles.xml": styles, SHEET: sheet_xml(HEADINGS + TIDES)}
    assert content(workbook_with(tmp_path / "w.xlsx", parts)) == READ


BOOK, TIES = "xl/workbook.xml", "xl/_rels/workbook.xml.rels"


def test_a_sheet_that_is_named_over_and_over_is_read_never(tmp_path):
    book = parts_of({"Facts": [["Tides a day", 2]]})[BOOK].decode()
    again = re.sub("<sheet .*?/>", lambda sheet: sheet[0] * 900, book)
    assert "damaged" in refusal(workbook_with(tmp_path / "w.xlsx", {BOOK: again}))


def test_a_sheet_under_many_identities_is_read_never(tmp_path):
    ties = parts_of({"Facts": [["Tides a day", 2]]})[TIES].decode()
    tie = next(one for one in re.findall("<Relationship .*?/>", ties) if "/worksheet" in one)
    target = re.search('Target="(.*?)"', tie)
    assert target
    other = tie.replace(target[1], "worksheets/../worksheets/./sheet1.xml").replace("rId1", "rId99")
    again = ties.replace(tie, tie + other)
    assert "damaged" in refusal(workbook_with(tmp_path / "w.xlsx", {TIES: again}))
