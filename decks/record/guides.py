"""Study guides, written and read."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from cards.answers import answered
from cards.item import Item
from decks.bank import Guide, GuidePart, has_one_word_each, is_sound
from decks.deck import Card, Deck
from decks.record.damage import WrongValueError, met_at
from decks.record.values import each, items, mapping, number, part, text, text_or_none, texts


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


def guides_read(record: Mapping[str, Any], cards: Sequence[Card]) -> tuple[Guide, ...]:
    """Return the guides of a record; their blanks are items of the cards.

    Raises `WrongValueError` for a blank that is on no card.
    """
    read = partial(_parts, by_key={card.item.key: card.item for card in reversed(cards)})
    parts, more = part(record, "guide", read), part(record, "guide_more", read)
    if not more.keys() <= parts.keys():
        raise met_at("guide_more", WrongValueError())
    return tuple(Guide(team, tuple(own), tuple(more.get(team, ()))) for team, own in parts.items())


def _parts(record: object, by_key: Mapping[str, Item]) -> dict[str | None, list[GuidePart]]:
    """Return the parts of each guide by whose it is, None for the class."""
    parts: dict[str | None, list[GuidePart]] = {}
    for team, own in each(record, partial(_part, by_key=by_key)):
        parts.setdefault(team, []).append(own)
    return parts


def _part(record: object, by_key: Mapping[str, Item]) -> tuple[str | None, GuidePart]:
    given = mapping(record)
    blanks = part(given, "blanks", lambda ones: tuple(by_key[_key(one)] for one in items(ones)))
    own = GuidePart(
        blanks=blanks,
        bank=part(given, "bank", texts),
        extra_words=part(given, "extra_words", texts),
        reusable=len({answered(blank) for blank in blanks}) < len(blanks),
        guess_mean=part(given, "guess_mean", partial(number, least=0)),
        guess_all=part(given, "guess_all", partial(number, least=0, most=1)),
    )
    return part(given, "team", text_or_none), own


def _key(blank: object) -> str:
    return text(mapping(blank)["item"])
