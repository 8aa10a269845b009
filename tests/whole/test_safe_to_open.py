"""What the commands write can be opened by anybody: nothing in it runs, calls out or tells.

A text that begins like a formula is what spreadsheet programs run when they meet it unmarked
(OWASP, CSV Injection). What a PDF can be made to do stands in ISO 32000-1, 12.6.4; a workbook's
parts in ECMA-376 part 1, and a text's escapes, such as `_x000D_`, there in 22.9.2.19.
"""

import os
import re
import shutil
import socket
import subprocess
import time
from pathlib import Path
from xml.etree import ElementTree as ET

import pikepdf
import pytest
from msgspec import Struct
from openpyxl import load_workbook
from support.live_texts import ESCAPES, LIVE, fill_in, save_escapes, save_faulty, save_workbook
from support.office import SOFFICE, needs_office
from support.shore import fairdeal
from support.written import formulas_in, names_in, parts_of, words_in

ACTIVITIES = ("review", "collect", "rounds", "stations", "organizer")
SIDES = ("fold", "tent", "fronts", "two-passes")
TELLTALES = {
    "HOME": "/home/quillfeather-home",
    "USER": "quillfeather-user",
    "LOGNAME": "quillfeather-logname",
    "USERNAME": "quillfeather-username",
    "COMPUTERNAME": "quillfeather-computer",
    "HOSTNAME": "quillfeather-host",
}
FOLDER = "quillfeather-folder"


def run(*words, **environment):
    done = fairdeal(*words, **environment)
    assert (done.returncode, done.stderr) == (0, ""), done.stdout


@pytest.fixture(scope="module")
def shore(tmp_path_factory):
    """A folder in which every command has written whatever it writes; the sources are elsewhere."""
    folder = tmp_path_factory.mktemp(FOLDER)
    given = tmp_path_factory.mktemp("given")
    with pytest.MonkeyPatch.context() as patched:
        for name, value in TELLTALES.items():
            patched.setenv(name, value)
        patched.setenv("FAIRDEAL_SETTINGS", str(folder / "settings"))
        patched.chdir(folder)
        book = save_workbook(given / "=1+1.xlsx")
        for activity in ACTIVITIES:
            run("build", book, "--activity", activity, "--out", folder)
        for sides in SIDES:
            run("build", book, "--cards", 8, "--sides", sides, "--out", folder)
        decks = folder / "=1+1 decks"
        run("marks", decks / "01", "--marks", fill_in(decks / "01", given))
        run("next", book, "--out", folder)
        run("reprint", decks / "01", "--cards", "1,2")
        run("align")
        run("align", "--set", "=1+1", "--right", "1", "--up", "-1")
        run("start", folder / "=1+1.xlsx", "--with-example")
        run("build", save_escapes(given / "Escapes.csv"), "--skip-errors", "--out", folder)
        for faulty in (save_faulty(given / "=faulty.xlsx"), given / "Escapes.csv"):
            assert fairdeal("check", faulty, "--mark").returncode == 1
            marked = f"{faulty.stem} marked.xlsx"
            (given / marked).replace(folder / marked)
    return folder


def files(shore, suffix=""):
    found = sorted(path for path in shore.rglob(f"*{suffix}") if path.is_file())
    assert found
    return found


def test_only_kinds_of_file_are_written_that_run_nothing(shore):
    assert {path.suffix for path in files(shore)} == {".pdf", ".xlsx", ".json"}


RUNS = {
    *("/JavaScript", "/JS", "/Launch", "/URI", "/GoToR", "/GoToE", "/SubmitForm", "/ImportData"),
    *(
        "/OpenAction",
        "/AA",
        "/A",
        "/Annots",
        "/AcroForm",
        "/XFA",
        "/EmbeddedFile",
        "/EmbeddedFiles",
    ),
    *("/EF", "/AF", "/RichMedia", "/Movie", "/Sound", "/Rendition", "/Encrypt", "/Thread"),
}


def test_no_pdf_asks_its_reader_to_do_anything(shore):
    asked = {path.name: names_in(path) & RUNS for path in files(shore, ".pdf")}
    assert {name: found for name, found in asked.items() if found} == {}


