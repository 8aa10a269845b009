"""The roster of seats as it is printed, against the rule that it follows."""

import re

import pytest
from strategies import TEAMS, card
from support.flown import flown, is_on_page, things

from decks.activities import make_deck
from decks.layout.frame import Text
from decks.lesson.writers import writers
from decks.press.teacher.seats import seats
from decks.recipe import Activity, Recipe
from decks.team import make_teams


def lesson(count=25, teams=4, **settings):
    recipe = Recipe(
        title="Shore",
        teams=make_teams(TEAMS[:teams], [None] * teams),
        activity=Activity.ROUNDS,
        **settings,
    )
    return make_deck(recipe, [card(n, n % 3 + 1) for n in range(count)], number=1, seed="s")


def sheet(deck):
    return flown(deck, lambda width: seats(deck, width))


def lines(pages):
    """The lines of the roster from the top, each its first words and its numbers left to right."""
    for page in pages:
        rows = {}
        for text, x, y in things(page, Text):
            rows.setdefault(round(y), []).append((x, text))
        for _y, found in sorted(rows.items(), reverse=True):
            yield [text for _x, text in sorted(found, key=lambda each: each[0])]


def printed(deck):
    """Return for each size of team which seat writes at which card, as the page says it."""
    labels, turns = [], {}
    for texts in lines(sheet(deck)):
        said = [text.text for text in texts]
        numbers = [word for word in said if re.fullmatch("[0-9]+", word)]
        if "card" in said:
            labels = numbers
        for word in said:
            if found := re.fullmatch("Team of ([0-9]+): seat", word):
                own = turns.setdefault(int(found[1]), {})
                own |= dict(zip(labels, map(int, numbers), strict=True))
    return turns


@pytest.mark.parametrize(
    ("count", "teams", "students", "sizes"),
    [
        (1, 4, 24, {6}),
        (10, 4, 24, {6}),
        (30, 2, 5, {3, 2}),
        (72, 12, 31, {3, 2}),
        (12, 4, 4, {1}),
        (12, 4, 3, {1}),
        (72, 1, 60, {60}),
    ],
)
@pytest.mark.parametrize("rounds", [None, 1])
def test_the_page_says_who_writes_at_every_card_for_each_size_of_team(
    count, teams, students, sizes, rounds
):
    deck = lesson(count, teams, students=students, rounds=rounds)
    turns = printed(deck)
    assert set(turns) == sizes
    for size, turn in turns.items():
        assert list(turn) == [one.label for one in deck.cards]
        assert tuple(turn.values()) == writers(size, count)
    assert all(is_on_page(page) for page in sheet(deck))


@pytest.mark.parametrize(
    ("students", "told"),
    [
        (24, "24 students: 6 students in each team"),
        (26, "26 students: 7 in Heron and Otter; 6 in Samphire and Curlew"),
        (4, "4 students: 1 student in each team"),
        (3, "fewer students than teams: take fewer teams"),
    ],
)
def test_the_teams_with_one_student_more_are_named(students, told):
    (page,) = sheet(lesson(10, students=students))
    assert told in " ".join(text.text for text, _x, _y in things(page, Text))


def test_one_team_is_told_once():
    (page,) = sheet(lesson(10, teams=1))
    told = " ".join(text.text for text, _x, _y in things(page, Text))
    assert "24 students in one team At the table, count" in told
    assert "each" not in told
