"""The call sheet, as words and frames before any PDF."""

import pytest
from msgspec.structs import replace
from strategies import TEAMS, card
from support.flown import flown, is_on_page, things

from cards.picture import Picture, PictureKind
from decks.activities import make_deck
from decks.layout.frame import Image, Line, Placed, Ribbon, Text
from decks.lesson.exercises import Effort, Exercise
from decks.press.teacher.calling import call_sheet, points_told
from decks.recipe import Activity, PaperName, Points, Recipe
from decks.team import make_teams

DOT = Picture.of(b"", PictureKind.PNG, width=400, height=300, alpha=False)


def lesson(count=25, *, exercises=(), items=None, **settings):
    recipe = Recipe(
        title="Shore",
        teams=make_teams(TEAMS[:4], [None] * 4),
        activity=Activity.ROUNDS,
        **settings,
    )
    items = items or [
        replace(card(n, n % 3 + 1), also_right=(f"also {n}", f"or {n}")) for n in range(count)
    ]
    return make_deck(recipe, items, number=1, seed="s", exercises=exercises)


def sheet(deck):
    return flown(deck, lambda width: call_sheet(deck, deck.lesson, width))


def texts(pages):
    return [text for page in pages for text, _x, _y in things(page, Text)]


def words(pages):
    return " ".join(" ".join(text.text.split()) for text in texts(pages))


@pytest.mark.parametrize("paper", [PaperName.A4, PaperName.LETTER])
@pytest.mark.parametrize("count", [1, 2, 10, 72])
def test_every_question_stands_once_with_its_answers_in_calling_order(count, paper):
    deck = lesson(count, paper=paper)
    pages = sheet(deck)
    said = words(pages)
    places = []
    for one in deck.cards:
        row = f" {one.label} {one.item.prompt} "
        assert said.count(row) == 1
        places.append(said.index(row))
        rest = said[places[-1] :]
        assert f"{one.item.answer} also right: {one.item.also_right[0]}, " in rest[:150]
    assert places == sorted(places)
    assert all(is_on_page(page) for page in pages)


def test_the_head_of_the_round_stands_on_every_page_that_it_goes_on_to():
    pages = sheet(lesson(72))
    for page in pages[1:]:
        assert "Accept" in words([page])
        (first, *_others) = sorted(things(page, Text), key=lambda found: -found[2])
        assert first[0].text.startswith("Round ")
    assert "continued" in words(pages)


def test_a_head_is_never_the_last_thing_on_a_page():
    for page in sheet(lesson(72)):
        blocks = [placed for placed in page.things if isinstance(placed, Placed)]
        lowest = min(blocks, key=lambda placed: placed.y)
        assert not list(things(lowest.frame, Ribbon))
        assert "Accept" not in words([lowest.frame])


def test_the_question_is_the_largest_thing_of_a_row_and_the_answer_is_semibold():
    deck = lesson(1)
    said = {" ".join(text.text.split()): text for text in texts(sheet(deck))}
    (one,) = deck.cards
    question, answer = said[one.item.prompt], said[one.item.answer]
    also = said[f"also right: {', '.join(one.item.also_right)}"]
    assert question.size > answer.size > also.size
    assert (answer.strong, also.tone) == (True, "quiet")


def test_every_exercise_is_told_with_its_count_and_both_of_its_options():
    wade = Exercise("Wade", "12 steps", "small steps; sitting: heels up", Effort.MODERATE)
    said = words(sheet(lesson(1, exercises=[wade])))
    assert "Wade, 12 steps or small steps or sitting: heels up" in said


def test_an_exercise_without_options_is_given_some():
    said = words(sheet(lesson(1, exercises=[Exercise("Wade", "", "", Effort.GENTLE)])))
    assert "Wade or smaller and slower or sitting:" in said


def test_the_seconds_to_allow_and_the_level_stand_with_every_question():
    deck = lesson(12)
    said = words(sheet(deck))
    for each in deck.lesson.rounds:
        for call in each:
            level = call.item.level.name.lower()
            assert f"{call.item.prompt} {call.seconds} seconds · {level} · Tides" in said


def test_a_round_has_the_ribbon_of_its_pile_of_cards():
    deck = lesson(25)
    ribbons = {ribbon.team for page in sheet(deck) for ribbon, _x, _y in things(page, Ribbon)}
    assert ribbons == set(range(len(deck.owners)))


def test_a_picture_that_is_asked_about_stands_small_with_its_question():
    items = [replace(card(1), image=DOT), card(2)]
    (page,) = sheet(lesson(items=items))
    ((image, _x, _y),) = things(page, Image)
    assert (image.picture, image.width / image.height) == (DOT, pytest.approx(4 / 3))
    assert image.height < 60


def test_no_row_is_parted_by_the_foot_of_a_page():
    """Every hairline ends a row: what stands between two of them is one row's, whole."""
    deck = lesson(72)
    for page in sheet(deck):
        rules = [y for line, _x, y in things(page, Line) if line.tone == "hairline"]
        labels = [text for text, x, _y in things(page, Text) if text.size == 13.5 and x < 70]
        assert len(rules) == len(labels)


def test_the_cautions_stand_before_the_first_call():
    said = words(sheet(lesson(3)))
    assert said.index("Before the first call") < said.index("clue ")
    for part in ("gentler or the seated way", "No exercise is a penalty", "licensed staff"):
        assert part in said


@pytest.mark.parametrize(
    ("points", "told"),
    [
        (
            Points(),
            (
                "1 point for a right answer · 1 more for being right and first · "
                "1 more for moving together, each in their own way."
            ),
        ),
        (Points(2, 0, 0), "2 points for a right answer."),
        (Points(0, 1, 0), "1 point for being right and first."),
        (
            Points(0, 1, 2),
            (
                "1 point for being right and first · "
                "2 more for moving together, each in their own way."
            ),
        ),
        (Points(0, 0, 0), "No points are counted."),
    ],
)
def test_the_points_are_told_as_they_are_set(points, told):
    assert points_told(points) == told
