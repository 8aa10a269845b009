"""Escapes in workbooks: `_x0041_` in a file is the text A (ECMA-376 part 1, 22.9.2.19, ST_Xstring).

The standard's own examples: the character 8 is stored as `_x0008_`, and the text `_x0008_` as
`_x005F_x0008_`. The others follow from its rule, gone through once, from the left.
"""

import csv
import re
import zipfile

import pytest
import xlsxwriter
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont
from support.office import AS_SHOWN, converted, needs_office
from support.packed import ods_row, ods_xml, pack

from cards.checking import check
from cards.finding import Finding, Severity
from cards.place import Place
from cards.reading import read
from cards.style import Span, TextStyle
from cards.workbook.marked import marked_copy

HEADINGS = ["Prompt", "Answer"]
STORED = {
    "a_x0008_b": "a\bb",
    "_x005F_x0008_": "_x0008_",
    "_x0041_bc": "Abc",
    "_x005F_x0041_": "_x0041_",
    "_x005F_x005F_x0041_": "_x005FA",
    "_x0041_x0042_": "Ax0042_",
    "_x00e9__x00C9_": "éÉ",
    "a_x000D_b": "a\nb",
    "a_x000D__x000A_b": "a\nb",
    "_x005F_": "_",
    "_x005f_x0041_": "_x0041_",
    "x005F_ bare": "x005F_ bare",
    "0x005F_x0041_": "0x005FA",
    "_x0041_x005F_": "Ax005F_",
    "_x41_ _x00041_ _X0041_ x0041_": "_x41_ _x00041_ _X0041_ x0041_",
    "_xD83D__xDC1F_": "🐟",
    "a_xD83D_b": "a\ufffdb",
    "a_xDC1F_": "a\ufffd",
    "a_x0000_b": "a\0b",
    "a_xFFFF_b": "a\uffffb",
}
"""What stands in the file, and the text that it is."""

FAULT = Finding("code", Severity.ERROR, Place("Facts", 2, 1), "", "This is wrong.", "Mend it.")
SHARED_UNDERSCORE = re.compile("_x[0-9A-Fa-f]{4}_(?=x[0-9A-Fa-f]{4}_)")
OFFICE_TEXTS = ["_x0041_ a", "b _x005F_ c", "_x00e9_ d", "x005F_ e", "_x0041 f"]

stored_texts = pytest.mark.parametrize(("stored", "text"), STORED.items())


def prompts(path):
    return [item.prompt for item in read(path).items]


def edited(path, part, change):
    """Write a file anew with one of its parts changed."""
    with zipfile.ZipFile(path) as archive:
        parts = {name: archive.read(name).decode() for name in archive.namelist()}
    assert change(parts[part]) != parts[part]
    parts[part] = change(parts[part])
    with zipfile.ZipFile(path, "w") as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
    return path


@stored_texts
def test_a_text_in_the_table_of_texts_is_what_its_escapes_stand_for(make_workbook, stored, text):
    assert prompts(make_workbook({"Facts": [HEADINGS, [stored, "answer"]]})) == [text]


@stored_texts
def test_a_text_in_its_cell_is_what_its_escapes_stand_for(make_workbook, stored, text):
    path = make_workbook({"Facts": [HEADINGS, ["here", "answer"]]})
    inline = f'<c r="A2" t="inlineStr"><is><t>{stored}</t></is></c>'
    edited(path, "xl/worksheets/sheet1.xml", lambda part: re.sub(r'<c r="A2".*?</c>', inline, part))
    assert prompts(path) == [text]


@stored_texts
def test_the_result_of_a_formula_is_what_its_escapes_stand_for(make_workbook, stored, text):
    path = make_workbook({"Facts": [HEADINGS, ["here", "answer"]]})
    formula = f'<c r="A2" t="str"><f>C1</f><v>{stored}</v></c>'
    edited(
        path, "xl/worksheets/sheet1.xml", lambda part: re.sub(r'<c r="A2".*?</c>', formula, part)
    )
    assert prompts(path) == [text]


def test_styles_keep_their_place_behind_escapes(make_workbook):
    rich = CellRichText("_x0041_ _x005F_x0041_ ", TextBlock(InlineFont(b=True), "_x0042_c"), " d")
    content = read(make_workbook({"Facts": [HEADINGS, [rich, "answer"]]}))
    assert content.items[0].prompt == "A _x0041_ Bc d"
    assert content.items[0].prompt_spans == (Span(10, 12, TextStyle.BOLD),)


