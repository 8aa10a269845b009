"""Counting what every team holds."""

from strategies import card

from cards.item import Kind
from decks.dealing import tally

CONTENT = [
    card(0, 3, "Zones", Kind.QUESTION),
    card(1, 1, "Birds", Kind.VOCABULARY),
    card(2, 3, "zones", Kind.QUESTION),
    card(3, 1, "Birds", Kind.FACT),
]
HANDS = (tuple(CONTENT[:3]), (), (CONTENT[3],))


def test_levels_rise_and_those_without_items_are_left_out():
    assert tally(HANDS, "level", CONTENT) == (("easy", (1, 0, 1)), ("hard", (2, 0, 0)))


def test_topics_stand_as_they_first_appear_and_as_they_are_first_spelt():
    assert tally(HANDS, "topic", CONTENT) == (("Zones", (2, 0, 0)), ("Birds", (1, 0, 1)))


def test_kinds_stand_as_they_are_declared():
    assert tally(HANDS, "kind", CONTENT) == (
        ("vocabulary", (1, 0, 0)),
        ("fact", (0, 0, 1)),
        ("question", (2, 0, 0)),
    )


def test_cards_are_counted_all_together():
    assert tally(HANDS, "cards", CONTENT) == (("all", (3, 0, 1)),)
