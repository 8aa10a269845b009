"""Running numbers and bullets that stand before the texts of a whole column."""

import re
from collections.abc import Sequence
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import folded
from cards.place import column_letters
from cards.quoting import quoted
from cards.reading.columns import Columns
from cards.reading.headings import role_of
from cards.reading.role import Role
from cards.reading.table import Row, Table
from cards.style import Span

_LEAST = 3
# One of so many texts may lack its mark or follow upon a gap; of fewer, one may lack its mark.
_MANY = 10
_MARKS = (
    # right behind the mark of a decimal, a time or a ratio stands a digit: 1.5, 12:30
    re.compile(
        r"\(?(?:(?P<kind>[^\W\d_]+)[ .]{0,2})?(?P<number>\d{1,3})"
        r"[.):]{1,2}(?:\s+(?=\S)|(?=[^\W\d_]))"
    ),
    # a capital and a full stop begin a name: C. elegans
    re.compile(r"\(?(?P<number>[a-z](?=\.\s|\.?\))|[A-Z](?=\.?\)))[.)]{1,2}\s*(?=\S)"),
    re.compile(r"(?P<kind>[^\W\d_]+):\s+(?=\S)"),
    # the first of several bullets in a cell belongs to a list
    re.compile(r"(?P<kind>[•▪●◦‣])(?=\s*[^\W_])\s*(?!.*\n)"),
)
# an answer with such a sign may be a number, and so may a prompt that goes on with a formula
_MARKS_OF_PROMPTS = (
    *_MARKS,
    re.compile(r"(?P<kind>[-·])\s+(?=[^\W\d_]{2,}\s+[^\W\d_])(?!.*\n)"),
)
# how months begin where a date begins with an ordinal: in German, Danish, Czech, Finnish
_MONTHS = re.compile(
    "jan|feb|m[aä]r|apr|ma[ij]|jun|jul|aug|sep|o[kc]t|nov|de[zcs]"
    "|led|úno|bře|dub|kvě|čer|srp|zář|říj|lis|pro|tam|hel|maa|huh|tou|kes|hei|elo|syy|lok|jou"
)
_RATIO = re.compile(r"\d+: *\d")
_WORDS_OF_A_SENTENCE = 4
_LETTER = "letter"


class _Side(Struct, frozen=True):
    """What may stand before the texts of a side: marks, among them what the side is called."""

    marks: tuple[re.Pattern[str], ...]
    label: Role


_PROMPT = _Side(_MARKS_OF_PROMPTS, Role.QUESTION)
_ANSWER = _Side(_MARKS, Role.ANSWER)


class _Marked(Struct, frozen=True):
    """A cell whose text has a mark before it: the mark's kind, its number, and the rest."""

    cell: Cell
    kind: str
    number: int | None
    rest: Cell


def without_running(
    table: Table, columns: Columns, *, start: int
) -> tuple[Table, tuple[Finding, ...]]:
    """Leave out the numbers or bullets before the texts of a side, in the rows from `start` on.

    Left on cards and in word banks, numbers would tell which answer belongs to which prompt.
    """
    rows = table.rows[start:]
    sides = [
        _marked(rows, columns.prompt, _PROMPT),
        () if _has_others_marked(rows, columns) else _marked(rows, columns.answer, _ANSWER),
    ]
    if _is_code(*sides) or not any(map(_are_no_ordinals, sides)):
        return table, ()
    rests = {one.cell.place: one.rest for side in sides for one in side}
    bare = tuple(
        Row(row.number, {at: rests.get(cell.place, cell) for at, cell in row.cells.items()})
        for row in table.rows
    )
    return replace(table, rows=bare), tuple(_left_out(side[0].cell) for side in sides if side)


def _is_code(prompts: Sequence[_Marked], answers: Sequence[_Marked]) -> bool:
    """Say whether one letter and a number before answers stand for no answer: A3, A4 are paper."""
    return not prompts and any(len(one.kind) == 1 and one.number is not None for one in answers)


def _has_others_marked(rows: Sequence[Row], columns: Columns) -> bool:
    """Say whether other answers have marks, among which the right one would stand out without."""
    others = (*columns.wrong, *columns.also_right)
    return any(_parted(row.cells[at], _ANSWER) for row in rows for at in others if at in row.cells)


def _marked(rows: Sequence[Row], column: int, side: _Side) -> Sequence[_Marked]:
    """Return the marked cells of a column, if nearly all have marks and these count up."""
    cells = [row.cells[column] for row in rows if column in row.cells]
    marked = [one for cell in cells if (one := _parted(cell, side))]
    unmarked = len(cells) - len(marked)
    if len(marked) < _LEAST or unmarked > max(1, len(cells) // _MANY):
        return ()
    # "1. Advent" and "2. Advent" are the same without their numbers
    alike = len({folded(one.rest.text) for one in marked}) == 1
    ratios = all(_RATIO.match(one.cell.text) for one in marked)
    return marked if _count_up(marked) and not alike and not ratios else ()


def _parted(cell: Cell, side: _Side) -> _Marked | None:
    found = next(filter(None, (mark.match(cell.text) for mark in side.marks)), None)
    if found is None:
        return None
    kind, number = (found.groupdict().get(name) or "" for name in ("kind", "number"))
    if kind.isalpha() and role_of(kind) is not side.label:
        return None
    rest = _cut(cell, found.end())
    if number.isalpha():
        return _Marked(cell, _LETTER, ord(number.lower()) - ord("a") + 1, rest)
    return _Marked(cell, folded(kind), int(number) if number else None, rest)


def _cut(cell: Cell, length: int) -> Cell:
    spans = (Span(max(s.start - length, 0), s.end - length, s.style) for s in cell.spans)
    return Cell(cell.text[length:], cell.place, tuple(span for span in spans if span.end > 0))


def _count_up(marked: Sequence[_Marked]) -> bool:
    """Say whether marks are of one kind and, if they are numbers, count the texts or the rows.

    They do so from the first on: “c. elegans” and “d. rerio” are species, and “2. World War” is
    none of a list.
    """
    if len({(one.kind, one.number is None) for one in marked}) > 1:
        return False
    if marked[0].number not in {None, 1}:
        return False
    steps = [
        (after.number - before.number, after.cell.place.row - before.cell.place.row)
        for before, after in pairwise(marked)
        if before.number is not None and after.number is not None
    ]
    gaps = sum(step not in {1, rows} for step, rows in steps)
    return all(step > 0 for step, _ in steps) and gaps <= len(marked) // _MANY


def _are_no_ordinals(marked: Sequence[_Marked]) -> bool:
    """Say whether marks are bullets, or the texts behind them begin differently, ask, or are long.

    “1. Akt: Anfang” and “2. Akt: Ende” have ordinals, as some languages write them.
    """
    if any(one.number is None for one in marked):
        return True
    firsts = {folded(one.rest.text).split()[0] for one in marked}
    if all(map(_MONTHS.match, firsts)):
        return False
    ask = all(map(str.isalnum, firsts)) and all(one.rest.text.endswith("?") for one in marked)
    long = all(len(one.rest.text.split()) >= _WORDS_OF_A_SENTENCE for one in marked)
    return len(firsts) > 1 or bool(firsts and (ask or long))


def _left_out(cell: Cell) -> Finding:
    return Finding(
        "running-numbers",
        Severity.NOTE,
        cell.place,
        cell.text,
        f"The texts of column {column_letters(cell.place.column)} have running numbers or bullets "
        f"before them, from {quoted(cell.text)} on; these are not read, since on cards and in word "
        "banks numbers give away what belongs together.",
        "If they belong to the texts, write them behind these.",
    )
