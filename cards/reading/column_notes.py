"""What is to be said of whole columns, at their headings."""

from collections.abc import Collection, Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.quoting import quoted
from cards.reading.columns import BACKS, FRONTS, Roles, pair_of
from cards.reading.role import Role
from cards.reading.table import Row, Table

_ASKING = ("?", "？", "؟")
_LEAST = 3
# Of so many answers one may be no question.
_NEARLY_ALL = 10


def column_notes(table: Table, headings: Row, roles: Roles) -> Iterator[Finding]:
    """Yield what is to be said of columns that are hidden but read, swapped, or a second table."""
    for column in sorted(roles):
        if column in table.hidden_columns:
            yield _hidden_but_read(headings.cells[column])
    pair = pair_of(roles) or ()
    others = {column: role for column, role in roles.items() if role not in pair}
    if pair_of(others):
        yield _beside(headings.cells[min(c for c in others if others[c] in FRONTS | BACKS)], pair)
    yield from _swapped(table, headings, roles)


def _swapped(table: Table, headings: Row, roles: Roles) -> Iterator[Finding]:
    """Yield a warning if the answers ask and the questions do not; other prompts need not ask."""
    columns = {role: column for column, role in sorted(roles.items(), reverse=True)}
    question, answer = columns.get(Role.QUESTION), columns.get(Role.ANSWER)
    if not question or not answer:
        return
    below = [row for row in table.rows if row.number > headings.number and row.text(answer)]
    asking = [row for row in below if row.text(answer).endswith(_ASKING)]
    if len(asking) < max(_LEAST, len(below) - len(below) // _NEARLY_ALL):
        return
    if any(row.text(question).endswith(_ASKING) for row in below):
        return
    # as a rule an answer is shorter than what it answers
    if sum(len(row.text(question)) - len(row.text(answer)) for row in below) < 0:
        yield _look_swapped(headings.cells[question], headings.cells[answer])


def _look_swapped(question: Cell, answer: Cell) -> Finding:
    return Finding(
        "headings-swapped",
        Severity.WARNING,
        answer.place,
        answer.text,
        f"The texts under {quoted(answer.text)} ask, and none under {quoted(question.text)} in "
        f"{question.place.cell} does, so the two headings seem to have changed places.",
        "If they have, write each above the other column; if the answers are to ask, leave them.",
    )


def _beside(cell: Cell, pair: Collection[Role]) -> Finding:
    return Finding(
        "table-beside",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"The cards of this sheet are made of the columns {' and '.join(pair)}; "
        "a second table beside them makes none.",
        "Put the second table on a sheet of its own.",
    )


def _hidden_but_read(cell: Cell) -> Finding:
    return Finding(
        "hidden-column",
        Severity.NOTE,
        cell.place,
        cell.text,
        "This column is hidden, but its heading says what it holds, so it was read.",
        "To leave it out, clear its heading or delete the column.",
    )
