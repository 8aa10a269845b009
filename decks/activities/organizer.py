"""Supporting details to be sorted under the headings of a text."""

import random
from collections.abc import Sequence

from cards.answers import answered
from cards.item import Item, folded
from decks.activities.arrangement import Arrangement, labelled
from decks.lesson import Story, Telling
from decks.recipe import Dealing, Recipe


def organizer(recipe: Recipe, items: Sequence[Item], seed: str) -> Arrangement:
    """Give every group the details of its texts.

    A topic is a text. In copies every group has all texts; in shares the texts are divided among
    the groups, and where there are fewer texts than groups, several groups have the same one.
    """
    stories = stories_of(items)
    chosen = tuple(_stories_for(team, recipe, stories) for team in range(len(recipe.teams)))
    generator = random.Random(f"{seed}/organizer")
    shuffled = {story.topic: _shuffled(story, generator) for story in stories}
    hands = [[item for story in mine for item in shuffled[story.topic]] for mine in chosen]
    return Arrangement(recipe.teams, labelled(hands, run_on=False), lesson=Telling(chosen))


def stories_of(items: Sequence[Item]) -> tuple[Story, ...]:
    """Return the texts in the order of their first rows, their headings likewise."""
    topics: dict[str, dict[str, list[Item]]] = {}
    names: dict[str, str] = {}
    for item in items:
        names.setdefault(folded(item.topic), item.topic)
        headings = topics.setdefault(folded(item.topic), {})
        headings.setdefault(answered(item), []).append(item)
    return tuple(
        Story(
            names[topic],
            tuple((details[0].answer, tuple(details)) for details in headings.values()),
        )
        for topic, headings in topics.items()
    )


def _stories_for(team: int, recipe: Recipe, stories: Sequence[Story]) -> tuple[Story, ...]:
    if recipe.deal is Dealing.COPIES or not stories:
        return tuple(stories)
    teams = len(recipe.teams)
    if len(stories) <= teams:
        return (stories[team % len(stories)],)
    return tuple(stories[team::teams])


def _shuffled(story: Story, generator: random.Random) -> list[Item]:
    details = [item for _heading, items in story.headings for item in items]
    return generator.sample(details, len(details))
