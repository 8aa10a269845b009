"""What is told of the headings of a marks sheet, and of the files that marks may be in."""

import pytest
from support.marking import HEADED, Book, deck, for_class, key_of, read

from cards.finding import Finding, Severity, UnusableFileError
from cards.place import Place
from decks.marks.reading import marks_in, read_marks

ERROR, WARNING, NOTE = Severity.ERROR, Severity.WARNING, Severity.NOTE
PUT_BACK = "Put the headings back as they came."


def missing(place, words, *, found="", hint=""):
    wrong = f"There is no column headed {words}, so nothing on this sheet was read."
    return Finding("heading-missing", ERROR, place, found, wrong, hint + PUT_BACK)


def of_text(text, tmp_path, made=None):
    """The marks of a file of delimited text, of two cards for the class."""
    (tmp_path / "marks.csv").write_text(text, "utf-8")
    return read_marks(tmp_path / "marks.csv", made or for_class(2))


def test_without_any_heading_all_three_are_missed(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(3, 4, 2)
    book.tally.delete_rows(HEADED)
    assert read(book, made, tmp_path).findings == (
        missing(Place("Tally", HEADED), "“Card”, “Tries” and “Right”"),
    )


def test_a_misspelt_heading_is_shown_and_one_that_is_merely_like_it_is_not(tmp_path):
    made = for_class(6)
    for typed in ("Triess", "tryes"):
        book = Book(made)
        book.tally.cell(HEADED, 3).value = typed
        assert read(book, made, tmp_path).findings == (
            missing(
                Place("Tally", HEADED, 3), "“Tries”", found=typed, hint=f"Was “{typed}” meant? "
            ),
        )
    book.tally.cell(HEADED, 3).value = "Time"
    assert read(book, made, tmp_path).findings == (missing(Place("Tally", HEADED), "“Tries”"),)


def test_a_tally_is_known_by_what_is_left_of_its_headings(tmp_path):
    place = Place("marks.csv", 1)
    for text, words in (
        ("Card,Right\n1,2\n", "“Tries”"),
        ("Tries,Right\n3,2\n", "“Card”"),
        ("Team,Tries\nHeron,2\n", "“Card” and “Right”"),
    ):
        assert of_text(text, tmp_path).findings == (missing(place, words),)


def test_papers_are_known_by_two_blanks_beside_another_heading(tmp_path):
    # the line above has a heading as well, but no blanks
    marks = of_text("Set,,\nRight,1,2\n1,1,0\n", tmp_path)
    assert marks.findings == (missing(Place("marks.csv", 2), "“Paper”"),)


@pytest.mark.parametrize("text", ["Right,1\n1,1\n", "1,2,3\n4,5,6\n", "Team,Clue\n1,2\n"])
def test_what_looks_like_no_marks_is_told_as_such(text, tmp_path):
    wrong = "There is no sheet here with the headings of the tally or of the study guides."
    mend = "Put the headings back as they came: Card, Tries and Right, or Paper and the blanks."
    assert of_text(text, tmp_path).findings == (
        Finding("no-marks-sheet", ERROR, Place("marks.csv"), "", wrong, mend),
    )


def twice(sheet, column, word):
    wrong = f"There are two columns headed “{word}”; this one was not read."
    mend = "Give each column its own heading, as they came."
    return Finding("heading-twice", WARNING, Place(sheet, 1, column), word, wrong, mend)


def test_of_two_columns_with_one_heading_the_first_is_read(tmp_path):
    made = for_class(2)
    marks = of_text("Card,Tries,Right,Correct,Right\n1,3,2,0,0\n", tmp_path, made)
    assert marks.findings == (twice("marks.csv", 4, "Correct"), twice("marks.csv", 5, "Right"))
    assert marks.by_item == {key_of(made, 1): (2, 3)}
    marks = of_text("Paper,Paper,1,2,1\n1,9,1,0,0\n", tmp_path)
    assert marks.findings == (twice("marks.csv", 2, "Paper"), twice("marks.csv", 5, "1"))
    assert marks.guides[0].papers == ((1, 0),)


def test_columns_beside_papers_that_are_not_read_may_have_one_heading(tmp_path):
    marks = of_text("Paper,Right,Right,1,2\n1,5,6,1,0\n", tmp_path)
    assert (marks.findings, marks.guides[0].papers) == ((), ((1, 0),))


def test_headings_are_looked_for_in_the_first_twelve_rows(tmp_path):
    made = for_class(2)
    table = "Card,Tries,Right\n1,3,2\n"
    assert of_text("Monday,,\n" * 11 + table, tmp_path, made).by_item == {key_of(made, 1): (2, 3)}
    (found,) = of_text("Monday,,\n" * 12 + table, tmp_path, made).findings
    assert found.code == "no-marks-sheet"


def test_a_file_of_marks_beside_the_one_that_is_read_is_named(tmp_path):
    made = for_class(2)
    book = Book(made)
    book.count(1, 3, 2)
    book.saved(tmp_path / "marks.xlsx")
    (tmp_path / "Marks of Monday.csv").write_text("Card,Tries,Right\n1,9,9\n", "utf-8")
    (tmp_path / ".marks.csv").write_text("Card,Tries,Right\n1,8,8\n", "utf-8")
    (tmp_path / "remarks.csv").write_text("Card,Tries,Right\n1,7,7\n", "utf-8")
    marks = read_marks(tmp_path, made)
    wrong = "This file was not read: the marks of a deck are read from one file."
    mend = "Name it if it is the one to read: --marks."
    assert marks.findings == (
        Finding("marks-beside", NOTE, Place("Marks of Monday.csv"), "", wrong, mend),
    )
    assert marks.by_item == {key_of(made, 1): (2, 3)}
    assert marks_in(tmp_path, made) == marks


def test_a_folder_without_marks_says_what_to_do(tmp_path):
    folder = tmp_path / "3 Shore"
    folder.mkdir()
    with pytest.raises(UnusableFileError) as refused:
        read_marks(folder, deck())
    assert str(refused.value) == (
        "There is no marks.xlsx in 3 Shore. Put it back from where it was moved to, or name the "
        "file that the marks are in."
    )


def test_marks_of_an_earlier_deck_that_cannot_be_read_are_told_with_the_deck(tmp_path):
    folder = tmp_path / "Shore decks" / "3 Shore"
    folder.mkdir(parents=True)
    (folder / "marks.xlsx").write_bytes(b"PK\x03\x04 no more")
    with pytest.raises(UnusableFileError) as refused:
        read_marks(folder, deck())
    wrong = "The marks of this deck could not be read, and do not count."
    place = Place("Shore decks/3 Shore")
    assert marks_in(folder, deck()).findings == (
        Finding("marks-not-read", WARNING, place, "", wrong, str(refused.value)),
    )
    assert "marks.xlsx" in str(refused.value)
