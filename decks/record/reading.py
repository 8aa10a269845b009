"""A record is read: a deck, or an error that says which file is damaged."""

import json
from pathlib import Path
from typing import Any, NoReturn

from decks.record.colophon import Colophon, Recorded
from decks.record.damage import DamagedRecordError, WrongValueError
from decks.record.earlier import FORMATS, with_what_it_lacks
from decks.record.finding_it import RECORD, bytes_of, folder_of
from decks.record.pictures import Album
from decks.record.rebuilding import rebuilt
from decks.record.values import items, mapping, text, whole

_DAMAGE = (
    ValueError,
    TypeError,
    KeyError,
    AttributeError,
    IndexError,
    OverflowError,
    RecursionError,
)
"""What a value that cannot be there leads to, wherever in a record it stands."""

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
    except _DAMAGE as error:
        raise DamagedRecordError(path, "is damaged and was left as it is") from error


def _parsed(path: Path) -> Any:  # noqa: ANN401 (it is any JSON)
    data = bytes_of(path)
    try:
        return json.loads(data.decode(), parse_constant=_not_finite)
    except (ValueError, RecursionError) as error:
        raise DamagedRecordError(path, "is damaged and was left as it is") from error


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
    album = Album(folder, mapping(record["pictures"]), pictures)
    return Recorded(rebuilt(record, album), _colophon(record))


def _colophon(record: dict[str, Any]) -> Colophon:
    made_from = mapping(record["made_from"])
    left_out = [
        (text(mapping(row)["place"]), text(row["why"])) for row in items(record["left_out"])
    ]
    papers = {name: text(digest) for name, digest in mapping(record["papers"]).items()}
    return Colophon(
        made_from=text(made_from["file"]),
        digest=text(made_from["digest"]),
        left_out=tuple(left_out),
        papers=papers,
        leaves=whole(record["leaves"]),
    )
