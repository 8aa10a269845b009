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


@given(NOTES, st.lists(st.text(), min_size=1, max_size=3))
def test_taking_ours_out_leaves_what_was_there(before, wrongs):
    ours = note_on([finding(wrong) for wrong in wrongs], before)
    assert without_ours(ours) == without_ours(before.rstrip("\n"))


@given(NOTES)
def test_a_note_without_ours_is_left_as_it_is(note):
    assert without_ours(note) == note
