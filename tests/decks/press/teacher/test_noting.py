"""How the marks come into marks.xlsx: what is asked for afterwards was written down before."""

import re

import pytest
from strategies import TEAMS, card
from support.flown import flown, things
from support.texts import organizer_deck

from decks.activities import make_deck
from decks.layout.frame import Text
from decks.press.teacher.how import play_of
from decks.press.teacher.noting import how_to_note
from decks.press.teacher.score import score_sheet
from decks.press.type.pages import column, page_paper
from decks.recipe import Activity, Dealing, GuideFor, Points, Recipe
from decks.team import make_teams

NO_POINTS = Points(0, 0, 0)


def deck_of(activity, *, teams=3, **settings):
    recipe = Recipe(
        "Shore",
        make_teams(TEAMS[:teams], [None] * teams),
        activity=activity,
        **{"guide": GuideFor.NONE, **settings},
    )
    items = [card(n, n % 3 + 1, answer=f"{n} tide") for n in range(24)]
    return make_deck(recipe, items, number=1, seed="s")


def noted(deck):
    return how_to_note(deck, column(page_paper(deck.recipe.paper)))


def run(deck):
    play = play_of(deck)
    return " ".join([*play.needs, *play.setting, *(part.text for part in play.steps)])


def printed_sheet(deck):
    pages = flown(deck, lambda width: score_sheet(deck, deck.lesson, width))
    return [text.text for page in pages for text, _x, _y in things(page, Text)]


@pytest.mark.parametrize("activity", Activity)
def test_it_is_said_which_sheet_marks_are_for_and_what_comes_of_them(activity):
    deck = organizer_deck() if activity is Activity.ORGANIZER else deck_of(activity)
    assert "sheet Tally of marks.xlsx" in noted(deck)[0].lower() + noted(deck)[1:]
    assert re.search(r"\bTries, .*\bRight, ", noted(deck))
    assert noted(deck).endswith(
        "Then fairdeal marks says what they show, and fairdeal next makes the next deck from them."
    )
    assert "guide" not in noted(deck)


@pytest.mark.parametrize("activity", [Activity.REVIEW, Activity.COLLECT])
def test_where_guides_are_filled_in_it_is_these_that_are_marked(activity):
    told = noted(deck_of(activity, guide=GuideFor.TEAM))
    assert "On the sheet Study guides of marks.xlsx" in told
    assert "Tally" not in told


@pytest.mark.parametrize("teams", [2, 4, 12])
@pytest.mark.parametrize("points", [Points(), Points(1, 0, 0), Points(0, 1, 1), NO_POINTS])
def test_who_was_right_in_rounds_can_be_read_off_what_is_named(teams, points):
    deck = deck_of(Activity.ROUNDS, teams=teams, points=points)
    told, sheet = noted(deck), printed_sheet(deck)
    if "(R on the score sheet, or" in told:
        assert sheet.count("R") >= teams
    elif "(the rings on the score sheet, or" in told:
        assert "ring round points with a right answer" in " ".join(sheet)
    else:
        assert "as you noted on the call sheet" in told
        assert "Note beside the card how many teams were right." in run(deck)
        assert not points.right


def test_the_score_is_not_taken_for_what_is_known():
    scored = deck_of(Activity.ROUNDS)
    assert "The sheet Score is for points: it does not say what is known." in noted(scored)
    assert (
        "or the sheet Score of marks.xlsx, which adds up by itself (then note beside each card "
        "on the call sheet how many teams were right)"
    ) in run(scored)
    assert "Score" not in noted(deck_of(Activity.ROUNDS, points=NO_POINTS))


def test_slips_have_what_the_tally_asks_for():
    deck = deck_of(Activity.STATIONS, rounds=3)
    assert "The first time at a card write its number on your slip, with a tick if" in run(deck)
    assert "begin a new line on their slips" in run(deck)
    assert "Tries, how many slips have its number, in the line of its set, and" in noted(deck)
    assert "Right, how many have it with a tick." in noted(deck)
    one = deck_of(Activity.STATIONS, rounds=1)
    assert "line" not in noted(one) + run(one)


def test_groups_note_what_lay_under_another_heading():
    wrong = "note the numbers of cards that lay under another"
    for deck in (organizer_deck(), organizer_deck(deal=Dealing.SHARES)):
        assert wrong in run(deck)
        assert "note" in noted(deck)
    assert "Tries, how many groups sorted it" in noted(organizer_deck())
    assert "Tries, 1, and Right, 1, or 0" in noted(organizer_deck(deal=Dealing.SHARES))


def test_a_review_without_a_guide_notes_the_cards_that_were_not_right():
    deck = deck_of(Activity.REVIEW)
    assert "say the answer once, its number is noted on the sheet, and" in run(deck)
    assert "A sheet at every home for the team’s strokes and notes of cards that were not" in run(
        deck
    )
    without = deck_of(Activity.REVIEW, points=NO_POINTS)
    assert "A sheet at every home for the team’s notes of cards" in run(without)
    assert "how many teams asked it" in noted(deck_of(Activity.REVIEW, deal=Dealing.COPIES))
    guided = deck_of(Activity.REVIEW, guide=GuideFor.TEAM)
    assert "noted" not in run(guided)
    assert "A sheet at every home for the team’s strokes." in run(guided)
