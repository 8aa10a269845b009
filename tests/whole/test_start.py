"""`fairdeal start`, as a user runs it."""

import shutil
import subprocess
import sys

import openpyxl
import pytest
from msgspec.structs import replace
from support.shore import fairdeal

from cards.digest import digest_of
from cards.reading import read
from decks.settings import resolve

OFFICE = shutil.which("soffice")


def test_the_filled_example_builds_without_a_finding(tmp_path):
    path = tmp_path / "Shore.xlsx"
    assert fairdeal("start", path, "--with-example").returncode == 0
    checked = fairdeal("check", path)
    assert checked.stdout == "Nothing to mend in Shore.xlsx: 14 items, ready to build.\n"
    built = fairdeal("build", path)
    assert built.returncode == 0, built.stderr
    assert "error" not in built.stdout
    assert (tmp_path / "Shore decks" / "01" / "cards.pdf").exists()


def test_the_deck_sheet_as_it_comes_changes_no_choice(tmp_path):
    path = tmp_path / "Shore.xlsx"
    fairdeal("start", path, "--with-example")
    content = read(path)
    assert content.settings
    bare = replace(content, settings=())
    assert resolve(content, {}) == resolve(bare, {})
    for options in ({"deal": "copies"}, {"teams": "3"}):
        assert resolve(content, options) == resolve(bare, options)


def test_every_list_of_the_deck_sheet_has_room_in_a_cell(tmp_path):
    # 255 characters, from memory: with more, spreadsheet programs call the file damaged
    path = tmp_path / "Shore.xlsx"
    fairdeal("start", path)
    lists = openpyxl.load_workbook(path)["Deck"].data_validations.dataValidation
    assert max(len(offered.formula1.strip('"')) for offered in lists) <= 255
    assert any("Hebrew" in offered.formula1 for offered in lists)


def test_a_file_is_never_overwritten(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.write_bytes(b"mine")
    done = fairdeal("start", path)
    assert (done.returncode, path.read_bytes()) == (3, b"mine")
    assert len(done.stderr.splitlines()) == 1


def test_no_folder_is_made(tmp_path):
    done = fairdeal("start", tmp_path / "week" / "Shore.xlsx")
    assert done.returncode == 3
    assert len(done.stderr.splitlines()) == 1
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", ["Shore", "Shore.xls", "Shore.csv", ".xlsx"])
def test_another_ending_is_a_wrong_call(tmp_path, name):
    done = fairdeal("start", tmp_path / name)
    assert done.returncode == 2
    stem = "as in Shore" if name == ".xlsx" else "Shore"
    assert done.stderr.endswith(f"Name it {stem}.xlsx.\n")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("options", [[], ["--with-example"]])
def test_the_same_call_gives_the_same_bytes(tmp_path, options):
    made = set()
    for seed in ("0", "7"):
        folder = tmp_path / seed
        folder.mkdir()
        fairdeal("start", folder / "Shore.xlsx", *options, PYTHONHASHSEED=seed)
        made.add((folder / "Shore.xlsx").read_bytes())
    assert len(made) == 1


@pytest.mark.skipif(OFFICE is None, reason="needs LibreOffice")
def test_another_program_opens_it_and_what_it_saves_reads_the_same(tmp_path):
    path = tmp_path / "Shore.xlsx"
    fairdeal("start", path, "--with-example")
    profile = f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}"
    call = [OFFICE, profile, "--headless", "--convert-to", "xlsx", "--outdir", tmp_path / "again"]
    subprocess.run([*call, path], check=True, capture_output=True, timeout=180)
    again = read(tmp_path / "again" / "Shore.xlsx")
    assert digest_of(again) == digest_of(read(path))
    assert again.findings == ()


def test_asking_for_help_loads_no_library_for_spreadsheets():
    code = "import sys, decks.commands; print({'openpyxl', 'pandas'} & set(sys.modules))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "set()\n"
