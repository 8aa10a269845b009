"""Decks: labels, hands and guides, from items alone."""

import pytest
from msgspec.structs import replace
from support.items import item

from cards.item import Kind, Level
from decks.activities import make_deck
from decks.recipe import Activity, Dealing, GuideFor, Recipe
from decks.team import make_teams

ITEMS = [
    item(f"prompt {n}", f"answer {n}", row=n, level=Level(n % 3 + 1), topic=f"topic {n % 2}")
    for n in range(2, 15)
]


def deck(items=ITEMS, teams=3, seed="s", **choices):
    names = [f"Team {n}" for n in range(teams)]
    recipe = Recipe(title="Shore", teams=make_teams(names, [None] * teams), **choices)
    return make_deck(recipe, items, number=1, seed=seed)


def test_labels_run_on_from_team_to_team():
    hands = deck().hands
    assert [card.label for hand in hands for card in hand] == [str(n) for n in range(1, 14)]
    assert [len(hand) for hand in hands] in ([5, 4, 4], [4, 5, 4], [4, 4, 5])


def test_in_copies_the_same_item_has_the_same_label_in_every_team():
    hands = deck(deal=Dealing.COPIES).hands
    labels = [{card.item: card.label for card in hand} for hand in hands]
    assert labels[0] == labels[1] == labels[2]
    assert len(labels[0]) == len(ITEMS)


def test_a_deck_has_copies_where_every_team_has_all_cards():
    assert deck(deal=Dealing.COPIES).has_copies
    assert not deck().has_copies
    assert not deck(deal=Dealing.COPIES, teams=1).has_copies
    assert not deck(deal=Dealing.COPIES, activity=Activity.STATIONS).has_copies


def test_groups_that_have_the_one_text_in_shares_have_the_same_cards():
    details = [replace(each, kind=Kind.DETAIL, topic="Tides") for each in ITEMS]
    settings = {"activity": Activity.ORGANIZER, "deal": Dealing.SHARES}
    assert deck(details, **settings).has_copies
    two = [replace(each, topic=f"Text {n % 2}") for n, each in enumerate(details)]
    assert not deck(two, **settings).has_copies


def test_labels_say_nothing_of_the_level():
    """Over many seeds every level stands in front about as often as it is there."""
    first = [deck(teams=1, seed=str(seed)).cards[0].item.level for seed in range(150)]
    assert all(20 < first.count(level) < 90 for level in Level)


def test_supporting_details_are_not_asked_in_a_review():
    detail = item("a supporting detail", "a heading", row=99, kind=Kind.DETAIL)
    assert detail not in {card.item for card in deck([*ITEMS, detail]).cards}


@pytest.mark.parametrize(
    ("guide", "teams"),
    [
        (GuideFor.TEAM, ["Team 0", "Team 1", "Team 2"]),
        (GuideFor.CLASS, [None]),
        (GuideFor.NONE, []),
    ],
)
def test_guides_are_made_for_whom_the_recipe_says(guide, teams):
    assert [made.team for made in deck(guide=guide).guides] == teams


def test_a_team_without_cards_has_no_guide():
    assert len(deck(ITEMS[:2], teams=4).guides) == 2
