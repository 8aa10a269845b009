"""What is printed can be read by everybody: with an eye, with a screen reader, from a copy.

Contrast is that of WCAG 2.2: 1.4.3 asks 4.5 of text, 1.4.11 asks 3 of marks that carry meaning.
Clear Print (UK Association for Accessible Formats) begins at 12 points. Language, title and letters
with a meaning are what ISO 14289-1 (PDF/UA), 7.1, 7.2 and 7.21, asks of a document's text.
"""

import re
import shutil
import subprocess
from collections.abc import Iterator
from functools import cache
from itertools import groupby
from pathlib import Path

import numpy as np
import pikepdf
import pypdfium2
import pytest
from reportlab.lib.colors import HexColor
from reportlab.pdfgen.canvas import Canvas
from support.lesson import cards_in, tops_of
from support.live_texts import fill_in
from support.seen_page import contrasts_of, luminance, out_of_order, ratio, read
from support.shore import ITEMS, fairdeal
from support.teacher_file import DETAILS, lesson

LEAST, LEAST_OF_MARKS = 4.5, 3
WHITE = (255, 255, 255)
CLEAR, SMALLEST = 12, 8.5
PDFTOTEXT = shutil.which("pdftotext")
PAPER_TITLES = {
    "teacher": "for the teacher",
    **{name: name for name in ("cards", "answers", "comparison")},
    "study-guide": "study guide",
    "planning-sheet": "planning sheet",
}
DECKS = {
    "review": {"early_finishers": "yes"},
    "collect": {"activity": "collect", "cards": "8"},
    "rounds": {"activity": "rounds"},
    "stations": {"activity": "stations"},
    "organizer": {"activity": "organizer"},
    "answers": {"sides": "fronts", "cards": "8"},
    "twelve": {"teams": "12", "cards": "12", "card_size": "large"},
    "in grey": {"ink": "grey", "cards": "8"},
    "on stock": {"ink": "stock", "cards": "8"},
}

LESSONS = ("review", "collect", "rounds", "stations", "organizer", "twelve")


def papers(*names: str) -> Iterator[Path]:
    """Yield the papers of all decks, or those of them with these names."""
    for options in DECKS.values():
        for path in sorted(lesson(**options).glob("*.pdf")):
            if not names or path.stem in names:
                yield path


def pages_with_text() -> Iterator[tuple[Path, int]]:
    """Yield the kinds of page of every lesson but its cards, and of one with twelve teams."""
    for name in LESSONS:
        for path in sorted(lesson(**DECKS[name]).glob("*.pdf")):
            if "cards" not in path.stem:
                yield from ((path, number) for number in kinds_of_page(path))


@cache
def kinds_of_page(path: Path) -> list[int]:
    """Return the numbers of a paper's pages that begin with a line of their own.

    That is each kind of page of the teacher's, and of cards a front and a back.
    """
    tops = tops_of(path)
    if "cards" in path.stem:
        return [0, 1][: len(tops)]
    return [n for n, top in enumerate(tops) if tops.index(top) == n][:9]


@pytest.fixture(scope="module")
def other_papers(tmp_path_factory) -> list[Path]:
    """A printer's test sheet, cards that were printed again, and what marks show."""
    folder = tmp_path_factory.mktemp("other")
    assert fairdeal("align", "--out", folder / "align.pdf").returncode == 0
    again = folder / "again.pdf"
    deck = lesson(**DECKS["review"])
    assert fairdeal("reprint", deck, "--cards", "1", "--out", again).returncode == 0
    marked = shutil.copytree(deck, folder / "01")
    fill_in(marked, marked)
    assert fairdeal("marks", marked, "--marks", marked / "filled.xlsx").returncode == 0
    return [folder / "align.pdf", again, marked / "what-it-shows.pdf"]


def test_every_paper_has_a_language_and_a_title_that_is_shown(other_papers):
    for path in (*papers(), *other_papers):
        with pikepdf.open(path) as pdf:
            assert pdf.Root.Lang == "en"
            assert pdf.Root.ViewerPreferences.DisplayDocTitle is True
            assert str(pdf.docinfo.Title).strip(), path


