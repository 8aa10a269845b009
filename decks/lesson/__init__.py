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

    @property
    def calls(self) -> tuple[Call, ...]:
        """All calls in their order."""
        return tuple(call for each in self.rounds for call in each)


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

    @property
    def is_alike(self) -> bool:
        """Whether all teams have the same stories."""
        return len(set(self.stories)) == 1

    @property
    def teams_by_story(self) -> dict[Story, list[int]]:
        """Every story once, with the numbers of the teams that have it."""
        teams: dict[Story, list[int]] = {}
        for team, stories in enumerate(self.stories):
            for story in stories:
                teams.setdefault(story, []).append(team)
        return teams


Lesson: TypeAlias = Called | Bases | Telling
