"""What a record tells, which others may read: its fields, and lessons by the labels of cards."""

import json
from pathlib import Path

import pytest
from msgspec.structs import replace
from support.records import COLOPHON, deck_of

from decks.recipe import Activity, Recipe
from decks.record import write
from decks.team import make_teams

SAMPLES = Path(__file__).with_name("samples") / "format-1"
PLAIN = Recipe("Saltmarsh week", make_teams(["Heron", "Otter", "Samphire"], [None] * 3))
NAMED_BY_CONTENT = ("pictures", "papers", "fairness", "chance_to_win")


def told(recipe, **known):
    return json.loads(write(deck_of(recipe, **known), COLOPHON))


def fields(value, path=()):
    """Yield the way to every field; entries of a list, or named by content, are one."""
    if isinstance(value, list) or path[-1:] in [(name,) for name in NAMED_BY_CONTENT]:
        for one in value if isinstance(value, list) else value.values():
            yield from fields(one, (*path, "*"))
    elif isinstance(value, dict):
        for name, one in value.items():
            yield (*path, name)
            yield from fields(one, (*path, name))


@pytest.mark.parametrize("activity", Activity)
def test_every_field_of_a_sample_is_written_today(activity):
    sample = json.loads((SAMPLES / activity / "deck.json").read_text(encoding="utf-8"))
    record = told(replace(PLAIN, activity=activity, early_finishers=True, cards=9))
    assert set(fields(sample)) <= set(fields(record))


def lesson_of(activity):
    """Return the lesson of a deck, what its record tells of it, and each pile's labels by item."""
    deck = deck_of(replace(PLAIN, activity=activity))
    labels = [{card.item: card.label for card in hand} for hand in deck.hands]
    return deck.lesson, json.loads(write(deck, COLOPHON))["lesson"], labels


def test_what_is_called_is_told_round_by_round():
    lesson, record, labels = lesson_of(Activity.ROUNDS)
    for called, told_of, pile in zip(lesson.rounds, record["rounds"], labels, strict=True):
        assert [call["label"] for call in told_of] == [pile[call.item] for call in called]
        assert [call["seconds"] for call in told_of] == [call.seconds for call in called]
        names = [call.exercise.name for call in called]
        assert [call["exercise"]["name"] for call in told_of] == names


def test_sets_are_told_base_by_base():
    lesson, record, labels = lesson_of(Activity.STATIONS)
    sets = zip(lesson.sets, labels, strict=True)
    assert record["sets"] == [[pile[item] for item in items] for items, pile in sets]


def test_stories_are_told_heading_by_heading():
    lesson, record, labels = lesson_of(Activity.ORGANIZER)
    assert lesson.stories[0]
    for stories, told_of, pile in zip(lesson.stories, record["stories"], labels, strict=True):
        assert [one["topic"] for one in told_of] == [story.topic for story in stories]
        for story, one in zip(stories, told_of, strict=True):
            headings = [(each["heading"], each["cards"]) for each in one["headings"]]
            assert headings == [
                (name, [pile[d] for d in details]) for name, details in story.headings
            ]


def test_how_fair_a_deal_is_is_told_with_its_proof():
    deck = deck_of(PLAIN)
    record = json.loads(write(deck, COLOPHON))
    for goal in deck.deal.goals:
        one = record["fairness"][goal.name]
        assert (one["reached"], one["bound"], one["unit"]) == (goal.reached, goal.bound, goal.unit)
        assert [(value, tuple(held)) for value, held in one["counts"]] == list(goal.counts)
    assert [*record["chance_to_win"].values()] == pytest.approx(deck.deal.chances, abs=1e-9)
    assert [*record["chance_to_win"]] == ["Heron", "Otter", "Samphire"]


def test_where_a_deck_came_from_and_what_was_printed_is_told():
    record = told(PLAIN, number=7)
    assert (record["number"], record["seed"], record["leaves"]) == (7, "low", 3)
    assert record["made_from"] == {"file": "Saltmarsh week.xlsx", "digest": "ab" * 32}
    assert record["left_out"] == [{"place": "Facts B7", "why": "There is no answer."}]
    assert record["papers"] == {"cards.pdf": "cd" * 32}


def test_every_team_and_every_card_has_a_line_of_its_own():
    deck = deck_of(PLAIN)
    lines = write(deck, COLOPHON).splitlines()
    assert len([line for line in lines if line.startswith('  {"name": ')]) == 2 * len(deck.owners)
    assert len([line for line in lines if line.startswith('  {"label": ')]) == len(deck.cards)
