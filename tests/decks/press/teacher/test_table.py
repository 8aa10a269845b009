"""Tables down pages: what stays together, and what stands again where a table goes on."""

import pytest

from decks.layout.flow import Block, flow
from decks.layout.frame import Frame, Placed, Ribbon, Text
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import BODY, continued

COLUMNS = [Column("Blank", 60), Column("Clue", 240)]
WIDTH = 300
ROOM = 400


def rows(count):
    return [
        [cell(COLUMNS[0], (f"row{n}", BODY)), cell(COLUMNS[1], ("mud", BODY))] for n in range(count)
    ]


def things(frame, kind):
    for thing in frame.things:
        if isinstance(thing, Placed):
            yield from things(thing.frame, kind)
        elif isinstance(thing, kind):
            yield thing


def pages_of(blocks, *, before=0.0):
    """Return the words of each page; above the table is so much of something else, in points."""
    made = flow([Block(Frame(WIDTH, before, ())), *blocks], x=0, top=ROOM, bottom=0)
    return [[text.text for placed in page for text in things(placed.frame, Text)] for page in made]


def rows_on(page):
    return len([word for word in page if word.startswith("row")])


@pytest.mark.parametrize("before", range(0, 390, 13))
@pytest.mark.parametrize("count", [1, 2, 3, 12, 13, 14, 25, 26, 27, 28])
def test_no_row_and_no_note_stands_alone_on_a_page(count, before):
    made = pages_of(table(COLUMNS, rows(count), notes=["one note", "two notes"]), before=before)
    assert sum(map(rows_on, made)) == count
    for page in made:
        assert not page or rows_on(page) >= min(2, count)
    assert made[-1][-2:] == ["one note", "two notes"]


@pytest.mark.parametrize("before", range(0, 390, 13))
def test_a_small_table_stays_on_one_page(before):
    made = pages_of(table(COLUMNS, rows(4), notes=["a note"]), before=before)
    assert [rows_on(page) for page in made if page] == [4]


def test_a_table_without_rows_is_its_head():
    assert pages_of(table(COLUMNS, []))[-1] == ["Blank", "Clue"]


def test_where_a_table_goes_on_it_says_whose_it_is_over_its_heads():
    blocks = table(COLUMNS, rows(40), named=continued("Heron · Part 1", 2, WIDTH))
    first, *rest = pages_of(blocks)
    assert "continued" not in first
    assert rest
    for page in rest:
        assert page[:4] == ["Heron · Part 1", "continued", "Blank", "Clue"]
    (ribbon,) = things(blocks[-1].head, Ribbon)
    assert ribbon.team == 2


@pytest.mark.parametrize("team", [None, 0])
def test_a_long_name_leaves_room_for_what_is_said_after_it(team):
    frame = continued("The great crested terns of the northern estuary " * 3, team, WIDTH)
    *_name, said = things(frame, Text)
    assert said.text == "continued"
