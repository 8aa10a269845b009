"""What is told of a slip in the marked study guides: the whole finding, as the teacher reads it."""

import pytest
from msgspec.structs import replace
from support.marking import HEADED, Book, deck, for_class, read

from cards.finding import Finding, Severity
from cards.place import Place
from decks.marks.forms import blanks_of

ERROR, WARNING = Severity.ERROR, Severity.WARNING
SHEET = "Study guides"
NO_MARK = "Write 1 if it is right, 0 if not, and nothing where it was not marked."


@pytest.mark.parametrize("typed", ["1", "01", "1.0", "1,00", 1.0])
def test_a_one_however_it_was_typed_is_a_mark(typed, tmp_path):
    made = for_class(2)
    book = Book(made)
    book.paper([typed, 0], 1)
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.guides[0].papers) == ((), ((1, 0),))


@pytest.mark.parametrize("typed", ["-1", "1.5", "2", "yes"])
def test_what_is_no_mark_is_quoted(typed, tmp_path):
    made = for_class(2)
    book = Book(made)
    row = book.paper([typed, 0], 1)
    place = Place(SHEET, row, 3)
    wrong = f"“{typed}” is no mark."
    assert read(book, made, tmp_path).findings == (
        Finding("not-a-mark", ERROR, place, typed, wrong, NO_MARK),
    )


def test_a_formula_in_place_of_a_mark_is_told_once(tmp_path):
    made = for_class(2)
    book = Book(made)
    row = book.paper(["=1/0", "#N/A"], 1)
    marks = read(book, made, tmp_path)
    assert [(found.code, found.place) for found in marks.findings] == [
        ("formula-without-value", Place(SHEET, row, 3)),
        ("formula-with-fault", Place(SHEET, row, 4)),
    ]
    assert marks.guides == ()


@pytest.mark.parametrize(
    ("team", "wrong", "mend"),
    [
        ("Oter", "No team “Oter” has a guide.", "Did you mean Otter?"),
        (
            "Limpet",
            "No team “Limpet” has a guide.",
            "Write the team: Heron, Otter, Samphire or Curlew.",
        ),
        (
            None,
            "The row does not say which team.",
            "Write the team: Heron, Otter, Samphire or Curlew.",
        ),
    ],
)
def test_a_paper_of_no_team_is_told_with_the_teams_there_are(team, wrong, mend, tmp_path):
    made = deck()
    book = Book(made)
    row = book.paper([1, 1], 1, team="Otter")
    book.guides.cell(row, 1).value = team
    assert read(book, made, tmp_path).findings == (
        Finding("no-such-team", ERROR, Place(SHEET, row, 1), team or "", wrong, mend),
    )


def test_without_the_column_of_teams_the_row_is_named(tmp_path):
    made = deck()
    book = Book(made)
    row = book.paper([1, 1], 1, team="Otter")
    book.guides.cell(HEADED, 1).value = None
    (found,) = read(book, made, tmp_path).findings
    assert (found.code, found.place) == ("no-such-team", Place(SHEET, row))
    assert found.wrong == "The row does not say which team."


def test_a_team_is_known_however_its_letters_are_written(tmp_path):
    made = deck()
    book = Book(made)
    row = book.paper([1, 1], 1, team="Otter")
    book.guides.cell(row, 1).value = "OTTER "
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.guides[0].team) == ((), "Otter")


NO_BLANK = "Clear the cell, or move the mark to its own blank."


def test_a_mark_beyond_the_blanks_of_a_team_is_told_with_whose_guide_it_is(tmp_path):
    made = deck(22)  # hands of 6 and 5
    short = next(guide for guide in made.guides if len(blanks_of(guide)) == 5)
    book = Book(made)
    row = book.paper([1, 1, 1, 1, 1, 0], 1, team=short.team)
    wrong = f"The guide of {short.team} has no blank 6."
    assert read(book, made, tmp_path).findings == (
        Finding("no-such-blank", ERROR, Place(SHEET, row, 9), "0", wrong, NO_BLANK),
    )


