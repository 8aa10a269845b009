"""Dates, times and lengths of time."""

from collections.abc import Callable, Sequence
from datetime import datetime
from decimal import ROUND_HALF_UP, Decimal

from msgspec import Struct

from cards.reading.shown.calendar_names import Names, names_in
from cards.reading.shown.format import Section
from cards.reading.shown.numbers import general_shown
from cards.reading.shown.serial import moment
from cards.reading.shown.tokens import Mark, Token

_SECONDS_PER_DAY = 86_400
_LAST_DAY = 2_958_465
_NOON = 12
_MICROSECONDS = 6


class _Time(Struct, frozen=True):
    """The seconds since the first day, and the date and time of day."""

    seconds: Decimal
    at: datetime
    half_day: bool
    places: int
    names: Names


def date_shown(serial: Decimal, section: Section) -> str:
    """Return a serial number (days, zero or more) in a section such as `d/m/yyyy h:mm`."""
    if serial > _LAST_DAY:
        return general_shown(serial)
    places = max((_places(token) for token in section.tokens), default=0)
    seconds = round(serial * _SECONDS_PER_DAY, _MICROSECONDS)
    if places:
        seconds = seconds.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP)
    at = moment(seconds / _SECONDS_PER_DAY)
    tokens = section.tokens
    names = names_in(next((token.language for token in tokens if token.language), ""))
    time = _Time(seconds, at, section.has(Mark.HALF_DAY), places, names)
    return "".join(_piece(time, tokens, i) for i in range(len(tokens)))


def _piece(time: _Time, tokens: Sequence[Token], i: int) -> str:
    token = tokens[i]
    letters = token.text.lower().partition(".")[0]
    if token.mark is Mark.DATE and not letters:
        return _part(time)
    if token.mark is Mark.DATE:
        as_minutes = letters in {"m", "mm"} and _is_minutes(tokens, i)
        return _WRITERS["minute" if as_minutes else letters[0]](time, len(letters))
    if token.mark is Mark.ELAPSED:
        unit = {"h": 3600, "m": 60, "s": 1}[letters[0]]
        return f"{int(time.seconds // unit):0{len(letters)}d}"
    if token.mark is Mark.HALF_DAY:
        names = token.text.split("/")
        return names[time.at.hour >= _NOON]
    return "" if token.mark is Mark.CONDITION else token.text


def _is_minutes(tokens: Sequence[Token], i: int) -> bool:
    """Say whether the m is for minutes: the piece before is hours or the one after seconds."""
    timed = {Mark.DATE, Mark.ELAPSED}
    before = [token.text[0].lower() for token in tokens[:i] if token.mark in timed]
    after = [token.text[0].lower() for token in tokens[i + 1 :] if token.mark in timed]
    return before[-1:] == ["h"] or after[:1] == ["s"]


def _places(token: Token) -> int:
    return len(token.text.partition(".")[2]) if token.mark is Mark.DATE else 0


def _year(time: _Time, length: int) -> str:
    return f"{time.at.year:04d}" if length > len("yy") else f"{time.at.year % 100:02d}"


def _month(time: _Time, length: int) -> str:
    month = time.at.month - 1
    name = time.names.months[month]
    names = {3: time.names.short_months[month], 4: name, 5: name[0].upper()}
    return names.get(length, f"{time.at.month:0{min(length, 2)}d}")


def _day(time: _Time, length: int) -> str:
    weekday = time.at.weekday()
    names = {1: f"{time.at.day}", 2: f"{time.at.day:02d}", 3: time.names.short_days[weekday]}
    return names.get(length, time.names.days[weekday])


def _hour(time: _Time, length: int) -> str:
    hour = (time.at.hour + 11) % 12 + 1 if time.half_day else time.at.hour
    return f"{hour:0{min(length, 2)}d}"


def _minute(time: _Time, length: int) -> str:
    return f"{time.at.minute:0{length}d}"


def _second(time: _Time, length: int) -> str:
    whole = f"{time.at.second:0{min(length, 2)}d}"
    return f"{whole}{_part(time)}" if time.places else whole


def _part(time: _Time) -> str:
    """Return the part of a second, with the mark before it."""
    return f"{time.seconds % 1:f}"[1:]


_WRITERS: dict[str, Callable[[_Time, int], str]] = {
    "y": _year,
    "m": _month,
    "d": _day,
    "h": _hour,
    "minute": _minute,
    "s": _second,
}
