"""The marked copy, opened again: what was marked, and what was left as it was."""

import io
import re
import zipfile

import pytest
from openpyxl import Workbook, load_workbook
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont
from openpyxl.comments import Comment
from openpyxl.styles import Font, PatternFill
from openpyxl.worksheet.datavalidation import DataValidation
from support.packed import ods_row, ods_xml, pack

from cards.digest import digest_of
from cards.finding import Finding, Severity, UnusableFileError
from cards.place import Place
from cards.reading import read
from cards.workbook.findings_sheet import TINTS
from cards.workbook.marked import marked_copy


def finding(row, column, severity=Severity.ERROR, sheet="Facts", **texts):
    said = {"found": "", "wrong": "This is wrong.", "mend": "Mend it."} | texts
    return Finding("code", severity, Place(sheet, row, column), **said)


@pytest.fixture
def shore(tmp_path):
    """A workbook with much that a teacher may have done to it."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Facts"
    for row in (
        ["Prompt", "Answer", "Topic"],
        ["Mussels are tied to rock by …", "threads", "Life"],
        ["Limpets come home to their …", "scar", None],
        ["A crab sheds its …", "shell", None],
    ):
        sheet.append(row)
    sheet.merge_cells("C2:C4")
    sheet["B2"].font = Font(color="FFFFFFFF", bold=True)
    sheet["B2"].fill = PatternFill("solid", fgColor="FF000080")
    sheet["B3"].comment = Comment("Ask the ranger", "Teacher")
    sheet["A4"] = CellRichText("A ", TextBlock(InlineFont(b=True), "crab"), " sheds its …")
    sheet.column_dimensions["A"].width = 44
    offered = DataValidation("list", formula1='"Life,Tides"')
    offered.add("C2:C9")
    sheet.add_data_validation(offered)
    book.create_sheet("Sums")["A1"] = "=1+1"
    path = tmp_path / "Shore.xlsx"
    book.save(path)
    return path


def marked(path, *findings):
    return load_workbook(io.BytesIO(marked_copy(path, findings)), rich_text=True)


def test_a_cell_is_coloured_by_how_serious_it_is_and_says_so_in_a_note(shore):
    severities = list(Severity)
    sheet = marked(shore, *(finding(2 + i, 1, one) for i, one in enumerate(severities)))["Facts"]
    for row, severity in enumerate(severities, start=2):
        assert sheet.cell(row, 1).fill.fgColor.rgb == TINTS[severity]
        assert sheet.cell(row, 1).comment.text.startswith(f"{severity.capitalize()}: This is")


def test_several_findings_in_a_cell_share_a_note_and_the_worst_gives_the_colour(shore):
    sheet = marked(shore, finding(2, 1, Severity.NOTE), finding(2, 1, wrong="Worse."))["Facts"]
    assert sheet["A2"].fill.fgColor.rgb == TINTS[Severity.ERROR]
    assert sheet["A2"].comment.text.count("Mend it.") == 2


def test_what_a_note_has_no_room_for_is_listed_on_the_first_sheet(shore):
    book = marked(shore, *(finding(2, 1, wrong=f"Fault {n}.") for n in range(40)))
    assert book["Facts"]["A2"].comment.text.count("Fault") == 5
    assert [cell.value for cell in book.worksheets[0]["D"][4:]] == [
        f"Fault {n}." for n in range(40)
    ]


def test_what_the_teacher_did_to_the_workbook_is_kept(shore):
    before = load_workbook(shore, rich_text=True)["Facts"]
    sheet = marked(shore, finding(2, 2))["Facts"]
    assert sheet.column_dimensions["A"].width == 44
    assert [str(area) for area in sheet.merged_cells.ranges] == ["C2:C4"]
    assert [str(one.sqref) for one in sheet.data_validations.dataValidation] == ["C2:C9"]
    assert sheet["B2"].font.bold
    assert sheet["B3"].comment.text == "Ask the ranger"
    assert sheet["A4"].value == before["A4"].value
    assert isinstance(sheet["A4"].value, CellRichText)


def test_letters_stay_readable_on_the_colour_of_a_mark(shore):
    assert marked(shore, finding(2, 2))["Facts"]["B2"].font.color.rgb == "FF1E2333"


def test_a_note_that_was_there_is_kept_before_ours(shore):
    note = marked(shore, finding(3, 2))["Facts"]["B3"].comment
    assert note.text.startswith("Ask the ranger\n\nError: This is wrong.")
    assert note.author == "Teacher"


def test_a_finding_in_merged_cells_is_marked_where_they_begin(shore):
    assert marked(shore, finding(4, 3))["Facts"]["C2"].comment.text.startswith("Error")


def test_a_finding_about_a_row_is_marked_in_its_first_cell(shore):
    assert marked(shore, finding(3, 0))["Facts"]["A3"].comment.text.startswith("Error")


def test_a_finding_about_a_sheet_or_no_sheet_stands_on_the_findings_sheet_only(shore):
    book = marked(shore, finding(0, 0), finding(0, 0, sheet="Shore"))
    assert [cell.hyperlink for cell in book["Findings"]["B"][4:]] == [None, None]
    assert [cell.value for cell in book["Findings"]["B"][4:]] == ["Facts", "Shore"]


def test_the_findings_sheet_comes_first_and_alone_is_selected(shore):
    book = marked(shore, finding(2, 1, found="Mussels"))
    assert book.sheetnames == ["Findings", "Facts", "Sums"]
    assert [sheet.sheet_view.tabSelected for sheet in book] == [True, False, False]
    row = [cell.value for cell in book["Findings"][5]]
    assert row == ["Error", "Facts A2", "Mussels", "This is wrong.", "Mend it."]


@pytest.mark.parametrize(
    ("name", "location"),
    [
        ("Week 3", "'Week 3'!B7"),
        ("Don't know", "'Don''t know'!B7"),
        ('"Quoted"', "'\"Quoted\"'!B7"),
        ("A sheet name of 31 letters, full", "'A sheet name of 31 letters, ful'!B7"),
        ("Crabs \N{CRAB}", "'Crabs \N{CRAB}'!B7"),
        ("A1", "'A1'!B7"),
    ],
)
def test_links_lead_to_cells_of_sheets_with_odd_names(tmp_path, name, location):
    path = tmp_path / "Shore.xlsx"
    book = Workbook()
    book.active.title = name[:31]
    book.save(path)
    sheet = marked(path, finding(7, 2, sheet=name[:31]))["Findings"]
    assert sheet["B5"].hyperlink.location == location
    assert sheet["B5"].hyperlink.target is None


@pytest.mark.parametrize("text", ["=1+1", "+1", "-5", "@SUM(A1)", "#N/A", "\x07bell", "a\x00b"])
def test_texts_that_we_write_are_never_formulas(shore, text):
    cell = marked(shore, finding(2, 1, found=text))["Findings"]["C5"]
    assert cell.data_type == "s"
    assert cell.value == re.sub(r"[\x00\x07]", "\N{REPLACEMENT CHARACTER}", text)


def test_a_message_with_characters_that_no_file_can_hold_is_still_a_note(shore):
    sheet = marked(shore, finding(2, 1, wrong="“\x07” is not a level."))["Facts"]
    assert "is not a level" in sheet["A2"].comment.text


def test_formulas_keep_their_results(tmp_path):
    """The workbook is made part by part, as a spreadsheet program stores results."""
    path = tmp_path / "Shore.xlsx"
    book = Workbook()
    sheet = book.active
    for row, result in enumerate(("3", "<b>&", "1", "#N/A", "0.25", ""), start=1):
        sheet.cell(row, 1, f'=CHOOSE({row},"{result}")')
    book.save(path)
    stored = (
        ('t="n"', "3"), ('t="str"', "&lt;b&gt;&amp;"), ('t="b"', "1"), ('t="e"', "#N/A"),
        ('t="n"', "0.25"), ('t="str"', ""),
    )  # fmt: skip
    put_results(path, stored)
    before = [cell.value for cell in load_workbook(path, data_only=True).active["A"]]
    assert before == [3, "<b>&", True, "#N/A", 0.25, None]
    copy = io.BytesIO(marked_copy(path, [finding(1, 1, sheet="Sheet")]))
    after = load_workbook(copy, data_only=True)["Sheet"]
    assert [cell.value for cell in after["A"]] == before
    formulas = [cell.value for cell in load_workbook(copy)["Sheet"]["A"]]
    assert formulas == [cell.value for cell in load_workbook(path).active["A"]]


def put_results(path, stored):
    with zipfile.ZipFile(path) as archive:
        parts = {name: archive.read(name).decode() for name in archive.namelist()}
    sheet = parts["xl/worksheets/sheet1.xml"]
    for row, (kind, text) in enumerate(stored, start=1):
        cell = re.compile(rf'<c r="A{row}"([^>]*)>(<f>[^<]*</f>)<v ?/?>(</v>)?')
        sheet, count = cell.subn(rf'<c r="A{row}"\1 {kind}>\2<v>{text}</v>', sheet)
        assert count == 1
    with zipfile.ZipFile(path, "w") as archive:
        for name, part in (parts | {"xl/worksheets/sheet1.xml": sheet}).items():
            archive.writestr(name, part)


def test_the_rows_of_a_text_file_become_a_sheet_of_texts(tmp_path):
    path = tmp_path / "Shore [facts].csv"
    path.write_text("Prompt,Answer\nOne of two,1/2\n=1+1,007\n", encoding="utf-8")
    book = marked(path, finding(3, 2, sheet=path.name))
    sheet = book["Shore  facts"]
    assert [cell.value for cell in sheet[2]] == ["One of two", "1/2"]
    assert [(cell.value, cell.data_type) for cell in sheet[3]] == [("=1+1", "s"), ("007", "s")]
    assert sheet["B3"].fill.fgColor.rgb == TINTS[Severity.ERROR]
    assert book["Findings"]["B5"].hyperlink.location == "'Shore  facts'!B3"


def test_marking_a_marked_copy_leaves_only_the_new_marks(shore):
    first = shore.with_name("first.xlsx")
    first.write_bytes(marked_copy(shore, [finding(2, 1), finding(3, 2)]))
    book = marked(first, finding(4, 1))
    assert book.sheetnames == ["Findings", "Facts", "Sums"]
    sheet = book["Facts"]
    assert sheet["A2"].comment is None
    assert sheet["A2"].fill.fgColor.rgb not in TINTS.values()
    assert sheet["B3"].comment.text == "Ask the ranger"
    assert sheet["A4"].comment.text.startswith("Error")


def test_marking_twice_alike_gives_the_same_bytes(shore):
    findings = [finding(2, 1), finding(3, 2, Severity.NOTE)]
    assert marked_copy(shore, findings) == marked_copy(shore, findings)


def test_a_sheet_of_the_teacher_called_findings_is_kept_and_read(shore):
    book = load_workbook(shore)
    own = book.create_sheet("Findings")
    own.append(["Question", "Answer"])
    own.append(["What did we find under the rock?", "a crab"])
    book.save(shore)
    copy = shore.with_name("copy.xlsx")
    copy.write_bytes(marked_copy(shore, [finding(2, 1)]))
    assert load_workbook(copy).sheetnames == ["Findings 2", "Facts", "Sums", "Findings"]
    assert read(copy).items == read(shore).items
    assert len(read(copy).items) == 4


@pytest.mark.parametrize("name", ["Shore.xlsx", "words.csv"])
def test_a_marked_copy_reads_as_the_file_it_was_made_of(tmp_path, shore, name):
    path = tmp_path / name
    if path != shore:
        path.write_text("low tide,the sea far out\nebb,the sea goes back\n", encoding="utf-8")
    copy = tmp_path / "copy.xlsx"
    copy.write_bytes(marked_copy(path, [finding(2, 1, sheet="Facts"), finding(0, 0)]))
    before, after = read(path), read(copy)
    assert digest_of(after) == digest_of(before)
    assert [one.code for one in after.findings] == [one.code for one in before.findings]


def test_a_workbook_that_cannot_be_copied_is_one_line(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.write_bytes(b"PK\x03\x04 nothing more")
    with pytest.raises(UnusableFileError, match="without --mark"):
        marked_copy(path, [finding(2, 1)])


@pytest.mark.parametrize(
    "name", ["Vocabulary for the second half of the term", "Week 1/2", "Why? And how?"]
)
def test_a_sheet_whose_name_excel_does_not_allow_is_marked_all_the_same(tmp_path, name):
    rows = ods_row("Prompt", "Answer") + ods_row("What digs?", "lugworm")
    sheet = f'<table:table table:name="{name}">{rows}</table:table>'
    path = pack(tmp_path / "Shore.ods", {"content.xml": ods_xml(sheet)})
    copy = marked(path, finding(2, 2, sheet=name))
    (sheet,) = [one for one in copy.worksheets if one["A1"].value == "Prompt"]
    assert "This is wrong." in sheet["B2"].comment.text
    assert copy["Findings"]["B5"].hyperlink.location == f"'{sheet.title}'!B2"
