"""A record is read: a deck, or an error that says which file is damaged."""

import json
from pathlib import Path
from typing import Any, NoReturn

from decks.record.colophon import Colophon, Recorded
from decks.record.damage import DAMAGE, DamagedRecordError, WrongValueError, damaged
from decks.record.earlier import FORMATS, with_what_it_lacks
from decks.record.finding_it import RECORD, TOO_LARGE, bytes_of, folder_of
from decks.record.pictures import Album
from decks.record.rebuilding import rebuilt
from decks.record.values import each, mapping, part, text, whole

MOST_VALUES = 2_000_000
"""Those of some fifty thousand cards; of empty lists, as many bytes could hold far more."""

_FOREIGN = "is not the record of a deck"
_NAME_ANOTHER = "Name the folder of a deck that Fairdeal has made."


def read_record(folder: Path, *, pictures: bool = True) -> Recorded:
    """Return the deck of a folder, from its record alone.

    `folder` may also be the record itself. Without `pictures`, those of the deck are known by their
    digests only, which is enough to tell items apart but not to print them. Raises
    `DamagedRecordError` for a record that is missing, damaged, foreign, too large or of a newer
    form, and for a picture that is missing or another than was printed.
    """
    folder = folder_of(folder)
    path = folder / RECORD
    record = _parsed(path)
    _refuse_foreign(record, path)
    try:
        return _recorded(with_what_it_lacks(record), folder, pictures=pictures)
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
    number = record["format"]
    if type(number) is int and number > max(FORMATS):
        wrong = "was written by a newer Fairdeal and was left as it is"
        raise DamagedRecordError(path, wrong, "Bring this one up to date.")
    if type(number) is not int or number not in FORMATS:
        raise DamagedRecordError(path, _FOREIGN, _NAME_ANOTHER)


def _recorded(record: dict[str, Any], folder: Path, *, pictures: bool) -> Recorded:
    album = Album(folder, part(record, "pictures", mapping), pictures)
    return Recorded(rebuilt(record, album), _colophon(record))


def _colophon(record: dict[str, Any]) -> Colophon:
    file, digest = part(record, "made_from", _made_from)
    return Colophon(
        made_from=file,
        digest=digest,
        left_out=part(record, "left_out", lambda rows: tuple(each(rows, _left_out))),
        papers=part(record, "papers", _papers),
        leaves=part(record, "leaves", whole),
    )


def _made_from(record: object) -> tuple[str, str]:
    given = mapping(record)
    return part(given, "file", text), part(given, "digest", text)


def _left_out(record: object) -> tuple[str, str]:
    given = mapping(record)
    return part(given, "place", text), part(given, "why", text)


def _papers(record: object) -> dict[str, str]:
    return {name: text(digest) for name, digest in mapping(record).items()}
