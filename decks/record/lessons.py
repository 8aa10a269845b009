"""What a lesson needs besides cards, written and read; cards are told by their labels."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from typing import Any, TypeAlias

from cards.item import Item
from decks.deck import Card, Deck
from decks.lesson import Bases, Call, Called, Lesson, Story, Telling
from decks.lesson.exercises import Exercise
from decks.record.damage import WrongValueError
from decks.record.values import items, made, mapping, text, whole

Hands: TypeAlias = Sequence[Sequence[Card]]


def lesson_record(deck: Deck) -> dict[str, Any] | None:
    """Return what the lesson needs, under the word for what it is made of."""
    lesson = deck.lesson
    if isinstance(lesson, Called):
        return {"rounds": [[_call(call) for call in called] for called in lesson.rounds]}
    if isinstance(lesson, Bases):
        hands = zip(deck.hands, lesson.sets, strict=True)
        return {"sets": [_labels(hand, items) for hand, items in hands]}
    if isinstance(lesson, Telling):
        owned = zip(deck.hands, lesson.stories, strict=True)
        return {"stories": [[_story(hand, one) for one in mine] for hand, mine in owned]}
    return None


def _call(call: Call) -> dict[str, Any]:
    exercise = asdict(call.exercise)
    return {"label": call.label, "seconds": call.seconds, "exercise": exercise}


def _labels(hand: Sequence[Card], items: Sequence[Item]) -> list[str]:
    labels = {card.item: card.label for card in hand}
    return [labels[item] for item in items]


def _story(hand: Sequence[Card], story: Story) -> dict[str, Any]:
    return {
        "topic": story.topic,
        "headings": [
            {"heading": heading, "cards": _labels(hand, details)}
            for heading, details in story.headings
        ],
    }


def lesson_read(record: object, hands: Hands) -> Lesson | None:
    """Return the lesson; its items are those of the cards.

    Raises `WrongValueError` or `KeyError` for a card that is not there.
    """
    if record is None:
        return None
    given = mapping(record)
    for word, read in _READ.items():
        if word in given:
            return read(items(given[word]), [_by_label(hand) for hand in hands])
    raise WrongValueError(record)


_ByLabel: TypeAlias = Mapping[str, Item]


def _by_label(hand: Sequence[Card]) -> _ByLabel:
    return {card.label: card.item for card in hand}


def _called(record: list[Any], hands: list[_ByLabel]) -> Called:
    paired = zip(record, hands, strict=True)
    return Called(tuple(tuple(_call_read(one, hand) for one in items(own)) for own, hand in paired))


def _call_read(record: object, hand: _ByLabel) -> Call:
    given = mapping(record)
    label = text(given["label"])
    exercise = made(Exercise, given["exercise"])
    return Call(label, hand[label], exercise, whole(given["seconds"]))


def _sets(record: list[Any], hands: list[_ByLabel]) -> Bases:
    return Bases(tuple(_found(own, hand) for own, hand in zip(record, hands, strict=True)))


def _found(labels: object, hand: _ByLabel) -> tuple[Item, ...]:
    return tuple(hand[text(label)] for label in items(labels))


def _telling(record: list[Any], hands: list[_ByLabel]) -> Telling:
    paired = zip(record, hands, strict=True)
    return Telling(
        tuple(tuple(_story_read(one, hand) for one in items(own)) for own, hand in paired)
    )


def _story_read(record: object, hand: _ByLabel) -> Story:
    given = mapping(record)
    headings = [
        (text(mapping(one)["heading"]), _found(one["cards"], hand))
        for one in items(given["headings"])
    ]
    return Story(text(given["topic"]), tuple(headings))


_READ: Mapping[str, Callable[[list[Any], list[_ByLabel]], Lesson]] = {
    "rounds": _called,
    "sets": _sets,
    "stories": _telling,
}
