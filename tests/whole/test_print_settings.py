"""What goes to the printer with the pages: size, scale, flip, fonts."""

import pdfplumber
import pikepdf
import pypdfium2
import pytest
from support.pdfs import POINTS_PER_MM, card_pages

PAPERS = ("cards.pdf", "study-guide.pdf", "teacher.pdf")


@pytest.mark.parametrize(
    "options", [(), ("--paper", "a4", "--size", "medium"), ("--sides", "fold")]
)
def test_the_check_rule_measures_100_mm_on_every_page(build, options):
    for page in card_pages(build(*options) / "cards.pdf"):
        longest = max(line["x1"] - line["x0"] for line in page.lines)
        assert longest / POINTS_PER_MM == pytest.approx(100, abs=0.005)


@pytest.mark.parametrize(
    ("options", "duplex"),
    [
        (("--flip", "long"), "/DuplexFlipLongEdge"),
        (("--flip", "short"), "/DuplexFlipShortEdge"),
        (("--sides", "fold"), "/Simplex"),
        (("--sides", "tent"), "/Simplex"),
        (("--sides", "fronts"), "/Simplex"),
    ],
)
def test_viewers_are_asked_for_the_right_flip_and_no_scaling(build, options, duplex):
    """ISO 32000-1, Table 150."""
    with pikepdf.open(build(*options) / "cards.pdf") as pdf:
        wishes = pdf.Root.ViewerPreferences
        assert wishes.PrintScaling == "/None"
        assert wishes.Duplex == duplex


@pytest.mark.parametrize("paper", PAPERS)
def test_every_font_is_embedded_and_can_be_read_back(build, paper):
    with pikepdf.open(build() / paper) as pdf:
        for page in pdf.pages:
            for font in page.Resources.Font.values():
                assert "/FontFile2" in font.FontDescriptor
                assert "/ToUnicode" in font


@pytest.mark.parametrize("paper", PAPERS)
def test_every_paper_is_sound_and_says_its_title_and_language(build, paper):
    with pikepdf.open(build() / paper) as pdf:
        assert pdf.check_pdf_syntax() == []
        assert str(pdf.Root.Lang) == "en"
        assert str(pdf.docinfo.Title).startswith("Shore · deck 1")
        assert pdf.pdf_version == "1.7"


@pytest.mark.parametrize(
    ("sides", "paper"),
    [
        ("fronts", "answers.pdf"),
        ("two-passes", "cards-fronts.pdf"),
        ("two-passes", "cards-backs.pdf"),
    ],
)
def test_every_other_paper_is_sound_too(build, sides, paper):
    with pikepdf.open(build("--sides", sides) / paper) as pdf:
        assert pdf.check_pdf_syntax() == []
        assert str(pdf.docinfo.Title).startswith("Shore · deck 1")
        assert pdf.Root.ViewerPreferences.PrintScaling == "/None"
        assert pdf.Root.ViewerPreferences.Duplex == "/Simplex"


def corner(page):
    """The right angle of the one filled triangle, as the paper's corner that it stands in."""
    (wedge,) = [curve for curve in page.curves if curve["fill"] and len(curve["pts"]) <= 4]
    x = sum(point[0] for point in wedge["pts"]) / len(wedge["pts"])
    y = page.height - sum(point[1] for point in wedge["pts"]) / len(wedge["pts"])
    return x, y


@pytest.mark.parametrize("flip", ["long", "short"])
def test_the_corner_marks_lie_back_to_back_after_the_right_flip_only(build, flip):
    with pdfplumber.open(build("--flip", flip) / "cards.pdf") as pdf:
        front, back = (corner(page) for page in pdf.pages[:2])
        width, height = pdf.pages[0].width, pdf.pages[0].height
    long_turn = (width - front[0], front[1])
    short_turn = (front[0], height - front[1])
    right, wrong = (long_turn, short_turn) if flip == "long" else (short_turn, long_turn)
    assert back == pytest.approx(right, abs=0.01)
    assert back != pytest.approx(wrong, abs=100)


def test_every_page_says_its_side_its_leaf_and_how_to_load_it(build):
    document = pypdfium2.PdfDocument(build("--flip", "short") / "cards.pdf")
    count = len(document) // 2
    for index, page in enumerate(document):
        text = page.get_textpage().get_text_bounded()
        assert f"leaf {index // 2 + 1} of {count} · {('front', 'back')[index % 2]}" in text
        assert "Letter · actual size (100 %) · both sides · flip on the short edge" in text
    document.close()
