"""The test page on every paper, as its frames."""

import itertools
import re
from io import BytesIO

import pikepdf
import pytest
from support.printer import behind

from decks.layout.frame import Line, Placed, Text
from decks.layout.paper import PAPERS
from decks.layout.units import in_mm, mm
from decks.press.align.page import align_file, align_pages
from decks.press.type.fonts import measure
from decks.recipe import Flip, PaperName

EVERY = list(itertools.product(PaperName, Flip))
CAP, DEPTH = 0.689, 0.25
"""Height of capitals and depth of a line in ems."""


def texts(frame, x=0.0, y=0.0):
    """Yield each text with its edges: left, bottom, right, top."""
    for thing in frame.things:
        if isinstance(thing, Text):
            left, base, size = x + thing.x, y + thing.y, thing.size
            right = left + measure(thing.text, thing.strong) * size
            yield thing.text, (left, base - DEPTH * size, right, base + CAP * size)
        if isinstance(thing, Placed):
            yield from texts(thing.frame, x + thing.x, y + thing.y)


def overlap(one, other):
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


@pytest.mark.parametrize(("paper", "flip"), EVERY)
def test_every_page_keeps_its_words_apart_and_off_the_white_edge(paper, flip):
    for page in align_pages(PAPERS[paper], flip):
        found = list(texts(page))
        for _text, (left, bottom, right, top) in found:
            assert left >= mm(5)
            assert bottom >= mm(5)
            assert right <= page.width - mm(5)
            assert top <= page.height - mm(5)
        for (one, box), (other, place) in itertools.combinations(found, 2):
            assert not overlap(box, place), (one, other)


@pytest.mark.parametrize(("paper", "flip"), EVERY)
def test_every_line_of_the_front_lies_over_a_zero(paper, flip):
    pages = align_pages(PAPERS[paper], flip)
    for front, back in zip(pages[::2], pages[1::2], strict=True):
        zeros = [box for text, box in texts(back) if text == "0"]
        lines = [one for one in front.things if isinstance(one, Line) and one.tone == "ink"]
        assert len(lines) == len(zeros)
        for line, (left, bottom, right, top) in zip(lines, zeros, strict=True):
            x, y = (line.x + line.end_x) / 2, (line.y + line.end_y) / 2
            x, y = behind(front.width, front.height, flip, x, y)
            if line.x == line.end_x:
                assert x == pytest.approx((left + right) / 2, abs=0.01)
                assert 0 < y - top < mm(2)
            else:
                middle = (bottom + DEPTH * 8.5 + top) / 2
                assert y == pytest.approx(middle, abs=0.1)
                assert 0 < x - right < mm(2)


def test_scales_are_true_millimetres():
    """A4 is 210 mm wide and 297 high: the scale stands at 148.5 + 75."""
    back = align_pages(PAPERS[PaperName.A4], Flip.LONG)[1]
    ticks = sorted(
        {
            round(in_mm(thing.x) - 105, 6)
            for thing in back.things
            if isinstance(thing, Line) and thing.x == thing.end_x and thing.end_y > mm(223.5)
        }
    )
    assert ticks == [n / 2 for n in range(-16, 17)]


@pytest.mark.parametrize("paper", PaperName)
def test_the_command_on_the_back_is_the_one_to_type(paper):
    for flip in Flip:
        for n, page in enumerate(align_pages(PAPERS[paper], flip)):
            words = " ".join(text for text, _box in texts(page))
            if n in (0, 2):
                assert "--set" not in words
                continue
            (typed,) = re.findall(r"fairdeal align( --\S+( \"[^\"]*\"| …| short)?)+", words)
            assert ("--turned" in words) is (n == 3)
            assert ("--flip short" in words) is (flip is Flip.SHORT)
            assert typed


@pytest.mark.parametrize("paper", PaperName)
def test_the_front_sends_on_to_the_back_in_a_column_or_not_at_all(paper):
    large = {PaperName.LETTER, PaperName.LEGAL, PaperName.TABLOID, PaperName.A4, PaperName.A3}
    for front in align_pages(PAPERS[paper], Flip.LONG)[::2]:
        words = [word for text, _box in texts(front) for word in text.split()]
        assert ("Nothing" in words) is (paper in large)
        assert "Nothin" not in words


def test_the_file_asks_for_the_flip_it_names_and_is_the_same_every_time():
    for flip, wish in ((Flip.LONG, "/DuplexFlipLongEdge"), (Flip.SHORT, "/DuplexFlipShortEdge")):
        data = align_file(PaperName.LETTER, flip)
        assert data == align_file(PaperName.LETTER, flip)
        with pikepdf.open(BytesIO(data)) as pdf:
            assert pdf.Root.ViewerPreferences.Duplex == wish
            assert pdf.Root.ViewerPreferences.PrintScaling == "/None"
            assert pdf.check_pdf_syntax() == []
            shapes = [
                tuple(round(float(edge)) for edge in list(page.mediabox)[2:]) for page in pdf.pages
            ]
        assert shapes == [(612, 792), (612, 792), (792, 612), (792, 612)]
