"""The study guide's pages as frames, before any PDF."""

import pytest
from support.items import item

from cards.item import Kind
from decks.activities import make_deck
from decks.layout.frame import Box, Line, Placed, Text
from decks.layout.paper import PAPERS
from decks.press.handouts.guide import guide_pages
from decks.press.type.pages import BOTTOM
from decks.recipe import Fractions, PaperName, Recipe, Support
from decks.team import make_teams

METRIC = {PaperName.A3, PaperName.A4, PaperName.A5}


def pages(items, paper=PaperName.LETTER, **more):
    teams = make_teams(["Heron"], [None])
    recipe = Recipe(title="Shore", teams=teams, paper=paper, **more)
    return guide_pages(make_deck(recipe, items, number=1, seed="s"))


def things(frame, x=0.0, y=0.0):
    """Yield every thing of a frame with the place of the frame that it is in."""
    for thing in frame.things:
        if isinstance(thing, Placed):
            yield from things(thing.frame, x + thing.x, y + thing.y)
        else:
            yield thing, x, y


def words(frame):
    return [thing.text for thing, _x, _y in things(frame) if isinstance(thing, Text)]


def writing_lines(frame):
    return [
        thing for thing, _x, _y in things(frame) if isinstance(thing, Line) and thing.width == 0.7
    ]


@pytest.mark.parametrize("paper", PaperName)
@pytest.mark.parametrize("count", [1, 2, 9, 10, 11, 40])
def test_every_clue_has_its_line_and_nothing_stands_below_the_margin(paper, count):
    made = pages([item(f"prompt {n}", f"answer {n}", row=n) for n in range(count)], paper)
    assert sum(len(writing_lines(page)) for page in made) == count
    for page in made:
        read_on = PAPERS[PaperName.A4 if paper in METRIC else PaperName.LETTER]
        assert (page.width, page.height) == (read_on.width, read_on.height)
        body = [y + thing.y for thing, _x, y in things(page) if isinstance(thing, Text)]
        feet = sorted(body)[:2]
        assert feet[0] == feet[1] < BOTTOM
        assert min(y for y in body if y not in feet) >= BOTTOM


@pytest.mark.parametrize("paper", PaperName)
@pytest.mark.parametrize(("asked", "answered"), [(70, 60), (60, 3), (3, 60), (200, 140)])
def test_the_longest_texts_that_cards_hold_stay_on_their_pages(paper, asked, answered):
    items = [
        item(f"prompt {n} {'word ' * asked}", f"answer {n} {'word ' * answered}", row=n)
        for n in range(12)
    ]
    for page in pages(items, paper):
        body = [y + thing.y for thing, _x, y in things(page) if isinstance(thing, Text)]
        assert len([y for y in body if y < BOTTOM - 1]) == 2  # the foot's two texts


def test_a_part_too_long_for_a_page_goes_on_with_its_bank_above_it():
    long = "a long clue " * 60
    made = pages([item(f"{n} {long}", f"answer {n}", row=n) for n in range(6)])
    assert len(made) > 1
    for page in made:
        assert [word for word in words(page) if word.startswith("answer")] == [
            f"answer {n}" for n in range(6)
        ]
        frames = [thing for thing, _x, _y in things(page) if isinstance(thing, Box)]
        assert len(frames) == 1


def test_a_clue_stands_whole_on_one_page():
    items = [item(f"start{n} {'more words ' * 30}end{n}", f"answer {n}", row=n) for n in range(9)]
    made = [" ".join(words(page)) for page in pages(items)]
    for n in range(9):
        assert [f"start{n} " in page for page in made] == [f"end{n}" in page for page in made]


def test_all_answers_get_as_many_lines_so_that_none_is_told_by_its_length():
    items = [item("short?", "mud", row=2), item("long?", "a very long answer to write out", row=3)]
    (page,) = pages(items)
    assert len(writing_lines(page)) == 4  # two each


HAND = 62 / 26
"""Millimetres that a letter takes by hand; 26 letters on the 62 mm beside a clue."""

LONG = "When the sea draws back the pool stays full, and " * 3
"""147 letters: six of the short lines."""


def rows_of(page):
    """Return for each clue, by its number, the lengths of its lines in millimetres."""
    placed = [(thing, y) for thing, _x, y in things(page)]
    lines = [
        (y + thing.y, (thing.end_x - thing.x) / 72 * 25.4)
        for thing, y in placed
        if isinstance(thing, Line) and thing.width == 0.7
    ]
    tops = [
        (y + thing.y + 12, int(thing.text))
        for thing, y in placed
        if isinstance(thing, Text) and thing.text.isdecimal()
    ]
    rows = {number: [] for _top, number in tops}
    for height, length in lines:
        rows[min((top, number) for top, number in tops if top > height)[1]].append(length)
    return rows


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
@pytest.mark.parametrize("support", [Support.BANK, Support.HINTS, Support.NONE])
def test_a_long_answer_can_be_written_and_the_others_need_no_more_room(paper, support, large):
    items = [item(f"What is in creek {n}?", f"creek {n}", row=n) for n in range(5)]
    items.append(item("Why is it full?", LONG, row=5))
    made = pages(items, paper, support=support, large_print=large)
    rows = {number: row for page in made for number, row in rows_of(page).items()}
    *short, longest = sorted(rows.values(), key=sum)
    assert [len(row) for row in short] == [1] * 5
    if large:
        assert len(longest) >= len(LONG) / 34  # letters of a large hand on the whole width
    else:
        assert len(made) == 1
        assert sum(longest) >= len(LONG) * HAND
        assert len(longest) == 3
        assert min(longest) > 150


