"""The teams of a deck, from the Teams sheet and from what was chosen elsewhere."""

import difflib
from collections.abc import Sequence
from typing import TypeAlias

from cards.content import TeamRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.place import Place
from decks.team import COLOURS, MOST_TEAMS, Team, colour_named, default_names, make_teams
from decks.words import listed

Wanted: TypeAlias = list[str] | int | None
"""What was chosen elsewhere: names, a number of teams, or nothing."""


def roster(wanted: Wanted, rows: Sequence[TeamRow]) -> tuple[tuple[Team, ...], list[Finding]]:
    """Return the teams and the findings about the Teams sheet.

    A number takes the first teams of the sheet, and makes up names where there are fewer. A team
    has the colour that the sheet gives it, or the one that it is called by, or one of its own.
    """
    findings = [*_repeated_teams(rows), *_unknown_colours(rows)]
    if len(rows) > MOST_TEAMS:
        findings.append(_too_many(rows[MOST_TEAMS].name.place, len(rows)))
    by_name: dict[str, TeamRow] = {}
    for row in rows:
        by_name.setdefault(folded(row.name.text), row)
    names = _names(wanted, list(by_name.values()))
    colours = [_colour(by_name.get(folded(name))) or colour_named(name) for name in names]
    return make_teams(names, colours), findings


def _names(wanted: Wanted, rows: Sequence[TeamRow]) -> list[str]:
    if isinstance(wanted, list):
        return wanted
    on_sheet = [row.name.text for row in rows]
    if wanted is None:
        return on_sheet[:MOST_TEAMS] or default_names(4)
    inks = {_colour(row) or colour_named(row.name.text) for row in rows}
    made_up = [name for name in default_names(len(COLOURS)) if colour_named(name) not in inks]
    return [*on_sheet, *made_up][:wanted]


def _colour(row: TeamRow | None) -> str | None:
    return colour_named(row.colour.text) if row and row.colour else None


def _too_many(place: Place, count: int) -> Finding:
    return Finding(
        "too-many-teams",
        Severity.ERROR,
        place,
        str(count),
        f"There are {count} teams; a deck can be dealt to {MOST_TEAMS} at most.",
        "Delete the rows from here on, or put two teams together.",
    )


def _repeated_teams(rows: Sequence[TeamRow]) -> list[Finding]:
    first: dict[str, Place] = {}
    findings = []
    for row in rows:
        name = row.name
        earlier = first.setdefault(folded(name.text), name.place)
        if earlier != name.place:
            wrong = f"The team “{name.text}” stands in {earlier.cell} already."
            mend = "Give this team another name, or delete the row."
            findings.append(
                Finding("same-team", Severity.ERROR, name.place, name.text, wrong, mend)
            )
    return findings


def _unknown_colours(rows: Sequence[TeamRow]) -> list[Finding]:
    findings = []
    for row in rows:
        if row.colour and colour_named(row.colour.text) is None:
            near = difflib.get_close_matches(folded(row.colour.text), list(COLOURS), n=1)
            known = f"Write {listed(list(COLOURS))}, or a code such as #0072B2."
            mend = f"Did you mean {near[0]}? {known}" if near else known
            wrong = f"There is no colour “{row.colour.text}” here."
            findings.append(
                Finding(
                    "unknown-colour",
                    Severity.ERROR,
                    row.colour.place,
                    row.colour.text,
                    wrong,
                    mend,
                )
            )
    return findings
