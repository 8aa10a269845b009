"""The cards of a record, and the items on them."""

import re
from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from cards.item import Item, Kind, Level
from cards.place import Place
from cards.style import Span, Spans, TextStyle
from decks.card import Card
from decks.record.damage import WrongValueError, met_at
from decks.record.pictures import Album
from decks.record.values import each, items, mapping, part, text, texts, whole
from decks.team import Team

_LABEL = re.compile("[0-9A-Za-z]{1,20}")


def hands_read(
    records: object, owners: Sequence[Team], album: Album
) -> tuple[tuple[Card, ...], ...]:
    """Return the cards of each owner, in the record's order.

    Raises `WrongValueError` for a card that cannot be, or that is there twice.
    """
    numbers = {owner.name: n for n, owner in enumerate(owners)}
    hands: list[dict[str, Card]] = [{} for _ in owners]
    for card in each(records, partial(_card, numbers=numbers, album=album)):
        hand = hands[card.owner]
        if card.label in hand:
            raise WrongValueError(card.label)
        hand[card.label] = card
    return tuple(tuple(hand.values()) for hand in hands)


def _card(record: object, numbers: Mapping[str, int], album: Album) -> Card:
    given = mapping(record)
    label = part(given, "label", _label)
    return Card(label, part(given, "team", lambda name: numbers[text(name)]), _item(given, album))


def _label(value: object) -> str:
    label = text(value)
    if not _LABEL.fullmatch(label):
        raise WrongValueError(value)
    return label


def _item(given: dict[str, Any], album: Album) -> Item:
    prompt, answer = part(given, "prompt", text), part(given, "answer", text)
    item = Item(
        prompt=prompt,
        answer=answer,
        kind=part(given, "kind", Kind),
        level=part(given, "level", _level),
        topic=part(given, "topic", text),
        prompt_place=part(given, "prompt_at", _place),
        answer_place=part(given, "answer_at", _place),
        wrong=part(given, "wrong", texts),
        prompt_spans=part(given, "prompt_spans", partial(_spans, letters=prompt)),
        answer_spans=part(given, "answer_spans", partial(_spans, letters=answer)),
        image=part(given, "picture", album.picture),
    )
    if item.key != part(given, "item", text):
        raise met_at("item", WrongValueError())
    return item


def _level(value: object) -> Level:
    return Level(whole(value))


def _place(record: object) -> Place:
    sheet, row, column = items(record)
    return Place(text(sheet), whole(row, most=1 << 24), whole(column, most=1 << 24))


def _spans(record: object, letters: str) -> Spans:
    """Return spans, which follow one another within a text."""
    spans = []
    end = 0
    for one in items(record):
        start, stop, style = items(one)
        spans.append(Span(whole(start, end), whole(stop, end + 1, len(letters)), TextStyle(style)))
        end = spans[-1].end
        if spans[-1].start >= end:
            raise WrongValueError(one)
    return tuple(spans)
