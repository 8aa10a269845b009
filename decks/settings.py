"""Every setting, and how a recipe comes from the Deck sheet, the command line and the defaults."""

import difflib
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import cast

from cards.content import Content, SettingRow
from cards.finding import FairdealError, Finding, Severity
from cards.item import folded
from decks.amounts import read_cards, read_mix
from decks.recipe import (
    Activity,
    CardSize,
    Dealing,
    Flip,
    GuideFor,
    Ink,
    PaperName,
    Recipe,
    Sides,
)
from decks.roster import Wanted, roster
from decks.team import MOST_TEAMS
from decks.words import listed


class UsageError(FairdealError):
    """A choice on the command line that cannot be."""


@dataclass(frozen=True, slots=True)
class Setting:
    """One setting: its name on the Deck sheet, its key here and how its value is read.

    `read` returns the value, or None for a text that is none. `what` says in a sentence, without
    its full stop, what the setting is for. `choices` are the values that can be picked from
    a list, if there are few enough. `default` is the value that a Deck sheet may start with and
    still mean what a blank would: blank where that depends on other settings.
    """

    name: str
    key: str
    expects: str
    read: Callable[[str], object | None]
    what: str
    choices: tuple[str, ...] = ()
    default: str = ""

    @property
    def option(self) -> str:
        """The setting's name on the command line."""
        return "--size" if self.key == "card_size" else f"--{self.key.replace('_', '-')}"


def _choice(values: type[StrEnum]) -> Callable[[str], StrEnum | None]:
    known = {value.value: value for value in values}
    return lambda text: known.get(OTHER_SPELLINGS.get(folded(text), folded(text)))


def _setting(
    name: str, key: str, values: type[StrEnum], what: str, default: StrEnum | None = None
) -> Setting:
    choices = tuple(value.value for value in values)
    first = default.value if default else ""
    return Setting(name, key, listed(choices), _choice(values), what, choices, first)


def _text(text: str) -> str | None:
    return text.strip() or None


def _number(text: str, least: int, most: int) -> int | None:
    if not re.fullmatch(r"[0-9]{1,3}", text):
        return None
    return int(text) if least <= int(text) <= most else None


def _extra_words(text: str) -> int | None:
    return _number(text.strip(), 0, MOST_EXTRA)


def _teams(text: str) -> int | list[str] | None:
    """Read a number of teams, as a figure or a word, or their names."""
    names = [name for part in text.split(",") if (name := " ".join(part.split()))]
    if len(names) == 1:
        word = folded(names[0]).removesuffix("s").removesuffix(" team")
        if word in NUMBER_WORDS:
            return NUMBER_WORDS.index(word) + 1
        if re.fullmatch(r"[0-9]+", word):
            return _number(word, 1, MOST_TEAMS)
    distinct = len({folded(name) for name in names}) == len(names)
    return names if distinct and 1 <= len(names) <= MOST_TEAMS else None


MOST_EXTRA = 20
MOST_GRADE = 18
OTHER_SPELLINGS = {"color": "colour", "gray": "grey"}
NUMBER_WORDS = (
    "one two three four five six seven eight nine ten eleven twelve".split()  # noqa: SIM905
)