@pytest.mark.parametrize(("letters", "lines"), [(26, 1), (27, 2), (52, 2), (53, 3), (78, 3)])
def test_answers_that_three_lines_hold_have_as_many_as_the_longest_of_them(letters, lines):
    items = [item("short?", "mud", row=2), item("long?", "m" * letters, row=3)]
    (page,) = pages([*items, item("Why?", LONG, row=4)])
    assert sorted(map(len, rows_of(page).values()))[:2] == [lines, lines]


def test_an_answer_of_more_letters_has_its_lines_below():
    (page,) = pages([item("short?", "mud", row=2), item("long?", "m" * 79, row=3)])
    one, two = sorted(rows_of(page).values(), key=sum)
    assert len(one) == 1
    assert one[0] < 65
    assert len(two) == 2
    assert min(two) > 150


@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
@pytest.mark.parametrize(("asked", "answered"), [(3, 140), (60, 140), (100, 20)])
def test_no_row_is_taller_than_its_page_in_large_print(paper, asked, answered):
    items = [
        item(f"prompt {n} {'word ' * asked}", f"answer {n} {'word ' * answered}", row=n)
        for n in range(4)
    ]
    for page in pages(items, paper, large_print=True):
        body = [y + thing.y for thing, _x, y in things(page) if isinstance(thing, Line)]
        assert min(body) > BOTTOM - 1


def sizes_of(page, texts):
    return {
        thing.size
        for thing, _x, _y in things(page)
        if isinstance(thing, Text) and thing.text in texts
    }


@pytest.mark.parametrize(("fractions", "size"), [(Fractions.BUILT, 17), (Fractions.PLAIN, 12)])
@pytest.mark.parametrize("support", [Support.BANK, Support.NONE])
def test_clues_and_bank_are_larger_in_the_part_that_has_built_fractions(fractions, size, support):
    sums = [item(f"{n} + 1/4", f"many {n}", row=n, kind=Kind.QUESTION) for n in range(4)]
    items = [*sums, item("zero?", "0", row=9, kind=Kind.QUESTION)]
    words = [item(f"prompt {n}", f"creek {n}", row=n) for n in range(20, 24)]
    made = pages([*items, *words], fractions=fractions, support=support)
    assert set().union(*(sizes_of(page, {"zero?", "0"}) for page in made)) == {size}
    assert set().union(*(sizes_of(page, {"prompt 20", "creek 20"}) for page in made)) == {12}


def test_a_fraction_in_the_bank_alone_makes_no_other_guide_larger():
    items = [item("a half?", "1/2", row=2), item("two?", "2", row=3)]
    for support, size in ((Support.BANK, 17), (Support.NONE, 12), (Support.HINTS, 12)):
        (page,) = pages(items, fractions=Fractions.BUILT, support=support)
        assert sizes_of(page, {"two?"}) == {size}


def numbered(page):
    """Return the numbers of a page's clues."""
    return [int(word) for word in words(page) if word.isdecimal()]


def test_without_a_bank_parts_follow_one_another_over_pages():
    items = [item(f"What is in creek {n} at noon?", f"answer {n}", row=n) for n in range(40)]
    made = pages(items, support=Support.NONE)
    *full, _last = made
    for page in full:
        body = [y + thing.y for thing, _x, y in things(page) if isinstance(thing, Line)]
        assert min(body) < BOTTOM + 90  # a head, its directions and two clues did not fit below
    assert sum(len(numbered(page)) for page in made) == 40


@pytest.mark.parametrize("support", [Support.NONE, Support.BANK])
@pytest.mark.parametrize("long", range(10, 46, 3))
def test_no_clue_stands_alone_on_a_page_nor_without_the_name_of_its_part(support, long):
    items = [
        item(f"{n} {'a long clue ' * long if n % 2 else 'short'}", f"answer {n}", row=n)
        for n in range(14)
    ]
    for page in pages(items, support=support):
        held = numbered(page)
        assert len(held) > 1
        parts = [word for word in words(page) if word.startswith("Part ")]
        assert parts
        assert parts[0].endswith(", continued") is (held[0] != 1)


@pytest.mark.parametrize("support", [Support.NONE, Support.HINTS])
def test_the_name_of_a_part_stands_above_a_clue_of_which_two_do_not_fit_a_page(support):
    short = [item(f"prompt {n}", "word", row=n) for n in range(5)]
    long = [item(f"tell {n}", f"{n} " + "word " * 80, row=9 + n, kind=Kind.FACT) for n in range(4)]
    made = pages([*short, *long], support=support, large_print=True)
    (begun,) = [page for page in made if "Part 2" in words(page)]
    assert [text for text in words(begun) if text.startswith("tell ")]
    assert writing_lines(begun)
