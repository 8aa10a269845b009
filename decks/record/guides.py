"""Study guides, written and read."""

from collections.abc import Sequence
from typing import Any

from cards.item import Item, folded
from decks.bank import Guide, GuidePart, has_one_word_each, is_sound
from decks.deck import Card, Deck
from decks.record.damage import WrongValueError
from decks.record.values import items, mapping, number, text, texts


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


def guides_read(first: object, second: object, cards: Sequence[Card]) -> tuple[Guide, ...]:
    """Return the guides; their blanks are items of the cards.

    Raises `WrongValueError` for a blank that is on no card.
    """
    by_key = {card.item.key: card.item for card in reversed(cards)}
    parts, more = _parts(first, by_key), _parts(second, by_key)
    if not more.keys() <= parts.keys():
        raise WrongValueError(second)
    return tuple(Guide(team, tuple(own), tuple(more.get(team, ()))) for team, own in parts.items())


def _parts(record: object, by_key: dict[str, Item]) -> dict[str | None, list[GuidePart]]:
    """Return the parts of each guide by whose it is, None for the class."""
    parts: dict[str | None, list[GuidePart]] = {}
    for given in map(mapping, items(record)):
        team = None if given["team"] is None else text(given["team"])
        parts.setdefault(team, []).append(_part(given, by_key))
    return parts


def _part(given: dict[str, Any], by_key: dict[str, Item]) -> GuidePart:
    blanks = tuple(by_key[text(mapping(one)["item"])] for one in items(given["blanks"]))
    return GuidePart(
        blanks=blanks,
        bank=texts(given["bank"]),
        extra_words=texts(given["extra_words"]),
        reusable=len({folded(blank.answer) for blank in blanks}) < len(blanks),
        guess_mean=number(given["guess_mean"], 0),
        guess_all=number(given["guess_all"], 0, 1),
    )
