"""Blanks at the start of lines: read as they are typed, and told apart where they are printed."""

import pytest
from msgspec.structs import replace
from strategies import card

from cards.answers import asked
from cards.reading.table import clean


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("for a:\n    b", "for a:\n    b"),
        # what is set in as a whole is not set in
        ("    for a:\n        b\n    c", "for a:\n    b\nc"),
        ("\n  a\n  b ", "a\nb"),
        ("    a\nb\n  c", "a\nb\nc"),
        # a stop of a tab is at every fourth blank
        ("for a:\n\tb\n  \tc\n\t\td", "for a:\n    b\n    c\n        d"),
        ("\ta:\n\t\tb", "a:\n    b"),
        ("a\tb", "a b"),
        ("  a", "a"),
        (" \n \n", ""),
    ],
)
def test_a_cell_keeps_what_its_lines_are_set_in(typed, read):
    assert clean(typed) == read


def asked_of(prompt):
    return asked(replace(card(1), prompt=prompt))


def test_programs_that_part_in_their_indents_are_two():
    assert asked_of("if a:\n    b\nc") != asked_of("if a:\n    b\n    c")
    assert asked_of("if a:\n    stop") == asked_of("If a:\n    Stop")


def test_slips_of_the_typing_make_no_other_prompt():
    assert asked_of("one,\n two") == asked_of("one,\ntwo") == asked_of("one, two")
    assert asked_of("one\n    \ntwo") == asked_of("one\n\ntwo")
