"""Files that cannot be read, each named by its one defect."""

import os
import zipfile
from io import BytesIO
from pathlib import Path

import pytest
from support.packed import SHEET, pack, parts_of, sheet_xml, text_row
from support.workbooks import fill

from cards.finding import UnusableFileError
from cards.reading import read


def refusal(path: Path) -> str:
    with pytest.raises(UnusableFileError) as refused:
        read(path)
    message = str(refused.value)
    assert "\n" not in message
    assert str(path.parent) not in message
    return message


def zipped(**parts: str) -> bytes:
    buffer = BytesIO()
    with zipfile.ZipFile(buffer, "w") as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
    return buffer.getvalue()


COMPOUND = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504)


@pytest.mark.parametrize(
    ("name", "data", "says", "mend"),
    [
        ("shore.xls", COMPOUND, ".xls files", "save it as .xlsx"),
        ("shore.xlsb", b"x", ".xlsb files", "save it as .xlsx"),
        ("shore.xltx", b"x", ".xltx files", "save it as .xlsx"),
        ("shore.xltm", b"x", ".xltm files", "save it as .xlsx"),
        ("shore.fods", b"x", ".fods files", "save it as .xlsx"),
        ("shore.ots", b"x", ".ots files", "save it as .xlsx"),
        ("shore.gsheet", b"x", "only a link", "download it as .xlsx"),
        ("shore.txt", b"x", ".txt files", "save it as .xlsx or .csv"),
        ("shore.html", b"x", ".html files", "save it as .xlsx"),
        ("shore.doc", b"x", ".doc files", "save that as .xlsx or .csv"),
        ("shore.odt", b"x", ".odt files", "save that as .xlsx or .csv"),
        ("shore.pages", b"x", ".pages files", "save that as .xlsx or .csv"),
        ("shore.zip", b"x", ".zip files", "Unpack it first"),
        ("shore.ods", b"x", "damaged", "save it as .xlsx again"),
        ("shore.ods", zipped(hello="world"), "damaged", "save it as .xlsx again"),
        ("shore.ods", zipped(**{"content.xml": "<a>"}), "damaged", "save it as .xlsx again"),
        ("shore.ods", zipped(**{"content.xml": "<a/>"}), "nothing that makes a card", "Prompt"),
        (
            "shore.ods",
            zipped(**{"META-INF/manifest.xml": "<m><encryption-data/></m>", "content.xml": "x"}),
            "locked with a password",
            "a copy without a password",
        ),
        (
            "shore.ods",
            zipped(**{"encrypted-package": "x"}),
            "locked with a password",
            "a copy without a password",
        ),
        ("shore.numbers", b"x", ".numbers files", "export it as .xlsx or .csv"),
        ("shore.docx", b"x", ".docx files", "save that as .xlsx or .csv"),
        ("shore.PDF", b"x", ".pdf files", "save that as .xlsx or .csv"),
        ("shore.png", b"x", ".png files", "save it as .xlsx or .csv"),
        ("shore", b"x", "without an ending", "save it as .xlsx or .csv"),
        ("shore.xlsx", b"no zip at all", "damaged", "save it as .xlsx again"),
        ("shore.xlsx", zipped(hello="world"), "damaged", "save it as .xlsx again"),
        ("shore.xlsx", COMPOUND, "older kind", "save it as .xlsx"),
        (
            "shore.xlsx",
            COMPOUND + "EncryptedPackage".encode("utf-16-le"),
            "locked with a password",
            "a copy without a password",
        ),
        ("shore.csv", b"", "is empty", "Put the content into it"),
        ("shore.csv", b" \n\n ", "is empty", "Put the content into it"),
        ("shore.csv", b"\xef\xbb\xbf", "nothing that makes a card", "Put prompts and answers"),
        ("shore.csv", b",,\n,,\n", "nothing that makes a card", "Put prompts and answers"),
        ("shore.csv", b"Word,Meaning\n", "nothing that makes a card", "Put prompts and answers"),
        ("shore.csv", b"Word,Topic\nlimpet,sea\n", "No column is headed", "Put the heading above"),
        ("shore.csv", b"mar\x81e,tide\n", "no readable text|not hold readable", "CSV UTF-8"),
        ("shore.csv", b"\xff\xfea", "not hold readable", "CSV UTF-8"),
        ("shore.csv", "a,b".encode("utf-16-le"), "not hold readable", "CSV UTF-8"),
        ("shore.csv", b'Word,Meaning\n"limpet,shell\n', "never closed", "close it"),
    ],
)
def test_a_file_that_cannot_be_read_says_why_and_how_to_mend_it(
    tmp_path: Path, name: str, data: bytes, says: str, mend: str
) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    message = refusal(path)
    assert any(part in message for part in says.split("|"))
    assert mend in message


