"""Content that would cost the square of its size, or far more, is dealt with all the same.

A run has a minute; unbounded, each of these took longer, or would have for ever.
"""

import subprocess
import sys
from pathlib import Path

import pytest
from openpyxl import Workbook

ROOT = Path(__file__).parents[2]
A_MINUTE = 60


def rights(count):
    """Return words each of which is right for all the others."""
    words = [f"word{chr(97 + n)}" for n in range(count)]
    rows = [
        f"{word},meaning number {n} of some length,{'; '.join(w for w in words if w != word)}"
        for n, word in enumerate(words)
    ]
    return "Word,Meaning,Also right\n" + "\n".join(rows)


def twins():
    """Return words of thousands of letters that differ in one."""
    return f"Prompt,Answer\nWhat one?,{'ab' * 4_000}\nAnd what two?,{'ab' * 3_999}ac\n"


def said_again():
    """Return a prompt that holds most words of its long answer."""
    words = [f"w{n}" for n in range(4_000)]
    return f"Prompt,Answer\n{' '.join(words)},{' '.join(reversed(words))} end\n"


@pytest.mark.parametrize(
    ("command", "text"),
    [
        (("build", "--activity", "collect"), rights(24)),
        (("build",), rights(24)),
        (("check",), twins()),
        (("check",), said_again()),
        (("build", "--fractions", "built", "--skip-errors"), f"a,{'1/2 ' * 8_000}\nb,c\n"),
    ],
    ids=["collect", "review", "long words", "long answers", "fractions"],
)
def test_text_that_grows_is_bounded(tmp_path, command, text):
    path = tmp_path / "w.csv"
    path.write_text(text, encoding="utf-8")
    run(tmp_path, command[0], path, *command[1:])


def test_a_marked_copy_of_a_sheet_of_merged_cells_is_written(tmp_path):
    book = Workbook()
    sheet = book.active
    sheet.append(["Prompt", "Answer"])
    for row in range(2, 2_002):
        sheet.append([f"What is number {row} of all?"])
        sheet.merge_cells(f"D{row}:E{row}")
    book.save(tmp_path / "w.xlsx")
    run(tmp_path, "check", tmp_path / "w.xlsx", "--mark")
    assert (tmp_path / "w marked.xlsx").exists()


def run(folder, *words):
    done = subprocess.run(
        [sys.executable, "-m", "decks", *map(str, words)],
        capture_output=True,
        text=True,
        check=False,
        cwd=folder,
        env={"PYTHONPATH": str(ROOT), "PATH": ""},
        timeout=A_MINUTE,
    )
    assert done.returncode in {0, 1}, done.stderr
    assert "Traceback" not in done.stderr
