"""The planning sheets, as frames before any PDF."""

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from support.flown import is_on_page, things
from support.texts import MARSH, SHORE, TEXTS, headed, organizer_deck

from decks.layout.frame import Box, Curve, Line, Placed, Ribbon, Text
from decks.layout.units import inch
from decks.press.handouts.forms.outline import Figure
from decks.press.handouts.planning import planning_pages
from decks.recipe import Dealing, Form, PaperName, Support

FORMS = list(Form)
WIDE_RULED = inch(11 / 32)
"""From line to line of wide ruled paper, 8.7 mm: common practice in the United States."""


def words(page):
    return " ".join(text.text for text, _x, _y in things(page, Text))


def sheets(deck, form):
    return planning_pages(replace(deck, recipe=replace(deck.recipe, form=form)))


def said(deck, form=None):
    return " ".join(words(page) for page in sheets(deck, form))


def level_lines(page):
    """Return the lines to write on: left end, height, length."""
    return [
        (x, y, line.end_x - line.x)
        for line, x, y in things(page, Line)
        if line.y == line.end_y and not line.dashed
    ]


def one(texts, **more):
    return organizer_deck({"Shore": texts}, **more)


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
@pytest.mark.parametrize("large_print", [False, True])
def test_nothing_lies_over_the_foot_or_beside_the_column(form, paper, large_print):
    deck = one(SHORE, paper=paper, large_print=large_print)
    for page in sheets(deck, form):
        assert is_on_page(page)
        for kind in (Line, Text, Box):
            assert all(x > 0 and 0 < y < page.height for _thing, x, y in things(page, kind))
        assert all(x + length < page.width - 50 for x, _y, length in level_lines(page))


@pytest.mark.parametrize("form", FORMS)
def test_lines_to_write_on_are_at_least_as_far_apart_as_on_wide_ruled_paper(form):
    for page in sheets(one(SHORE), form):
        columns = {}
        for x, y, length in level_lines(page):
            columns.setdefault((round(x), round(length)), []).append(y)
        gaps = [b - a for ys in columns.values() for a, b in pairwise(sorted(ys))]
        assert gaps
        assert min(gaps) >= WIDE_RULED


@pytest.mark.parametrize("form", FORMS)
def test_there_are_places_for_the_main_idea_every_heading_every_detail_and_symbols(form):
    deck = one(SHORE, support=Support.NONE)
    (page,) = sheets(deck, form)
    text = words(page)
    assert "Main idea" in text
    assert "Our symbols, and what each symbol means" in text
    assert [t.text for t, _x, _y in things(page, Text) if t.text in {"1", "2", "3"}] == [
        "1",
        "2",
        "3",
    ]
    marks = _details(page, form)
    assert marks == 9


def curves(frame, x=0.0, y=0.0):
    """Yield the curves of a page with the lower left corners of their frames."""
    for thing in frame.things:
        if isinstance(thing, Placed):
            yield from curves(thing.frame, x + thing.x, y + thing.y)
        elif isinstance(thing, Curve):
            yield thing, x, y


def _details(page, form):
    """Return how many rings, or leaves in a tree, there are before details."""
    if form is Form.TREE:
        return sum(curve.fill == "white" for curve, _x, _y in curves(page))
    return sum(box.width == box.height < 6 for box, _x, _y in things(page, Box))


@given(st.lists(st.integers(1, 30), min_size=1, max_size=9), st.sampled_from(FORMS))
@settings(max_examples=25, deadline=None)
def test_every_detail_of_any_text_has_a_place(counts, form):
    text = headed(**{f"Heading {n}": count for n, count in enumerate(counts)})
    pages = sheets(one(text, support=Support.NONE), form)
    places = sum(_details(page, form) for page in pages)
    assert places >= sum(counts)
    assert all(is_on_page(page) for page in pages)


def test_places_do_not_tell_headings_apart_that_have_nearly_as_many_details():
    (page,) = sheets(one(headed(A=2, B=4, C=3), support=Support.NONE), Form.COLUMNS)
    assert _details(page, Form.COLUMNS) == 12


def test_a_bank_lists_the_headings_by_the_alphabet_and_names_no_detail():
    deck = one(SHORE)
    listed = [t.text for page in planning_pages(deck) for t, _x, _y in things(page, Text)]
    assert [text for text in listed if text in SHORE] == sorted(SHORE)
    assert not {detail for details in SHORE.values() for detail in details} & set(listed)


def test_without_support_no_heading_is_named_and_a_hint_gives_its_first_letters():
    for form in FORMS:
        none = said(one(SHORE, support=Support.NONE), form)
        hints = said(one(SHORE, support=Support.HINTS), form)
        assert not any(heading in none or heading in hints for heading in SHORE)
        assert "G\u00a0_" in hints
        assert "G\u00a0_" not in none