SETTINGS = (
    Setting(
        "Title", "title", "a text", _text, "The name on every page; without it, the file’s name"
    ),
    _setting("Activity", "activity", Activity, "What the deck is for", Activity.REVIEW),
    Setting(
        "Teams",
        "teams",
        f"a number from 1 to {MOST_TEAMS}, or as many different names separated by commas",
        _teams,
        "Who plays; without it, the Teams sheet, or else four teams",
        tuple(str(number) for number in range(1, MOST_TEAMS + 1)),
    ),
    _setting(
        "Deal",
        "deal",
        Dealing,
        "Whether the items are shared out or every team gets copies of all; without it, shares",
    ),
    Setting(
        "Cards",
        "cards",
        "a number of items, or all",
        read_cards,
        "How many items are chosen from the content",
        default="all",
    ),
    Setting(
        "Mix",
        "mix",
        "three shares for easy, medium and hard, as 40/40/20",
        read_mix,
        "How many of the chosen items are easy, medium and hard; without it, as the content has it",
    ),
    _setting("Paper", "paper", PaperName, "The paper in the printer", PaperName.LETTER),
    _setting("Card size", "card_size", CardSize, "How large a card is; without it, small"),
    _setting(
        "Sides",
        "sides",
        Sides,
        "Print on both sides, or on one side to be folded front on back",
        Sides.DUPLEX,
    ),
    _setting("Flip", "flip", Flip, "The edge that the printer turns the paper over", Flip.LONG),
    _setting("Ink", "ink", Ink, "What the teams’ ribbons are printed in", Ink.COLOUR),
    _setting(
        "Guide",
        "guide",
        GuideFor,
        "Who gets a study guide; without it, each team, or the class if every team gets copies",
    ),
    Setting(
        "Extra words",
        "extra_words",
        f"a number from 0 to {MOST_EXTRA}",
        _extra_words,
        "How many words in a word bank fit no blank",
        tuple(str(number) for number in range(MOST_EXTRA + 1)),
        "2",
    ),
    Setting(
        "Reading grade",
        "reading_grade",
        f"a school grade from 1 to {MOST_GRADE}",
        lambda text: _number(text.strip(), 1, MOST_GRADE),
        "Prompts that are harder to read than this grade are noted; without it, only the hardest",
        tuple(str(number) for number in range(1, MOST_GRADE + 1)),
    ),
    Setting(
        "Seed",
        "seed",
        "a text or a number",
        _text,
        "The same seed gives the same deck again; without it, every deck is new",
    ),
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
    teams, about_teams = roster(cast("Wanted", chosen.pop("teams", None)), content.teams)
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
                raise UsageError(
                    f"{setting.option} {options[setting.key]}: this can be {setting.expects}."
                )
    return chosen


def _from_sheet(rows: Sequence[SettingRow]) -> tuple[dict[str, object], list[Finding]]:
    chosen: dict[str, object] = {}
    findings = []
    for row in rows:
        setting = BY_NAME.get(_compact(row.name.text))
        if setting is None:
            findings.append(_unknown_setting(row))
        elif (value := setting.read(row.value.text)) is None:
            findings.append(_bad_value(row, setting))
        else:
            chosen[setting.key] = value
            if isinstance(value, list) and len(value) == 1:
                findings.append(_one_team(row))
    return chosen, findings


def _compact(name: str) -> str:
    return "".join(letter for letter in folded(name) if letter.isalnum())


BY_NAME = {
    _compact(name): setting for setting in SETTINGS for name in (setting.name, setting.option)
}


def _unknown_setting(row: SettingRow) -> Finding:
    names = {folded(setting.name): setting.name for setting in SETTINGS}
    near = difflib.get_close_matches(folded(row.name.text), names, n=1)
    known = listed(list(names.values()))
    mend = f"Did you mean {names[near[0]]}?" if near else f"The settings are {known}."
    wrong = f"There is no setting called “{row.name.text}”."
    return Finding("unknown-setting", Severity.ERROR, row.name.place, row.name.text, wrong, mend)


def _one_team(row: SettingRow) -> Finding:
    wrong = f"This makes one team only, called “{row.value.text}”."
    mend = "If there are to be more, write their number, or their names with commas between."
    return Finding("one-team", Severity.NOTE, row.value.place, row.value.text, wrong, mend)


def _bad_value(row: SettingRow, setting: Setting) -> Finding:
    wrong = f"{setting.name} cannot be “{row.value.text}”."
    mend = f"Write {setting.expects}."
    return Finding("unknown-value", Severity.ERROR, row.value.place, row.value.text, wrong, mend)
