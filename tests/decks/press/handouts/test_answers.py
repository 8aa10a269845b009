"""The answers as a list, as frames before any PDF."""

import pytest
from strategies import TEAMS, card
from support.flown import things

from cards.item import Kind
from decks.activities import make_deck
from decks.layout.frame import Ribbon, Text
from decks.press.handouts.answers import answer_pages
from decks.recipe import Activity, Dealing, Recipe, Sides
from decks.team import make_teams


def answers(count, activity=Activity.REVIEW, teams=2, **settings):
    kind = Kind.DETAIL if activity is Activity.ORGANIZER else Kind.VOCABULARY
    recipe = Recipe(
        "Shore",
        make_teams(TEAMS[:teams], [None] * teams),
        activity=activity,
        sides=Sides.FRONTS,
        **settings,
    )
    items = [card(n, n % 3 + 1, kind=kind, answer=f"tide {n}") for n in range(count)]
    return answer_pages(make_deck(recipe, items, number=1, seed="s"))


def words(page):
    return [text.text for text, _x, _y in things(page, Text)]


@pytest.mark.parametrize("count", [120, 200, 500])
def test_every_page_begins_with_whose_answers_stand_there(count):
    first, *others = answers(count)
    assert "continued" not in words(first)
    assert others
    for page in others:
        name, about = words(page)[:2]
        assert name in TEAMS[:2]
        assert about == "continued" or about.isdecimal()
        assert next(iter(things(page, Ribbon)))[0].team == TEAMS.index(name)


def test_a_list_for_all_teams_goes_on_without_a_name():
    pages = answers(200, deal=Dealing.COPIES)
    assert len(pages) > 1
    assert not [page for page in pages if {"continued", *TEAMS[:2]} & set(words(page))]


@pytest.mark.parametrize(
    ("activity", "deal", "whose"),
    [
        (Activity.REVIEW, Dealing.SHARES, "for whoever checks the team"),
        (Activity.REVIEW, Dealing.COPIES, "the same for every team"),
        (Activity.ROUNDS, Dealing.SHARES, "for whoever checks"),
        (Activity.STATIONS, Dealing.SHARES, "one for each base"),
        (Activity.ORGANIZER, Dealing.COPIES, "the same for every team"),
    ],
)
def test_the_list_says_whom_it_is_for(activity, deal, whose):
    page, *_more = answers(24, activity, deal=deal)
    assert words(page)[1] == f"In the order of the labels, {whose}"
