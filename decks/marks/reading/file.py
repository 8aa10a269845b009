"""Marks from a deck's folder, from `marks.xlsx`, or from a CSV of the same shape."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from cards.finding import Finding, Severity, UnusableFileError, ranked
from cards.folders import is_folder
from cards.place import Place
from cards.reading.file import tables_of
from cards.reading.headings import key
from cards.reading.table import Table
from decks.deck import Deck
from decks.marks.forms import SCORE_SHEET
from decks.marks.marked import Marks
from decks.marks.reading.cells import Sheet
from decks.marks.reading.guides import read_guides
from decks.marks.reading.heads import doubled_headings, head_of, missing_heading
from decks.marks.reading.tally import read_tally
from decks.recipe import Activity

_STEM = "marks"
_WORKBOOKS = (".xlsx", ".xlsm", ".ods")
_TEXTS = (".csv", ".tsv")


def may_be_marks(path: Path) -> bool:
    """Say whether a file is of a kind that marks are read from, by its ending."""
    return path.suffix.lower() in (*_WORKBOOKS, *_TEXTS) and not is_folder(path)


def read_marks(path: Path, deck: Deck) -> Marks:
    """Read the marks of a deck; `path` is a file, or the deck's folder.

    In a folder the file is `marks.xlsx`, or where nothing is filled in there, files of delimited
    text whose names begin with “marks”. What is wrong with single cells is found, and left out; the
    rest is used. Raises `UnusableFileError` for a file that is not there or cannot be read, and
    for a folder without one.
    """
    if not is_folder(path):
        return _read([path], deck)
    workbooks, texts = _files(path, _WORKBOOKS), _files(path, _TEXTS)
    if not workbooks and not texts:
        raise UnusableFileError(
            f"There is no marks.xlsx in {path.name}. Put it back from where it was moved to, or "
            "name the file that the marks are in."
        )
    marks = _read(workbooks[:1], deck) if workbooks else Marks()
    unread = [*workbooks[1:], *texts]
    if texts and marks.is_empty and not marks.findings:
        marks, unread = _read(texts, deck), workbooks[1:]
    return Marks(marks.counts, marks.guides, (*marks.findings, *map(_not_read, unread)))


def marks_in(folder: Path, deck: Deck) -> Marks:
    """Return the marks in a deck's folder as `read_marks` does; what cannot be read is found."""
    try:
        any_files = _files(folder, (*_WORKBOOKS, *_TEXTS))
        return read_marks(folder, deck) if any_files else Marks()
    except UnusableFileError as error:
        wrong = "The marks of this deck could not be read, and do not count."
        place = Place(f"{folder.parent.name}/{folder.name}")
        found = Finding("marks-not-read", Severity.WARNING, place, "", wrong, str(error))
        return Marks(findings=(found,))


def _files(folder: Path, endings: Sequence[str]) -> list[Path]:
    """Return the files of marks in a folder: first the one that came with the deck.

    Raises `UnusableFileError` where the folder may not be looked into.
    """
    try:
        paths = list(folder.iterdir())
    except OSError as error:
        raise UnusableFileError(
            f"The marks in {folder} could not be looked at: {error.strerror or error}. "
            "Let the folder be read."
        ) from error
    found = [
        path
        for path in paths
        if path.suffix.lower() in endings
        and path.stem.casefold().startswith(_STEM)
        and not path.name.startswith(".")
    ]
    order = {_STEM + ending: place for place, ending in enumerate(endings)}
    return sorted(found, key=lambda path: (order.get(path.name.casefold(), len(order)), path.name))


def _not_read(path: Path) -> Finding:
    return Finding(
        "marks-beside",
        Severity.NOTE,
        Place(path.name),
        "",
        "This file was not read: the marks of a deck are read from one file.",
        "Name it if it is the one to read: --marks.",
    )


def _read(paths: Sequence[Path], deck: Deck) -> Marks:
    held: list[tuple[str, Marks]] = []
    findings: list[Finding] = []
    for path in paths:
        tables, found = tables_of(path)
        read = [(table.name, marks) for table in tables if (marks := _marks_of(table, deck))]
        findings += [*found, *[finding for _, marks in read for finding in marks.findings]]
        if not read and not findings:
            findings.append(_no_marks(path))
        held += read
    return Marks(
        tuple([count for _, marks in held for count in marks.counts]),
        tuple([guide for _, marks in held for guide in marks.guides]),
        ranked([*findings, *_added_up(held)]),
    )


def _marks_of(table: Table, deck: Deck) -> Marks | None:
    """Return the marks of a table; None where it holds none and ought to hold none."""
    if _is_score_sheet(table, deck):
        return None
    head = head_of(table)
    if head is None:
        missing = missing_heading(table)
        return Marks(findings=(missing,)) if missing else None
    sheet = Sheet(table, list(doubled_headings(table, head)))
    counts = read_tally(sheet, head, deck) if head.is_tally else []
    guides = read_guides(sheet, head, deck) if deck.guides and not head.is_tally else []
    return Marks(tuple(counts), tuple(guides), tuple(sheet.findings))


def _added_up(held: Sequence[tuple[str, Marks]]) -> Iterator[Finding]:
    """Tell of each sheet, by name, whose marks are added to those of one before of its kind."""
    tallies = [name for name, marks in held if any(count.tries for count in marks.counts)]
    guides = [name for name, marks in held if marks.guides]
    for what, names in (("tally", tallies), ("sheet of study guides", guides)):
        for name in names[1:]:
            yield Finding(
                "sheet-twice",
                Severity.WARNING,
                Place(name),
                "",
                f"This is one more {what}: its marks were added to those of the one before.",
                "Delete it if it is a copy that was made by mistake.",
            )


def _is_score_sheet(table: Table, deck: Deck) -> bool:
    """Say whether a table holds points; with names of teams it may be headed as a tally is."""
    return deck.recipe.activity is Activity.ROUNDS and key(table.title) == key(SCORE_SHEET)


def _no_marks(path: Path) -> Finding:
    return Finding(
        "no-marks-sheet",
        Severity.ERROR,
        Place(path.name),
        "",
        "There is no sheet here with the headings of the tally or of the study guides.",
        "Put the headings back as they came: Card, Tries and Right, or Paper and the blanks.",
    )
