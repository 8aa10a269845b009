"""The teacher's file: what is in it, in which order, with the cautions where they belong."""

import re

import pytest
from openpyxl import load_workbook
from support.teacher_file import ACTIVITIES, TEAMS, lesson, page_called, teacher, told

from decks.press.teacher import steps

CHAPTERS = {
    "review": [
        *("Make this deck", "How to run it", "Answer key: study guide"),
        *("Answer key: cards", "How fair the deal is", "Keep it"),
    ],
    "collect": [
        *("Make this deck", "How to run it", "Are there enough words?"),
        *("Answer key: study guide", "Answer key: word cards", "Keep it"),
    ],
    "rounds": [
        *("Make this deck", "How to run it", "Call sheet", "Whose turn it is to write"),
        *("Score sheet", "Answer key: cards", "Keep it"),
    ],
    "stations": [
        *("Make this deck", "How to run it", "Base plan", "Rotation", "Answer key: the sets"),
        "Keep it",
    ],
    "organizer": [
        *("Make this deck", "How to run it", "Checking grid", "Key to the details"),
        "Keep it",
    ],
}


def titles(deck):
    return [title for title, _text in teacher(deck) if title]


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("ink", ["colour", "grey"])
@pytest.mark.parametrize("activity", CHAPTERS)
def test_chapters_come_in_the_order_of_use(activity, paper, ink):
    assert titles(lesson(activity=activity, paper=paper, ink=ink)) == CHAPTERS[activity]


@pytest.mark.parametrize("activity", ACTIVITIES)
def test_the_contents_say_on_which_page_each_chapter_begins(activity):
    deck = lesson(activity=activity)
    found = re.search(r"Pages: (.*?\d)(?= 1 )", teacher(deck)[0][1])
    entries = [entry.rsplit(" ", 1) for entry in found[1].split(" · ")]
    begins = [n for n, (title, _text) in enumerate(teacher(deck), start=1) if title]
    assert [int(page) for _name, page in entries] == begins
    assert entries[0][0] == "make it"
    assert entries[-1][0] == "keep it"


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("activity", ACTIVITIES)
def test_everyone_is_cautioned_where_they_cut_and_where_they_move(activity, paper):
    deck = lesson(activity=activity, paper=paper)
    cutting = page_called(deck, "Make this deck")
    moving = page_called(deck, "How to run it")
    assert " ".join(steps.CUTTING.split()) in cutting
    assert " ".join(steps.MOVING.split()) in moving
    assert cutting.index("Adults only") > cutting.index("Cut Keep the leaves")
    assert "the school’s rules come first" in cutting
    assert "The school’s rules, and the staff who are licensed to decide" in moving


@pytest.mark.parametrize(
    ("activity", "owners"),
    [("review", TEAMS), ("collect", ("Part 1", "Part 2", "Part 3")), ("stations", ("Set",))],
)
def test_a_page_that_a_key_goes_on_to_begins_with_whose_it_is(activity, owners):
    deck = lesson(activity=activity, deal="copies" if activity == "collect" else "shares")
    chapter, going_on = "", []
    for title, text in teacher(deck):
        chapter = title or chapter
        if not title and chapter.startswith("Answer key") and "word cards" not in chapter:
            going_on.append(text)
    assert going_on
    assert all(text.startswith(owners) for text in going_on)


# SHAPE America and CDC as the facts have them: common practice for moving in a classroom
@pytest.mark.parametrize(
    "caution",
    [
        *("walking only", "floor clear", "bags away", "arm’s length apart", "stop signal"),
        *("where people step", "seated", "no reason asked", "individual plans"),
        *("medical notes", "never a penalty|ever a penalty", "school’s rules", "licensed"),
    ],
)
def test_the_caution_has_what_is_common_practice(caution):
    assert re.search(caution, steps.MOVING.lower())


def test_where_nothing_is_cut_no_cutter_is_cautioned_of():
    text = " ".join(text for _title, text in teacher(lesson(activity="rounds", card_size="full")))
    assert "paper cutter" not in text
    assert "Before anyone moves" in text


@pytest.mark.parametrize("activity", ACTIVITIES)
def test_no_page_is_left_without_words(activity):
    for _title, text in teacher(lesson(activity=activity)):
        assert len(text) > 100


@pytest.mark.parametrize(
    ("activity", "line"),
    [
        ("review", r"how to ask and answer on one’s feet, 20 minutes, then the study guide\."),
        ("collect", r"how the words are gathered, 20 minutes, then the study guide\."),
        ("rounds", r"the call sheet: 3 rounds, about \d+ minutes, \d+ of them moving\."),
        ("stations", r"the base plan: 3 sets for 8 bases, 20 minutes\."),
        ("organizer", r"how groups build, explain and compare, 20 minutes\."),
    ],
)
def test_the_terminal_says_what_runs_the_lesson(activity, line):
    (run,) = [each for each in told(activity=activity) if each.startswith("Run ")]
    assert re.search(line, run)


@pytest.mark.parametrize(
    ("activity", "cards"),
    [
        ("review", "22 cards for 4 teams"),
        ("collect", "88 cards for 4 teams"),
        ("rounds", "22 cards in 3 rounds of 7 or 8"),
        ("stations", "22 cards in 3 sets of 7 or 8"),
        ("organizer", "48 cards for 4 teams"),
    ],
)
def test_the_terminal_and_the_first_page_count_the_piles_by_what_they_are(activity, cards):
    assert any(line.startswith(f"Shore · deck 1: {cards}") for line in told(activity=activity))
    assert cards in teacher(lesson(activity=activity))[0][1]


def test_the_workbook_adds_up_points_where_they_are_counted():
    def sheets(**settings):
        book = load_workbook(lesson(**settings) / "marks.xlsx", read_only=True)
        names = book.sheetnames
        book.close()
        return names

    assert "Score" in sheets(activity="rounds")
    assert "Score" not in sheets(activity="rounds", points="0, 0, 0")
    assert "Score" not in sheets(activity="stations")


def test_few_words_are_noted_in_the_terminal():
    notes = [line for line in told(activity="collect", minutes="60") if line.startswith("Note")]
    assert any("too few for 60 minutes" in note for note in notes)
    right = told(activity="collect", minutes="12")
    assert not any("for 12 minutes:" in line for line in right)
