"""The earlier decks of a workbook, and which of them an item was in.

An item is told by its key, which is made of its prompt and its answer: a row that was moved, or
edited elsewhere, keeps its history.
"""

from errno import ENAMETOOLONG
from pathlib import Path

from msgspec import Struct

from cards.finding import Finding, Severity, UnusableFileError
from cards.place import Place
from decks.deck import Deck
from decks.record import RECORD, DamagedRecordError, read_record
from decks.shelf import is_number


class Earlier(Struct, frozen=True):
    """An earlier deck: its folder, and the deck as its record tells it, pictures unopened."""

    folder: Path
    deck: Deck

    @property
    def number(self) -> int:
        """The deck's number."""
        return self.deck.number


class EarlierDecks(Struct, frozen=True):
    """The earlier decks in the order of their numbers, and what was left alone, and why."""

    decks: tuple[Earlier, ...] = ()
    findings: tuple[Finding, ...] = ()

    @property
    def keys(self) -> frozenset[str]:
        """The keys of all items that were in an earlier deck."""
        return frozenset(card.item.key for earlier in self.decks for card in earlier.deck.cards)


def earlier_decks(shelf: Path) -> EarlierDecks:
    """Return all decks on a shelf, as `decks.shelf` names it; none where there is no shelf.

    What cannot be read does not stop the rest: it is left alone and told as a warning. Raises
    `UnusableFileError` where the shelf itself may not be looked into.
    """
    decks: dict[int, Earlier] = {}
    findings: list[Finding] = []
    for folder in sorted(_folders(shelf), key=_order):
        try:
            deck = read_record(folder)
        except DamagedRecordError as error:
            findings.append(_left_alone(shelf, folder, error))
            continue
        if deck.number in decks:
            findings.append(_twice(shelf, folder, decks[deck.number]))
        else:
            decks[deck.number] = Earlier(folder, deck)
    ordered = tuple(decks[number] for number in sorted(decks))
    return EarlierDecks(ordered, tuple(findings))


def _folders(shelf: Path) -> list[Path]:
    """Return the folders that are called as decks are, or hold a record; hidden ones are none."""
    try:
        entries = list(shelf.iterdir()) if shelf.is_dir() else []
        return [
            entry
            for entry in entries
            if entry.is_dir() and not entry.name.startswith(".") and _may_be_deck(entry)
        ]
    except OSError as error:
        if error.errno == ENAMETOOLONG:
            raise UnusableFileError(
                f"The folder “{shelf.name}” would have too long a name. Give the workbook a "
                "shorter one."
            ) from error
        raise UnusableFileError(
            f"The earlier decks in {shelf} could not be looked at: {error.strerror or error}. "
            "Let the folder be read, or choose another with --out."
        ) from error


def _may_be_deck(folder: Path) -> bool:
    return is_number(folder.name) or (folder / RECORD).exists()


def _order(folder: Path) -> tuple[bool, int, str]:
    """Order folders that have kept their numbers first, so that copies come after them."""
    name = folder.name
    return (False, int(name), name) if name.isdecimal() else (True, 0, name)


def _left_alone(shelf: Path, folder: Path, error: DamagedRecordError) -> Finding:
    return Finding(
        "deck-not-read",
        Severity.WARNING,
        Place(f"{shelf.name}/{folder.name}"),
        error.path.name,
        f"The earlier deck here does not count: {error.path.name} {error.wrong}.",
        error.mend,
    )


def _twice(shelf: Path, folder: Path, other: Earlier) -> Finding:
    return Finding(
        "deck-twice",
        Severity.WARNING,
        Place(f"{shelf.name}/{folder.name}"),
        str(other.number),
        f"This is deck {other.number}, as {other.folder.name} is, so it does not count.",
        "Move the copy to another place.",
    )
