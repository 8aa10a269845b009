"""How a recipe comes from the Deck sheet, the command line and the defaults."""

import difflib
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import cast

from msgspec.structs import replace

from cards.content import Cell, Content, SettingRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.place import Place
from cards.quoting import in_line, quoted
from decks.recipe import (
    Activity,
    CardSize,
    Dealing,
    GuideFor,
    Ink,
    PaperName,
    Recipe,
    Support,
)
from decks.roster import ON_THE_COMMAND_LINE, Roster, Wanted, roster_of
from decks.settings.repeated import set_twice
from decks.settings.setting import Setting, UsageError
from decks.settings.table import SETTINGS
from decks.settings.values import read_text
from decks.telling_apart import about_inks, about_stock
from decks.words import listed

BY_ACTIVITY: dict[Activity, dict[str, object]] = {
    Activity.COLLECT: {"deal": Dealing.COPIES, "support": Support.NONE},
    Activity.ROUNDS: {"guide": GuideFor.NONE},
    Activity.STATIONS: {"guide": GuideFor.NONE, "card_size": CardSize.LARGE},
    Activity.ORGANIZER: {"deal": Dealing.COPIES, "guide": GuideFor.NONE},
}
"""What is usual for an activity where nothing else was chosen."""

_WITHOUT_GUIDE = {
    activity for activity, usual in BY_ACTIVITY.items() if usual.get("guide") is GuideFor.NONE
}

# What joins the last two of a list, in the languages whose headings are known.
_AND = re.compile(r"(?:^|\s+)(?:and|&|y|et|und|e)\s+")

# Whoever misspells more settings than these has put something else on the sheet.
_MOST_SEARCHED = 40
_LONGEST_SEARCHED = 60

INDEX_CARDS = {PaperName.INDEX_3X5, PaperName.INDEX_4X6, PaperName.INDEX_5X8}


def resolve(content: Content, options: Mapping[str, str]) -> tuple[Recipe, tuple[Finding, ...]]:
    """Return the recipe and the findings about the Deck and Teams sheets.

    `options` maps setting keys to what was given on the command line, which goes before the Deck
    sheet, which goes before the defaults. Raises `UsageError` for an option that cannot be read.
    """
    chosen, findings = _from_sheet(content.settings)
    chosen |= _from_options(options)
    given = cell_of("teams", content.settings, options)
    wanted = cast("Wanted", chosen.pop("teams", None))
    if given and isinstance(wanted, list):
        findings += _joined_names(given, wanted)
    roster = roster_of(
        wanted,
        content.teams,
        named_in=given.place if given else ON_THE_COMMAND_LINE,
        on_stock=chosen.get("ink") is Ink.STOCK,
    )
    for usual in _usual(chosen):
        chosen = usual | chosen
    chosen.setdefault("title", content.name)
    recipe = Recipe(teams=roster.teams, **chosen)  # type: ignore[arg-type]
    if recipe.activity in _WITHOUT_GUIDE and recipe.guide is not GuideFor.NONE:
        findings += _no_guide(cell_of("guide", content.settings, options), recipe.activity)
        recipe = replace(recipe, guide=GuideFor.NONE)
    findings += _too_few_students(cell_of("students", content.settings, options), recipe)
    return recipe, (*findings, *roster.findings, *_about_colours(roster, recipe.ink))


def _usual(chosen: Mapping[str, object]) -> Iterator[dict[str, object]]:
    """Yield what goes without saying for what was chosen, what goes first first."""
    if chosen.get("paper") in INDEX_CARDS:
        yield {"card_size": CardSize.FULL}
    activity = cast("Activity", chosen.get("activity", Activity.REVIEW))
    yield BY_ACTIVITY.get(activity, {})
    deal = chosen.get("deal") or BY_ACTIVITY.get(activity, {}).get("deal")
    if deal is Dealing.COPIES:
        yield {"guide": GuideFor.CLASS}


def _too_few_students(given: Cell | None, recipe: Recipe) -> Iterator[Finding]:
    """Yield a warning where a class is said to be smaller than the number of its teams."""
    teams = len(recipe.teams)
    if given and recipe.students < teams:
        yield Finding(
            "fewer-students-than-teams",
            Severity.WARNING,
            given.place,
            given.text,
            f"There are fewer students than teams, {recipe.students} for {teams}.",
            "Take fewer teams, or mend the number of students.",
        )


def _no_guide(given: Cell | None, activity: Activity) -> Iterator[Finding]:
    """Yield a note where a study guide is asked for and the activity has none."""
    if given:
        yield Finding(
            "no-guide-here",
            Severity.NOTE,
            given.place,
            given.text,
            f"Guide has no effect here: with Activity set to {activity} there is no study guide.",
            "Clear it, or choose review or collect.",
        )


def _about_colours(roster: Roster, ink: Ink) -> Iterator[Finding]:
    if ink is Ink.COLOUR:
        yield from about_inks(roster)
    if ink is Ink.STOCK:
        yield from about_stock(roster)


