"""A value of JSON becomes what it is said to be, or is refused: nothing is guessed.

Numbers stay as they are written, so that a record that is read and written again is the same.
"""

import math
import re
from collections.abc import Callable, Hashable, Iterator, Mapping
from enum import Enum
from functools import cache, partial
from types import UnionType
from typing import Any, TypeVar, Union, cast, get_args, get_origin

from msgspec import Struct
from msgspec.structs import FieldInfo, fields

from decks.record.damage import DAMAGE, WrongValueError, met_at

LONGEST = 40_000
"""A little more than a cell of a spreadsheet can hold."""

MOST = 1_000_000

Made = TypeVar("Made")
Read = TypeVar("Read")


def text(value: object) -> str:
    """Return a text that can be written to a file."""
    if not isinstance(value, str) or len(value) > LONGEST or re.search("[\ud800-\udfff]", value):
        raise WrongValueError(value)
    return value


def text_or_none(value: object) -> str | None:
    """Return a text, or None for nothing."""
    return None if value is None else text(value)


def number(value: object, least: float = -MOST, most: float = MOST) -> float:
    """Return a number within bounds; what is not finite is within none."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise WrongValueError(value)
    if not math.isfinite(value) or not least <= value <= most:
        raise WrongValueError(value)
    return value


def whole(value: object, least: int = 0, most: int = MOST) -> int:
    """Return a whole number within bounds."""
    if type(value) is not int:
        raise WrongValueError(value)
    return int(number(value, least, most))


def texts(value: object) -> tuple[str, ...]:
    """Return a list of texts."""
    return tuple(text(one) for one in items(value))


def items(value: object) -> list[Any]:
    """Return a list."""
    if not isinstance(value, list):
        raise WrongValueError(value)
    return value


def mapping(value: object) -> dict[str, Any]:
    """Return what JSON calls an object; its names are texts."""
    if not isinstance(value, dict):
        raise WrongValueError(value)
    for name in value:
        text(name)
    return value


def part(given: Mapping[str, Any], name: str, read: Callable[[Any], Read]) -> Read:
    """Return what is read of a field.

    Raises `WrongValueError`, which tells the field, where it is lacking or cannot be.
    """
    try:
        return read(given[name])
    except DAMAGE as error:
        raise met_at(name, error) from error


def each(value: object, read: Callable[[Any], Read]) -> Iterator[Read]:
    """Yield what is read of each entry of a list.

    Raises `WrongValueError`, which tells the entry by its number.
    """
    for number_of_it, one in enumerate(items(value), 1):
        try:
            yield read(one)
        except DAMAGE as error:
            raise met_at(number_of_it, error) from error


def made(kind: type[Made], value: object, **known: object) -> Made:
    """Return a struct from an object with its fields; `known` are given, not read.

    A field that the object lacks has its default, what it has besides is passed over.
    """
    given = mapping(value)
    read = {
        field.name: part(given, field.name, partial(_typed, field.type))
        for field in _fields(cast("Hashable", kind))
        if field.name not in known and (field.name in given or field.required)
    }
    return kind(**read, **known)


@cache
def _fields(kind: Hashable) -> tuple[FieldInfo, ...]:
    return fields(cast("Any", kind))


def _typed(kind: Any, value: object) -> Any:  # noqa: ANN401 (kinds are types, and unions of them)
    if get_origin(kind) in (Union, UnionType):
        return _one_of(get_args(kind), value)
    if get_origin(kind) is tuple:
        kinds, values = get_args(kind), items(value)
        return tuple(_typed(one, each) for one, each in zip(kinds, values, strict=True))
    if issubclass(kind, Struct):
        return made(kind, value)
    if issubclass(kind, Enum):
        return kind(value)
    if kind in _PLAIN:
        return _PLAIN[kind](value)
    raise WrongValueError(kind)


def _one_of(kinds: tuple[Any, ...], value: object) -> Any:  # noqa: ANN401 (as above)
    if value is None and type(None) in kinds:
        return None
    for kind in kinds:
        try:
            return _typed(kind, value)
        except (ValueError, TypeError):
            continue
    raise WrongValueError(value)


def _truth(value: object) -> bool:
    if not isinstance(value, bool):
        raise WrongValueError(value)
    return value


def _nothing(value: object) -> None:
    raise WrongValueError(value)


_PLAIN: Mapping[Any, Any] = {
    str: text,
    bool: _truth,
    int: lambda value: whole(value, -MOST),
    float: number,
    type(None): _nothing,
}
