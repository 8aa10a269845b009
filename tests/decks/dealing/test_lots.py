"""Where teams must differ, the seed says in which values: one deal is as fair as the other."""

from strategies import TEAMS, card

from cards.item import Kind
from decks.dealing import deal_shares


def differences(items, name):
    """Return by how much two teams come to differ in each value of a goal, under a few seeds."""
    found = set()
    for seed in range(12):
        goals = {goal.name: goal for goal in deal_shares(items, TEAMS[:2], str(seed)).goals}
        found.add(tuple((value, max(h) - min(h)) for value, h in goals[name].counts))
    return found


def test_which_topic_differs_more_is_drawn():
    # Otter needs one more of medium level: with “Birds” Heron has both “Shells”, and so about
    items = [
        card(0, 3, "Birds", team="Heron"),
        card(1, 2, "Tides", team="Otter"),
        card(2, 2, "Birds"),
        card(3, 2, "Shells"),
        card(4, 2, "Shells"),
    ]
    assert differences(items, "topic") == {
        (("Birds", 2), ("Tides", 1), ("Shells", 0)),
        (("Birds", 0), ("Tides", 1), ("Shells", 2)),
    }


def test_which_kind_differs_more_is_drawn():
    # the hard ones part, and so do both on birds: 0 goes with 2, against 3, and 1 against 4
    items = [
        card(0, 3, "Tides", Kind.QUESTION),
        card(1, 1, "Shells", Kind.QUESTION),
        card(2, 1, "Birds", Kind.FACT),
        card(3, 3, "Birds", Kind.VOCABULARY),
        card(4, 1, "Shells", Kind.FACT),
    ]
    assert differences(items, "kind") == {
        (("vocabulary", 1), ("fact", 0), ("question", 2)),
        (("vocabulary", 1), ("fact", 2), ("question", 0)),
    }
