"""The score sheet for pencil, as frames before any PDF."""

from itertools import pairwise

import pytest
from strategies import TEAMS, card
from support.flown import flown, is_on_page, things

from decks.activities import make_deck
from decks.layout.frame import Box, Ribbon, Text
from decks.layout.units import in_mm
from decks.press.teacher.score import score_sheet
from decks.recipe import Activity, PaperName, Points, Recipe
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
    return flown(deck, lambda width: score_sheet(deck, deck.lesson, width))


def words(page):
    return [text.text for text, _x, _y in things(page, Text)]


def boxes(pages, tone):
    return [(box, x, y) for page in pages for box, x, y in things(page, Box) if box.stroke == tone]


CASES = [(1, 1), (10, 2), (10, 4), (25, 7), (72, 8), (72, 12)]


@pytest.mark.parametrize("paper", [PaperName.A4, PaperName.LETTER])
@pytest.mark.parametrize(("count", "teams"), CASES)
def test_every_question_has_a_place_for_every_team_and_way_to_earn(count, teams, paper):
    deck = lesson(count, teams, paper=paper)
    pages = sheet(deck)
    ticked = any(word.startswith("Tick") for word in words(pages[0]))
    ways = 3 if teams > 1 else 2  # a lone team is always first
    assert len(boxes(pages, "frame")) == count * teams * (ways if ticked else 1)
    assert [word for page in pages for word in words(page) if word.startswith("Card ")] == [
        f"Card {one.label}" for one in deck.cards
    ]
    assert all(is_on_page(page) for page in pages)


@pytest.mark.parametrize(("count", "teams"), CASES)
def test_places_are_large_enough_for_a_pencil_and_do_not_touch(count, teams):
    """Five millimetres, the squares of squared exercise paper; common practice."""
    pages = sheet(lesson(count, teams))
    for page in pages:
        by_row = {}
        for box, x, y in boxes([page], "frame"):
            assert in_mm(box.width) >= 4.85
            assert in_mm(box.height) >= 4.85
            by_row.setdefault(round(y, 1), []).append((x, x + box.width))
        for row in by_row.values():
            row.sort()
            assert all(end < start for (_a, end), (start, _b) in pairwise(row))


@pytest.mark.parametrize(("count", "teams"), CASES)
def test_there_is_a_sum_for_every_round_and_one_so_far_and_the_last_is_the_total(count, teams):
    deck = lesson(count, teams)
    rounds = len(deck.owners)
    said = [word for page in sheet(deck) for word in words(page)]
    for n in range(1, rounds + 1):
        assert said.count(f"Round {n}: sum") == (rounds > 1)
    assert [word for word in said if word.startswith("Rounds 1 ")] == [
        f"Rounds 1 {'to' if n > 2 else 'and'} {n}" for n in range(2, rounds)
    ]
    assert said.count("Total") == 1
    sums = rounds + max(rounds - 2, 0) + 1 if rounds > 1 else 1
    assert len(boxes(sheet(deck), "rule")) == sums * teams


def test_the_names_and_ribbons_of_the_teams_are_at_the_head_of_every_page():
    deck = lesson(72, 12)
    for page in sheet(deck):
        assert set(TEAMS) <= set(words(page))
        ribbons = [ribbon.team for ribbon, _x, _y in things(page, Ribbon)]
        assert ribbons == list(range(len(deck.owners), len(deck.owners) + 12))


def test_a_round_is_on_one_page_with_its_sums():
    for page in sheet(lesson(72, 12)):
        said = words(page)
        starts = [word for word in said if word.startswith("Round ") and ":" not in word]
        ends = [word for word in said if word.endswith(": sum")]
        assert [f"{start}: sum" for start in starts] == ends


@pytest.mark.parametrize(
    ("points", "told"),
    [
        (Points(), "Tick what a team earns: R right, F right and first, T moving together. "),
        (Points(2, 1, 0), "Tick what a team earns: R right (2), F right and first (1). "),
        (Points(1, 0, 0), "Tick what a team earns: R right. "),
    ],
)
def test_places_are_for_what_earns_points(points, told):
    deck = lesson(5, 2, points=points)
    said = " ".join(words(sheet(deck)[0]))
    assert told in said
    ways = sum(bool(number) for number in (points.right, points.first, points.together))
    assert len(boxes(sheet(deck), "frame")) == 5 * 2 * ways


def test_where_ticks_would_be_too_small_a_number_is_written():
    assert "Write each team’s points, 0 to 3: " in " ".join(words(sheet(lesson(10, 12))[0]))


def test_a_number_of_points_says_by_a_ring_that_the_answer_was_right():
    """Without it nobody could count afterwards how many teams had a card right."""
    ring = "Put a ring round points with a right answer among them. "
    assert ring in " ".join(words(sheet(lesson(10, 12))[0]))
    assert ring not in " ".join(words(sheet(lesson(10, 4))[0]))
    unsaid = lesson(10, 12, points=Points(0, 1, 1))
    assert "ring" not in " ".join(words(sheet(unsaid)[0]))


def test_a_lone_team_earns_nothing_for_being_first():
    said = " ".join(words(sheet(lesson(5, 1))[0]))
    assert "R right, T moving together. " in said
    only_first = lesson(5, 1, points=Points(0, 1, 0))
    assert score_sheet(only_first, only_first.lesson, 500) == []


def test_where_no_points_are_counted_there_is_no_sheet():
    deck = lesson(5, 2, points=Points(0, 0, 0))
    assert score_sheet(deck, deck.lesson, 500) == []