def test_a_title_says_which_deck_and_which_paper():
    for path in papers():
        with pikepdf.open(path) as pdf:
            title = str(pdf.docinfo.Title)
        name, deck, paper = title.split(" · ")
        assert (name, deck) == ("Shore", "deck 1"), path
        assert paper in PAPER_TITLES[path.stem.split("-more")[0]], path


def test_every_letter_has_its_shape_and_its_meaning_in_the_file(other_papers):
    for path in (*papers(), *other_papers):
        with pikepdf.open(path) as pdf:
            fonts = [
                font
                for font in pdf.objects
                if isinstance(font, pikepdf.Dictionary) and font.get("/Type") == "/Font"
            ]
            assert fonts
            for font in fonts:
                if font.Subtype in ("/CIDFontType0", "/CIDFontType2"):
                    continue
                assert "/ToUnicode" in font, (path, font.get("/BaseFont"))
                if font.Subtype != "/Type3":
                    holder = font.DescendantFonts[0] if "/DescendantFonts" in font else font
                    files = {"/FontFile", "/FontFile2", "/FontFile3"}
                    assert files & set(holder.FontDescriptor.keys()), (path, font.BaseFont)


def test_the_text_of_every_page_comes_as_a_person_reads(other_papers):
    wrong = {
        (path.stem, number + 1, page[0].text): found[:3]
        for path, number in (*pages_with_text(), (other_papers[-1], 0), (other_papers[-1], 1))
        for page in [read(path, number).pieces]
        if (found := out_of_order(page))
    }
    assert wrong == {}


@pytest.mark.parametrize("sides", ["duplex", "fold", "tent"])
def test_cards_are_read_one_after_another_row_by_row(sides):
    path = lesson(sides=sides) / "cards.pdf"
    for number, page in enumerate(cards_in(path)[:2]):
        pieces = [(_cell_of(piece, page), piece) for piece in read(path, number).pieces]
        cards = [
            (cell, tuple(piece for _, piece in group))
            for cell, group in groupby(
                (one for one in pieces if one[0] is not None), key=lambda one: one[0]
            )
        ]
        cells = [cell for cell, _ in cards]
        assert len(set(cells)) == len(cells), "a card's text is parted"
        assert [out_of_order(own) for _, own in cards] == [[]] * len(cards)
        if sides == "duplex":
            # a back is read after the back of the card before: from the right, as they lie there
            ahead = 1 if number % 2 == 0 else -1
            assert cells == sorted(cells, key=lambda cell: (-cell[1], ahead * cell[0]))


def _cell_of(piece, page):
    x, y = (piece.left + piece.right) / 2, page.height - piece.middle
    if piece.turned:
        x, y = page.width - x, page.height - y
    found = (c for c in page.cells if c[0] < x < c[2] and c[1] < y < c[3])
    return next(found, None)


def words(text: str) -> str:
    return re.sub(r"\s+", " ", text)


def by_pdfium(path: Path) -> str:
    document = pypdfium2.PdfDocument(path)
    text = " ".join(page.get_textpage().get_text_range() for page in document)
    document.close()
    return words(text)


def by_poppler(path: Path) -> str:
    done = subprocess.run(
        [PDFTOTEXT, "-raw", path, "-"], check=True, capture_output=True, encoding="utf-8"
    )
    return words(done.stdout)


READERS = [
    by_pdfium,
    pytest.param(
        by_poppler, marks=pytest.mark.skipif(PDFTOTEXT is None, reason="poppler is not installed")
    ),
]
CLUES = [clue for clue, *_ in ITEMS]


@pytest.mark.parametrize("reader", READERS)
def test_what_goes_over_several_lines_is_read_in_one_go(reader):
    for name in ("review", "rounds", "stations"):
        text = reader(lesson(**DECKS[name]) / "teacher.pdf")
        assert [clue for clue in CLUES if clue not in text] == [], name
    text = reader(lesson(**DECKS["organizer"]) / "teacher.pdf")
    assert [detail for *_, detail in DETAILS if detail not in text] == []
    text = reader(lesson(**DECKS["review"]) / "study-guide.pdf")
    assert [clue for clue in CLUES if clue not in text] == []


