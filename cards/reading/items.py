"""A row under headings becomes an item."""

import re
from collections.abc import Collection, Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import Item, Level, folded
from cards.place import Place
from cards.raised import in_signs
from cards.reading.columns import Columns, pair_of
from cards.reading.doubts import doubt_findings
from cards.reading.heading_row import are_opposites
from cards.reading.headings import roles_in
from cards.reading.levels import level_of, unknown_level
from cards.reading.summing_up import summing_up
from cards.reading.table import UNREADABLE, Row, Table

_BETWEEN = re.compile(r"[;\n]")
# As it stands below the headings of a table in plain text, or between its parts.
_LINE = re.compile(r":?(?:[-–—]{3,}|={4,}):?")


def items_of(
    table: Table, columns: Columns, *, start: int
) -> tuple[tuple[Item, ...], tuple[Finding, ...]]:
    """Return the items in the rows from index `start` on, and what was found in their cells.

    A row whose front, back and choices are all blank, or lines drawn with signs, says nothing. Nor
    do headings that are repeated, as they are at the top of every page.
    """
    headings = table.rows[start - 1] if start else None
    above = headings.number if headings else 0
    rows: list[Row] = []
    findings: list[Finding] = []
    for row in table.rows[start:]:
        is_apart, above = row.number > above + 1, row.number
        if _says_nothing(row, columns) or (headings and _repeats(row, headings, columns)):
            continue
        rows.append(row)
        findings += _row_findings(table, row, columns)
        if is_apart and headings and _heads_another(row, columns):
            findings.append(_another_table(row.cells[columns.prompt]))
        if not headings and _looks_like_headings(row, columns):
            findings.append(_headings_below(row.cells[columns.prompt]))
    findings += summing_up(rows, columns, headed=headings is not None)
    return tuple(_item(table, row, columns) for row in rows), tuple(findings)


def _says_nothing(row: Row, columns: Columns) -> bool:
    said = (columns.prompt, columns.answer, *columns.also_right, *columns.wrong)
    texts = filter(None, map(row.text, said))
    return all(map(_LINE.fullmatch, texts))


def _repeats(row: Row, headings: Row, columns: Columns) -> bool:
    sides = (columns.prompt, columns.answer)
    return all(folded(row.text(side)) == folded(headings.text(side)) for side in sides)


def _heads_another(row: Row, columns: Columns) -> bool:
    """Say whether both sides of a row are headings that make a card together."""
    sides = {side: row.cells[side] for side in (columns.prompt, columns.answer) if row.text(side)}
    # "Answer 2" may be the answer to "Question 2"
    has_digits = any(map(str.isdigit, "".join(cell.text for cell in sides.values())))
    return not has_digits and pair_of(roles_in(sides)) is not None


def _looks_like_headings(row: Row, columns: Columns) -> bool:
    """Say whether a row heads a table and is written with capitals, as a pair of words may not."""
    capitals = all(row.text(side)[:1].isupper() for side in (columns.prompt, columns.answer))
    return capitals and _heads_another(row, columns) and not are_opposites(row)


def _headings_below(cell: Cell) -> Finding:
    return Finding(
        "headings-below",
        Severity.WARNING,
        cell.place,
        cell.text,
        "This row looks like headings, but stands below rows like those beneath it, so it makes "
        "a card, as they do.",
        "If it holds headings, move it above the first row; if it is content, leave it.",
    )


def _another_table(cell: Cell) -> Finding:
    return Finding(
        "headings-again",
        Severity.WARNING,
        cell.place,
        cell.text,
        "This row looks like the headings of another table, but it makes a card, "
        "and the rows below it are read by the headings above.",
        "Put the other table on a sheet of its own.",
    )


def _item(table: Table, row: Row, columns: Columns) -> Item:
    also_right = _several(table, row, columns.also_right)
    wrong = _several(table, row, columns.wrong, whole=columns.whole)
    return Item(
        prompt=row.text(columns.prompt),
        answer=row.text(columns.answer),
        kind=columns.kind,
        level=level_of(_sure(table, row, columns.level)) or Level.MEDIUM,
        topic=_in_signs(table, row, columns.topic),
        prompt_spans=row.spans(columns.prompt),
        answer_spans=row.spans(columns.answer),
        prompt_place=Place(table.name, row.number, columns.prompt),
        answer_place=Place(table.name, row.number, columns.answer),
        also_right=tuple(text for text, _ in also_right),
        wrong=tuple(text for text, _ in wrong),
        team=_sure(table, row, columns.team) or None,
        team_place=_filled(table, row, columns.team),
        picture=_sure(table, row, columns.picture),
        picture_place=_filled(table, row, columns.picture),
        topic_place=_filled(table, row, columns.topic),
        level_place=_filled(table, row, columns.level),
        also_right_places=tuple(place for _, place in also_right),
        wrong_places=tuple(place for _, place in wrong),
    )


def _sure(table: Table, row: Row, column: int | None) -> str:
    """Return the text in a column, or nothing where a formula has left none to read."""
    cell = row.cells.get(column or 0)
    return cell.text if cell and table.doubts.get(cell.place) not in UNREADABLE else ""


def _in_signs(table: Table, row: Row, column: int | None) -> str:
    """Return the same with signs for what is raised or lowered, for a text without styles."""
    text = _sure(table, row, column)
    return in_signs(text, row.spans(column or 0)) or text


def _filled(table: Table, row: Row, column: int | None) -> Place | None:
    """Return the place of a cell that can be read, or None if it is blank."""
    if not column or not _sure(table, row, column):
        return None
    return Place(table.name, row.number, column)


def _several(
    table: Table, row: Row, columns: tuple[int, ...], whole: Collection[int] = ()
) -> tuple[tuple[str, Place], ...]:
    """Return the texts in some columns with their cells; all but the `whole` may hold several."""
    found = []
    for column in columns:
        text = _in_signs(table, row, column)
        place = Place(table.name, row.number, column)
        parts = [text] if column in whole else _BETWEEN.split(text)
        found += [(part.strip(), place) for part in parts if part.strip()]
    return tuple(found)


def _row_findings(table: Table, row: Row, columns: Columns) -> Iterator[Finding]:
    yield from doubt_findings(table, row, columns)
    yield from _flattened(row, columns)
    level = row.cells.get(columns.level or 0)
    if level and level_of(_sure(table, row, columns.level)) is None:
        yield unknown_level(level)


def _flattened(row: Row, columns: Columns) -> Iterator[Finding]:
    """Find raised and lowered letters that are printed like the others, having no sign."""
    for column in (columns.topic, *columns.also_right, *columns.wrong):
        cell = row.cells.get(column or 0)
        if cell and in_signs(cell.text, cell.spans) is None:
            yield Finding(
                "raised-letters-lost",
                Severity.WARNING,
                cell.place,
                cell.text,
                "The raised or lowered letters of this cell are printed like the others.",
                "Write it so that it can be read without them, as x^Q.",
            )
