"""What a lesson needs besides cards, written and read; cards are told by their labels."""

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import Any, TypeAlias

from msgspec import to_builtins

from cards.item import Item
from decks.deck import Card, Deck
from decks.lesson import Bases, Call, Called, Lesson, Story, Telling
from decks.lesson.exercises import Exercise
from decks.record.damage import WrongValueError
from decks.record.values import each, items, made, mapping, part, text, whole

Hands: TypeAlias = Sequence[Sequence[Card]]
Labels: TypeAlias = Mapping[Item, str]


def lesson_record(deck: Deck) -> dict[str, Any] | None:
    """Return what the lesson needs, under the word for what it is made of."""
    lesson = deck.lesson
    if isinstance(lesson, Called):
        return {"rounds": [[_call(call) for call in called] for called in lesson.rounds]}
    if isinstance(lesson, Bases):
        hands = zip(deck.hands, lesson.sets, strict=True)
        return {"sets": [_told(items, _labels(hand)) for hand, items in hands]}
    if isinstance(lesson, Telling):
        owned = zip(map(_labels, deck.hands), lesson.stories, strict=True)
        return {"stories": [[_story(one, labels) for one in mine] for labels, mine in owned]}
    return None


def _call(call: Call) -> dict[str, Any]:
    exercise = to_builtins(call.exercise)
    return {"label": call.label, "seconds": call.seconds, "exercise": exercise}


def _labels(hand: Sequence[Card]) -> Labels:
    return {card.item: card.label for card in hand}


def _told(items: Sequence[Item], labels: Labels) -> list[str]:
    return [labels[item] for item in items]


def _story(story: Story, labels: Labels) -> dict[str, Any]:
    return {
        "topic": story.topic,
        "headings": [
            {"heading": heading, "cards": _told(details, labels)}
            for heading, details in story.headings
        ],
    }


def lesson_read(record: object, hands: Hands) -> Lesson | None:
    """Return the lesson; its items are those of the cards.

    Raises `WrongValueError` or `KeyError` for a card that is not there.
    """
    if record is None:
        return None
    given, by_label = mapping(record), [_by_label(hand) for hand in hands]
    for word, read in _READ.items():
        if word in given:
            return part(given, word, partial(_read, read=read, hands=by_label))
    raise WrongValueError(record)


_ByLabel: TypeAlias = Mapping[str, Item]
_Reader: TypeAlias = Callable[[list[Any], list[_ByLabel]], Lesson]


def _by_label(hand: Sequence[Card]) -> _ByLabel:
    return {card.label: card.item for card in hand}


def _read(record: object, read: _Reader, hands: list[_ByLabel]) -> Lesson:
    return read(items(record), hands)


def _called(record: list[Any], hands: list[_ByLabel]) -> Called:
    paired = zip(record, hands, strict=True)
    return Called(tuple(tuple(each(own, partial(_call_read, hand=hand))) for own, hand in paired))


def _call_read(record: object, hand: _ByLabel) -> Call:
    given = mapping(record)
    label = part(given, "label", text)
    exercise = part(given, "exercise", partial(made, Exercise))
    return Call(label, hand[label], exercise, part(given, "seconds", whole))


def _sets(record: list[Any], hands: list[_ByLabel]) -> Bases:
    return Bases(tuple(_found(own, hand) for own, hand in zip(record, hands, strict=True)))


def _found(labels: object, hand: _ByLabel) -> tuple[Item, ...]:
    return tuple(hand[text(label)] for label in items(labels))


def _telling(record: list[Any], hands: list[_ByLabel]) -> Telling:
    paired = zip(record, hands, strict=True)
    return Telling(tuple(tuple(each(own, partial(_story_read, hand=hand))) for own, hand in paired))


def _story_read(record: object, hand: _ByLabel) -> Story:
    given = mapping(record)
    headings = part(given, "headings", lambda ones: list(each(ones, partial(_heading, hand=hand))))
    return Story(part(given, "topic", text), tuple(headings))


def _heading(record: object, hand: _ByLabel) -> tuple[str, tuple[Item, ...]]:
    given = mapping(record)
    return part(given, "heading", text), part(given, "cards", partial(_found, hand=hand))


_READ: Mapping[str, _Reader] = {
    "rounds": _called,
    "sets": _sets,
    "stories": _telling,
}
