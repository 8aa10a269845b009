"""The paper that shows what marks say."""

import io

import pdfplumber
from support.marking import deck, for_class, in_sets

from decks.layout.frame import Curve, Placed
from decks.marks.marked import Count, Marks
from decks.marks.results import results
from decks.press.results.shares import item_rows, topic_rows
from decks.press.results.shows import shows_file

WIDTH = 487.0


def marked(made, *counts):
    keys = [card.item.key for card in made.cards]
    return results(
        made, Marks(tuple(Count(k, *pair) for k, pair in zip(keys, counts, strict=False)))
    )


def read(made, found):
    with pdfplumber.open(io.BytesIO(shows_file(made, found))) as pdf:
        return [(page.width, page.height, page.chars, page.extract_text()) for page in pdf.pages]


def discs(row):
    """The x of the ring and of the dot in a row of the picture."""
    things = [t.frame for t in row.things if isinstance(t, Placed)] or [row]
    curves = [t for frame in things for t in frame.things if isinstance(t, Curve)]
    ring, dot = (curve.points[0][0] for curve in sorted(curves, key=lambda c: c.fill != "white"))
    return ring, dot


def test_the_dot_stands_beyond_the_ring_on_the_side_that_marks_point_to():
    made = in_sets(6)
    found = marked(made, (9, 9), (0, 9))
    _scale, hard, easy = [block.frame for block in item_rows(found.items, WIDTH)]
    ring, dot = discs(hard)
    assert dot < ring - 40
    ring, dot = discs(easy)
    assert dot > ring


def test_items_stand_hardest_first_and_those_without_marks_are_left_out():
    made = in_sets(6)
    found = marked(made, (9, 9), (0, 9), (5, 9))
    rows = [block.frame for block in item_rows(found.items, WIDTH)][1:]
    assert len(rows) == 3
    dots = [discs(row)[1] for row in rows]
    assert dots == sorted(dots)


def test_one_topic_alone_has_no_picture():
    made = in_sets(6)
    found = marked(made, (3, 9))
    assert len(topic_rows(found.topics, WIDTH)) == 2  # the scale, and the one topic with marks
    assert topic_rows(found.topics[:1], WIDTH) == []


def test_every_letter_stands_within_the_margins():
    for make in (deck, for_class, in_sets):
        made = make()
        found = marked(made, *[(n % 7, 6) for n in range(24)])
        for width, _height, chars, _text in read(made, found):
            assert min(char["x0"] for char in chars) > 50
            assert max(char["x1"] for char in chars) < width - 50


def test_a_long_deck_has_its_scale_on_every_page_of_the_picture():
    made = for_class(90)
    found = marked(made, *[(n % 7, 6) for n in range(90)])
    pages = [text for *_, text in read(made, found)]
    assert "0 % 20 % 40 % 60 % 80 % 100 %" in pages[1]


def test_the_same_marks_give_the_same_bytes():
    made = for_class()
    found = marked(made, (3, 4))
    assert shows_file(made, found) == shows_file(made, found)
