"""How often the study guide is copied."""

import pytest
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.layout.paper import PAPERS
from decks.press.teacher.copying import guide_copies
from decks.recipe import GuideFor, PaperName, Recipe, Support
from decks.team import make_teams

ITEMS = [card(n, n % 3 + 1, answer=f"{n} tide") for n in range(25)]


def told(teams=4, items=ITEMS, **settings):
    made = make_teams(TEAMS[:teams], [None] * teams)
    deck = make_deck(Recipe(title="Shore", teams=made, **settings), items, number=1, seed="s")
    return guide_copies(deck, PAPERS[PaperName.A4])


@pytest.mark.parametrize(
    ("settings", "copies"),
    [
        ({"students": 24}, "24 students in 4 teams: 6 copies of each."),
        ({"students": 26}, "26 students in 4 teams, 7 in a team at the most: 7 copies of each."),
        ({"students": 4}, "4 students in 4 teams: 1 copy of each."),
        ({"students": 24, "teams": 1}, "24 students: 24 copies."),
        ({"students": 1, "guide": GuideFor.CLASS}, "1 student: 1 copy."),
        ({"students": 24, "guide": GuideFor.CLASS}, "24 students: 24 copies."),
    ],
)
def test_there_is_a_copy_for_every_student(settings, copies):
    assert f" {copies} " in told(**settings)


def test_one_team_has_no_pages_of_its_own():
    assert "each student gets the pages of their own team" in told()
    assert "every student gets the same pages" in told(teams=1)


@pytest.mark.parametrize(
    ("support", "says"),
    [
        (Support.BANK, "with more and closer extra words"),
        (Support.HINTS, "without hints"),
        (Support.NONE, "There is no second version"),
    ],
)
def test_what_those_get_who_are_done_early_is_told_where_it_was_asked_for(support, says):
    assert says in told(support=support, early_finishers=True)
    assert says not in told(support=support)
    assert ("study-guide-more.pdf" in told(support=support, early_finishers=True)) == (
        support is not Support.NONE
    )


def test_a_unit_without_other_words_has_no_second_version_and_is_told_why():
    # five words are the answers of five blanks: none is left
    few = told(teams=1, items=ITEMS[:5], early_finishers=True)
    assert "There is no second version: the unit has no other words that could be extra words." in (
        few
    )
    assert "study-guide-more.pdf" not in few
