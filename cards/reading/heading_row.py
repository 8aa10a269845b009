"""Where the headings of a sheet stand."""

from collections.abc import Collection, Iterator, Mapping, Sequence

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.quoting import quoted
from cards.reading.choices import Choices, choices_of
from cards.reading.column_notes import column_notes
from cards.reading.columns import BACKS, FRONTS, Roles, pair_of
from cards.reading.headings import key, misspelt_role_of, role_of, roles_in
from cards.reading.languages import language_of
from cards.reading.role import Role
from cards.reading.row_numbers import numbers_rows, without_numbers
from cards.reading.table import Row, Table

# How far down, in rows that are not blank, headings are looked for; and how far below instructions,
# most of which fill one cell of their row.
_DEPTH = 10
_DEPTH_BELOW_INSTRUCTIONS = 40
# Headings that pupils also meet as a pair of opposites; such a row may be content.
_ALSO_OPPOSITES = frozenset(
    frozenset(pair.split())
    for pair in (
        "front back",
        "anverso reverso",
        "frente dorso",
        "frente verso",
        "recto verso",
        "vorderseite ruckseite",
    )
)
_MANY = 3
# Of so many rows of instructions one may fill several cells.
_MOSTLY = 4
_SPREAD = frozenset({Role.ALSO_RIGHT, Role.WRONG})
# A misspelt heading of these is only worth taking if the sheet has no others that make a card.
_OF_CARDS = FRONTS | BACKS
_BESIDE_CARDS = frozenset(
    {Role.TOPIC, Role.LEVEL, Role.TEAM, Role.PICTURE, Role.ALSO_RIGHT, Role.WRONG}
)
_SIDES = (Role.PROMPT, Role.ANSWER)


class Headings(Struct, frozen=True):
    """A row of headings: its index among the rows of the table, and the roles of its columns.

    `complete` says whether two of the columns make a card; `choices` are those in columns of their
    own, if there are any.
    """

    index: int
    roles: Roles
    complete: bool
    findings: tuple[Finding, ...] = ()
    choices: Choices | None = None


def headings_of(table: Table) -> Headings | None:
    """Return the headings of a table, or None if it has none.

    They stand in the row with the most known headings among the first that are not blank, if these
    are enough to make a card; else in the first row with several known headings, or above the only
    column; else in the first row below long instructions that makes a card.
    """
    candidates = [_candidate(table, i) for i in range(len(table.rows[:_DEPTH]))]
    complete = [one for one in candidates if one.complete and _is_plausible(table, one)]
    if complete:
        best = max(complete, key=lambda one: (_spelt_right(one), len(one.roles), -one.index))
        return _with_notes(table, best)
    wanting = [one for one in candidates if _names_half_a_card(table, one)]
    return wanting[0] if wanting else _below_instructions(table)


def _below_instructions(table: Table) -> Headings | None:
    """Return headings that make a card and are not misspelt, below rows of mostly a single cell."""
    for i in range(_DEPTH, len(table.rows[:_DEPTH_BELOW_INSTRUCTIONS])):
        one = _candidate(table, i) if _are_instructions(table.rows[:i]) else None
        if one and one.complete and _spelt_right(one):
            return _with_notes(table, one)
    return None


def _are_instructions(rows: Sequence[Row]) -> bool:
    return _MOSTLY * sum(len(row.cells) > 1 for row in rows) <= len(rows)


def _candidate(table: Table, index: int) -> Headings:
    row = Row(table.rows[index].number, table.rows[index].heading_cells())
    roles = roles_in(row.cells)
    roles = _shown_first(_canonical(roles | _two_languages(row), row), table.hidden_columns)
    choices = choices_of(row)
    roles |= choices.roles if choices else {}
    findings: list[Finding] = []
    for column, role in _misspelt(row, roles) if roles or not index else ():
        findings.append(_misspelt_warning(row.cells[column], role))
        roles[column] = role
    return Headings(index, roles, pair_of(roles) is not None, tuple(findings), choices)


def _canonical(roles: dict[int, Role], row: Row) -> dict[int, Role]:
    """Leave out a column headed by a synonym where another is headed by the very word."""
    plain = {role for column, role in roles.items() if key(row.text(column)) == key(role)}
    return {
        column: role
        for column, role in roles.items()
        if role in _SPREAD or role not in plain or key(row.text(column)) == key(role)
    }


def _two_languages(row: Row) -> dict[int, Role]:
    """Return what two columns hold that are headed by names of two languages, and by no others."""
    named = {
        column: language
        for column, cell in row.cells.items()
        if (language := language_of(cell.text)) is not None
    }
    if len(named) != len(_SIDES) or len(set(named.values())) != len(_SIDES):
        return {}
    return dict(zip(sorted(named), _SIDES, strict=True))


def _shown_first(roles: dict[int, Role], hidden: Collection[int]) -> dict[int, Role]:
    """Leave out a hidden column where another holds the same and is shown."""
    seen = {role for column, role in roles.items() if column not in hidden}
    return {
        column: role
        for column, role in roles.items()
        if column not in hidden or role in _SPREAD or role not in seen
    }


