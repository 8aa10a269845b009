"""Marks as teachers fill them in."""

import pytest
from support.marking import (
    Book,
    deck,
    for_class,
    in_rounds,
    in_sets,
    key_of,
    keys,
    read,
    told,
)


@pytest.mark.parametrize("make", [deck, for_class, in_rounds, in_sets])
def test_a_workbook_as_it_came_holds_nothing_and_nothing_is_found(make, tmp_path):
    made = make()
    marks = read(Book(made), made, tmp_path)
    assert marks.is_empty
    assert marks.findings == ()


def test_what_is_filled_in_is_read_and_the_rest_is_not_missed(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 5, 4)
    book.count(6, 3, 0)
    book.paper([1, 0, None, 1, 0, 1], 1)
    book.paper([None, 1, None, None, None, None], 9)
    marks = read(book, made, tmp_path)
    assert marks.findings == ()
    assert [(c.item, c.right, c.tries) for c in marks.counts] == [
        (key_of(made, 2), 4, 5),
        (key_of(made, 6), 0, 3),
    ]
    (guide,) = marks.guides
    assert guide.items == tuple(keys(made))
    assert guide.papers == ((1, 0, None, 1, 0, 1), (None, 1, None, None, None, None))


def test_an_item_on_a_card_and_in_a_guide_is_added_up(tmp_path):
    made = for_class(4)
    book = Book(made)
    book.paper([1, 0, 1, 1], 1)
    book.paper([0, 0, 1, 1], 2)
    label = next(int(card.label) for card in made.hands[0] if card.item.key == keys(made)[0])
    book.count(label, 6, 5)
    assert read(book, made, tmp_path).by_item[keys(made)[0]] == (6, 8)


def test_the_papers_of_each_team_are_of_its_own_items(tmp_path):
    made = deck(22)
    book = Book(made)
    book.paper([1, 0, 1], 3, team="Otter")
    marks = read(book, made, tmp_path)
    assert marks.findings == ()
    (guide,) = marks.guides
    own = [item.key for part in made.guides[1].parts for item in part.blanks]
    assert (guide.team, list(guide.items)) == ("Otter", own)
    assert guide.papers[0][:3] == (1, 0, 1)


def test_cards_with_the_same_number_are_told_apart_by_their_set(tmp_path):
    made = in_sets()
    book = Book(made)
    row = book.row_of(book.tally, 3, "Set 2")
    for name, value in (("Tries", 4), ("Right", 3)):
        book.tally.cell(row, book.column(book.tally, name)).value = value
    (count,) = read(book, made, tmp_path).counts
    assert count.item == key_of(made, 3, "Set 2")
    book.tally.cell(row, 2).value = None
    marks = read(book, made, tmp_path)
    assert (marks.counts, told(marks)) == ((), [("no-such-owner", "Tally", f"B{row}")])


def test_a_card_whose_number_is_its_own_needs_no_team(tmp_path):
    made = deck(24)
    book = Book(made)
    row = book.count(3, 4, 2)
    book.tally.cell(row, book.column(book.tally, "Team")).value = None
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.by_item) == ((), {key_of(made, 3): (2, 4)})


@pytest.mark.parametrize("value", ["4", 4.0, " 4 ", "4,0"])
def test_a_number_however_it_was_typed_is_a_count(value, tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(3, value, 1)
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.counts[0].tries) == ((), 4)


def test_a_thousand_with_a_comma_may_be_one_and_is_asked_about(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(3, "1,000", 1)
    (found,) = read(book, made, tmp_path).findings
    assert found.code == "not-a-count"


def test_a_row_for_a_sum_of_the_teachers_own_is_left_alone(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 3, 2)
    book.tally.append(["Total", None, 3, 2])
    marks = read(book, made, tmp_path)
    assert (marks.findings, len(marks.counts)) == ((), 1)


def test_sheets_may_be_renamed_and_columns_moved(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 3, 2)
    book.paper([1, 0, 1, 1, 1, 0], 1)
    before = read(book, made, tmp_path)
    book.tally.move_range("B5:B11", cols=6)
    book.guides.move_range("C5:C30", cols=9)
    book.tally.title, book.guides.title = "Monday", "Week 3 papers"
    after = read(book, made, tmp_path)
    assert after.findings == ()
    assert (after.counts, after.guides) == (before.counts, before.guides)


def test_more_papers_than_rows_are_read(tmp_path):
    made = for_class(6, students=24)
    book = Book(made)
    book.guides.append([25, None, 1, 0, 1, 1, 1, 0])
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.guides[0].papers) == ((), ((1, 0, 1, 1, 1, 0),))


def test_ten_times_the_class_are_not_too_many_tries(tmp_path):
    made = for_class(6, students=24)
    book = Book(made)
    book.count(1, 240, 200)
    assert read(book, made, tmp_path).findings == ()
