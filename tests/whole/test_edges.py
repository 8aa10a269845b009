"""What a printer cannot print and a cutter cuts stays white: measured in rendered pixels."""

import numpy as np
import pypdfium2
import pytest
from support.pdfs import POINTS_PER_MM, card_pages
from support.printing import printed

SCALE = 4  # pixels to a point: a pixel is 0.09 mm
FIVE_MM = 5 * POINTS_PER_MM
CASES = [
    {"paper": "letter", "card_size": "small", "sides": "duplex", "flip": "long"},
    {"paper": "letter", "card_size": "medium", "sides": "fold"},
    {"paper": "letter", "card_size": "large", "sides": "tent"},
    {"paper": "legal", "card_size": "small", "sides": "fronts"},
    {"paper": "a4", "card_size": "small", "sides": "fold"},
    {"paper": "a4", "card_size": "medium", "sides": "duplex", "flip": "short"},
    {"paper": "a4", "card_size": "large", "sides": "two-passes", "flip": "long"},
    {"paper": "a5", "card_size": "small", "sides": "duplex", "flip": "short"},
    {"paper": "tabloid", "card_size": "small", "sides": "duplex", "flip": "long"},
    {"paper": "index-4x6", "card_size": "small", "sides": "two-passes", "flip": "short"},
    {"paper": "letter", "card_size": "60 x 85 mm", "margins": "8, 6, 10, 7 mm", "flip": "long"},
]
NOT_CUT_THERE = [
    {"paper": "index-3x5", "card_size": "full", "flip": "long"},
    {"paper": "a5", "card_size": "full", "sides": "tent"},
    {"paper": "index-5x8", "card_size": "full", "sides": "two-passes", "flip": "short"},
    {"paper": "a4", "card_size": "90 x 60 mm", "bleed": "3 mm"},
    {"paper": "letter", "card_size": "small", "sides": "tent", "bleed": "2 mm"},
]


def ink(page) -> np.ndarray:
    """Return where the page is not white; row 0 is the foot of the page."""
    pixels = np.asarray(page.render(scale=SCALE).to_pil().convert("L"))
    return np.flipud(pixels < 250)


def part(mask, left, bottom, right, top):
    a, b, c, d = (round(edge * SCALE) for edge in (left, bottom, right, top))
    return mask[b:d, a:c]


def pages_of(deck):
    """Yield every page of cards as it is read, and where it is not white."""
    for path in sorted(deck.glob("cards*.pdf")):
        document = pypdfium2.PdfDocument(path)
        for index, read in enumerate(card_pages(path)):
            yield read, ink(document[index])
        document.close()


def named(options):
    return "-".join(options.values())


@pytest.mark.parametrize("options", CASES + NOT_CUT_THERE, ids=named)
def test_nothing_is_printed_within_the_papers_white_edge(options):
    white = FIVE_MM - 2 / SCALE  # an edge runs through a pixel, on a page of broken pixels
    for read, mask in pages_of(printed(**options)):
        assert mask.any()
        width, height = read.width, read.height
        for band in (
            (0, 0, width, white),
            (0, height - white, width, height),
            (0, 0, white, height),
            (width - white, 0, width, height),
        ):
            assert not part(mask, *band).any()


@pytest.mark.parametrize("options", CASES, ids=named)
def test_nothing_is_printed_within_5_mm_of_the_trim(options):
    safe = FIVE_MM - 2 / SCALE  # an edge runs through a pixel, on a page of broken pixels
    for read, mask in pages_of(printed(**options)):
        for left, bottom, right, top in read.cells:
            cell = part(mask, left, bottom, right, top).sum()
            inside = part(mask, left + safe, bottom + safe, right - safe, top - safe).sum()
            assert cell == inside


def test_wider_margins_are_kept_white_as_far_as_they_go():
    """Above and below of the upright page; at the sides the wider of two that lie back to back."""
    margins = {"margins": "8, 6, 10, 7 mm"}
    deck = printed(paper="letter", card_size="small", sides="duplex", flip="long", **margins)
    top, side, bottom = (edge * POINTS_PER_MM for edge in (8, 7, 10))
    for read, mask in pages_of(deck):
        width, height = read.width, read.height
        assert not part(mask, 0, height - top, width, height).any()
        assert not part(mask, 0, 0, width, bottom).any()
        assert not part(mask, 0, 0, side, height).any()
        assert not part(mask, width - side, 0, width, height).any()


def test_with_bleed_ribbons_run_over_the_cut_by_as_much():
    pages = list(pages_of(printed(paper="a4", card_size="90 x 60 mm", bleed="3 mm")))
    for read, mask in pages[::2]:
        outer = min(read.upright_cuts)
        inked = [
            part(mask, outer - away * POINTS_PER_MM, bottom, outer, top)[:, 0].any()
            for left, bottom, right, top in read.cells
            if left == outer and read.text_in((left, bottom, right, top))
            for away in (2.8, 3.2)
        ]
        assert inked
        assert inked == [True, False] * (len(inked) // 2)


def test_cut_marks_stand_outside_the_cards_only(build):
    for page in card_pages(build() / "cards.pdf"):
        left, right = page.upright_cuts[0], page.upright_cuts[-1]
        bottom, top = page.level_cuts[0], page.level_cuts[-1]
        drawn = [line for line in page.lines if line["stroking_color"] != (1, 1, 1)]
        assert len(drawn) > len(page.upright_cuts) + len(page.level_cuts)
        for line in drawn:
            beside = line["x1"] < left or line["x0"] > right
            beyond = line["y1"] < bottom or line["y0"] > top
            assert beside or beyond
