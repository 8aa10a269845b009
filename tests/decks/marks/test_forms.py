"""The rows and columns of what is filled in."""

from hypothesis import given
from hypothesis import strategies as st
from support.marking import TEAMS, deck, for_class

from decks.marks.forms import Blank, blank_heading, blank_named, columns_of, in_short, papers_for


def test_a_text_that_is_too_long_is_cut_at_a_word():
    assert in_short("the rock pool is cold", 21) == "the rock pool is cold"
    assert in_short("the rock pool is cold", 20) == "the rock pool is…"
    assert in_short("the rock\n pool", 14) == "the rock pool"


def test_a_word_that_is_too_long_is_cut_all_the_same():
    assert in_short("oystercatcher", 8) == "oysterc…"


@given(st.text(), st.integers(1, 20))
def test_what_is_shown_is_never_longer_than_there_is_room_for(text, longest):
    assert len(in_short(text, longest)) <= longest


def test_blanks_are_numbered_from_one_in_each_part():
    # 12 items of one kind, ten blanks in a part at most: six and six
    assert columns_of(for_class(12)) == tuple(
        Blank(part, n) for part in (1, 2) for n in range(1, 7)
    )
    assert blank_heading(Blank(2, 6), parts=True) == "Part 2\n6"
    assert blank_named("Part 2\n6") == Blank(2, 6)
    assert blank_named("6") == Blank(1, 6)


def test_there_is_a_row_for_each_student_or_for_the_largest_team():
    assert papers_for(for_class(students=25)) == 25
    # 25 students in four teams: one team has seven
    assert len(TEAMS) == 4
    assert papers_for(deck(students=25)) == 7
