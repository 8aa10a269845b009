"""Content that would cost the square of its size, or far more, is dealt with all the same.

A run has a minute; unbounded, each of these took longer, or would have for ever.
"""

import pytest
from openpyxl import Workbook, load_workbook
from openpyxl.worksheet.cell_range import CellRange
from support.watched import CAN_BE_WATCHED, watched

pytestmark = pytest.mark.skipif(not CAN_BE_WATCHED, reason="only where a run can be watched")
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


@pytest.mark.parametrize("merged", ["C1:XFD1048576", "A20:XFD1048576", "C1:C1048576"])
def test_a_marked_copy_of_a_sheet_that_merges_all_its_blank_cells_is_written(tmp_path, merged):
    book = Workbook()
    for row in [["Prompt", "Answer"], ["What is alone?"], ["What is two?", "a pair"]]:
        book.active.append(row)
    book.active.merged_cells.ranges.add(CellRange(merged))
    book.save(tmp_path / "w.xlsx")
    run(tmp_path, "check", tmp_path / "w.xlsx", "--mark")
    marked = load_workbook(tmp_path / "w marked.xlsx")["Sheet"]
    assert marked["A2"].value == "What is alone?"
    assert "There is no answer" in marked["B2"].comment.text


def run(folder, *words):
    (ran,) = watched([words], folder)
    assert ran.status in {0, 1}, ran.warned
    assert ran.seconds < A_MINUTE
    assert "Traceback" not in ran.warned
