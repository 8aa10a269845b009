"""The teams of a deck, from the Teams sheet and from what was chosen elsewhere."""

import difflib
from collections.abc import Sequence
from typing import TypeAlias

from msgspec import Struct

from cards.content import Cell, TeamRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.place import Place
from cards.quoting import quoted
from decks.team import COLOURS, MOST_TEAMS, Team, colour_named, make_teams
from decks.words import listed

Wanted: TypeAlias = list[str] | int | None
"""What was chosen elsewhere: names, a number of teams, or nothing."""

DEFAULT_TEAMS = 4
ON_THE_COMMAND_LINE = Place("--teams")


class Roster(Struct, frozen=True):
    """The teams, and what was found about them.

    `given` has for each team the cell that gives it its colour, or None where it was chosen.
    """

    teams: tuple[Team, ...]
    given: tuple[Cell | None, ...]
    findings: tuple[Finding, ...]


class _Seat(Struct, frozen=True):
    """A team to be: what is None is still to be chosen."""

    name: str | None = None
    colour: str | None = None
    given: Cell | None = None


def roster_of(
    wanted: Wanted,
    rows: Sequence[TeamRow],
    *,
    named_in: Place = ON_THE_COMMAND_LINE,
    on_stock: bool = False,
) -> Roster:
    """Return the teams, from what was chosen elsewhere and from the rows of the Teams sheet.

    A number takes the first teams of the sheet, and makes up others where there are fewer. A team
    has the colour that the sheet gives it, or the one that it is called by, or a chosen one.
    `named_in` is where names were chosen, `on_stock` whether the colours are those of papers.
    """
    by_name: dict[str, TeamRow] = {}
    for row in rows:
        by_name.setdefault(folded(row.name.text), row)
    if isinstance(wanted, list):
        seats = [_named(name, by_name.get(folded(name)), named_in) for name in wanted]
    else:
        count = len(by_name) or DEFAULT_TEAMS if wanted is None else wanted
        seats = [_named(row.name.text, row, row.name.place) for row in by_name.values()][:count]
        seats += [_Seat()] * (count - len(seats))
    seats = seats[:MOST_TEAMS]
    names, colours = [seat.name for seat in seats], [seat.colour for seat in seats]
    return Roster(
        make_teams(names, colours, on_stock=on_stock),
        tuple(seat.given for seat in seats),
        _about_rows(rows),
    )


def _named(name: str, row: TeamRow | None, named_in: Place) -> _Seat:
    """Return the seat of a team that has a name; its colour may stand on the Teams sheet."""
    if row and row.colour and (colour := colour_named(row.colour.text)):
        return _Seat(name, colour, row.colour)
    if colour := colour_named(name):
        return _Seat(name, colour, row.name if row else Cell(name, named_in))
    return _Seat(name)


def _about_rows(rows: Sequence[TeamRow]) -> tuple[Finding, ...]:
    findings = [*_repeated_teams(rows), *_unknown_colours(rows)]
    if len(rows) > MOST_TEAMS:
        findings.append(_too_many(rows[MOST_TEAMS].name.place, len(rows)))
    return tuple(findings)


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
            wrong = f"The team {quoted(name.text)} stands in {earlier.cell} already."
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
            wrong = f"There is no colour {quoted(row.colour.text)} here."
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