def with_column(made, headings, tmp_path):
    """What is found where marks are written under headings that did not come with the sheet."""
    book = Book(made)
    row = book.paper([1], 1)
    first = book.guides.max_column + 1
    for n, heading in enumerate(headings):
        book.guides.cell(HEADED, first + n).value = heading
        book.guides.cell(row, first + n).value = 1
    found = read(book, made, tmp_path).findings
    assert [one.place for one in found] == [
        Place(SHEET, row, first + n) for n in range(len(headings))
    ]
    assert {(one.code, one.found, one.mend) for one in found} == {("no-such-blank", "1", NO_BLANK)}
    return [one.wrong for one in found]


def test_a_mark_beyond_the_blanks_of_the_class_guide_is_told_with_its_part(tmp_path):
    # a guide of one part, then 12 items: two parts of six
    assert with_column(for_class(3), ["4", "Part 2\n1"], tmp_path) == [
        "The guide has no blank 4.",
        "The guide has no blank 1 in part 2.",
    ]
    assert with_column(for_class(12), ["Part 1\n7", "Part 3\n1"], tmp_path) == [
        "The guide has no blank 7 in part 1.",
        "The guide has no blank 1 in part 3.",
    ]


def test_a_paper_without_a_number_is_told_and_what_stands_there_is_not(tmp_path):
    made = for_class(2)
    book = Book(made)
    row = book.paper([1, 0], 1)
    book.guides.cell(row, 1).value = "Wren Meadowsweet"
    wrong = "A paper is told by its number here, so that no mark says whose it is."
    mend = "Write a number in place of it."
    assert read(book, made, tmp_path).findings == (
        Finding("paper-not-numbered", WARNING, Place(SHEET, row, 1), "", wrong, mend),
    )


def test_a_number_that_two_papers_have_is_told_with_the_first_row(tmp_path):
    made = for_class(2)
    book = Book(made)
    first, second = (book.paper([1, 0], number) for number in (1, 2))
    book.guides.cell(second, 1).value = "Paper 1"
    wrong = f"Paper 1 is in row {first} already; both were counted."
    mend = "Delete one of them if it is there by mistake, or give it another number."
    assert read(book, made, tmp_path).findings == (
        Finding("paper-twice", WARNING, Place(SHEET, second, 1), "1", wrong, mend),
    )


def test_two_teams_may_each_have_a_paper_with_one_number(tmp_path):
    made = deck()
    book = Book(made)
    for team in ("Heron", "Otter"):
        book.paper([1, 0], 1, team=team)
    marks = read(book, made, tmp_path)
    assert (marks.findings, [guide.team for guide in marks.guides]) == ((), ["Heron", "Otter"])


def test_papers_without_a_number_are_counted_and_nothing_is_told(tmp_path):
    made = for_class(2)
    book = Book(made)
    for number in (1, 2):
        row = book.paper([1, 0], number)
        book.guides.cell(row, 1).value = None
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.guides[0].papers) == ((), ((1, 0), (1, 0)))


@pytest.mark.parametrize("word", ["all", "Total", "totals", "Sum", "Mean", "average", "Every"])
def test_a_row_of_means_or_sums_is_no_paper(word, tmp_path):
    made = for_class(2)
    book = Book(made)
    row = book.paper([0.5, 1], 1)
    book.guides.cell(row, 1).value = word
    marks = read(book, made, tmp_path)
    assert (marks.findings, marks.guides) == ((), ())


def test_guides_of_another_deck_are_not_used_and_told_of(tmp_path):
    made, other = for_class(2), replace(for_class(2), number=7)
    book = Book(other)
    book.paper([1, 0], 1)
    marks = read(book, made, tmp_path)
    assert marks.guides == ()
    (found,) = marks.findings
    assert (found.code, found.place) == ("another-deck", Place(SHEET, 1, 1))
    assert "deck 7" in found.wrong
