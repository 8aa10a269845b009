"""What is told of a slip in the tally: the whole finding, as the teacher reads it."""

import pytest
from msgspec.structs import replace
from support.marking import HEADED, Book, deck, for_class, in_sets, read

from cards.finding import Finding, Severity
from cards.place import Place

ERROR, WARNING = Severity.ERROR, Severity.WARNING
CARD, TEXT, TRIES, RIGHT = range(1, 5)
"""The columns where all teams have the same cards; else `Team` stands between the first two."""

NO_COUNT = "Write a whole number, 0 or more."


def tally_of(made, rows, tmp_path):
    """What is found once these cells are filled in; a row is a card's label, tries and right."""
    book = Book(made)
    lines = [book.count(*row) for row in rows]
    return read(book, made, tmp_path).findings, lines


@pytest.mark.parametrize(
    ("typed", "wrong"),
    [
        (-2, "A count cannot be less than 0."),
        ("−0.5", "A count cannot be less than 0."),
        ("four", "“four” is no count."),
        (2.5, "“2.5” is no count."),
        ("-0", "“-0” is no count."),
        ("-0.0", "“-0.0” is no count."),
    ],
)
def test_what_is_no_count_is_quoted(typed, wrong, tmp_path):
    made = for_class(6)
    found, (row,) = tally_of(made, [(3, typed, 0)], tmp_path)
    place = Place("Tally", row, TRIES)
    assert found == (Finding("not-a-count", ERROR, place, str(typed), wrong, NO_COUNT),)


@pytest.mark.parametrize(
    ("tries", "right", "column", "word"), [(None, 2, TRIES, "tries"), (2, None, RIGHT, "right")]
)
def test_a_count_that_is_missing_is_told_with_its_column(tries, right, column, word, tmp_path):
    found, (row,) = tally_of(for_class(6), [(3, tries, right)], tmp_path)
    wrong = f"Card 3 has no number under {word}, so its row was not used."
    mend = "Write it, 0 if there was none."
    place = Place("Tally", row, column)
    assert found == (Finding("count-missing", ERROR, place, "", wrong, mend),)


def test_more_right_than_tries_is_told_with_both_numbers(tmp_path):
    found, (row,) = tally_of(for_class(6), [(3, 4, 5)], tmp_path)
    wrong = "Card 3 was right more often than it was tried, 5 of 4."
    mend = "Mend the one or the other; until then the row is not used."
    place = Place("Tally", row, RIGHT)
    assert found == (Finding("more-right-than-tries", ERROR, place, "5", wrong, mend),)


def test_a_formula_that_was_not_worked_out_is_told_with_what_to_do(tmp_path):
    found, (row,) = tally_of(for_class(6), [(3, "=2+3", 1)], tmp_path)
    (one,) = found
    assert (one.severity, one.place, one.found) == (ERROR, Place("Tally", row, TRIES), "=2+3")
    assert one.wrong == "This formula has not been worked out, so its value is not known."
    assert one.mend == (
        "Open and save the file in your spreadsheet program, or write the number itself."
    )


def test_a_formula_with_a_fault_is_told_with_the_fault(tmp_path):
    found, (row,) = tally_of(for_class(6), [(3, "#DIV/0!", 1)], tmp_path)
    wrong = "This formula comes to a fault, “#DIV/0!”."
    mend = "Mend the formula, or write the number itself."
    place = Place("Tally", row, TRIES)
    assert found == (Finding("formula-with-fault", ERROR, place, "#DIV/0!", wrong, mend),)


@pytest.mark.parametrize(
    ("label", "shown", "wrong"),
    [
        (17, "17", "There is no card “17” in this deck."),
        ("Card 9", "9", "There is no card “9” in this deck."),
        (None, "", "Which card is it?"),
    ],
)
def test_a_card_that_does_not_exist_is_told_with_those_that_do(label, shown, wrong, tmp_path):
    made = for_class(6)
    book = Book(made)
    book.tally.append([label, None, 3, 2])
    place = Place("Tally", HEADED + 7, CARD)
    mend = "Write the number in the card’s corner: 1 to 6."
    assert read(book, made, tmp_path).findings == (
        Finding("no-such-card", ERROR, place, shown, wrong, mend),
    )


def test_labels_without_numbers_are_to_be_written_as_they_are_printed(tmp_path):
    made = for_class(2)
    hands = [[replace(card, label="AB"[n]) for n, card in enumerate(hand)] for hand in made.hands]
    made = replace(made, hands=tuple(map(tuple, hands)))
    book = Book(made)
    book.tally.append(["b", None, 3, 2])
    book.tally.append(["C", None, 3, 2])
    (found,) = read(book, made, tmp_path).findings
    assert found.wrong == "There is no card “C” in this deck."
    assert found.mend == "Write the number in the card’s corner: as it is printed."


def of_owner(made, label, owner, tmp_path, heading):
    """What is found where a card's owner is written so."""
    book = Book(made)
    row = book.count(label, 4, 2)
    column = book.column(book.tally, heading)
    book.tally.cell(row, column).value = owner
    return read(book, made, tmp_path).findings, Place("Tally", row, column)


