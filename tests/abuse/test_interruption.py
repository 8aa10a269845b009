"""Builds killed, stopped, crowded, or out of disk: earlier decks are whole, and none is half."""

import csv
import ctypes
import json
import os
import resource
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from itertools import cycle
from pathlib import Path

import pytest
from support.shore import ITEMS, fairdeal

from decks.shelf import next_number, put

SCRIPT = Path(__file__).parents[1] / "support" / "forked.py"
ROOT = Path(__file__).parents[2]
SHELF = "Shore decks"
PAPERS = {"cards.pdf", "deck.json", "marks.xlsx", "study-guide.pdf", "teacher.pdf"}
STOPPED = "fairdeal: Stopped. Nothing was written, and nothing is left behind.\n"


def book_in(folder: Path) -> Path:
    book = folder / "Shore.csv"
    with book.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([("Prompt", "Answer", "Topic", "Level"), *ITEMS[:6]])
    return book


def forked(doing: str, folder: Path) -> list[tuple[Path, int]]:
    """Return the folders of builds that came to grief, and their statuses."""
    done = subprocess.run(
        [sys.executable, SCRIPT, doing, book_in(folder), folder],
        capture_output=True,
        encoding="utf-8",
        check=False,
        timeout=300,
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
    )
    assert done.returncode == 0, done.stderr
    ends = json.loads((folder / "ends.json").read_text(encoding="utf-8"))
    return [(Path(out), status) for out, status in ends]


def files_of(deck: Path) -> dict[str, bytes]:
    return {file.name: file.read_bytes() for file in deck.iterdir()}


def seen_on(shelf: Path) -> list[str]:
    """Return the names on a shelf that a teacher sees."""
    return sorted(entry.name for entry in shelf.iterdir() if not entry.name.startswith("."))


def assert_whole(folder: Path, shelf: Path) -> None:
    """Say that the first deck is as it was and a second one, if there is one, is all there."""
    assert seen_on(shelf) in (["01"], ["01", "02"])
    assert files_of(shelf / "01") == files_of(folder / "first" / SHELF / "01")
    if (shelf / "02").exists():
        assert set(files_of(shelf / "02")) == PAPERS
        assert json.loads((shelf / "02" / "deck.json").read_bytes())["number"] == 2


def test_a_build_killed_at_any_of_twenty_points_leaves_whole_decks_and_nothing_for_long(tmp_path):
    ends = forked("SIGKILL", tmp_path)
    assert [status for _, status in ends] == [-signal.SIGKILL] * 20
    left = 0
    for out, _ in ends:
        shelf = out / SHELF
        assert_whole(tmp_path, shelf)
        left += len(list(shelf.glob(".*")))
        number = next_number(shelf)
        assert number == 1 + len(seen_on(shelf))
        put(shelf, number, {"a": b"1"})
        assert not list(shelf.glob(".*")), "what was left is cleared away by the next build"
    assert left, "some were killed while they wrote"


def test_a_build_stopped_at_any_of_twenty_points_cleans_up_at_once_and_says_so(tmp_path):
    ends = forked("SIGTERM SIGINT", tmp_path)
    for (out, status), number in zip(ends, cycle([signal.SIGTERM, signal.SIGINT]), strict=False):
        assert_whole(tmp_path, out / SHELF)
        assert not list((out / SHELF).glob(".*"))
        told = (out / "told").read_text(encoding="utf-8")
        complaints = (out / "complaints").read_text(encoding="utf-8")
        if (out / SHELF / "02").exists():
            assert (status, complaints) == (0, "")
            assert told.endswith(f"{SHELF}/02\n"), "what came too late for the deck lets it be told"
        else:
            assert (status, told, complaints) == (128 + number, "", STOPPED)


def test_six_builds_at_once_make_six_decks_with_numbers_of_their_own(tmp_path):
    ends = forked("at once", tmp_path)
    assert [status for _, status in ends] == [0] * 6
    decks = [tmp_path / "shelf" / f"{number:02}" for number in range(1, 7)]
    assert sorted((tmp_path / "shelf").iterdir()) == decks
    for number, deck in enumerate(decks, start=1):
        assert set(files_of(deck)) == PAPERS
        assert json.loads((deck / "deck.json").read_bytes())["number"] == number