def test_half_a_character_is_told_as_a_letter_that_was_lost(make_workbook):
    content = read(make_workbook({"Facts": [HEADINGS, ["A rocky sh_xD83D_re", "answer"]]}))
    assert [(one.code, one.place.cell) for one in check(content, ())] == [("wrongly-decoded", "A2")]


def test_other_kinds_of_file_have_no_escapes(tmp_path):
    (tmp_path / "Shore.csv").write_text("Prompt,Answer\n_x0041_,_x005F_x0041_")
    table = f'<table:table table:name="Facts">{ods_row(*HEADINGS)}'
    table += f"{ods_row('_x0041_', '_x005F_x0041_')}</table:table>"
    pack(tmp_path / "Shore.ods", {"content.xml": ods_xml(table)})
    for name in ("Shore.csv", "Shore.ods"):
        [item] = read(tmp_path / name).items
        assert (item.prompt, item.answer) == ("_x0041_", "_x005F_x0041_")


ESCAPED_BY_XLSXWRITER = (
    "_x0041_ a",
    "b _x005F_",
    "_x00e9_",
    "c\x01d",
    "e\0f",
    "_x0041 g",
    "h\uffffi",
)
"""Not `_x0041_x0042_`: of two escapes that share an underscore it escapes the first alone."""


def save_with_xlsxwriter(path, texts, **options):
    book = xlsxwriter.Workbook(path, options)
    sheet = book.add_worksheet("Facts")
    for row, words in enumerate([HEADINGS, *([text, "answer"] for text in texts)]):
        for column, word in enumerate(words):
            sheet.write_string(row, column, word)
    book.close()
    return path


@pytest.mark.parametrize("inline", [False, True], ids=["shared", "inline"])
def test_what_xlsxwriter_escapes_comes_back_as_it_was_given(tmp_path, inline):
    path = tmp_path / "Shore.xlsx"
    save_with_xlsxwriter(path, ESCAPED_BY_XLSXWRITER, constant_memory=inline)
    assert prompts(path) == list(ESCAPED_BY_XLSXWRITER)


PIECES = st.sampled_from(["_x0041_ ", "_x005F_ ", "_", "x005F ", "x", "0041", "é", "\x02", "🐟"])


@given(texts=st.lists(st.lists(PIECES, max_size=6).map("".join), min_size=1, max_size=5))
@settings(deadline=None, max_examples=40)
def test_any_text_given_to_xlsxwriter_comes_back(tmp_path_factory, texts):
    wanted = [f"a{text}b" for text in texts if not SHARED_UNDERSCORE.search(text)]
    path = tmp_path_factory.mktemp("any") / "Shore.xlsx"
    assert prompts(save_with_xlsxwriter(path, ["first", *wanted])) == ["first", *wanted]


def shown_by_libreoffice(path, folder):
    """Return the texts in the first column of the sheet Facts below its heading.

    LibreOffice undoes the escapes of some characters only.
    """
    every_sheet = f"{AS_SHOWN},false,false,false,-1"
    converted(path, every_sheet, folder)
    with (folder / f"{path.stem}-Facts.csv").open(encoding="utf-8", newline="") as file:
        return [record[0] for record in csv.reader(file)][1:]


@needs_office
def test_texts_that_libreoffice_wrote_are_what_it_shows(tmp_path):
    rows = ["Prompt,Answer", *(f"{text},answer" for text in OFFICE_TEXTS)]
    (tmp_path / "Shore.csv").write_text("\n".join(rows))
    path = converted(tmp_path / "Shore.csv", "xlsx:Calc MS Excel 2007 XML", tmp_path)
    assert prompts(path) == OFFICE_TEXTS


@stored_texts
def test_a_text_is_itself_in_a_marked_copy(make_workbook, tmp_path, stored, text):
    path = make_workbook({"Facts": [HEADINGS, [stored, "answer"], ["No answer", None]]})
    (tmp_path / "marked.xlsx").write_bytes(marked_copy(path, [FAULT]))
    assert prompts(tmp_path / "marked.xlsx")[0] == text


@needs_office
def test_libreoffice_shows_a_marked_copy_as_it_shows_the_workbook(make_workbook, tmp_path):
    texts = [stored for stored, text in STORED.items() if text.isprintable()]
    path = make_workbook({"Facts": [HEADINGS, *([text, "answer"] for text in texts)]})
    copy = tmp_path / "marked.xlsx"
    copy.write_bytes(marked_copy(path, [FAULT]))
    assert shown_by_libreoffice(copy, tmp_path) == shown_by_libreoffice(path, tmp_path)
