"""Read from afar, and fractions: from the command to the pages and back."""

import numpy as np
import pdfplumber
import pypdfium2
import pytest
from support.shore import fairdeal

ROWS = [
    "Question,Answer",
    "What is 1/2 + 1/4?,3/4",
    "How many quarters are in 2 3/4?,eleven",
    "On 3/4/2025 the tide ran at 12 km/h,no sum",
    "3/4 of a tank is full; which part is empty?,1/4",
]
LONG = f"Long question {'with many words ' * 12}?,yes"


@pytest.fixture
def build_rows(tmp_path):
    """Return a function that builds rows of questions with options."""

    def build(rows, *options):
        (tmp_path / "Shore.csv").write_text("\n".join(rows), encoding="utf-8")
        done = fairdeal("build", tmp_path / "Shore.csv", "--out", tmp_path, "--teams", 1, *options)
        assert done.returncode == 0, done.stderr
        return done, max((tmp_path / "Shore decks").iterdir())

    return build


def texts_of(path):
    document = pypdfium2.PdfDocument(path)
    return "\r\n".join(page.get_textpage().get_text_bounded() for page in document).split("\r\n")


def test_a_card_too_small_to_be_read_from_afar_is_told_and_printed_all_the_same(build_rows):
    done, deck = build_rows([*ROWS, LONG], "--read-from", "1.5m", "--size", "large")
    told = done.stdout + done.stderr
    assert "Shore.csv A6" in told
    assert "not from 1.5 m" in told
    assert told.count("can be read from") == 1
    assert any("Long question" in text for text in texts_of(deck / "cards.pdf"))


def test_at_arm_s_length_nothing_is_told_of_distance(build_rows):
    done, _ = build_rows([*ROWS, LONG], "--size", "large")
    assert "can be read from" not in done.stderr + done.stdout.split("Print")[0]


def test_fractions_are_copied_from_every_paper_as_they_are_read(build_rows):
    _, deck = build_rows(ROWS, "--fractions", "built")
    cards = texts_of(deck / "cards.pdf")
    assert "3⁄4" in cards
    assert any("1⁄2 + 1⁄4?" in text for text in cards)
    assert any("3/4/2025" in text for text in cards)
    assert any("12 km/h" in text for text in cards)
    for paper in ("cards", "study-guide", "teacher"):
        text = "".join(texts_of(deck / f"{paper}.pdf"))
        assert "2\N{NO-BREAK SPACE}3⁄4" in text
        assert "3⁄4 of a tank" in text


def test_fractions_stay_as_typed_where_nothing_is_said(build_rows):
    _, deck = build_rows(ROWS)
    assert "3/4" in texts_of(deck / "cards.pdf")


@pytest.mark.parametrize("answer", ["11/16", "3/4", "7/8"])
def test_the_figures_of_a_built_fraction_stand_clear_of_one_another(build_rows, answer):
    _, deck = build_rows(["Question,Answer", f"a,{answer}"], "--fractions", "built")
    assert pieces_of_ink(deck / "cards.pdf", answer) == len(answer)


def pieces_of_ink(path, answer):
    """Return in how many pieces the ink of an answer lies on the second page."""
    with pdfplumber.open(path) as pdf:
        letters = [c for c in pdf.pages[1].chars if c["size"] > 20 and c["text"] in f"{answer}⁄"]
    edges = [min(c["x0"] for c in letters), min(c["top"] for c in letters)]
    edges += [max(c["x1"] for c in letters), max(c["bottom"] for c in letters)]
    page = pypdfium2.PdfDocument(path)[1]
    image = page.render(scale=4, grayscale=True).to_numpy()
    left, top, right, bottom = (round(4 * edge) for edge in edges)
    dark = {(int(y), int(x)) for y, x in np.argwhere(image[top:bottom, left:right] < 128)}
    pieces = 0
    while dark:
        pieces += 1
        edge = [dark.pop()]
        while edge:
            y, x = edge.pop()
            near = {(y + 1, x), (y - 1, x), (y, x + 1), (y, x - 1)} & dark
            dark -= near
            edge += near
    return pieces