def test_the_form_goes_by_the_headings_where_none_is_wanted():
    few, many = one(headed(A=2, B=2)), one(headed(**{f"H{n}": 2 for n in range(5)}))
    uneven = one(headed(A=12, B=2))
    assert "Then write the main idea" in said(few)
    assert "on the branches" in said(many)
    assert "on the branches" in said(uneven)
    assert "into the head" in said(few, Form.BODY)


def test_the_same_texts_for_all_have_one_sheet_each_with_a_line_for_the_group():
    pages = planning_pages(organizer_deck(deal=Dealing.COPIES))
    assert [words(page).split(" Planning")[0] for page in pages] == list(TEXTS)
    assert all("Group" in words(page) and not list(things(page, Ribbon)) for page in pages)


def test_one_text_for_twelve_groups_is_one_sheet():
    deck = organizer_deck({"Marsh": MARSH}, teams=12, deal=Dealing.SHARES)
    assert len(planning_pages(deck)) == 1


def test_groups_with_texts_of_their_own_have_sheets_with_their_names_and_ribbons():
    pages = planning_pages(organizer_deck(deal=Dealing.SHARES))
    names = ["Heron", "Otter", "Samphire", "Curlew"]
    assert len(pages) == 4
    for team, (page, name) in enumerate(zip(pages, names, strict=True)):
        assert f"Saltmarsh week · {name}" in words(page)
        assert [ribbon.team for ribbon, _x, _y in things(page, Ribbon)] == [team]


def test_five_texts_for_two_groups_give_each_group_a_sheet_for_each_of_its_texts():
    texts = {f"Text {n}": MARSH for n in range(5)}
    pages = planning_pages(organizer_deck(texts, teams=2, deal=Dealing.SHARES))
    assert ["Heron" in words(page) for page in pages] == [True] * 3 + [False] * 2


def test_a_text_without_a_name_is_headed_by_the_title_of_the_deck():
    (page,) = planning_pages(organizer_deck({"": MARSH}))
    assert words(page).startswith("Saltmarsh week Planning sheet Group")


def test_a_very_long_name_of_a_text_is_shortened_to_two_lines():
    (page,) = planning_pages(organizer_deck({"The shore " * 40: MARSH}))
    titles = [text for text, _x, _y in things(page, Text) if text.size == 20]
    assert len(titles) == 2
    assert titles[-1].text.endswith("…")


@pytest.mark.parametrize("form", FORMS)
def test_details_that_go_on_to_another_page_say_of_which_heading_they_are(form):
    deck = one(headed(Weed=40, Shells=2), support=Support.NONE)
    _first, *others = sheets(deck, form)
    assert others
    assert all("Heading" in words(page) for page in others if _details(page, form))


@pytest.mark.parametrize(("width", "height"), [(504, 430), (504, 520), (487, 560)])
def test_the_rooms_of_the_figure_lie_within_its_outline(width, height):
    """Corners of lines to write on, and of figures, tried against the outline as a polygon."""
    drawn = Figure(width, height)
    outline = polygon(drawn.drawn[0].points)
    for room in (*drawn.arms, drawn.chest, *drawn.legs):
        for x in (room.x, room.x + room.width):
            for y in (room.top - 13, room.top - room.height):
                assert within((x, y), outline), (room, x, y)


def test_lines_in_the_head_end_within_the_outline():
    (page,) = sheets(one(SHORE), Form.BODY)
    ((curve, x, y),) = [found for found in curves(page) if found[0].width > 1]
    outline = polygon([(x + a, y + b) for a, b in curve.points])
    top = max(b for _a, b in outline)
    lines = [line for line in level_lines(page) if top - 130 < line[1] < top]
    assert len(lines) >= 2
    for start, height, length in lines:
        assert within((start, height), outline)
        assert within((start + length, height), outline)


def polygon(points):
    """Return points along cubic curves, by de Casteljau's construction."""
    start, *rest = points
    found = [start]
    for n in range(0, len(rest), 3):
        curve = [found[-1], *rest[n : n + 3]]
        found += [_at(curve, step / 12) for step in range(1, 13)]
    return found


def _at(points, share):
    while len(points) > 1:
        points = [(a + share * (c - a), b + share * (d - b)) for (a, b), (c, d) in pairwise(points)]
    return points[0]


def within(point, outline):
    """Say whether a point lies in a polygon: a ray to the right meets it an odd number of times."""
    x, y = point
    inside = False
    for (a, b), (c, d) in pairwise([*outline, outline[0]]):
        if (b > y) != (d > y) and x < a + (y - b) * (c - a) / (d - b):
            inside = not inside
    return inside
