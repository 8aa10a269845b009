"""Study guides, as the record tells them, and their blanks read again."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from cards.item import Item
from decks.bank import Guide, GuidePart, has_one_word_each, is_sound
from decks.card import Card
from decks.deck import Deck
from decks.record.values import each, items, mapping, part, text, text_or_none


def guide_record(deck: Deck, *, second: bool = False) -> list[dict[str, Any]]:
    """Return the parts of all guides, or of their second versions."""
    return [
        _part_record(guide.team, part)
        for guide in deck.guides
        for part in (guide.second if second else guide.parts)
    ]


def _part_record(team: str | None, part: GuidePart) -> dict[str, Any]:
    return {
        "team": team,
        "blanks": [
            {"clue": item.prompt, "answer": item.answer, "item": item.key} for item in part.blanks
        ],
        "bank": list(part.bank),
        "extra_words": list(part.extra_words),
        "guess_mean": round(part.guess_mean, 6),
        "guess_all": part.guess_all,
        "sound": is_sound(part),
        "one_word_each": has_one_word_each(part),
    }


def guides_read(record: object, cards: Sequence[Card]) -> tuple[Guide, ...]:
    """Return the guides of a record as far as marks ask: whose they are, and their blanks.

    Raises `WrongValueError` for a blank that is on no card.
    """
    by_key = {card.item.key: card.item for card in reversed(cards)}
    parts: dict[str | None, list[GuidePart]] = {}
    for team, blanks in each(record, partial(_blanks, by_key=by_key)):
        parts.setdefault(team, []).append(_asked_alone(blanks))
    return tuple(Guide(team, tuple(own)) for team, own in parts.items())


def _blanks(record: object, by_key: Mapping[str, Item]) -> tuple[str | None, tuple[Item, ...]]:
    """Return whose a part is, None for the class, and what it asks."""
    given = mapping(record)
    blanks = part(given, "blanks", lambda ones: tuple(by_key[_key(one)] for one in items(ones)))
    return part(given, "team", text_or_none), blanks


def _key(blank: object) -> str:
    return text(mapping(blank)["item"])


def _asked_alone(blanks: tuple[Item, ...]) -> GuidePart:
    """Return a part without its bank, which is not read."""
    return GuidePart(blanks, (), reusable=False, extra_words=(), guess_mean=0, guess_all=0)