PARTS = re.compile(
    r"\[Content_Types\]\.xml|_rels/\.rels|docProps/(app|core)\.xml"
    r"|xl/(workbook|styles|sharedStrings)\.xml|xl/theme/theme1\.xml|xl/_rels/workbook\.xml\.rels"
    r"|xl/worksheets/(_rels/)?sheet\d+\.xml(\.rels)?"
    r"|xl/(comments/)?comment(s?)/?\w*\d+\.xml|xl/drawings/\w+\d+\.vml"
)


def test_a_workbook_holds_sheets_texts_and_notes_and_nothing_else(shore):
    other = {
        f"{path.name}: {name}"
        for path in files(shore, ".xlsx")
        for name in parts_of(path)
        if not PARTS.fullmatch(name.removeprefix("/"))
    }
    assert other == set()


def test_nothing_in_a_workbook_leads_out_of_it(shore):
    for path in files(shore, ".xlsx"):
        for name, part in parts_of(path).items():
            assert "TargetMode" not in part, (path, name)
            assert "macroEnabled" not in part, (path, name)
            assert "externalReference" not in part, (path, name)
            for link in re.findall(r"<hyperlink\b[^>]*>", part):
                assert "location=" in link, (path, link)
                assert "r:id" not in link, (path, link)


OUR_OWN = re.compile(
    r"(?:\$?[A-Z]{1,3}\$?\d+|SUM|COUNT|AVERAGE|RANK|IF|N|AND|OR|[\d.]|\"\"|[-+*/<>=(),:$ ])+"
)
LIST = re.compile(r'"[^"=+@|!\[]*"')
ROWS = re.compile(r"('[^']+'|\w+)!\$\d+:\$\d+|('[^']+'|\w+)!\$A\$\d+:\$E\$\d+")
"""Our sums; lists to pick from; rows that are printed on every page, and what can be filtered."""


def test_no_formula_has_a_word_of_the_teachers_in_it(shore):
    for path in files(shore, ".xlsx"):
        for formula in formulas_in(path):
            said = formula.replace("&quot;", '"').replace("&gt;", ">").replace("&lt;", "<")
            ours = (pattern.fullmatch(said) for pattern in (OUR_OWN, LIST, ROWS))
            assert any(ours), (path, formula)


def live_texts(path):
    """Return the texts of a workbook that begin as a formula does, by sheet."""
    return {
        (sheet.title, cell.value)
        for sheet in load_workbook(path).worksheets
        for row in sheet.iter_rows()
        for cell in row
        if cell.data_type == "s" and str(cell.value).startswith(("=", "+", "-", "@"))
    }


def test_a_text_like_a_formula_is_a_text_and_itself_in_the_marks_workbook(shore):
    texts = {text for _, text in live_texts(shore / "=1+1 decks" / "01" / "marks.xlsx")}
    begun = {f"{LIVE[n % 12]} is clue {n}" for n in range(24) if LIVE[n % 12][0] in "=+-@"}
    assert begun | {"=1+1", "+Otter", "@SUM(A1)"} <= texts


def test_a_text_like_a_formula_is_a_text_and_itself_in_a_marked_copy(shore):
    texts = live_texts(shore / "=faulty marked.xlsx")
    begun = {f"{live} clue" for live in LIVE if live[0] in "=+-@"}
    assert begun <= {text for sheet, text in texts if sheet.startswith("=1+1")}
    assert "=1+1 clue" in {text for sheet, text in texts if sheet == "Findings"}


NAMES = {
    "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
    "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
    "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
    "xlink": "http://www.w3.org/1999/xlink",
}


class Seen(Struct, frozen=True):
    """What LibreOffice sees in a workbook."""

    texts: set[str]
    formulas: set[str]
    links: set[str]


@pytest.fixture(scope="module")
def office(shore, tmp_path_factory):
    """What LibreOffice sees in some of the workbooks, all opened in one go."""
    folder = tmp_path_factory.mktemp("office")
    opened = {
        "marks": shore / "=1+1 decks" / "01" / "marks.xlsx",
        "faulty marked": shore / "=faulty marked.xlsx",
        "marks of escapes": shore / "Escapes decks" / "01" / "marks.xlsx",
        "Escapes marked": shore / "Escapes marked.xlsx",
    }
    own = [shutil.copy(path, folder / f"{name}.xlsx") for name, path in opened.items()]
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    command = [SOFFICE, profile, "--headless", "--convert-to", "fods", "--outdir", folder, *own]
    subprocess.run(command, check=True, capture_output=True, timeout=300)
    return {name: seen(folder / f"{name}.fods") for name in opened}


