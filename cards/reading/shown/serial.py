"""Every value that is counted, as an exact decimal number."""

from datetime import date, datetime, time, timedelta
from decimal import ROUND_HALF_UP, Context, Decimal

Value = str | bool | int | float | date | datetime | time | timedelta | None

# A spreadsheet keeps 15 significant digits.
_FIFTEEN_DIGITS = Context(prec=15, rounding=ROUND_HALF_UP)
_DAY = timedelta(days=1)
# The day before 1 January 1900; the spreadsheets' 29 February 1900 makes it two days from March on.
_EPOCH = datetime(1899, 12, 30)  # noqa: DTZ001 (a cell has no time zone)
_FIRST_OF_MARCH = 61


def as_number(value: float | date | time | timedelta) -> Decimal | None:
    """Return a number as it is and a date as its serial (days), or None if it is not finite."""
    if isinstance(value, int | float):
        number = Decimal(str(value)) if isinstance(value, float) else Decimal(value)
        return _FIFTEEN_DIGITS.plus(number) if number.is_finite() else None
    return Decimal(_since_epoch(value) // timedelta(microseconds=1)) / Decimal(86_400_000_000)


def moment(serial: Decimal) -> datetime:
    """Return the date and time of a serial number (days), to the microsecond."""
    days = int(serial)
    micro = int(((serial - days) * 86_400_000_000).to_integral_value())
    shift = 0 if days >= _FIRST_OF_MARCH else 1
    return _EPOCH + timedelta(days=days + shift, microseconds=micro)


def _since_epoch(value: date | time | timedelta) -> timedelta:
    if isinstance(value, timedelta):
        return value
    if isinstance(value, time):
        return timedelta(
            hours=value.hour,
            minutes=value.minute,
            seconds=value.second,
            microseconds=value.microsecond,
        )
    if not isinstance(value, datetime):
        value = datetime(value.year, value.month, value.day)  # noqa: DTZ001 (as above)
    elapsed = value - _EPOCH
    return elapsed if elapsed >= _FIRST_OF_MARCH * _DAY else elapsed - _DAY