@pytest.mark.parametrize("name", ["SIGHUP", "SIGBREAK"])
def test_a_closed_window_and_ctrl_break_stop_a_run_from_its_first_moment(tmp_path, name):
    code = (
        "import signal, sys\n"
        # Windows sends it for Ctrl-Break; elsewhere another signal has to stand for it
        "signal.SIGBREAK = signal.SIGUSR1\n"
        "sys.addaudithook(lambda event, args: event == 'import' and args[0] == 'typer' and "
        f"signal.raise_signal(signal.{name}))\n"
    )
    number = signal.SIGUSR1 if name == "SIGBREAK" else signal.SIGHUP
    assert started(code, tmp_path / "Shore.xlsx") == (128 + number, "", STOPPED)
    assert list(tmp_path.iterdir()) == []


# the reference of Python, what's new in 3.12: until then `__set_name__` let out RuntimeError only
def test_a_stop_that_became_an_error_on_its_way_is_told_as_a_stop(tmp_path):
    code = (
        "import signal, sys\n"
        "class Part:\n"
        "    def __set_name__(self, owner, name):\n"
        "        signal.raise_signal(signal.SIGINT)\n"
        "sys.addaudithook(lambda event, args: event == 'import' and args[0] == 'typer' and "
        "type('Whole', (), {'part': Part()}))\n"
    )
    assert started(code, tmp_path / "Shore.xlsx") == (128 + signal.SIGINT, "", STOPPED)
    assert list(tmp_path.iterdir()) == []


def started(code: str, workbook: Path) -> tuple[int, str, str]:
    """Return what comes of a command that begins after some code has run in its process."""
    code += "from decks.commands import main\nmain()\n"
    command = [sys.executable, "-c", code, "start", workbook]
    done = subprocess.run(command, capture_output=True, encoding="utf-8", check=False, cwd=ROOT)
    return done.returncode, done.stdout, done.stderr


def limited(limit: Callable[[], object], *words: object) -> subprocess.CompletedProcess[str]:
    """Run the command in a process that is limited before it begins."""
    return subprocess.run(
        [sys.executable, "-B", "-m", "decks", *words],
        capture_output=True,
        encoding="utf-8",
        check=False,
        cwd=ROOT,
        preexec_fn=limit,
    )


def no_large_files() -> None:
    """Let no file be larger than this, as on a disk that is full."""
    resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))


def no_more_than_the_owner() -> None:
    """Take from the system's own user, if it is the one, the right to write everywhere.

    PR_CAPBSET_DROP of CAP_DAC_OVERRIDE and CAP_DAC_READ_SEARCH (Linux, prctl(2) and
    capabilities(7)).
    """
    for capability in (1, 2):
        ctypes.CDLL(None).prctl(24, capability, 0, 0, 0)


def test_a_full_disk_gets_one_line_and_leaves_nothing(tmp_path):
    book = book_in(tmp_path)
    for words in (("build", book), ("start", tmp_path / "New.xlsx")):
        done = limited(no_large_files, *words)
        assert done.returncode == 3, done.stderr
        assert done.stderr.count("\n") == 1
        assert "Make room" in done.stderr
        assert [entry.name for entry in tmp_path.iterdir()] == ["Shore.csv"]


@pytest.mark.skipif(sys.platform != "linux", reason="how to give up rights is Linux's own")
def test_a_folder_that_may_not_be_written_to_gets_one_line_and_nothing_in_it(tmp_path):
    book = book_in(tmp_path)
    deck = put(tmp_path / SHELF, 1, {"deck.json": b"1"})
    for folder in (deck, tmp_path / SHELF, tmp_path):
        folder.chmod(0o555)
    before = sorted(tmp_path.rglob("*"))
    for words in (("build", book), ("start", tmp_path / "New.xlsx")):
        done = limited(no_more_than_the_owner, *words)
        assert done.returncode == 3, done.stderr
        assert done.stderr.count("\n") == 1
        assert "you may not write there. See that you may" in done.stderr
    assert sorted(tmp_path.rglob("*")) == before


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="a disk that is always full")
def test_where_what_is_said_finds_no_room_the_deck_is_whole_and_the_status_says_so(tmp_path):
    book = book_in(tmp_path)
    with Path("/dev/full").open("w", encoding="utf-8") as full:
        done = subprocess.run(
            [sys.executable, "-m", "decks", "check", book],
            stdout=full,
            stderr=subprocess.PIPE,
            encoding="utf-8",
            check=False,
            cwd=ROOT,
        )
    assert done.returncode == 3
    assert done.stderr.startswith("fairdeal: What there is to say could not be written (")
    assert done.stderr.count("\n") == 1


