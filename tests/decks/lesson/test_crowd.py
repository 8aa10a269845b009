from hypothesis import given
from hypothesis import strategies as st

from decks.lesson.crowd import crowd

STUDENTS, CARDS = st.integers(1, 60), st.integers(1, 40)


@given(STUDENTS, CARDS)
def test_there_are_never_more_bases_than_cards_and_never_fewer_than_one(students, cards):
    told = crowd(students, cards)
    assert 1 <= told.last <= told.first <= cards
    assert told.catchers >= 1


@given(STUDENTS, STUDENTS, CARDS)
def test_more_students_never_have_fewer_bases_or_catchers(one, other, cards):
    fewer, more = sorted((one, other))
    small, large = crowd(fewer, cards), crowd(more, cards)
    assert small.first <= large.first
    assert small.last <= large.last
    assert small.catchers <= large.catchers


def test_a_class_of_24_with_eight_cards_starts_with_all_of_them():
    # 2 catch, 22 walk: a base for 2.5 would be 9, and for 5 at last 4
    told = crowd(24, 8)
    assert (told.catchers, told.first, told.last) == (2, 8, 4)