def _misspelt(row: Row, roles: Mapping[int, Role]) -> Iterator[tuple[int, Role]]:
    """Yield the columns of a row whose headings are misspelt, and what they probably mean."""
    taken = set(roles.values())
    for column, cell in row.cells.items():
        wanted = _BESIDE_CARDS if pair_of(dict(enumerate(taken))) else _OF_CARDS | _BESIDE_CARDS
        role = None if column in roles else misspelt_role_of(cell.text, wanted - taken)
        if role and not role_of(cell.text):
            taken.add(role)
            yield column, role


def _spelt_right(headings: Headings) -> bool:
    return not headings.findings


def _is_plausible(table: Table, headings: Headings) -> bool:
    """Say whether a row can be headings, seen what stands above it.

    Misspelt headings, or a pair of words, below other pairs are more likely to be content.
    """
    row = table.rows[headings.index]
    above = table.rows[: headings.index]
    if headings.findings and any(len(one.cells) > 1 for one in above):
        return False
    if len(headings.roles) >= _MANY or row.number - (above[-1].number if above else 0) > 1:
        return True
    return not (above and are_opposites(row))


def are_opposites(row: Row) -> bool:
    """Say whether a row holds no more than two headings that are also a pair of opposites."""
    return frozenset(key(cell.text) for cell in row.cells.values()) in _ALSO_OPPOSITES


def _names_half_a_card(table: Table, headings: Headings) -> bool:
    roles = set(headings.roles.values())
    is_alone = (
        not headings.index and len({column for row in table.rows for column in row.cells}) == 1
    )
    enough = (len(roles) > 1 or is_alone) and not headings.complete and not headings.findings
    return enough and bool(roles & _OF_CARDS)


def _with_notes(table: Table, headings: Headings) -> Headings:
    row = table.rows[headings.index]
    roles, numbered = without_numbers(table, headings.index, headings.roles)
    headings = replace(headings, roles=roles)
    notes = [
        *numbered,
        *_rows_above(table, headings),
        *_doubled(row, headings),
        *_by_another_name(table, row, headings),
        *column_notes(table, row, headings.roles),
    ]
    return replace(headings, findings=(*headings.findings, *notes))


def _rows_above(table: Table, headings: Headings) -> Iterator[Finding]:
    """Yield a note if what stands above the headings looks like content."""
    pair = pair_of(headings.roles) or ()
    columns = [column for column, role in headings.roles.items() if role in pair]
    for row in table.rows[: headings.index]:
        if all(column in row.cells for column in columns):
            cell = row.cells[columns[0]]
            yield Finding(
                "above-headings",
                Severity.NOTE,
                cell.place,
                cell.text,
                "This row stands above the headings and makes no card.",
                "If it is content, move it below the headings.",
            )
            return


def _doubled(row: Row, headings: Headings) -> Iterator[Finding]:
    seen: dict[Role, Cell] = {}
    for column, role in sorted(headings.roles.items()):
        cell = row.cells[column]
        first = seen.setdefault(role, cell)
        if first is not cell and role in _OF_CARDS:
            yield Finding(
                "heading-twice",
                Severity.WARNING,
                cell.place,
                cell.text,
                f"{_the_heading_again(cell, first)}; only the first of the two columns is read.",
                "Put all of them below the first, or rename this one.",
            )


def _by_another_name(table: Table, row: Row, headings: Headings) -> Iterator[Finding]:
    """Yield the columns that were left out because another is headed by the very word."""
    pair = pair_of(headings.roles) or ()
    read = {role: column for column, role in headings.roles.items() if role in pair}
    below = table.rows[headings.index + 1 :]
    for column, role in roles_in(row.cells).items():
        if role not in read or column in headings.roles or column in table.hidden_columns:
            continue
        if any(one.text(column) for one in below) and not numbers_rows(below, column):
            yield _left_out(row.cells[column], row.cells[read[role]], role)


def _left_out(cell: Cell, read: Cell, role: Role) -> Finding:
    also = "If its texts are right as well, head it Also right. " if role is Role.ANSWER else ""
    return Finding(
        "column-left-out",
        Severity.NOTE,
        cell.place,
        cell.text,
        f"{_the_heading_again(cell, read)}; this column is not read.",
        f"{also}To read it in place of the other, change the other heading.",
    )


def _the_heading_again(cell: Cell, first: Cell) -> str:
    said, where = quoted(cell.text), first.place.cell
    if key(cell.text) == key(first.text):
        return f"The heading {said} stands in {where} too"
    return f"The heading {said} says the same as {quoted(first.text)} in {where}"


def _misspelt_warning(cell: Cell, role: Role) -> Finding:
    return Finding(
        "misspelt-heading",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"The heading {quoted(cell.text)} is not known and was read as “{role}”.",
        f"Rename it to “{role}”, or to something quite different if that is not what it means.",
    )