@pytest.mark.parametrize("reader", READERS)
def test_a_bank_in_columns_is_read_down_its_columns(reader):
    text = reader(lesson(**DECKS["review"]) / "study-guide.pdf")
    banks = re.findall(r"(?:Word bank|Bank of answers) (.*?) 1 Clue", text)
    assert len(banks) >= 4  # a guide for each team
    for bank in banks:
        found = re.findall(r"several words in answer \d+|word\d+", bank)
        assert found == sorted(found)  # the order of the alphabet, in which a bank is printed


@pytest.mark.parametrize(
    ("ink", "ground", "published"),
    # what the formula of WCAG 2.2 gives for known codes
    [("#767676", "#FFFFFF", 4.54), ("#777777", "#FFFFFF", 4.48), ("#FFFFFF", "#FFFF00", 1.07)],
)
def test_contrast_is_measured_right_on_a_page_whose_colours_are_known(
    tmp_path, ink, ground, published
):
    path = tmp_path / "known.pdf"
    canvas = Canvas(str(path), pagesize=(200, 100))
    canvas.setFillColor(HexColor(ground))
    canvas.rect(0, 0, 200, 100, stroke=0, fill=1)
    canvas.setFillColor(HexColor(ink))
    canvas.drawString(20, 40, "Limpet")
    canvas.save()
    found = contrasts_of(path, 0)
    assert "".join(one.letter for one in found) == "Limpet"
    assert [one.ratio for one in found] == pytest.approx([published] * 6, abs=0.005)


def test_text_that_is_drawn_out_of_order_would_be_seen(tmp_path):
    path = tmp_path / "known.pdf"
    canvas = Canvas(str(path), pagesize=(300, 100))
    places = {"above": (20, 80), "right": (200, 80), "below": (20, 40)}
    for word in ("above", "below", "right"):
        canvas.drawString(*places[word], word)
    canvas.showPage()
    for word in ("below", "right", "above"):
        canvas.drawString(*places[word], word)
    canvas.save()
    assert out_of_order(read(path, 0).pieces) == []
    assert out_of_order(read(path, 1).pieces) == [("below", "above"), ("right", "above")]


def test_all_text_stands_out_from_what_lies_beneath(other_papers):
    for path in (*papers(), *other_papers):
        for number in kinds_of_page(path)[:2]:
            found = contrasts_of(path, number)
            faint = {one for one in found if one.ratio < LEAST}
            assert faint == set(), (path, number + 1)


def test_boxes_and_lines_to_write_on_stand_out_from_the_paper():
    for path, number in pages_with_text():
        page = read(path, number)
        # a hairline between the teacher's rows parts what stands apart without it
        drawn = page.edges | (page.lines if path.stem != "teacher" else set())
        faint = {one for one in drawn - {WHITE} if _on_white(one) < LEAST_OF_MARKS}
        assert faint == set(), (path, number + 1)


def _on_white(colour):
    return ratio(luminance(np.array(colour)), np.array(1.0))


def sizes_in(path: Path, number: int) -> set[float]:
    """Return the sizes of a page's type, but for its foot, which names the deck and the page."""
    pieces = read(path, number).pieces
    foot = re.compile(r"deck 1\b|^page \d+ of")
    return {round(piece.size, 1) for piece in pieces if not foot.search(piece.text)}


def test_students_read_twelve_points_and_more():
    for path, number in pages_with_text():
        if path.stem not in ("teacher", "answers"):
            assert min(sizes_in(path, number)) >= CLEAR, (path, number + 1)


def test_nothing_is_smaller_than_the_least_size(other_papers):
    cards = [(path, 0) for path in papers("cards")]
    for path, number in (*pages_with_text(), *cards, *((path, 0) for path in other_papers)):
        smallest = min(piece.size for piece in read(path, number).pieces)
        assert smallest >= SMALLEST - 0.05, (path, number + 1)