def _from_options(options: Mapping[str, str]) -> dict[str, object]:
    return {key: read_option(key, options[key]) for key in BY_KEY if key in options}


def read_option(key: str, given: str) -> object:
    """Return the value of a setting as an option gives it; raise `UsageError` if it is none."""
    value = BY_KEY[key].read(given)
    if value is None:
        raise UsageError(_bad_option(BY_KEY[key], given))
    return value


def _bad_option(setting: Setting, given: str) -> str:
    wrong = f"{setting.option} {in_line(given)}: this can be {setting.expects}."
    return f"{wrong} {setting.meant(given)}".rstrip()


def _from_sheet(rows: Sequence[SettingRow]) -> tuple[dict[str, object], list[Finding]]:
    chosen: dict[str, object] = {}
    findings = []
    read: dict[str, list[SettingRow]] = {}
    meant: dict[str, str] = {}
    for row in rows:
        setting = setting_called(row.name.text)
        if setting is None:
            findings.append(_unknown_setting(row, meant))
        elif row.is_date and setting.read is not read_text:
            findings.append(_turned_into_date(row, setting))
        elif (value := setting.read(row.value.text)) is None:
            findings.append(_bad_value(row, setting))
        else:
            chosen[setting.key] = value
            read.setdefault(setting.key, []).append(row)
            if isinstance(value, list) and len(value) == 1:
                findings.append(_one_team(row))
    twice = (set_twice(BY_KEY[key], some) for key, some in read.items() if len(some) > 1)
    return chosen, [*findings, *twice]


def _turned_into_date(row: SettingRow, setting: Setting) -> Finding:
    return Finding(
        "turned-into-date",
        Severity.ERROR,
        row.value.place,
        row.value.text,
        f"{setting.name} cannot be {quoted(row.value.text)}: "
        "the spreadsheet program has made a date of what was typed.",
        f"Format the cell as text first, then write {setting.expects}.",
    )


def _compact(name: str) -> str:
    return "".join(letter for letter in folded(name) if letter.isalnum())


BY_KEY = {setting.key: setting for setting in SETTINGS}
BY_NAME = {
    _compact(name): setting for setting in SETTINGS for name in (setting.name, setting.option)
}


_KNOWN = f"The settings are {listed([setting.name for setting in SETTINGS])}."


def setting_called(name: str) -> Setting | None:
    """Return the setting that a row of the Deck sheet names, or None."""
    return BY_NAME.get(_compact(name))


def cell_of(key: str, rows: Iterable[SettingRow], options: Mapping[str, str]) -> Cell | None:
    """Return what was given for a setting, and where: an option, or the last of the Deck sheet."""
    cells = {setting.key: row.value for row in rows if (setting := setting_called(row.name.text))}
    if key in options:
        return Cell(options[key], Place(BY_KEY[key].option))
    return cells.get(key)


def _unknown_setting(row: SettingRow, meant: dict[str, str]) -> Finding:
    """Say that there is no such setting; `meant` keeps what was meant by those told before."""
    name = folded(row.name.text)
    if name not in meant and len(meant) < _MOST_SEARCHED and len(name) <= _LONGEST_SEARCHED:
        meant[name] = _near_setting(name)
    mend = meant.get(name) or _KNOWN
    wrong = f"There is no setting called {quoted(row.name.text)}."
    return Finding("unknown-setting", Severity.ERROR, row.name.place, row.name.text, wrong, mend)


def _near_setting(name: str) -> str:
    names = {folded(setting.name): setting.name for setting in SETTINGS}
    near = difflib.get_close_matches(name, names, n=1)
    return f"Did you mean {names[near[0]]}?" if near else ""


def _one_team(row: SettingRow) -> Finding:
    wrong = f"This makes one team only, called {quoted(row.value.text)}."
    mend = "If there are to be more, write their number, or their names with commas between."
    return Finding("one-team", Severity.NOTE, row.value.place, row.value.text, wrong, mend)


def _joined_names(given: Cell, names: Sequence[str]) -> Iterator[Finding]:
    """Yield a note if the last of several names seems to be two, as in "Ann, Bob and Cy"."""
    last = [name for name in _AND.split(names[-1]) if name]
    if len(names) > 1 and last != [names[-1]]:
        yield Finding(
            "names-joined",
            Severity.NOTE,
            given.place,
            given.text,
            f"This makes {len(names)} teams, the last of them called {quoted(names[-1])}.",
            f"If there are to be {len(names) - 1 + len(last)}, write commas only: "
            f"{in_line(', '.join([*names[:-1], *last]))}.",
        )


def _bad_value(row: SettingRow, setting: Setting) -> Finding:
    wrong = f"{setting.name} cannot be {quoted(row.value.text)}."
    mend = f"{setting.meant(row.value.text)} Write {setting.expects}.".lstrip()
    return Finding("unknown-value", Severity.ERROR, row.value.place, row.value.text, wrong, mend)