def seen(path):
    root = ET.parse(path).getroot()  # noqa: S314 (what LibreOffice has just written)
    cells = list(root.iterfind(".//table:table-cell", NAMES))
    lines = (list(cell.iterfind("text:p", NAMES)) for cell in cells)
    texts = {"\n".join("".join(line.itertext()) for line in found) for found in lines}
    formulas = {cell.get(f"{{{NAMES['table']}}}formula", "") for cell in cells} - {""}
    links = {link.get(f"{{{NAMES['xlink']}}}href") for link in root.iterfind(".//text:a", NAMES)}
    return Seen(texts, formulas, links)


@needs_office
def test_a_spreadsheet_program_sees_the_same_texts_and_runs_none(office):
    assert {f"{LIVE[n % 12]} is clue {n}" for n in range(24)} <= office["marks"].texts
    assert {f"{live} clue" for live in LIVE} <= office["faulty marked"].texts
    assert office["faulty marked"].formulas == set()
    run = re.compile(r"HYPERLINK|DDE|cmd|WEBSERVICE|SUM\(1\)|1\+1")
    assert not [one for one in office["marks"].formulas if run.search(one)]


@needs_office
def test_a_spreadsheet_program_finds_no_link_that_leads_out(office):
    assert not [link for found in office.values() for link in found.links if link[0] != "#"]
    assert office["faulty marked"].links


@needs_office
def test_what_looks_like_an_escape_stays_itself(office):
    assert {f"{text} 0" for text in ESCAPES} <= office["Escapes marked"].texts
    assert {f"{text} 0" for text in ESCAPES} <= office["marks of escapes"].texts


def test_nothing_tells_of_the_machine_the_folder_or_the_user(shore):
    machine = {socket.gethostname(), os.environ.get("USER"), str(Path.home()), str(Path.cwd())}
    telling = [b"quillfeather", str(shore.parent).encode()]
    # short names, such as a user called “me”, stand in other words
    telling += [name.encode() for name in machine if name and len(name) > len("nobody")]
    for path in files(shore):
        words = words_in(path)
        assert not [one for one in telling if one in words], path


def test_dates_and_authors_are_the_same_everywhere(shore):
    for path in files(shore, ".pdf"):
        with pikepdf.open(path) as pdf:
            told = {str(key): str(value) for key, value in pdf.docinfo.items()}
        assert told["/Author"] == told["/Creator"] == "Fairdeal", path
        assert {told["/CreationDate"][:10], told["/ModDate"][:10]} == {"D:20000101"}, path
    for path in files(shore, ".xlsx"):
        core = parts_of(path)["docProps/core.xml"]
        times = re.findall(r"<dcterms:\w+[^>]*>(\d{4})", core)
        assert set(times) <= {"1980", "2000"}, path
        people = re.findall(r"<(?:dc:creator|cp:lastModifiedBy)>([^<]*)<", core)
        assert set(people) <= {"Fairdeal", "openpyxl"}, path


def test_another_machine_and_another_hour_give_the_same_bytes(shore, tmp_path):
    first = shore / "=1+1 decks" / "01"
    # a PDF tells seconds, a zip file two of them
    time.sleep(max(0, 2.1 + first.stat().st_mtime - time.time()))
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    book = save_workbook(elsewhere / "=1+1.xlsx")
    os.utime(book, (0, 0))
    environment = dict.fromkeys(TELLTALES, str(elsewhere))
    run("build", book, TZ="Pacific/Kiritimati", PYTHONHASHSEED="7", **environment)
    again = elsewhere / "=1+1 decks" / "01"
    names = {path.name for path in again.iterdir()}
    assert names == {path.name for path in first.iterdir()} - {"reprint-1.pdf", "what-it-shows.pdf"}
    for name in sorted(names):
        assert (again / name).read_bytes() == (first / name).read_bytes(), name
