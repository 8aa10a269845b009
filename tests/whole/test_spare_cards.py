"""Spare cards: where words are gathered, every team has some for words that get lost."""

import pytest
from support.lesson import TEAMS, lesson, plain, without_foot
from support.pdfs import card_pages

WAYS = [
    {"cards": "16"},
    {"cards": "18", "deal": "shares"},
    {"cards": "15", "ink": "stock"},
    {"cards": "9", "paper": "a4", "card_size": "medium"},
    {"cards": "8", "card_size": "full", "deal": "shares"},
]


def cells(deck, back):
    return [
        plain(without_foot(page.text_in(cell)))
        for page in card_pages(deck / "cards.pdf")[back::2]
        for cell in page.cells
    ]


@pytest.mark.parametrize("way", WAYS, ids=str)
def test_every_team_has_a_spare_card_at_the_least_and_its_back_is_like_all_others(way):
    deck = lesson(activity="collect", **way)
    fronts, backs = cells(deck, back=False), cells(deck, back=True)
    spare = [text for text in fronts if text.endswith("spare")]
    for team in TEAMS:
        wanted = plain(f"Write the lost word here {team} spare")
        assert any(text.endswith(wanted) for text in spare)
    filled = [text for text in fronts if text]
    assert len([text for text in backs if text]) == len(filled)
    assert all(text.endswith(tuple(map(plain, TEAMS))) for text in backs if text)
    assert way.get("card_size") == "full" or len(set(backs) - {""}) == len(TEAMS)


@pytest.mark.parametrize("activity", ["review", "rounds", "stations"])
def test_where_nothing_is_carried_there_are_none(activity):
    assert not any(
        "spare" in text for text in cells(lesson(activity=activity, cards="10"), back=False)
    )
