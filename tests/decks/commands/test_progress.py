"""What a long run says meanwhile: to a person at a terminal only, and gone in the end."""

import os
import pty
import re
import subprocess
import sys
import termios
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]
AT_ONCE = """
import sys
from decks.commands import main, progress
progress.AFTER = progress.EVERY = 0.001
"""
BUILD = f"{AT_ONCE}main()"
STEPS = f"""{AT_ONCE}
import time
with progress.progress() as tell:
    for step in sys.argv[1:]:
        tell(step)
        time.sleep(0.3)
print("done")
"""
UNSEEN = """
import sys, threading
from decks.commands.progress import progress
with progress() as tell:
    tell("Reading the file")
    print(threading.active_count())
"""


def at_a_terminal(code: str, *words: object, columns: int = 80) -> tuple[str, str]:
    """Run a script whose complaints go to a terminal; return what it printed, and what came there.

    What is seen is as wide as the terminal.
    """
    ours, theirs = pty.openpty()
    termios.tcsetwinsize(theirs, (24, columns))
    with subprocess.Popen(
        [sys.executable, "-c", code, *map(str, words)],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=theirs,
        cwd=ROOT,
    ) as process:
        os.close(theirs)
        seen = b"".join(iter(lambda: some(ours), b""))
        told = process.stdout.read().decode()
    os.close(ours)
    return told, seen.decode()


def some(terminal: int) -> bytes:
    try:
        return os.read(terminal, 4096)
    except OSError:
        # the other end has been closed
        return b""


def left_on_screen(seen: str) -> str:
    """Return what one line of a terminal shows after all that was written on it."""
    line: list[str] = []
    for piece in seen.split("\r"):
        line[: len(piece)] = piece
    return "".join(line).strip()


def test_a_build_at_a_terminal_says_what_it_does_and_leaves_no_trace(tmp_path):
    book = tmp_path / "Shore.csv"
    rows = "".join(f"Clue number {n} of the shore,word{n}\n" for n in range(8))
    book.write_text(f"Prompt,Answer\n{rows}", encoding="utf-8")
    told, seen = at_a_terminal(BUILD, "build", book, "--teams", "2")
    assert told.startswith("Shore · deck 1: 8 cards")
    assert re.search(r"Drawing page \d of cards|Drawing the teacher’s pages", seen)
    assert "\n" not in seen
    assert left_on_screen(seen) == ""


def test_steps_replace_each_other_and_fit_the_terminal():
    told, seen = at_a_terminal(STEPS, "Dealing 2400 items", "Drawing", columns=12)
    assert told == "done\n"
    painted = seen.split("\r")
    assert "Dealing 240" in painted
    assert "Drawing" in painted
    assert max(map(len, painted)) < 12
    assert left_on_screen(seen) == ""


@pytest.mark.parametrize("complaints", ["2>complaints", "2>&-"])
def test_where_nobody_looks_on_nothing_is_said(tmp_path, complaints):
    done = subprocess.run(
        ["/bin/sh", "-c", f'exec "$0" -c "$1" {complaints}', sys.executable, UNSEEN],
        stdout=subprocess.PIPE,
        check=True,
        cwd=tmp_path,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )
    assert done.stdout == b"1\n"
    assert all(file.read_bytes() == b"" for file in tmp_path.iterdir())
