"""What cannot be seen in a cell does not reach a card."""

import pytest

from cards.reading.table import clean


@pytest.mark.parametrize(
    ("typed", "seen"),
    [
        ("salt\u00admarsh", "saltmarsh"),
        ("\u200btide\u200b", "tide"),
        ("high\u200e tide\u200f", "high tide"),
        ("\u202eedit\u202c", "edit"),
        ("5\u202fkm", "5\u00a0km"),
        ("5\u2009km", "5\u00a0km"),
        ("e\u2011mail", "e-mail"),
        ("one\u2028two", "one\ntwo"),
        ("low\ttide", "low tide"),
        ("नदी\u200dका", "नदी\u200dका"),
    ],
)
def test_what_cannot_be_seen_is_left_out_or_becomes_what_is_seen(typed, seen):
    assert clean(typed) == seen
