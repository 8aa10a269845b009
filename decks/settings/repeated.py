"""Settings that stand in several rows."""

from collections.abc import Sequence

from cards.content import SettingRow
from cards.finding import Finding, Severity
from cards.place import Place
from decks.settings.setting import Setting
from decks.words import counted, listed

_MOST_NAMED = 4


def set_twice(setting: Setting, rows: Sequence[SettingRow]) -> Finding:
    """Say that a setting has several rows, at least two, of which the last counts."""
    *others, last = rows
    name = last.name
    where = [_seen_from(name.place, other.name.place) for other in others[:_MOST_NAMED]]
    if len(others) > _MOST_NAMED:
        where.append(counted(len(others) - _MOST_NAMED, "more cell"))
    return Finding(
        "setting-twice",
        Severity.WARNING,
        name.place,
        name.text,
        f"The setting {setting.name} stands in {listed(where, 'and')} too; this one counts.",
        f"Delete {'one of the two rows' if len(others) == 1 else 'all of these rows but one'}.",
    )


def _seen_from(place: Place, other: Place) -> str:
    """Return where another place is: its cell, with its sheet if that is another too."""
    return other.cell if other.sheet == place.sheet else str(other)
