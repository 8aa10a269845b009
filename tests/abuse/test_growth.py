"""Content that would cost the square of its size, or far more, is dealt with all the same.

A run has a minute; unbounded, each of these took longer, or would have for ever.
"""

import csv
import os
import random
import subprocess
import sys

import pytest
from openpyxl import Workbook, load_workbook
from openpyxl.worksheet.cell_range import CellRange
from PIL import Image
from support.pictures import SVG
from support.watched import CAN_BE_WATCHED, MOST_BYTES, ROOT, watched

resource = pytest.importorskip("resource", reason="memory is bounded in another way here")

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


@pytest.mark.parametrize("mode", ["P", "RGB", "RGBA", "I;16"])
def test_the_largest_pictures_are_scaled_down_in_few_copies(tmp_path, mode):
    tones = Image.linear_gradient("L").resize((6_300, 6_300))
    key = {"P": bytes(range(256)), "RGB": (1, 1, 1)}
    wide = tones.convert("I").point(lambda tone: tone * 257) if mode == "I;16" else tones
    options = {"transparency": key[mode]} if mode in key else {}
    wide.convert(mode).save(tmp_path / "shore.png", compress_level=1, **options)
    (tmp_path / "w.csv").write_text("Prompt,Answer,Picture\nWhat is it?,a shore,shore.png\n")
    run(tmp_path, "check", tmp_path / "w.csv")


def test_words_that_are_shaped_are_not_all_kept(tmp_path):
    letters = random.Random(1).choices("ابتثجحخدذرزسشصضطظعغفقكلمنهوي ", k=400_000)
    rows = ["".join(letters[start : start + 200]) for start in range(0, 400_000, 200)]
    (tmp_path / "w.csv").write_text(
        "Prompt,Answer\n" + "\n".join(f"{row},tide {n}" for n, row in enumerate(rows)),
        encoding="utf-8",
    )
    ran = run(tmp_path, "check", tmp_path / "w.csv")
    assert ran.peak < MOST_BYTES // 2


@pytest.mark.parametrize(("letters", "told"), [(2_000, "no errors"), (600_000, "far too")])
def test_a_drawing_has_no_more_letters_than_can_be_drawn(tmp_path, letters, told):
    text = "<text y='9'>" + "tide " * (letters // 4) + "</text>"
    (tmp_path / "tide.svg").write_text(SVG.format(text))
    (tmp_path / "w.csv").write_text("Prompt,Answer,Picture\nWhat is it?,a tide,tide.svg\n")
    ran = run(tmp_path, "check", tmp_path / "w.csv")
    assert told in ran.told


def test_where_memory_does_not_do_that_is_said(tmp_path):
    Image.linear_gradient("L").resize((6_300, 6_300)).convert("RGBA").save(
        tmp_path / "shore.png", compress_level=1
    )
    path = tmp_path / "w.csv"
    path.write_text("Prompt,Answer,Picture\nWhat is it?,a shore,shore.png\n")
    little = 300 << 20
    done = subprocess.run(
        [sys.executable, "-m", "decks", "check", path],
        capture_output=True,
        encoding="utf-8",
        check=False,
        cwd=ROOT,
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (little, little)),
    )
    assert (done.returncode, done.stdout) == (3, "")
    assert done.stderr.startswith("fairdeal: There is not memory enough.")
    assert len(done.stderr.splitlines()) == 1


def run(folder, *words):
    (ran,) = watched([words], folder)
    assert ran.status in {0, 1}, ran.warned
    assert ran.seconds < A_MINUTE
    assert ran.peak < MOST_BYTES
    assert "Traceback" not in ran.warned
    return ran


@pytest.mark.parametrize("line", ["x\n", "\u05d01", "tide "])
def test_cells_full_to_the_brim_are_dealt_with_in_seconds(tmp_path, line):
    path = tmp_path / "w.csv"
    with path.open("w", encoding="utf-8", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(["Question", "Answer"])
        rows.writerows([f"{n} {line * (32_000 // len(line))}", f"word{n}"] for n in range(60))
    run(tmp_path, "check", path)
