"""Slips that happen while marks are filled in."""

import pytest
from support.marking import (
    HEADED,
    Book,
    deck,
    for_class,
    key_of,
    read,
    told,
)

from cards.finding import Severity
from decks.marks.forms import blanks_of
from decks.marks.reading.cells import plain_label

SLIPS = {
    "more-right-than-tries": (3, 4),
    "count-missing": (None, 2),
    "not-a-count": (-2, 0),
}


def test_a_team_that_does_not_have_the_card_is_found_and_the_likely_one_named(tmp_path):
    made = deck(24)
    book = Book(made)
    row = book.count(3, 4, 2)
    cell = book.tally.cell(row, book.column(book.tally, "Team"))
    cell.value = f"{cell.value}s"
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.cell) == ("no-such-owner", cell.coordinate)
    assert found.mend == f"Did you mean {cell.value[:-1]}?"


@pytest.mark.parametrize(("code", "counts"), SLIPS.items())
def test_a_slip_in_a_count_is_found_and_the_other_rows_are_used(code, counts, tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, *counts)
    book.count(4, 5, 5)
    marks = read(book, made, tmp_path)
    place = f"D{row}" if code == "more-right-than-tries" else f"C{row}"
    assert told(marks) == [(code, "Tally", place)]
    assert [count.right for count in marks.counts] == [5]


def test_a_count_in_merged_cells_counts_once_and_the_other_rows_are_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, 10, 8)
    for column in "CD":
        book.tally.merge_cells(f"{column}{row}:{column}{row + 2}")
    marks = read(book, made, tmp_path)
    assert [(count.right, count.tries) for count in marks.counts] == [(8, 10)]
    places = [f"{column}{row + below}" for below in (1, 2) for column in "CD"]
    assert told(marks) == [("mark-merged", "Tally", place) for place in places]


def test_a_row_with_tries_alone_is_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, 4, None)
    assert told(read(book, made, tmp_path)) == [("count-missing", "Tally", f"D{row}")]


@pytest.mark.parametrize("value", ["four", 2.5, "4 of 5", "1/2", "-1", "x"])
def test_what_is_no_whole_number_is_no_count(value, tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, value, 1)
    assert told(read(book, made, tmp_path)) == [("not-a-count", "Tally", f"C{row}")]


@pytest.mark.parametrize("value", [2, -1, 0.5, "right", "✓", "10"])
def test_what_is_neither_one_nor_nought_is_no_mark(value, tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.paper([1, value, 0], 4)
    marks = read(book, made, tmp_path)
    assert told(marks) == [("not-a-mark", "Study guides", f"D{row}")]
    assert marks.guides[0].papers == ((1, None, 0, None, None, None),)


def test_a_formula_that_was_never_worked_out_is_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, "=2+3", 1)
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.cell) == ("formula-without-value", f"C{row}")
    assert "save" in found.mend


def test_a_formula_that_comes_to_a_fault_is_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(3, "#DIV/0!", 1)
    assert told(read(book, made, tmp_path)) == [("formula-with-fault", "Tally", f"C{row}")]


def test_a_card_that_does_not_exist_is_found_with_the_labels_there_are(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.tally.append([17, "Another", 3, 2])
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.cell) == ("no-such-card", f"A{HEADED + 7}")
    assert "1 to 6" in found.mend


def test_a_card_in_two_rows_is_added_up_and_told(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 3, 2)
    book.tally.append([2, None, 4, 1])
    marks = read(book, made, tmp_path)
    (found,) = marks.findings
    assert (found.code, found.severity) == ("card-twice", Severity.WARNING)
    assert marks.by_item[key_of(made, 2)] == (3, 7)


def test_a_column_that_was_sorted_by_itself_is_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    rows = [book.count(label, 4, 2) for label in (2, 3, 5)]
    texts = [book.tally.cell(row, 2).value for row in rows]
    for row, text in zip(rows[:2], reversed(texts[:2]), strict=True):
        book.tally.cell(row, 2).value = text
    marks = read(book, made, tmp_path)
    assert [code for code, *_ in told(marks)] == ["columns-apart"] * 2
    assert [count.item for count in marks.counts] == [key_of(made, 5)]


@pytest.mark.parametrize("number", [1, 3])
def test_a_tally_that_was_made_for_another_deck_is_not_used_whatever_its_texts(number, tmp_path):
    made = for_class(6, number=2)
    book = Book(for_class(6, number=number))
    assert read(book, made, tmp_path).findings == ()
    row = book.count(1, 4, 2)
    book.tally.cell(row, 2).value = None
    marks = read(book, made, tmp_path)
    assert told(marks) == [("another-deck", "Tally", "A1")]
    assert f"of deck {number}," in marks.findings[0].wrong
    assert marks.counts == ()


