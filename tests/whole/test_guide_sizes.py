"""The study guide's type and the room for a hand, measured on the printed page."""

import pdfplumber
import pytest
from support.lesson import lesson
from support.pdfs import POINTS_PER_MM
from support.shore import fairdeal

CLEAR_PRINT = 12
"""Points; the least of the Royal National Institute of Blind People's Clear Print guidelines."""

LARGE_PRINT = 18
"""Points; the least of the American Printing House for the Blind's guidelines for large print."""

WIDE_RULED = 8.7
"""Millimetres from line to line on wide-ruled paper, 11/32 in: what is common for the youngest in
schools of the United States (the trade's rulings; there is no standard of an institution)."""

KEY_STAGE_1 = 15
"""Millimetres from line to line in exercise books for ages five to seven, as recommended by the
National Handwriting Association (UK), on its page of printable line guides."""

FOOT = 13 * POINTS_PER_MM
"""Below this stands the foot, which is for whoever copies and sorts the pages."""

WAYS = [
    ("letter", "bank", "colour"),
    ("a4", "hints", "grey"),
    ("a5", "none", "colour"),
    ("a4", "bank", "grey"),
]


def pages_of(large, paper, support, ink):
    deck = lesson(support=support, paper=paper, ink=ink, large_print=large, early_finishers="yes")
    for name in ("study-guide.pdf", "study-guide-more.pdf"):
        if (deck / name).exists():
            with pdfplumber.open(deck / name) as pdf:
                for page in pdf.pages:
                    yield page.height, page.chars, page.lines


@pytest.mark.parametrize("way", WAYS, ids="-".join)
def test_all_that_a_student_reads_is_clear_print(way):
    for _height, chars, _lines in pages_of("no", *way):
        sizes = [round(char["size"], 6) for char in chars if char["y0"] > FOOT]
        assert min(sizes) >= CLEAR_PRINT


@pytest.mark.parametrize("way", WAYS, ids="-".join)
def test_all_of_a_page_in_large_print_is_large_print(way):
    for _height, chars, _lines in pages_of("yes", *way):
        assert min(round(char["size"], 6) for char in chars) >= LARGE_PRINT


SUMS = """Question,Answer
1/4 + 1/8,3/8
A jug holds 3/4 of a litre and 2/3 of it is drunk. How much is left?,1/4
0.5 + 0.25,0.75
"""


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(("large", "clear"), [("no", CLEAR_PRINT), ("yes", LARGE_PRINT)])
def test_the_figures_of_built_fractions_come_near_to_clear_print(tmp_path, paper, large, clear):
    (tmp_path / "sums.csv").write_text(SUMS, encoding="utf-8")
    done = fairdeal(
        *("build", tmp_path / "sums.csv", "--teams", "1", "--fractions", "built"),
        *("--paper", paper, "--large-print", large),
    )
    assert done.returncode == 0, done.stderr
    with pdfplumber.open(tmp_path / "sums decks" / "01" / "study-guide.pdf") as pdf:
        chars = [char for page in pdf.pages for char in page.chars if char["y0"] > FOOT]
    assert "⁄" in {char["text"] for char in chars}
    assert min(round(char["size"], 6) for char in chars) >= 0.85 * clear


@pytest.mark.parametrize(("large", "least"), [("no", WIDE_RULED), ("yes", KEY_STAGE_1)])
@pytest.mark.parametrize("way", WAYS, ids="-".join)
def test_a_hand_has_room_above_every_line(way, large, least):
    """To the next line above it, or to the feet of the letters above it."""
    seen = 0
    for height, chars, lines in pages_of(large, *way):
        writing = [line for line in lines if line["x1"] - line["x0"] > 0.25 * 210 * POINTS_PER_MM]
        for line in writing:
            feet = [char["matrix"][5] for char in chars if _over(char, line)]
            feet += [other["y0"] for other in lines if _over(other, line)]
            above = min(foot for foot in [*feet, height] if foot > line["y0"] + 1)
            assert above - line["y0"] >= least * POINTS_PER_MM - 0.1
            seen += 1
    assert seen


def _over(thing, line):
    return thing["x0"] < line["x1"] and line["x0"] < thing["x1"]


@pytest.mark.parametrize("large", ["no", "yes"])
@pytest.mark.parametrize("way", WAYS, ids="-".join)
def test_nothing_is_cut_off_or_runs_into_the_foot(way, large):
    for height, chars, lines in pages_of(large, *way):
        width = {"letter": 612, "a4": 595.28, "a5": 595.28}[way[0]]
        assert all(0 < char["x0"] < char["x1"] < width - 40 for char in chars)
        body = [char for char in chars if char["matrix"][5] > FOOT]
        assert min(char["matrix"][5] for char in body) > FOOT + 20
        assert min(line["y0"] for line in lines) > FOOT + 10
        assert max(char["y1"] for char in body) < height
