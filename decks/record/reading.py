"""A record is read: a deck, or an error that says which file is damaged.

What marks, the next deck and a reprint ask for is read, and nothing else: damage elsewhere is no
reason to refuse a lost card.
"""

import json
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import Any, NoReturn

from decks.card import Card
from decks.deck import Deck
from decks.record.cards import hands_read
from decks.record.damage import DAMAGE, DamagedRecordError, WrongValueError, damaged
from decks.record.earlier import FORMATS, with_what_it_lacks
from decks.record.finding_it import RECORD, TOO_LARGE, bytes_of, folder_of
from decks.record.guides import guides_read
from decks.record.pictures import Album
from decks.record.recipes import recipe_read, teams_read
from decks.record.values import each, mapping, number, part, whole

MOST_VALUES = 2_000_000
"""Those of some fifty thousand cards; of empty lists, as many bytes could hold far more."""

_FOREIGN = "is not the record of a deck"
_NAME_ANOTHER = "Name the folder of a deck that Fairdeal has made."


def read_record(folder: Path) -> Deck:
    """Return the deck of a folder, as far as its record is read.

    `folder` may also be the record itself. Pictures are known by their digests only, which is
    enough to tell items apart; `with_pictures` opens those that are to be printed. Raises
    `DamagedRecordError` for a record that is missing, damaged, foreign, too large or of a newer
    form.
    """
    folder = folder_of(folder)
    path = folder / RECORD
    record = _parsed(path)
    _refuse_foreign(record, path)
    try:
        return _deck(with_what_it_lacks(record), folder)
    except DAMAGE as error:
        raise DamagedRecordError(path, damaged(error)) from error


def _parsed(path: Path) -> Any:  # noqa: ANN401 (it is any JSON)
    data = bytes_of(path)
    if sum(map(data.count, (b",", b"[", b"{"))) > MOST_VALUES:
        raise DamagedRecordError(path, TOO_LARGE)
    try:
        # an editor may have put a byte order mark before it
        letters = data.decode("utf-8-sig")
        return json.loads(letters, parse_constant=_not_finite, object_pairs_hook=_each_once)
    except json.JSONDecodeError as error:
        wrong = f"is damaged at line {error.lineno} and was left as it is"
        raise DamagedRecordError(path, wrong) from error
    except (ValueError, RecursionError) as error:
        raise DamagedRecordError(path, damaged(error)) from error


def _each_once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """Return an object; of two values under one name nobody knows which is meant."""
    found = dict(pairs)
    if len(found) < len(pairs):
        raise WrongValueError(pairs[0])
    return found


def _not_finite(word: str) -> NoReturn:
    raise WrongValueError(word)


def _refuse_foreign(record: object, path: Path) -> None:
    if not isinstance(record, dict) or not {"format", "recipe", "cards"} <= record.keys():
        raise DamagedRecordError(path, _FOREIGN, _NAME_ANOTHER)
    form = record["format"]
    if type(form) is int and form > max(FORMATS):
        wrong = "was written by a newer Fairdeal and was left as it is"
        raise DamagedRecordError(path, wrong, "Bring this one up to date.")
    if type(form) is not int or form not in FORMATS:
        raise DamagedRecordError(path, _FOREIGN, _NAME_ANOTHER)


def _deck(record: dict[str, Any], folder: Path) -> Deck:
    album = Album(folder, part(record, "pictures", mapping))
    owners = part(record, "owners", teams_read)
    hands = part(record, "cards", partial(hands_read, owners=owners, album=album))
    cards = [card for hand in hands for card in hand]
    return Deck(
        recipe=recipe_read(record),
        number=part(record, "number", partial(whole, least=1)),
        owners=owners,
        hands=hands,
        guides=part(record, "guide", partial(guides_read, cards=cards)),
        shares=part(record, "cards", partial(_shares, cards=cards)),
    )


def _shares(records: list[dict[str, Any]], cards: Sequence[Card]) -> dict[str, float]:
    """Return the shares expected by marks: those that are not what the level says."""
    told = each([one for one in records if "expected_share" in one], _share)
    by_level = {card.item.key: card.item.level.expected_share for card in cards}
    return {key: share for key, share in told if share != by_level[key]}


def _share(card: dict[str, Any]) -> tuple[str, float]:
    return card["item"], part(card, "expected_share", partial(number, least=0, most=1))
