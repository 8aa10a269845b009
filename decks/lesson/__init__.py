"""What happens in the lesson itself: who moves when, what is called, and how much is enough."""

from dataclasses import dataclass
from typing import TypeAlias

from cards.item import Item
from decks.lesson.exercises import Exercise


@dataclass(frozen=True, slots=True)
class Call:
    """A question as it is called: the label of its card, the exercise after it, and its time."""

    label: str
    item: Item
    exercise: Exercise
    seconds: int


@dataclass(frozen=True, slots=True)
class Called:
    """A lesson of called questions, round by round."""

    rounds: tuple[tuple[Call, ...], ...]


@dataclass(frozen=True, slots=True)
class Bases:
    """A lesson at bases: sets that replace each other, each with one item for each base in turn."""

    sets: tuple[tuple[Item, ...], ...]


@dataclass(frozen=True, slots=True)
class Story:
    """One text: its topic, and its headings, each with its supporting details."""

    topic: str
    headings: tuple[tuple[str, tuple[Item, ...]], ...]


@dataclass(frozen=True, slots=True)
class Telling:
    """A lesson of organisers: for each team the stories that it works on."""

    stories: tuple[tuple[Story, ...], ...]


Lesson: TypeAlias = Called | Bases | Telling