def test_a_sheet_that_is_there_twice_is_told_of_with_its_name(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(1, 4, 2)
    copy = book.book.copy_worksheet(book.tally)
    marks = read(book, made, tmp_path)
    assert told(marks) == [("sheet-twice", copy.title, "")]
    assert marks.findings[0].severity is Severity.WARNING
    assert sum(count.tries for count in marks.counts) == 8
    for row in copy.iter_rows(min_row=HEADED + 1, min_col=3, max_col=4):
        for cell in row:
            cell.value = None
    assert read(book, made, tmp_path).findings == ()


def test_marks_of_another_deck_are_not_taken_for_those_of_this(tmp_path):
    made = for_class(6)
    book = Book(made)
    rows = [book.count(label, 4, 2) for label in (1, 2, 3, 4, 5, 6)]
    for row in rows:
        book.tally.cell(row, 2).value = f"Clue {row} of the wood"
    marks = read(book, made, tmp_path)
    assert [code for code, *_ in told(marks)] == ["another-deck"]
    assert marks.counts == ()


def test_a_text_that_was_edited_is_still_of_this_deck(tmp_path):
    made = for_class(6)
    book = Book(made)
    rows = [book.count(label, 4, 2) for label in (1, 2, 3, 4, 5, 6)]
    for row in rows[1:]:
        book.tally.cell(row, 2).value = f"Clue {row}, shorter"
    marks = read(book, made, tmp_path)
    assert told(marks) == []
    assert len(marks.counts) == 6


def test_headings_that_were_deleted_are_missed(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(3, 4, 2)
    book.tally.delete_rows(HEADED)
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.severity) == ("heading-missing", Severity.ERROR)


def test_a_heading_that_was_changed_is_found_and_the_likely_one_named(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.tally["C5"] = "Triess"
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.sheet, found.place.cell) == ("heading-missing", "Tally", "C5")
    assert "“Tries”" in found.wrong


def test_two_columns_with_one_heading_are_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.tally["G5"] = "Right"
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.cell) == ("heading-twice", "G5")


def test_two_columns_for_one_blank_are_found(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.paper([1, 0], 1)
    book.guides.cell(HEADED, 12).value = "3"
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place.cell) == ("heading-twice", f"L{HEADED}")


def test_a_mark_for_a_blank_that_a_guide_does_not_have_is_found(tmp_path):
    made = deck(22)  # hands of 6 and 5
    short = next(guide for guide in made.guides if len(blanks_of(guide)) == 5)
    book = Book(made)
    row = book.paper([1, 1, 1, 1, 1, 1], 1, team=short.team)
    marks = read(book, made, tmp_path)
    assert told(marks) == [("no-such-blank", "Study guides", f"I{row}")]
    assert marks.guides[0].papers == ((1, 1, 1, 1, 1),)


def test_a_team_that_does_not_exist_is_found_and_the_likely_one_named(tmp_path):
    made = deck()
    book = Book(made)
    row = book.paper([1, 1], 1, team="Otter")
    book.guides.cell(row, 1).value = "Oter"
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.mend) == ("no-such-team", "Did you mean Otter?")


def test_a_name_in_place_of_a_number_is_not_repeated(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.paper([1, 1, 0, 0, 1, 1], 1)
    book.guides.cell(row, 1).value = "Wren Meadowsweet"
    marks = read(book, made, tmp_path)
    (found,) = marks.findings
    assert (found.code, found.severity) == ("paper-not-numbered", Severity.WARNING)
    assert "Wren" not in repr(marks)
    assert len(marks.guides[0].papers) == 1


def test_two_papers_with_one_number_are_both_counted_and_told(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.paper([1], 1)
    book.paper([0], 2)
    book.guides.cell(book.row_of(book.guides, 2), 1).value = 1
    marks = read(book, made, tmp_path)
    (found,) = marks.findings
    assert (found.code, found.severity) == ("paper-twice", Severity.WARNING)
    assert len(marks.guides[0].papers) == 2


def test_a_great_many_tries_are_told_and_used(tmp_path):
    made = for_class(6, students=24)
    book = Book(made)
    book.count(1, 2400, 2000)
    marks = read(book, made, tmp_path)
    (found,) = marks.findings
    assert (found.code, found.severity) == ("many-tries", Severity.WARNING)
    assert marks.counts[0].tries == 2400


@pytest.mark.parametrize(
    ("written", "label"),
    [("Card 7", "7"), ("card7", "7"), ("No. 7", "7"), ("no 7", "7"), ("7.0", "7")],
)
def test_a_label_is_known_however_it_is_written(written, label):
    assert plain_label(written) == label


@pytest.mark.parametrize("remark", ["notes: noisy", "Cardiff", "papers", "nobody"])
def test_a_remark_among_the_labels_is_quoted_as_it_stands(remark):
    assert plain_label(remark) == remark
