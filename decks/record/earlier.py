"""Records of an earlier day: what they lack, and what stands for it.

All records so far are of format 1. It has grown by what a reader can do without; whoever raises
the format adds here how the one before it becomes the new one.
"""

from collections.abc import Callable, Mapping
from typing import Any

from decks.record.values import each, items, mapping, part

FORMATS = (1,)
"""The formats that can be read."""

_RECORD_LACKS: Mapping[str, Callable[[dict[str, Any]], Any]] = {
    "owners": lambda record: part(record, "teams", items),
    "pictures": lambda _: {},
}

_CARD_LACKS: Mapping[str, Any] = {
    "picture": None,
    "prompt_spans": [],
    "answer_spans": [],
    "wrong": [],
    "prompt_at": ["deck.json", 0, 0],
    "answer_at": ["deck.json", 0, 0],
}


def with_what_it_lacks(record: dict[str, Any]) -> dict[str, Any]:
    """Return a record that has all that is read of one of today."""
    lacking = {key: make(record) for key, make in _RECORD_LACKS.items() if key not in record}
    cards = part(record, "cards", lambda ones: list(each(ones, _card_of_today)))
    return record | lacking | {"cards": cards}


def _card_of_today(card: object) -> dict[str, Any]:
    return {**_CARD_LACKS, **mapping(card)}
