"""What stops a build: one clear message, the right status, and nothing left behind."""

import os
import stat
from errno import EACCES
from pathlib import Path

import openpyxl
import pytest
from support.shore import fairdeal
from support.workbooks import fill


def write(path, rows, settings=()):
    book = openpyxl.Workbook()
    for row in rows:
        book.active.append(row)
    book.active.title = "Facts"
    if settings:
        deck = book.create_sheet("Deck")
        for row in settings:
            deck.append(row)
    book.save(path)
    return path


GOOD = [["Prompt", "Answer"], ["What builds a reef?", "oysters"], ["What digs?", "lugworms"]]


def test_an_error_in_the_content_stops_the_build_and_names_its_cell(tmp_path):
    path = write(tmp_path / "Shore.xlsx", [*GOOD, ["What clings to rock?", ""]])
    done = fairdeal("build", path)
    assert done.returncode == 1
    assert "Facts B4" in done.stderr
    assert [file.name for file in tmp_path.iterdir()] == ["Shore.xlsx"]


def test_rows_with_errors_are_left_out_when_asked_and_listed(tmp_path):
    path = write(tmp_path / "Shore.xlsx", [*GOOD, ["What clings to rock?", ""]])
    done = fairdeal("build", path, "--skip-errors")
    assert done.returncode == 0, done.stderr
    assert "Facts B4" in done.stdout
    assert "1 row with errors left out" in done.stdout
    assert '"Facts B4"' in (tmp_path / "Shore decks/01/deck.json").read_text(encoding="utf-8")


def test_errors_in_settings_stop_a_build_that_skips_errors_in_rows(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD, settings=[["Setting", "Value"], ["Paper", "B5"]])
    done = fairdeal("build", path, "--skip-errors")
    assert done.returncode == 1
    assert "Deck B2" in done.stderr
    assert not (tmp_path / "Shore decks").exists()