def through_shell(line: str, folder: Path, **environment: str) -> tuple[int, str, str]:
    done = subprocess.run(
        ["/bin/sh", "-c", line.replace("fairdeal", f"{sys.executable} -m decks")],
        capture_output=True,
        check=False,
        cwd=folder,
        env={"PATH": os.environ["PATH"], "PYTHONPATH": str(ROOT), **environment},
    )
    told, complaints = (data.decode("ascii", "replace") for data in (done.stdout, done.stderr))
    return done.returncode, told, complaints


@pytest.mark.parametrize(
    ("line", "status"),
    [
        # a reader that goes away at once
        ("(fairdeal check Shore.csv; echo $? >&2) | true", 0),
        ("fairdeal check Shore.csv >&-", 0),
        ("fairdeal check none.csv 2>&-", 3),
        ("fairdeal check none.csv >&- 2>&-", 3),
    ],
)
def test_a_reader_who_is_gone_is_no_error(tmp_path, line, status):
    book_in(tmp_path)
    done, _, complaints = through_shell(line, tmp_path)
    assert (done, complaints) == (status, "0\n" if "echo" in line else "")


@pytest.mark.parametrize(
    "environment",
    [
        {"PYTHONIOENCODING": "ascii"},
        {"PYTHONIOENCODING": "cp1252"},
        {"LC_ALL": "C", "PYTHONCOERCECLOCALE": "0", "PYTHONUTF8": "0"},
    ],
)
def test_a_terminal_that_lacks_letters_gets_what_it_can_show(tmp_path, environment):
    (tmp_path / "Ж.csv").write_text("Prompt,Answer\nЖук,\n", encoding="utf-8")
    done, told, complaints = through_shell("fairdeal check *.csv", tmp_path, **environment)
    assert (done, complaints) == (1, "")
    assert "There is no answer in this row." in told


def test_signs_that_steer_a_terminal_are_written_by_their_numbers(tmp_path):
    book = book_in(tmp_path).rename(tmp_path / "Sh\x1b[2J\u202eore.csv")
    for words in (("check", book), ("check", book.with_suffix(".txt"))):
        done = fairdeal(*words)
        said = done.stdout + done.stderr
        assert "Sh\\u001b[2J\\u202eore" in said
        assert not {"\x1b", "\u202e"} & set(said)


@pytest.mark.parametrize("sign", ["~$Shore.csv", ".~lock.Shore.csv#"])
def test_the_sign_that_a_workbook_is_open_is_told_from_the_workbook(tmp_path, sign):
    book = book_in(tmp_path)
    assert "seems to be open" not in fairdeal("check", book).stdout
    (tmp_path / sign).write_bytes(b"\x05Heron" + bytes(100))
    done = fairdeal("check", tmp_path / sign)
    assert done.returncode == 3
    assert done.stderr == (
        f"fairdeal: {sign} only says that Shore.csv is open in a spreadsheet program. "
        "Name Shore.csv.\n"
    )
    seen = fairdeal("check", book)
    assert seen.returncode == 0
    assert "Note    Shore.csv seems to be open in a spreadsheet program: " in seen.stdout


def test_the_clock_has_no_part_in_a_deck(tmp_path, monkeypatch):
    book = book_in(tmp_path)
    one, other = tmp_path / "one", tmp_path / "other"
    assert fairdeal("build", book, "--out", one).returncode == 0
    for name, value in (("TZ", "Pacific/Kiritimati"), ("SOURCE_DATE_EPOCH", "then")):
        monkeypatch.setenv(name, value)
    monkeypatch.setattr(time, "time", lambda: 4e9)
    os.utime(book, (4e9, 4e9))
    assert fairdeal("build", book, "--out", other).returncode == 0
    assert files_of(one / SHELF / "01") == files_of(other / SHELF / "01")
    # a deck from the future, and one from before all computers, are decks as any other
    os.utime(one / SHELF / "01", (0, 0))
    shutil.copytree(other / SHELF / "01", one / SHELF / "03")
    assert next_number(one / SHELF) == 4


@pytest.mark.skipif(os.name != "posix", reason="a folder in use stays there")
@pytest.mark.parametrize("words", ["build {} --out here", "check Shore.csv", "align"])
def test_where_the_folder_that_a_run_starts_in_is_gone_that_is_said(tmp_path, words):
    words = words.format(book_in(tmp_path))
    (tmp_path / "gone").mkdir()
    done = through_shell(f'cd gone && rmdir "$PWD" && fairdeal {words}', tmp_path)
    gone = (
        "fairdeal: The folder that this was started in is gone. Go to another one, and try again."
    )
    assert done == (3, "", f"{gone}\n")
