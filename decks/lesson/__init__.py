"""What happens in the lesson itself: who moves when, what is called, and how much is enough."""

from typing import TypeAlias

from msgspec import Struct

from cards.item import Item
from decks.lesson.exercises import Exercise


class Call(Struct, frozen=True):
    """A question as it is called: the label of its card, the exercise after it, and its time."""

    label: str
    item: Item
    exercise: Exercise
    seconds: int


class Called(Struct, frozen=True):
    """A lesson of called questions, round by round."""

    rounds: tuple[tuple[Call, ...], ...]


class Bases(Struct, frozen=True):
    """A lesson at bases: sets that replace each other, each with one item for each base in turn."""

    sets: tuple[tuple[Item, ...], ...]


class Story(Struct, frozen=True):
    """One text: its topic, and its headings, each with its supporting details."""

    topic: str
    headings: tuple[tuple[str, tuple[Item, ...]], ...]


class Telling(Struct, frozen=True):
    """A lesson of organisers: for each team the stories that it works on."""

    stories: tuple[tuple[Story, ...], ...]


Lesson: TypeAlias = Called | Bases | Telling