# ISO/IEC 29500-1, annex A: the strict namespaces, which the reading library does not know
def test_a_strict_workbook_is_told_as_what_it_is(tmp_path: Path) -> None:
    loose, strict = b"http://schemas.openxmlformats.org/", b"http://purl.oclc.org/ooxml/"
    sheets = {"Facts": [["Prompt", "Answer"], ["Tides a day", 2]]}
    parts = {
        name: part.replace(loose + b"spreadsheetml/2006/", strict + b"spreadsheetml/").replace(
            loose + b"officeDocument/2006/", strict + b"officeDocument/"
        )
        for name, part in parts_of(sheets).items()
    }
    message = refusal(pack(tmp_path / "shore.xlsx", parts))
    assert "Strict Open XML" in message
    assert "save it as Excel Workbook (.xlsx)" in message


def test_a_cut_off_workbook_is_damaged(tmp_path: Path) -> None:
    path = tmp_path / "shore.xlsx"
    fill({"Facts": [["Prompt", "Answer"], ["Tides a day", 2]]}).save(path)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])
    assert "damaged" in refusal(path)


def test_a_missing_file_is_told_of_with_the_one_that_was_meant(tmp_path: Path) -> None:
    (tmp_path / "Rocky shore.xlsx").write_bytes(b"x")
    assert "Did you mean Rocky shore.xlsx?" in refusal(tmp_path / "Rocky shor.xlsx")
    assert "Check the name and the folder." in refusal(tmp_path / "quite another.csv")
    assert "There is no file shore.xls " in refusal(tmp_path / "shore.xls")


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="no links here")
def test_a_link_that_leads_nowhere_is_told_of(tmp_path: Path) -> None:
    (tmp_path / "shore.csv").symlink_to(tmp_path / "gone.csv")
    assert "shore.csv only points to a file that is not there" in refusal(tmp_path / "shore.csv")


def test_a_missing_folder_is_told_of(tmp_path: Path) -> None:
    assert "There is no file" in refusal(tmp_path / "nowhere" / "shore.xlsx")


def test_a_folder_is_no_file(tmp_path: Path) -> None:
    folder = tmp_path / "shore.xlsx"
    folder.mkdir()
    assert refusal(folder).startswith("shore.xlsx is a folder.")


@pytest.mark.parametrize("name", ["", "."])
def test_no_name_at_all_is_the_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    folder = tmp_path / "Shore week"
    folder.mkdir()
    monkeypatch.chdir(folder)
    with pytest.raises(UnusableFileError, match=r"^Shore week is a folder\. Name a file in it"):
        read(Path(name))


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="everything may be read here")
def test_a_file_that_may_not_be_opened_is_told_of(tmp_path: Path) -> None:
    path = tmp_path / "shore.csv"
    path.write_bytes(b"a,b\n")
    path.chmod(0)
    assert "may not be read" in refusal(path)


def test_a_blank_workbook_holds_nothing(tmp_path: Path) -> None:
    path = tmp_path / "shore.xlsx"
    sheets = {"Facts": [["Prompt", "Answer"]], "Deck": [["Setting", "Value"], ["Title", "Shore"]]}
    fill(sheets).save(path)
    assert "nothing that makes a card" in refusal(path)


def test_a_workbook_with_nothing_but_hidden_content_says_so(tmp_path: Path) -> None:
    path = tmp_path / "shore.xlsx"
    book = fill({"Facts": [["Prompt", "Answer"], ["Tides a day", 2]], "Notes": []})
    book["Facts"].sheet_state = "hidden"
    book.active = 1
    book.save(path)
    message = refusal(path)
    assert "This sheet is hidden" in message


def test_settings_alone_make_no_cards(tmp_path: Path) -> None:
    path = tmp_path / "shore.xlsx"
    fill({"Facts": [], "Deck": [["Setting", "Value"], ["Title", "Shore"]]}).save(path)
    assert "nothing that makes a card" in refusal(path)


def test_a_shared_text_before_the_first_is_none(tmp_path: Path) -> None:
    cells = '<c r="A2" t="s"><v>0</v></c><c r="B2" t="s"><v>-1</v></c>'
    sheet = sheet_xml(text_row(1, "Prompt", "Answer") + f'<row r="2">{cells}</row>')
    parts = parts_of({"Facts": [["Tides a day", "2"]]})
    path = pack(tmp_path / "w.xlsx", parts | {SHEET: sheet})
    assert "is damaged" in refusal(path)
