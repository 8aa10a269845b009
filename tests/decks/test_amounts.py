"""What the settings Cards and Mix can be."""

import pytest

from decks.amounts import ALL, read_cards, read_mix, read_percent


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
        ("5; 3; 2", (5, 3, 2)),
        ("100/0/0", (100, 0, 0)),
    ],
)
def test_three_shares(text, mix):
    assert read_mix(text) == mix


@pytest.mark.parametrize(
    "text",
    [
        *("", "40/60", "40/40/20/0", "0/0/0", "a/b/c", "4040 20", "40/-1/20", "40.5/40/19.5"),
        *("5/3/2002", "101/0/0"),
    ],
)
def test_no_three_shares(text):
    assert read_mix(text) is None


@pytest.mark.parametrize(
    ("text", "percent"),
    [
        ("80 %", 80),
        ("80%", 80),
        ("80", 80),
        (" 100 ", 100),
        ("0", 0),
        ("0.8", 80),
        ("0,85", 85),
        (".6", 60),
        ("1", 1),
    ],
)
def test_a_share_is_read_in_percent_or_as_a_part_of_the_whole(text, percent):
    assert read_percent(text) == percent


@pytest.mark.parametrize(
    "text", ["101", "-5", "eighty", "", "0.8 %%", "8/10", "1.5", "9" * 40, "٨٠"]
)
def test_what_is_no_share_is_refused(text):
    assert read_percent(text) is None
