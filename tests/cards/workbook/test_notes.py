"""What we write into a note can be taken out of it again, and nothing else goes with it."""

from hypothesis import given
from hypothesis import strategies as st

from cards.finding import Finding, Severity
from cards.place import Place
from cards.workbook.notes import note_on, without_ours

NOTES = st.text(st.characters(exclude_categories=["Cs", "Cc"], include_characters="\n"))


def finding(wrong="There is no word.", severity=Severity.ERROR):
    return Finding("no-word", severity, Place("Facts", 2, 1), "", wrong, "Write it.")


def test_a_note_says_how_serious_what_is_wrong_and_how_to_mend_it():
    assert note_on([finding()]).startswith("Error: There is no word. Write it.")
    assert note_on([finding(severity=Severity.WARNING)]).startswith("Warning: ")


def test_a_note_of_the_teacher_stands_before_ours():
    assert note_on([finding()], "Ask the ranger").startswith("Ask the ranger\n\nError: ")


def told(*findings):
    """Return the lines of a note without the one that signs it."""
    return note_on(findings).split("\n")[:-1]


def test_five_findings_are_told_in_a_note():
    lines = told(*(finding(f"Fault {n}.") for n in range(5)))
    assert lines == [f"Error: Fault {n}. Write it." for n in range(5)]


def test_of_more_than_five_a_note_tells_five_and_counts_the_others():
    six, many = ([finding(f"Fault {n}.") for n in range(number)] for number in (6, 300))
    assert told(*six) == [*told(*six[:5]), "1 more is listed on the first sheet."]
    assert told(*many) == [*told(*many[:5]), "295 more are listed on the first sheet."]


def test_a_note_tells_the_gravest_findings_first():
    slight = [finding(severity=Severity.NOTE)] * 5
    lines = told(*slight, finding(severity=Severity.WARNING), finding(severity=Severity.ERROR))
    assert [line.partition(":")[0] for line in lines[:3]] == ["Error", "Warning", "Note"]
    assert lines[5] == "2 more are listed on the first sheet."


def test_a_note_that_counts_findings_can_be_taken_out_again():
    assert without_ours(note_on([finding()] * 9, "Ask the ranger")) == "Ask the ranger"


@given(NOTES, st.lists(st.text(), min_size=1, max_size=3))
def test_taking_ours_out_leaves_what_was_there(before, wrongs):
    ours = note_on([finding(wrong) for wrong in wrongs], before)
    assert without_ours(ours) == without_ours(before.rstrip("\n"))


@given(NOTES)
def test_a_note_without_ours_is_left_as_it_is(note):
    assert without_ours(note) == note
