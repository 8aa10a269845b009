"""What a lesson needs besides cards, as the record tells it: cards by their labels."""

from collections.abc import Mapping, Sequence
from typing import Any, TypeAlias

from msgspec import to_builtins

from cards.item import Item
from decks.card import Card
from decks.deck import Deck
from decks.lesson import Bases, Call, Called, Story, Telling

Labels: TypeAlias = Mapping[Item, str]


def lesson_record(deck: Deck) -> dict[str, Any] | None:
    """Return what the lesson needs, under the word for what it is made of."""
    lesson = deck.lesson
    if isinstance(lesson, Called):
        return {"rounds": [[_call(call) for call in called] for called in lesson.rounds]}
    if isinstance(lesson, Bases):
        hands = zip(deck.hands, lesson.sets, strict=True)
        return {"sets": [_labels_of(items, _labels(hand)) for hand, items in hands]}
    if isinstance(lesson, Telling):
        owned = zip(map(_labels, deck.hands), lesson.stories, strict=True)
        return {"stories": [[_story(one, labels) for one in mine] for labels, mine in owned]}
    return None


def _call(call: Call) -> dict[str, Any]:
    exercise = to_builtins(call.exercise)
    return {"label": call.label, "seconds": call.seconds, "exercise": exercise}


def _labels(hand: Sequence[Card]) -> Labels:
    return {card.item: card.label for card in hand}


def _labels_of(items: Sequence[Item], labels: Labels) -> list[str]:
    return [labels[item] for item in items]


def _story(story: Story, labels: Labels) -> dict[str, Any]:
    return {
        "topic": story.topic,
        "headings": [
            {"heading": heading, "cards": _labels_of(details, labels)}
            for heading, details in story.headings
        ],
    }
