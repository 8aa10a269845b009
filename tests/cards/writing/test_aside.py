"""Files on their way: what the living write stays, what the killed left goes."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from cards.writing.aside import patiently, settle, unfinished

ROOT = Path(__file__).parents[3]
WRITER = """
import sys
from pathlib import Path
from cards.writing.aside import unfinished
with unfinished(Path(sys.argv[1])) as aside:
    (aside / "page").write_bytes(b"1")
    print(aside, flush=True)
    sys.stdin.read()
"""


def begun(folder: Path) -> tuple[subprocess.Popen, Path]:
    """Return a process that writes in a folder, and what it writes into."""
    process = subprocess.Popen(
        [sys.executable, "-c", WRITER, folder],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        encoding="utf-8",
        cwd=ROOT,
    )
    return process, Path(process.stdout.readline().strip())


def test_what_is_written_aside_is_hidden_and_goes_in_the_end(tmp_path):
    with unfinished(tmp_path) as aside:
        assert aside.parent == tmp_path
        assert aside.name.startswith(".")
        (aside / "folder").mkdir()
        (aside / "folder" / "file").write_bytes(b"1")
    assert list(tmp_path.iterdir()) == []


def test_what_another_process_is_writing_stays_until_that_is_killed(tmp_path):
    process, theirs = begun(tmp_path)
    with process:
        with unfinished(tmp_path):
            pass
        assert (theirs / "page").read_bytes() == b"1"
        process.kill()
    assert (theirs / "page").exists()
    with unfinished(tmp_path) as ours:
        assert list(tmp_path.iterdir()) == [ours]


def test_what_was_left_before_it_was_held_goes_only_if_it_is_empty(tmp_path):
    (tmp_path / ".fairdeal-empty").mkdir()
    (tmp_path / ".fairdeal-notes").mkdir()
    (tmp_path / ".fairdeal-notes" / "mine").write_bytes(b"1")
    (tmp_path / ".fairdeal-file").write_bytes(b"1")
    with unfinished(tmp_path):
        pass
    assert {entry.name for entry in tmp_path.iterdir()} == {".fairdeal-notes", ".fairdeal-file"}


def test_a_link_to_another_place_is_not_followed(tmp_path):
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / "being-written").write_bytes(b"1")
    (tmp_path / ".fairdeal-link").symlink_to(tmp_path / "mine")
    with unfinished(tmp_path):
        pass
    assert (tmp_path / "mine" / "being-written").exists()


def test_a_drive_without_locks_is_written_on_and_nothing_there_is_cleared_away(
    tmp_path, monkeypatch
):
    import cards.writing.aside as module  # noqa: PLC0415 (its lock is taken away)

    def no_locks(_hold: int) -> None:
        raise OSError(95, os.strerror(95))

    monkeypatch.setattr(module, "_lock", no_locks)
    with unfinished(tmp_path) as first, unfinished(tmp_path) as second:
        assert first.is_dir()
        assert second.is_dir()
    assert list(tmp_path.iterdir()) == []


def as_windows_says(number: int) -> PermissionError:
    """Return the error of a move as Windows raises it."""
    error = PermissionError(13, "The process cannot access the file", "deck")
    error.winerror = number
    return error


@pytest.mark.parametrize("number", [5, 32, 33])
def test_a_move_waits_a_moment_for_a_scanner_to_let_go(number):
    answers = [as_windows_says(number), as_windows_says(number), None]

    def move() -> None:
        if answer := answers.pop(0):
            raise answer

    patiently(move)
    assert answers == []


def test_a_move_that_is_refused_for_good_is_not_tried_again():
    tries = []

    def move() -> None:
        tries.append(1)
        raise PermissionError(13, "Permission denied")

    with pytest.raises(PermissionError):
        patiently(move)
    assert tries == [1]


def test_what_cannot_be_waited_for_is_raised(tmp_path):
    with pytest.raises(FileNotFoundError):
        settle([tmp_path / "none"])
