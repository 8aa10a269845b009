"""Reading a deck's marks, reckoning with them, and saying what they show."""

import json
from collections.abc import Iterator
from itertools import count
from pathlib import Path

from msgspec import Struct

from cards.finding import errors_in
from cards.writing.saving import FileTakenError, holds, save_new
from decks.commands import report
from decks.commands.stopping import finishing
from decks.deck import Deck
from decks.history import earlier_decks
from decks.marks.estimate import Belief
from decks.marks.figures import figures
from decks.marks.marked import Marks
from decks.marks.past import believed, results_of
from decks.marks.reading import marks_in, may_be_marks, read_marks
from decks.marks.results import Results, results
from decks.marks.summary import sentences
from decks.recipe import Activity
from decks.record import folder_of, read_record

SHOWS = "what-it-shows"


class Seen(Struct, frozen=True):
    """A deck with its marks, and what they show; `book` is the file that they are in."""

    folder: Path
    book: Path
    deck: Deck
    marks: Marks
    found: Results


def look_at(place: Path, file: Path | None, strength: float) -> Seen:
    """Read a deck and its marks, and reckon.

    Where the deck is named by a file that may hold marks, they are read from that one. What was
    believed before the lesson comes from the earlier decks on the same shelf and their marks.
    Raises `UnusableFileError` for the deck, and for a file of marks.
    """
    folder = folder_of(place)
    deck = read_record(folder)
    named = file or (place if place != folder and may_be_marks(place) else None)
    marks = read_marks(named or folder, deck)
    before = _before(folder, deck, strength)
    found = results(deck, marks, strength=strength, before=before)
    return Seen(folder, named or folder / "marks.xlsx", deck, marks, found)


def _before(folder: Path, deck: Deck, strength: float) -> dict[str, Belief]:
    """Return what earlier marks say, by an item's key; nothing for items that have none."""
    marked = {
        earlier.number: marks_in(earlier.folder, earlier.deck).by_item
        for earlier in earlier_decks(folder.resolve().parent).decks
        if earlier.number < deck.number
    }
    return {
        card.item.key: believed(card.item, results, strength)
        for card in deck.cards
        if (results := tuple(results_of(card.item, marked, marked)))
    }


def is_unusable(seen: Seen) -> bool:
    """Say whether something was filled in, and none of it can be used."""
    return seen.marks.is_empty and bool(errors_in(seen.marks.findings))


def marks_told(seen: Seen) -> Iterator[str]:
    """Yield what the marks show, and what was found in reading them."""
    yield f"{seen.deck.name}: what the marks show."
    for sentence in sentences(seen.found):
        yield f"{'Do' if sentence.to_do else 'Shows':<8}{sentence.text}"
    yield from report.findings_told(seen.marks.findings)
    errors = len(errors_in(seen.marks.findings))
    if errors and not seen.marks.is_empty:
        yield f"Used    All but the {'cell' if errors == 1 else 'cells'} named above."


def closing(seen: Seen, pages: Path | None) -> str:
    """Return the last lines: where the pages are, and what to do next."""
    if pages:
        return (
            f"Pages   {pages}\n"
            "Next    fairdeal next, with the workbook, makes the next deck from these marks; with "
            "--aim reteach it goes over what was missed."
        )
    if is_unusable(seen):
        return "Next    Mend what is named above, and try again."
    if seen.deck.recipe.activity is Activity.ROUNDS:
        return (
            f"Next    Fill in the sheet Tally of marks.xlsx in {seen.folder}, and try again. The "
            "sheet Score says who won, not what was right."
        )
    return f"Next    Fill in marks.xlsx in {seen.folder}, as much as you have, and try again."


def as_json(seen: Seen, pages: Path | None) -> str:
    """Return all of it as one JSON document; the README says what it holds."""
    document = {
        "deck": {"title": seen.deck.recipe.title, "number": seen.deck.number},
        "findings": [report.finding_record(finding) for finding in seen.marks.findings],
        **figures(seen.found),
        "pages": str(pages) if pages else None,
    }
    return json.dumps(document, ensure_ascii=False, indent=2)


def write_pages(seen: Seen) -> Path | None:
    """Put the pages into the deck's folder and return their place; none where nothing is marked.

    No file is ever overwritten: what is there may have been printed or written on, and shows what
    was known on its day. Other marks get a new number; the same ones find their pages again.
    Raises `UnusableFileError` where they cannot be written; nothing is left behind then.
    """
    if seen.marks.is_empty:
        return None
    from decks.press.results.shows import shows_file  # noqa: PLC0415 (only if there are any)

    data = shows_file(seen.deck, seen.found)
    for number in count(1):
        path = seen.folder / f"{SHOWS}{f'-{number}' if number > 1 else ''}.pdf"
        if _is_new(path, data) or holds(path, data):
            return path
    raise AssertionError  # there is no end of numbers


def _is_new(path: Path, data: bytes) -> bool:
    """Write a file, unless there is one of this name, and say whether it was written."""
    try:
        with finishing():
            save_new(path, data)
    except FileTakenError:
        return False
    return True
