"""The teacher's pages of a class that is one team: no other team is spoken of."""

import re

import pytest
from strategies import card
from support.flown import things
from support.texts import MARSH, details_of

from decks.activities import make_deck
from decks.layout.frame import Text
from decks.layout.grid import make_grid
from decks.layout.stacking import plan
from decks.press.teacher import teacher_pages
from decks.recipe import Activity, GuideFor, Ink, Points, Recipe, Sides
from decks.team import make_teams

OTHERS = (
    *("[Ee]very team", "[Ee]ach team", "Teams whisper", "Teams that", "[Tt]eams differ"),
    *("(?<!as )a team", "One walker a team", "For one team", "sit as teams", "one a group"),
    *("[Tt]eams agree", "in each team", "own team", "of a team", "another team"),
    *("first team", "[Ee]ach table", "first down", "and first", "F right", "A tie", "tie share"),
    *(
        "all papers",
        "[Ee]very group",
        "[Ee]ach group",
        "for a group",
        "How fair",
        r"team, \d in all",
    ),
    *("each (?:set|round)", "set by set", "the sets", "of set 1", "one colour after", "each pile"),
)


def teacher(activity, teams=1, **settings):
    """Return the text of the teacher's pages of a deck in one round, or one set."""
    named = make_teams(["Heron", "Otter"][:teams], [None] * teams)
    recipe = Recipe("Shore", named, activity=activity, rounds=teams, **settings)
    details = activity is Activity.ORGANIZER
    items = details_of({"": MARSH}) if details else [card(n, n % 3 + 1) for n in range(8)]
    deck = make_deck(recipe, items, number=1, seed="s")
    grid = make_grid(recipe.paper, recipe.card_size, recipe.sides, recipe.flip)
    stacks = plan(
        [len(hand) for hand in deck.hands], len(grid.slots), apart=recipe.ink is Ink.STOCK
    )
    pages = teacher_pages(deck, grid, stacks)
    return " ".join(text.text for page in pages for text, _x, _y in things(page, Text))


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize("guide", [GuideFor.TEAM, GuideFor.NONE])
@pytest.mark.parametrize("sides", Sides)
@pytest.mark.parametrize("ink", [Ink.COLOUR, Ink.STOCK])
def test_no_page_speaks_of_others(activity, guide, sides, ink):
    told = teacher(activity, guide=guide, sides=sides, ink=ink)
    assert [part for part in OTHERS if re.search(rf"\b{part}\b", told)] == []


def test_what_would_speak_of_others_is_said_to_several_teams():
    told = " ".join(
        teacher(activity, teams=2, sides=sides, ink=ink)
        for activity in Activity
        for sides in (Sides.DUPLEX, Sides.FRONTS)
        for ink in (Ink.COLOUR, Ink.STOCK)
    )
    unsaid = [part for part in OTHERS if not re.search(rf"\b{part}\b", told)]
    assert unsaid == []


def test_points_of_one_team_are_those_that_it_can_miss():
    told = teacher(Activity.ROUNDS, points=Points(2, 3, 1))
    assert "2 points for a right answer · 1 more for moving together" in told
