"""The choices that shape a deck, from the Deck sheet, the command line and the defaults."""

import difflib
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from cards.content import Content, SettingRow
from cards.finding import FairdealError, Finding, Severity
from cards.item import folded
from decks.roster import roster
from decks.team import MOST_TEAMS, Team, default_names
from decks.words import listed


class UsageError(FairdealError):
    """A choice on the command line that cannot be."""


class Activity(StrEnum):
    """What the deck is for."""

    REVIEW = "review"


class Dealing(StrEnum):
    """Who gets which item."""

    SHARES = "shares"
    COPIES = "copies"


class PaperName(StrEnum):
    """The paper that the printer is loaded with."""

    LETTER = "letter"
    A4 = "a4"


class CardSize(StrEnum):
    """How large a card is."""

    SMALL = "small"
    MEDIUM = "medium"
    LARGE = "large"


class Sides(StrEnum):
    """How a card gets its back."""

    DUPLEX = "duplex"
    FOLD = "fold"


class Flip(StrEnum):
    """The edge of the paper that the printer flips on."""

    LONG = "long"
    SHORT = "short"


class Ink(StrEnum):
    """What the team's ribbon is printed with."""

    COLOUR = "colour"
    GREY = "grey"


class GuideFor(StrEnum):
    """Who gets a study guide of their own."""

    CLASS = "class"
    TEAM = "team"
    NONE = "none"


@dataclass(frozen=True, slots=True)
class Recipe:
    """Every choice that shapes a deck, resolved; `seed` is None until the deck has a number."""

    title: str
    teams: tuple[Team, ...]
    activity: Activity = Activity.REVIEW
    deal: Dealing = Dealing.SHARES
    paper: PaperName = PaperName.LETTER
    card_size: CardSize = CardSize.SMALL
    sides: Sides = Sides.DUPLEX
    flip: Flip = Flip.LONG
    ink: Ink = Ink.COLOUR
    guide: GuideFor = GuideFor.TEAM
    extra_words: int = 2
    seed: str | None = None


@dataclass(frozen=True, slots=True)
class Setting:
    """One setting: its name on the Deck sheet, its key here and how its value is read.

    `read` returns the value, or None for a text that is none. The option on the command line is
    the key with hyphens, except for `card_size`, which is `--size`.
    """

    name: str
    key: str
    expects: str
    read: Callable[[str], object | None]


def _choice(values: type[StrEnum]) -> Callable[[str], StrEnum | None]:
    known = {value.value: value for value in values}
    return lambda text: known.get(folded(text))


def _setting(name: str, key: str, values: type[StrEnum]) -> Setting:
    return Setting(name, key, listed([value.value for value in values]), _choice(values))


def _text(text: str) -> str | None:
    return text.strip() or None


def _count(text: str) -> int | None:
    return int(text) if text.isascii() and text.isdigit() and int(text) <= MOST_EXTRA else None


def _team_names(text: str) -> list[str] | None:
    if text.isascii() and text.isdigit():
        return default_names(int(text)) if 1 <= int(text) <= MOST_TEAMS else None
    names = [name for part in text.split(",") if (name := " ".join(part.split()))]
    distinct = len({folded(name) for name in names}) == len(names)
    return names if distinct and 1 <= len(names) <= MOST_TEAMS else None


MOST_EXTRA = 20

SETTINGS = (
    Setting("Title", "title", "a text", _text),
    _setting("Activity", "activity", Activity),
    Setting(
        "Teams",
        "teams",
        f"a number from 1 to {MOST_TEAMS}, or as many different names separated by commas",
        _team_names,
    ),
    _setting("Deal", "deal", Dealing),
    _setting("Paper", "paper", PaperName),
    _setting("Card size", "card_size", CardSize),
    _setting("Sides", "sides", Sides),
    _setting("Flip", "flip", Flip),
    _setting("Ink", "ink", Ink),
    _setting("Guide", "guide", GuideFor),
    Setting("Extra words", "extra_words", f"a number from 0 to {MOST_EXTRA}", _count),
    Setting("Seed", "seed", "a text or a number", _text),
)
"""Every setting that the Deck sheet and the command line have; a new one is a row here, a field
of `Recipe` and an option of the build command."""


def resolve(content: Content, options: Mapping[str, str]) -> tuple[Recipe, tuple[Finding, ...]]:
    """Return the recipe and the findings about the Deck and Teams sheets.

    `options` maps setting keys to what was given on the command line, which goes before the Deck
    sheet, which goes before the defaults. Raises `UsageError` for an option that cannot be read.
    """
    chosen, findings = _from_sheet(content.settings)
    chosen |= _from_options(options)
    names = chosen.pop("teams", None)
    teams, about_teams = roster(names if isinstance(names, list) else None, content.teams)
    if chosen.get("deal") is Dealing.COPIES:
        chosen.setdefault("guide", GuideFor.CLASS)
    chosen.setdefault("title", content.name)
    recipe = Recipe(teams=teams, **chosen)  # type: ignore[arg-type]
    return recipe, (*findings, *about_teams)


def _from_options(options: Mapping[str, str]) -> dict[str, object]:
    chosen = {}
    for setting in SETTINGS:
        if setting.key in options:
            chosen[setting.key] = value = setting.read(options[setting.key])
            if value is None:
                option = "size" if setting.key == "card_size" else setting.key.replace("_", "-")
                raise UsageError(
                    f"--{option} {options[setting.key]}: this can be {setting.expects}."
                )
    return chosen


def _from_sheet(rows: Sequence[SettingRow]) -> tuple[dict[str, object], list[Finding]]:
    chosen: dict[str, object] = {}
    findings = []
    by_name = {folded(setting.name): setting for setting in SETTINGS}
    for row in rows:
        setting = by_name.get(folded(row.name.text).rstrip(":"))
        if setting is None:
            findings.append(_unknown_setting(row, list(by_name)))
        elif (value := setting.read(row.value.text)) is None:
            findings.append(_bad_value(row, setting))
        else:
            chosen[setting.key] = value
    return chosen, findings


def _unknown_setting(row: SettingRow, names: list[str]) -> Finding:
    near = difflib.get_close_matches(folded(row.name.text), names, n=1)
    known = listed([setting.name for setting in SETTINGS])
    mend = f"Did you mean {near[0].capitalize()}?" if near else f"The settings are {known}."
    wrong = f"There is no setting called “{row.name.text}”."
    return Finding("unknown-setting", Severity.ERROR, row.name.place, row.name.text, wrong, mend)


def _bad_value(row: SettingRow, setting: Setting) -> Finding:
    wrong = f"{setting.name} cannot be “{row.value.text}”."
    mend = f"Write {setting.expects}."
    return Finding("unknown-value", Severity.ERROR, row.value.place, row.value.text, wrong, mend)