def test_a_card_of_which_there_are_several_needs_its_set(tmp_path):
    made = in_sets()
    several = [hand for hand in made.hands if any(card.label == "3" for card in hand)]
    found, place = of_owner(made, 3, None, tmp_path, "Set")
    wrong = f"There are {len(several)} cards 3, and the row does not say which."
    mend = "Write its set beside it, or its own number."
    assert len(several) > 1
    assert found == (Finding("no-such-owner", ERROR, place, "", wrong, mend),)


@pytest.mark.parametrize(
    ("owner", "mend"),
    [
        ("Otter", "Write its set beside it, or its own number."),
        ("Sett 2", "Did you mean Set 2?"),
    ],
)
def test_a_set_that_has_no_such_card_is_told(owner, mend, tmp_path):
    found, place = of_owner(in_sets(), 3, owner, tmp_path, "Set")
    wrong = f"There is no card 3 of a set “{owner}”."
    assert found == (Finding("no-such-owner", ERROR, place, owner, wrong, mend),)


@pytest.mark.parametrize(
    ("owner", "mend"),
    [
        ("Gannet", "Write its team beside it, or its own number."),
        ("Herons", "Did you mean Heron?"),
    ],
)
def test_a_card_that_another_team_has_is_told_with_that_team(owner, mend, tmp_path):
    made = deck(24)
    heron = next(card.label for card in made.hands[0])
    found, place = of_owner(made, int(heron), owner, tmp_path, "Team")
    wrong = f"Card {heron} is in Heron, not in “{owner}”."
    assert found == (Finding("no-such-owner", ERROR, place, owner, wrong, mend),)


def test_without_the_column_of_owners_the_row_is_named(tmp_path):
    made = in_sets()
    book = Book(made)
    row = book.row_of(book.tally, 3, "Set 2")
    book.tally.cell(row, book.column(book.tally, "Tries")).value = 4
    book.tally.cell(row, book.column(book.tally, "Right")).value = 2
    book.tally.cell(HEADED, book.column(book.tally, "Set")).value = None
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place) == ("no-such-owner", Place("Tally", row))
    assert str(found.place) == f"Tally row {row}"


def test_a_row_with_the_text_of_another_card_is_told(tmp_path):
    made = for_class(6)
    book = Book(made)
    row = book.count(2, 4, 2)
    other = made.hands[0][4].item.prompt
    book.tally.cell(row, TEXT).value = other
    wrong = "This is not what card 2 says, so it is not plain whose marks these are."
    mend = "Undo the sorting: the columns of a row belong together."
    assert read(book, made, tmp_path).findings == (
        Finding("columns-apart", ERROR, Place("Tally", row, TEXT), other, wrong, mend),
    )


def test_two_texts_of_which_none_is_here_are_of_another_deck_and_one_may_be_edited(tmp_path):
    made = for_class(2)
    book = Book(made)
    first, second = (book.count(label, 4, 2) for label in (1, 2))
    book.tally.cell(first, TEXT).value = "A clue of the wood"
    book.tally.cell(second, TEXT).value = None
    marks = read(book, made, tmp_path)
    assert (marks.findings, len(marks.counts)) == ((), 2)
    book.tally.cell(second, TEXT).value = "Another clue of the wood"
    marks = read(book, made, tmp_path)
    wrong = (
        "None of the texts in this column is on a card of this deck, so these marks are of another "
        "and were not used."
    )
    mend = "Name the folder of the deck that they belong to."
    place = Place("Tally", first, TEXT)
    assert marks.findings == (
        Finding("another-deck", ERROR, place, "A clue of the wood", wrong, mend),
    )
    assert marks.counts == ()


def test_a_card_in_two_rows_is_told_with_the_first(tmp_path):
    made = for_class(6)
    book = Book(made)
    first = book.count(2, 3, 2)
    for _ in range(2):
        book.tally.append([2, None, 4, 1])
    wrong = f"Card 2 is in row {first} already; both rows were added up."
    mend = "Delete one of them if it is there by mistake."
    assert read(book, made, tmp_path).findings == tuple(
        Finding("card-twice", WARNING, Place("Tally", row, CARD), "2", wrong, mend)
        for row in (HEADED + 7, HEADED + 8)
    )


def test_a_card_that_each_set_has_is_in_no_row_twice(tmp_path):
    made = in_sets()
    book = Book(made)
    for owner in ("Set 1", "Set 2"):
        row = book.row_of(book.tally, 3, owner)
        book.tally.cell(row, book.column(book.tally, "Tries")).value = 4
        book.tally.cell(row, book.column(book.tally, "Right")).value = 2
    marks = read(book, made, tmp_path)
    assert (marks.findings, len(marks.counts)) == ((), 2)


def test_more_than_ten_tries_for_each_student_are_told(tmp_path):
    made = for_class(6, students=24)
    found, (row,) = tally_of(made, [(1, 241, 200)], tmp_path)
    wrong = "241 tries at card 1 are a great many for 24 students."
    mend = "See whether a digit slipped in. An answer that a team gives together is one try."
    place = Place("Tally", row, TRIES)
    assert found == (Finding("many-tries", WARNING, place, "241", wrong, mend),)


@pytest.mark.parametrize(
    "word", ["Total", "totals", "Sum", "ALL", "All together", "Sum:", "Mean", "Altogether", "Media"]
)
def test_a_row_of_sums_is_no_card(word, tmp_path):
    made = for_class(2)
    book = Book(made)
    book.tally.append([word, None, 3, 2])
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.counts) == ((), ())
