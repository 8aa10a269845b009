"""The page from which a lesson is run, in decks as they are printed."""

import re

import pytest
from support.teacher_file import ACTIVITIES, TEAMS, lesson, page_called, record_of, teacher

PAPERS = ("letter", "a4")
INKS = ("colour", "grey")


def how_to(deck):
    return page_called(deck, "How to run it")


@pytest.fixture(params=ACTIVITIES)
def activity(request):
    return request.param


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("ink", INKS)
def test_it_is_exactly_one_page(activity, paper, ink):
    titles = [title for title, _text in teacher(lesson(activity=activity, paper=paper, ink=ink))]
    at = titles.index("How to run it")
    assert titles[at + 1]
    assert titles.count("How to run it") == 1


@pytest.mark.parametrize("paper", PAPERS)
def test_its_numbers_are_those_of_the_record(activity, paper):
    deck = lesson(activity=activity, paper=paper, students="26", minutes="25")
    record, text = record_of(deck), how_to(deck)
    assert f"{len(record['cards'])} cards" in text
    assert f"{len(record['teams'])} teams · 26 students, 6 or 7 a team" in text
    assert "25 minutes" in text
    by_owner = [card["team"] for card in record["cards"]]
    counts = sorted({by_owner.count(owner) for owner in by_owner})
    told = {int(number) for number in re.findall(r"\d+", text)}
    if activity != "rounds":  # its piles are told on the page that says how to make the deck
        assert set(counts) <= told


def test_every_file_that_it_names_is_in_the_folder(activity):
    deck = lesson(activity=activity)
    named = set(re.findall(r"[a-z-]+\.(?:pdf|xlsx)", how_to(deck)))
    assert "cards.pdf" in named
    assert named <= {file.name for file in deck.iterdir()}


@pytest.mark.parametrize("activity", ["review", "collect"])
def test_the_guides_blanks_are_those_of_the_record(activity):
    deck = lesson(activity=activity)
    parts = [(part["team"], len(part["blanks"])) for part in record_of(deck)["guide"]]
    blanks = {sum(count for owner, count in parts if owner == team) for team, _count in parts}
    (told,) = re.findall(r"(\d+(?: or \d+)?) blanks?\b", how_to(deck))
    assert {int(number) for number in re.findall(r"\d+", told)} == blanks


def test_every_pile_is_told_with_its_count_when_it_is_kept(activity):
    deck = lesson(activity=activity)
    record, text = record_of(deck), page_called(deck, "Keep it")
    owners = dict.fromkeys(card["team"] for card in record["cards"])
    for owner in owners:
        labels = [card["label"] for card in record["cards"] if card["team"] == owner]
        assert f"{owner} {labels[0]}–{labels[-1]} {len(labels)}" in text


def test_teams_with_two_passes_are_told_both_files():
    text = how_to(lesson(activity="review", sides="two-passes"))
    assert {"cards-fronts.pdf", "cards-backs.pdf,"} <= set(text.split())
    assert "cards.pdf" not in text


@pytest.mark.parametrize("words", [*TEAMS, "student’s name:", "Name the student"])
def test_no_student_and_no_team_is_singled_out(activity, words):
    assert words not in how_to(lesson(activity=activity))
