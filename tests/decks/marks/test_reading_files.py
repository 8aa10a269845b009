"""The files that marks come in: what was saved, exported or damaged."""

import csv
import tempfile
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.marking import (
    Book,
    deck,
    for_class,
    items,
    key_of,
    read,
    told,
)
from support.office import converted, needs_office
from support.packed import SHEET, workbook_with

from cards.finding import UnusableFileError
from decks.activities import make_deck
from decks.marks.reading import marks_in, read_marks
from decks.recipe import Activity, Recipe
from decks.team import make_teams


def as_csv(sheet, path):
    with path.open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows(sheet.iter_rows(values_only=True))


def test_csv_of_the_same_shape_reads_the_same(tmp_path):
    made = for_class(22)
    book = Book(made)
    book.count(2, 3, 2)
    book.paper([1, 0] * 11, 1)
    whole = read(book, made, tmp_path)
    folder = tmp_path / "texts"
    folder.mkdir()
    as_csv(book.tally, folder / "marks-Tally.csv")
    as_csv(book.guides, folder / "marks-Study guides.csv")
    assert read_marks(folder, made) == whole
    assert read_marks(folder / "marks-Tally.csv", made).counts == whole.counts


def test_a_csv_beside_a_filled_workbook_is_named_and_not_read(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 3, 2)
    as_csv(book.tally, tmp_path / "marks.csv")
    book.saved(tmp_path / "marks.xlsx")
    marks = read_marks(tmp_path, made)
    assert marks.by_item == {key_of(made, 2): (2, 3)}
    assert [found.code for found in marks.findings] == ["marks-beside"]


def test_of_two_workbooks_the_one_that_came_with_the_deck_is_read(tmp_path):
    made = for_class(6)
    other = Book(made)
    other.count(2, 9, 9)
    other.saved(tmp_path / "Marks (old).xlsx")
    book = Book(made)
    book.count(2, 3, 2)
    book.saved(tmp_path / "marks.xlsx")
    marks = read_marks(tmp_path, made)
    assert marks.by_item == {key_of(made, 2): (2, 3)}
    assert told(marks) == [("marks-beside", "Marks (old).xlsx", "")]


