"""What the settings Cards and Mix can be."""

import pytest

from decks.amounts import ALL, read_cards, read_mix


@pytest.mark.parametrize(
    ("text", "cards"), [("60", 60), (" 7 ", 7), ("all", ALL), ("All", ALL), ("007", 7)]
)
def test_a_number_of_cards_or_all(text, cards):
    assert read_cards(text) == cards


@pytest.mark.parametrize("text", ["", "0", "-3", "2.5", "sixty", "²", "٣", "1" * 6, "all 60"])
def test_no_number_of_cards(text):
    assert read_cards(text) is None


@pytest.mark.parametrize(
    ("text", "mix"),
    [
        ("40/40/20", (40, 40, 20)),
        ("40 / 40 / 20", (40, 40, 20)),
        ("40 %, 40 %, 20 %", (40, 40, 20)),
        ("40%/40%/20%", (40, 40, 20)),
        ("2:2:1", (2, 2, 1)),
        ("0/0/1", (0, 0, 1)),
    ],
)
def test_three_shares(text, mix):
    assert read_mix(text) == mix


@pytest.mark.parametrize(
    "text", ["", "40/60", "40/40/20/0", "0/0/0", "a/b/c", "4040 20", "40/-1/20", "40.5/40/19.5"]
)
def test_no_three_shares(text):
    assert read_mix(text) is None
