"""Even parts against what they are to be: as many, in order, of sizes written out by hand."""

import pytest

from decks.evenly import even_sizes, evenly


@pytest.mark.parametrize(
    ("things", "parts", "sizes"),
    [
        (24, 4, (6, 6, 6, 6)),
        (26, 4, (7, 7, 6, 6)),
        (4, 4, (1, 1, 1, 1)),
        (3, 4, (1, 1, 1, 0)),
        (31, 12, (3,) * 7 + (2,) * 5),
    ],
)
def test_parts_differ_by_one_at_most_and_the_first_have_one_more(things, parts, sizes):
    assert even_sizes(things, parts) == sizes
    assert sum(sizes) == things


def test_even_parts_follow_each_other():
    assert evenly("abcdefgh", 3) == ["abc", "def", "gh"]
    assert evenly("ab", 3) == ["a", "b", ""]