def test_an_error_in_the_command_is_not_to_be_mended_in_the_workbook(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    done = fairdeal("build", path, "--size", "10 x 10 cm", "--paper", "index-3x5")
    assert done.returncode == 1
    assert "1 error in the command" in done.stderr
    assert "--size" in done.stderr
    assert done.stderr.endswith("Change the command and build again.\n")


def test_errors_in_the_command_and_in_the_workbook_are_told_to_be_in_both(tmp_path):
    path = write(tmp_path / "Shore.xlsx", [*GOOD, ["2 + 2", "5"]])
    call = (path, "--title", "Shore \N{SNOWMAN}", "--size", "10 x 10 cm", "--paper", "index-3x5")
    built, checked = fairdeal("build", *call), fairdeal("check", *call[:1], *call[3:])
    assert "3 errors in Shore.xlsx and the command" in built.stderr
    assert "error   --title: " in built.stderr
    assert "Mend these in Shore.xlsx and the command and build again." in built.stderr
    assert checked.stdout.endswith("in Shore.xlsx and the command: mend the errors, then build.\n")


@pytest.mark.parametrize("command", ["check", "build"])
def test_a_workbook_of_details_alone_is_told_how_they_are_used(tmp_path, command):
    path = tmp_path / "Texts.xlsx"
    details = [["Topic", "Heading", "Detail"], ["Mud", "Food", "Lugworms eat mud."]]
    fill({"Details": details}).save(path)
    done = fairdeal(command, path)
    assert done.returncode == 1
    assert "set Activity to organizer" in done.stdout + done.stderr


def test_a_terminal_without_the_titles_letters_does_not_stop_a_deck(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    done = fairdeal("build", path, "--title", "Θάλασσα", PYTHONUTF8="0", PYTHONIOENCODING="cp1252")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "Shore decks/01/deck.json").exists()


@pytest.mark.parametrize(
    ("text", "code"),
    [("a\N{SNOWMAN}b \N{PILE OF POO}", "PILE OF POO".casefold()), ("long " * 400, "fit")],
)
def test_what_cannot_be_printed_or_does_not_fit_is_found_before_anything_is_made(
    tmp_path, text, code
):
    path = write(tmp_path / "Shore.xlsx", [*GOOD, ["What else?", text]])
    done = fairdeal("build", path)
    assert done.returncode == 1
    assert "Facts B4" in done.stderr
    assert code in done.stderr
    assert not (tmp_path / "Shore decks").exists()


@pytest.mark.parametrize(
    "call",
    [
        ["--paper", "papyrus"],
        ["--teams", "0"],
        ["--teams", "13"],
        ["--size", "huge"],
        ["--no-such"],
    ],
)
def test_a_wrong_call_is_status_2(tmp_path, call):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    done = fairdeal("build", path, *call)
    assert done.returncode == 2
    assert call[0] in done.stderr
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize("name", ["missing.xlsx", "broken.xlsx", "words.docx", "."])
def test_a_file_that_cannot_be_read_is_status_3_and_one_line(tmp_path, name):
    (tmp_path / "broken.xlsx").write_bytes(b"not a workbook")
    (tmp_path / "words.docx").write_bytes(b"PK\x03\x04")
    done = fairdeal("build", tmp_path / name)
    assert done.returncode == 3
    assert len(done.stderr.strip().splitlines()) == 1
    assert "Traceback" not in done.stderr


def test_an_earlier_deck_is_never_touched_and_the_next_number_is_taken(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    assert fairdeal("build", path).returncode == 0
    first = tmp_path / "Shore decks" / "01"
    before = {file.name: file.read_bytes() for file in first.iterdir()}
    assert fairdeal("build", path).returncode == 0
    assert {file.name: file.read_bytes() for file in first.iterdir()} == before
    assert sorted(file.name for file in first.parent.iterdir()) == ["01", "02"]


def test_the_workbook_is_never_written_to(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    before = path.read_bytes(), path.stat().st_mtime_ns
    path.chmod(stat.S_IREAD)
    assert fairdeal("build", path).returncode == 0
    assert (path.read_bytes(), path.stat().st_mtime_ns) == before


def test_no_place_to_write_to_is_status_3_and_says_where(tmp_path):
    path = write(tmp_path / "Shore.xlsx", GOOD)
    (tmp_path / "Shore decks").write_text("a file in the way", encoding="utf-8")
    done = fairdeal("build", path)
    assert done.returncode == 3
    assert "Shore decks" in done.stderr
    assert "Traceback" not in done.stderr


LONG = "a" * 300
"""Longer than the name of any file (255 bytes: POSIX Issue 8, and common practice)."""


@pytest.mark.parametrize(
    "call",
    [
        ("check", f"{LONG}.xlsx"),
        ("build", f"{LONG}.csv"),
        ("build", f"{LONG}.odd"),
        ("start", f"{LONG}.xlsx"),
        ("start", f"{LONG}/new.xlsx"),
        ("align", "--out", f"{LONG}.pdf"),
        ("marks", LONG),
        ("next", f"{LONG}.xlsx"),
        ("reprint", LONG, "--all"),
    ],
    ids=" ".join,
)
def test_a_name_longer_than_any_is_one_line(tmp_path, call):
    done = fairdeal(*call, cwd=tmp_path)
    assert done.returncode in {2, 3}
    assert len(done.stderr.splitlines()) == 1
    assert list(tmp_path.iterdir()) == []


def test_marks_in_a_file_with_a_name_longer_than_any_is_one_line(build):
    done = fairdeal("marks", build(), "--marks", f"{LONG}.xlsx")
    assert done.returncode in {2, 3}
    assert len(done.stderr.splitlines()) == 1


@pytest.mark.skipif(os.name == "nt", reason="folders are closed in another way there")
def test_a_file_missing_from_a_folder_that_may_not_be_looked_into_is_one_line(
    tmp_path, monkeypatch
):
    def refused(_folder):
        raise PermissionError(EACCES, "Permission denied")

    monkeypatch.setattr(Path, "iterdir", refused)  # the owner of all files may look anywhere
    done = fairdeal("check", tmp_path / "Shore.xlsx")
    assert done.returncode == 3
    assert "There is no file Shore.xlsx" in done.stderr
