"""How each activity goes, from which somebody who has never seen it could run the lesson."""

from decks.deck import Deck
from decks.lesson import Bases, Called, Telling
from decks.press.teacher.how.collect import collect
from decks.press.teacher.how.organizer import organizer
from decks.press.teacher.how.play import Part, Play
from decks.press.teacher.how.review import review
from decks.press.teacher.how.rounds import rounds
from decks.press.teacher.how.stations import stations
from decks.recipe import Activity

__all__ = ["Part", "Play", "play_of"]


def play_of(deck: Deck) -> Play:
    """Return how to run the lesson that a deck is for."""
    lesson = deck.lesson
    if isinstance(lesson, Called):
        return rounds(deck, lesson)
    if isinstance(lesson, Bases):
        return stations(deck, lesson)
    if isinstance(lesson, Telling):
        return organizer(deck, lesson)
    return collect(deck) if deck.recipe.activity is Activity.COLLECT else review(deck)
