"""What the teacher is told of printing, cutting and piling, against the pages of cards."""

import re

import pdfplumber
import pypdfium2
import pytest
from support.pdfs import card_pages

WAYS = {
    "duplex": (),
    "fold": ("--sides", "fold"),
    "tent": ("--sides", "tent", "--size", "medium"),
    "fronts": ("--sides", "fronts"),
    "bleed": ("--bleed", "3 mm"),
    "stock": ("--ink", "stock"),
}
MORE_WAYS = WAYS | {"two-passes": ("--sides", "two-passes", "--teams", "4")}
PER_LEAF = {"duplex": 2, "bleed": 2, "stock": 2}


def teacher_text(deck, pages=3):
    document = pypdfium2.PdfDocument(deck / "teacher.pdf")
    texts = [document[n].get_textpage().get_text_bounded() for n in range(pages)]
    document.close()
    return " ".join(" ".join(texts).split())


def making_text(deck):
    """The chapter that says how to make the deck, which ends where running it begins."""
    return teacher_text(deck).split("How to run it")[0]


@pytest.mark.parametrize("way", WAYS)
def test_as_many_sheets_are_to_be_loaded_as_there_are_leaves(build, way):
    deck = build(*WAYS[way])
    leaves = len(card_pages(deck / "cards.pdf")) // PER_LEAF.get(way, 1)
    loads = re.findall(r"Load (\d+) sheets? of", making_text(deck))
    assert sum(map(int, loads)) == leaves
    assert f"{leaves} leaves of Letter" in making_text(deck)


@pytest.mark.parametrize("way", WAYS)
def test_the_number_of_cuts_is_that_of_the_marks_that_are_not_folds(build, way):
    deck = build(*WAYS[way])
    page = card_pages(deck / "cards.pdf")[0]
    upright = len(page.upright_cuts) - len(page.upright_folds)
    level = len(page.level_cuts) - len(page.level_folds)
    if way == "fold":
        upright //= 2  # cut when folded: both outer edges lie on one another
    told = re.search(r"(\d+) level cuts?, then (\d+) upright .*?, (\d+) in all", making_text(deck))
    assert [int(number) for number in told.groups()] == [level, upright, level + upright]


@pytest.mark.parametrize("way", ["duplex", "fold", "tent", "bleed"])
def test_the_plan_numbers_every_cut_and_draws_folds_dashed(build, way):
    deck = build(*WAYS[way])
    told = re.search(r"(\d+) in all", making_text(deck))
    with pdfplumber.open(deck / "teacher.pdf") as pdf:
        page = pdf.pages[0]
        words = page.extract_words(extra_attrs=["fontname"])
        bold = [word for word in words if "Bold" in word["fontname"]]
        numbers = [word["text"] for word in bold if 8 < height(word) < 9]
        dashed = [line for line in page.lines if line["dash"] and line["dash"][0]]
    numbered = {int(part) for number in numbers for part in re.split(r"\D", number) if part}
    assert numbered == set(range(1, int(told[1]) + 1))
    assert bool(dashed) == (way in {"fold", "tent"})


def height(word):
    return word["bottom"] - word["top"]


@pytest.mark.parametrize("way", WAYS)
def test_everyone_is_cautioned_at_the_cutter(build, way):
    assert "Adults only. Guard in place" in making_text(build(*WAYS[way]))


@pytest.mark.parametrize("way", ["duplex", "fold", "tent", "fronts", "bleed", "two-passes"])
def test_how_to_make_a_deck_takes_one_page(build, way):
    assert "How to run it" in teacher_text(build(*MORE_WAYS[way]), pages=2)


def test_cards_that_fill_their_paper_are_not_cut(build):
    text = making_text(build("--paper", "index-4x6"))
    assert "There is nothing to cut" in text
    assert "paper cutter" not in text
    assert re.findall(r"leaves (\d+) to (\d+)", text) in (
        [("1", "8"), ("9", "15"), ("16", "22")],
        [("1", "7"), ("8", "15"), ("16", "22")],
        [("1", "7"), ("8", "14"), ("15", "22")],
    )


@pytest.mark.parametrize(
    ("way", "files"),
    [
        (("--sides", "duplex"), {"cards.pdf"}),
        (("--sides", "fronts"), {"cards.pdf", "answers.pdf"}),
        (("--sides", "two-passes"), {"cards-fronts.pdf", "cards-backs.pdf"}),
        (("--sides", "tent"), {"cards.pdf"}),
    ],
)
def test_every_file_in_the_folder_is_named_on_the_page_and_no_other(build, way, files):
    deck = build(*way)
    made = {path.name for path in deck.glob("*.pdf")}
    assert made == files | {"teacher.pdf", "study-guide.pdf"}
    assert set(re.findall(r"[a-z-]+\.pdf", making_text(deck))) == made - {"teacher.pdf"}


@pytest.mark.parametrize("paper", ["index-5x8", "a5", "tabloid"])
def test_lists_and_guides_are_set_on_paper_to_be_read(build, paper):
    deck = build("--paper", paper)
    wanted = (595.28, 841.89) if paper == "a5" else (612, 792)  # A4 of ISO 216, else Letter
    with pdfplumber.open(deck / "teacher.pdf") as pdf:
        assert (pdf.pages[0].width, pdf.pages[0].height) == pytest.approx(wanted, abs=0.01)