def test_a_csv_beside_a_blank_workbook_is_read(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.saved(tmp_path / "marks.xlsx")
    book.count(2, 3, 2)
    as_csv(book.tally, tmp_path / "marks.csv")
    marks = read_marks(tmp_path, made)
    assert (marks.by_item, marks.findings) == ({key_of(made, 2): (2, 3)}, ())


def test_a_second_workbook_is_told_where_a_csv_was_read_in_place_of_the_blank_first(tmp_path):
    made = for_class(6)
    book = Book(made)
    for name in ("marks.xlsx", "marks (old).xlsx"):
        book.saved(tmp_path / name)
    book.count(2, 3, 2)
    as_csv(book.tally, tmp_path / "marks.csv")
    marks = read_marks(tmp_path, made)
    assert marks.by_item == {key_of(made, 2): (2, 3)}
    assert told(marks) == [("marks-beside", "marks (old).xlsx", "")]


def test_the_score_sheet_is_not_taken_for_a_tally_where_a_team_is_called_right(tmp_path):
    # teams' names are headings of the score sheet, and Card and Right are headings of the tally
    teams = make_teams(["Left", "Right"], [None] * 2)
    recipe = Recipe("Shore", teams, activity=Activity.ROUNDS)
    made = make_deck(recipe, items(6), number=1, seed="s")
    book = Book(made)
    assert "Right" in [cell.value for cell in book.book["Score"][3]]
    assert told(read(book, made, tmp_path)) == []


def test_points_are_no_marks_even_where_the_teams_are_called_as_the_tally_is_headed(tmp_path):
    teams = make_teams(["Right", "Tries"], [None] * 2)
    recipe = Recipe("Shore", teams, activity=Activity.ROUNDS)
    made = make_deck(recipe, items(6), number=1, seed="s")
    book = Book(made)
    score = book.book["Score"]
    assert [cell.value for cell in score[3]] == ["Round", "Card", "Question", "Right", "Tries"]
    score.cell(6, 4).value, score.cell(6, 5).value = 1, 3
    book.count(2, 3, 2)
    marks = read(book, made, tmp_path)
    assert (marks.by_item, marks.findings) == ({key_of(made, 2): (2, 3)}, ())


def test_a_tally_may_be_called_score_where_the_deck_has_no_score_sheet(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(2, 3, 2)
    book.tally.title = "Score"
    assert read(book, made, tmp_path).by_item == {key_of(made, 2): (2, 3)}


def test_a_workbook_of_something_else_is_told(tmp_path):
    path = workbook_with(tmp_path / "marks.xlsx", {})
    assert [found.code for found in read_marks(path, deck()).findings] == ["no-marks-sheet"]


def test_a_file_that_is_not_there_is_an_expected_failure(tmp_path):
    for place in (tmp_path, tmp_path / "marks.xlsx"):
        with pytest.raises(UnusableFileError):
            read_marks(place, deck())
    assert marks_in(tmp_path, deck()).is_empty


def test_a_name_that_no_file_can_have_is_told_as_such(tmp_path):
    # 255 bytes at the most on common file systems: common practice
    with pytest.raises(UnusableFileError, match="no name can be as long"):
        read_marks(tmp_path / ("m" * 300), deck())


def test_a_folder_that_cannot_be_looked_into_does_not_stop_what_reads_many_decks(tmp_path):
    (tmp_path / "01").write_bytes(b"a file in its place")
    (found,) = marks_in(tmp_path / "01", deck()).findings
    assert found.code == "marks-not-read"
    assert "could not be looked at" in found.mend


def test_a_damaged_file_does_not_stop_what_reads_many_decks(tmp_path):
    (tmp_path / "marks.xlsx").write_bytes(b"PK\x03\x04 no more")
    (found,) = marks_in(tmp_path, deck()).findings
    assert found.code == "marks-not-read"


def test_a_file_that_unpacks_to_far_too_much_is_refused(tmp_path):
    bomb = (b" " * (1 << 20) for _ in range(500))
    path = workbook_with(tmp_path / "marks.xlsx", {SHEET: bomb})
    assert path.stat().st_size < 10 << 20
    with pytest.raises(UnusableFileError, match="far larger"):
        read_marks(path, deck())


@needs_office
def test_what_another_program_saves_reads_the_same(tmp_path):
    made = for_class(22)
    book = Book(made)
    book.count(2, 3, 2)
    book.paper([1, 0, None] * 7, 1)
    path = book.saved(tmp_path / "marks.xlsx")
    mine = read_marks(path, made)
    (tmp_path / "again").mkdir()
    for kind in ("xlsx", "ods"):
        again = converted(path, kind, tmp_path / "again")
        assert read_marks(again, made) == mine


MARK = st.sampled_from([1, 0, None])


@settings(max_examples=25, deadline=None)
@given(
    st.dictionaries(st.integers(1, 8), st.tuples(st.integers(0, 9), st.integers(0, 9))),
    st.lists(st.lists(MARK, min_size=8, max_size=8), max_size=6),
)
def test_all_that_is_filled_in_and_nothing_else_is_read(counts, papers):
    made = for_class(8)
    book = Book(made)
    for label, (right, wrong) in counts.items():
        book.count(label, right + wrong, right)
    for number, paper in enumerate(papers, start=1):
        book.paper(paper, number)
    with tempfile.TemporaryDirectory() as folder:
        marks = read_marks(book.saved(Path(folder) / "marks.xlsx"), made)
    assert marks.findings == ()
    assert {count.item: (count.right, count.tries) for count in marks.counts} == {
        key_of(made, label): (right, right + wrong) for label, (right, wrong) in counts.items()
    }
    kept = [tuple(paper) for paper in papers if any(mark is not None for mark in paper)]
    assert [paper for guide in marks.guides for paper in guide.papers] == kept
