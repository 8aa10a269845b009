"""Sheets without headings: two plain columns."""

from collections import Counter
from collections.abc import Iterator, Sequence
from statistics import median

from msgspec.structs import replace

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import Kind
from cards.place import Place, column_letters
from cards.reading.columns import BACKS, FRONTS, Columns
from cards.reading.headings import role_of
from cards.reading.row_numbers import numbers_rows
from cards.reading.table import Table

# A column counts if it has a quarter of the cells of the fullest, so that a stray note does not.
_LEAST_SHARE = 4
_SIDES = 2
_WORDS_OF_A_TERM = 2
_WORDS_OF_A_MEANING = 4
_WORDS_OF_A_HEADING = 3
_ROWS_BELOW_HEADINGS = 4


def plain_columns(table: Table, kind: Kind | None) -> Columns:
    """Take the columns in the order of a sheet of this kind; front and back if the kind is none.

    That is word and meaning for vocabulary, and heading and detail, with the topic before them if
    there are three columns, for details. A column before both that only numbers the rows is none of
    them. With one column only, the one to its right is where the other side is missing.
    """
    columns = _filled(table)
    if len(columns) > _SIDES and numbers_rows(table.rows, columns[0]):
        columns.pop(0)
    has_topic = kind is Kind.DETAIL and len(columns) > _SIDES
    topic = columns.pop(0) if has_topic else None
    first, second, *_ = [*columns, columns[0] + 1]
    if kind is Kind.VOCABULARY or kind is Kind.DETAIL:
        return Columns(kind, prompt=second, answer=first, last=second, topic=topic)
    return Columns(kind or Kind.FACT, prompt=first, answer=second, last=second)


def heading_rows(table: Table) -> int:
    """Return how many rows, from the top, are set apart as headings are, or stand above these."""
    return next((i + 1 for i, row in enumerate(table.rows) if row.number == table.set_apart), 0)


def _filled(table: Table) -> list[int]:
    counts = Counter(column for row in table.rows for column in row.cells)
    shown = {column: counts[column] for column in counts if column not in table.hidden_columns}
    counts = Counter(shown) or counts
    enough = max(counts.values()) / _LEAST_SHARE
    return sorted(column for column, count in counts.items() if count >= enough)


def plain_findings(table: Table, columns: Columns) -> Iterator[Finding]:
    """Yield what two plain columns leave in doubt: which side is which, and what is beside them."""
    first = _filled(table)[0]
    if first < min(columns.prompt, columns.answer, columns.topic or columns.last):
        yield _numbers_left_out(table.name, first)
    start = heading_rows(table)
    if start:
        yield _set_apart(next(iter(table.rows[start - 1].cells.values())))
    elif _may_be_headings(table, columns):
        yield _first_is_a_card(table.rows[0].cells[columns.prompt])
    if columns.kind is Kind.FACT and _second_is_meaning(table, columns):
        yield _looks_like_vocabulary(table.name, columns)
    beyond = cells_beyond(table, columns.last, start=heading_rows(table))
    if 2 * len(beyond) > len(table.rows):
        yield _more_columns(table.name, columns.last)
    else:
        yield from map(extra_field if table.delimited else _extra_cell, beyond)


def _may_be_headings(table: Table, columns: Columns) -> bool:
    """Say whether two short texts, with capitals, stand above several rows.

    Where one of them is a known heading, and no row below has one, capitals are not asked for:
    `question,ans`.
    """
    if len(table.rows) < _ROWS_BELOW_HEADINGS:
        return False
    first, *others = [[row.text(side) for side in _sides(columns)] for row in table.rows]
    if not all(first) or any(len(side.split()) > _WORDS_OF_A_HEADING for side in first):
        return False
    if _has_heading(first) and not any(map(_has_heading, others)):
        return True
    return all(side[:1].isupper() and side[-1:].isalpha() for side in first)


def _sides(columns: Columns) -> tuple[int, int]:
    return columns.prompt, columns.answer


def _has_heading(sides: Sequence[str]) -> bool:
    """Say whether a known heading is among some texts; single letters are rather their own."""
    return any(len(side) > 1 and role_of(side) in FRONTS | BACKS for side in sides)


def _first_is_a_card(cell: Cell) -> Finding:
    return Finding(
        "first-row-read",
        Severity.NOTE,
        cell.place,
        cell.text,
        "No two headings that make cards are known on this sheet, so its first row makes a card "
        "as well.",
        "If it holds headings, call them Prompt and Answer, or set them in bold.",
    )


def cells_beyond(table: Table, last: int, *, start: int) -> tuple[Cell, ...]:
    """Return the first cell to the right of column `last` in each row that has one.

    `start` is the index of the first row that counts. Hidden columns do not count.
    """
    hidden = table.hidden_columns
    cells = (
        next(
            (row.cells[column] for column in row.cells if column > last and column not in hidden),
            None,
        )
        for row in table.rows[start:]
    )
    return tuple(cell for cell in cells if cell)


def extra_field(cell: Cell) -> Finding:
    """Say that a record of delimited text has too many fields: its card would be wrong."""
    mend = "If a comma in a text has split it, put that text in quotation marks; else clear it."
    return replace(_extra(cell, mend), severity=Severity.ERROR)


def _extra_cell(cell: Cell) -> Finding:
    return _extra(cell, "Clear the cell, or put headings above all columns.")


def _extra(cell: Cell, mend: str) -> Finding:
    wrong = "This row has more cells than the others; what stands here is not read."
    return Finding("extra-cell", Severity.WARNING, cell.place, cell.text, wrong, mend)


def _more_columns(sheet: str, last: int) -> Finding:
    return Finding(
        "columns-without-headings",
        Severity.WARNING,
        Place(sheet),
        "",
        f"There are no headings, so only the columns up to {column_letters(last)} are read.",
        "Put headings above the columns, such as Prompt, Answer, Topic, Level.",
    )


def _second_is_meaning(table: Table, columns: Columns) -> bool:
    """Say whether the second column is clearly longer: meanings, most likely, of the first."""
    first, second = (
        median(len(row.text(column).split()) for row in table.rows)
        for column in (columns.prompt, columns.answer)
    )
    return first <= _WORDS_OF_A_TERM and second >= _WORDS_OF_A_MEANING


def _set_apart(cell: Cell) -> Finding:
    return Finding(
        "row-set-apart",
        Severity.NOTE,
        cell.place,
        cell.text,
        "This row is set apart as headings are (bold, frozen or with a filter) and makes no card.",
        "If it is content, format it like the rows below it.",
    )


def _numbers_left_out(sheet: str, column: int) -> Finding:
    return Finding(
        "row-numbers",
        Severity.NOTE,
        Place(sheet),
        "",
        f"There are no headings, and column {column_letters(column)} does no more than number the "
        "rows, so it was not read.",
        "If its numbers belong on the cards, put headings above all columns.",
    )


def _looks_like_vocabulary(sheet: str, columns: Columns) -> Finding:
    first, second = column_letters(columns.prompt), column_letters(columns.answer)
    return Finding(
        "answers-longer-than-prompts",
        Severity.NOTE,
        Place(sheet),
        "",
        f"There are no headings, so column {first} is the front of the cards and "
        f"column {second} the back, though {second} is much the longer.",
        f"If {first} holds words and {second} their meanings, "
        "put the headings Word and Meaning above them.",
    )
