"""What a printer cannot print and a cutter cuts stays white: measured in rendered pixels."""

import numpy as np
import pypdfium2
import pytest
from support.pdfs import POINTS_PER_MM, card_pages

SCALE = 4  # pixels to a point: a pixel is 0.09 mm
FIVE_MM = 5 * POINTS_PER_MM
MATRIX = [
    (paper, size, sides, flip)
    for paper in ("letter", "a4")
    for size in ("small", "medium", "large")
    for sides, flip in (("duplex", "long"), ("duplex", "short"), ("fold", "long"))
]


def ink(page) -> np.ndarray:
    """Return where the page is not white; row 0 is the foot of the page."""
    pixels = np.asarray(page.render(scale=SCALE).to_pil().convert("L"))
    return np.flipud(pixels < 250)


def part(mask, left, bottom, right, top):
    a, b, c, d = (round(edge * SCALE) for edge in (left, bottom, right, top))
    return mask[b:d, a:c]


@pytest.mark.parametrize(("paper", "size", "sides", "flip"), MATRIX)
def test_nothing_is_printed_within_5_mm_of_the_trim_or_of_the_papers_edge(
    build, paper, size, sides, flip
):
    path = build("--paper", paper, "--size", size, "--sides", sides, "--flip", flip) / "cards.pdf"
    document = pypdfium2.PdfDocument(path)
    for index, read in enumerate(card_pages(path)):
        mask = ink(document[index])
        assert mask.any()
        width, height = read.width, read.height
        for band in (
            (0, 0, width, FIVE_MM),
            (0, height - FIVE_MM, width, height),
            (0, 0, FIVE_MM, height),
            (width - FIVE_MM, 0, width, height),
        ):
            assert not part(mask, *band).any()
        safe = FIVE_MM - 2 / SCALE  # an edge runs through a pixel, on a page of broken pixels
        for left, bottom, right, top in read.cells:
            cell = part(mask, left, bottom, right, top).sum()
            inside = part(mask, left + safe, bottom + safe, right - safe, top - safe).sum()
            assert cell == inside
    document.close()


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
