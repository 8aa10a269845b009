"""How each activity goes, from which somebody who has never seen it could run the lesson."""

from msgspec.structs import replace

from decks.deck import Deck
from decks.lesson import Bases, Called, Telling
from decks.press.teacher.how.collect import collect
from decks.press.teacher.how.counts import a_team
from decks.press.teacher.how.organizer import organizer
from decks.press.teacher.how.play import Part, Play
from decks.press.teacher.how.review import review
from decks.press.teacher.how.rounds import rounds
from decks.press.teacher.how.stations import stations
from decks.recipe import Activity

__all__ = ["Part", "Play", "play_of"]


ALONE = (
    "A team of one student cannot do this as told: take fewer teams, so that each has two or more."
)


def play_of(deck: Deck) -> Play:
    """Return how to run the lesson that a deck is for."""
    play = _play_of(deck)
    if _are_alone(deck):
        return replace(play, setting=(ALONE, *play.setting))
    return play


def _are_alone(deck: Deck) -> bool:
    """Say whether a team has one student where teams do something together."""
    together = not isinstance(deck.lesson, Bases)
    return together and not deck.is_one_team and min(a_team(deck)) == 1


def _play_of(deck: Deck) -> Play:
    lesson = deck.lesson
    if isinstance(lesson, Called):
        return rounds(deck, lesson)
    if isinstance(lesson, Bases):
        return stations(deck, lesson)
    if isinstance(lesson, Telling):
        return organizer(deck, lesson)
    return collect(deck) if deck.recipe.activity is Activity.COLLECT else review(deck)
