"""The way from a deck's record to some of its cards on paper again, step by step."""

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import count, groupby
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from cards.finding import UnusableFileError
from cards.folders import is_folder
from cards.writing.saving import FileTakenError, save_new
from decks.commands.picking import Picked, picked, pile_told
from decks.commands.places import refuse_other_ending
from decks.commands.refitting import Refitted, refitted
from decks.commands.stopping import finishing
from decks.deck import Deck
from decks.layout.room import NoRoomError
from decks.press.cards.leaf_side import loading
from decks.press.cards.reprint import Load, loads_of, reprint_files, why_not_printed
from decks.record import RECORD, DamagedRecordError, folder_of, read_record, with_pictures
from decks.words import counted, listed

_NAMED = re.compile(r"reprint-([0-9]{1,6})(-fronts|-backs)?\.pdf")


class Wanted(Struct, frozen=True):
    """The cards as they were asked for: labels, whose, or all."""

    labels: str | None
    owners: tuple[str, ...] = ()
    everything: bool = False


def print_again(
    named: Path, wanted: Wanted, options: Mapping[str, str], *, out: Path | None
) -> list[str]:
    """Make a file of some cards of a deck and return what to tell about it.

    `named` is the deck's folder or its record, `options` the settings that are to differ from the
    first print. Raises `DamagedRecordError`, `UsageError` and `UnusableFileError`; nothing is
    written then. The deck's own files are never touched.
    """
    if out is not None and not is_folder(out):
        refuse_other_ending(out, ".pdf", "file of cards")
    folder = folder_of(named)
    deck = read_record(folder)
    try:
        fit = refitted(deck.recipe, options)
    except NoRoomError as error:
        raise _not_ours(folder, f"asks for cards that {error.paper.name} has no room for") from None
    found = picked(deck, wanted.labels, wanted.owners, everything=wanted.everything)
    found = replace(found, cards=with_pictures(found.cards, folder))
    deck = replace(deck, recipe=fit.recipe)
    why = why_not_printed(deck, found.cards, fit.grid)
    if why:
        raise _not_ours(folder, f"has been changed: {why}")
    loads = loads_of(deck, found.cards, fit.grid)
    made = _put_first(folder, out, reprint_files(deck, fit.grid, loads))
    return [*_about(deck, found, loads), *_printing(made, fit, loads), *_notes(deck, found, fit)]


def _not_ours(folder: Path, wrong: str) -> DamagedRecordError:
    return DamagedRecordError(folder / RECORD, wrong)


def _places(folder: Path, out: Path | None) -> Iterator[Path]:
    """Yield the name of the file: as it is given, or the next numbers in a folder, without end."""
    if out is not None and not is_folder(out):
        yield out
        return
    folder = out or folder
    try:
        names = [_NAMED.fullmatch(entry.name) for entry in folder.iterdir()]
    except OSError as error:
        raise UnusableFileError(
            f"{folder} could not be looked into ({error.strerror or error}). "
            "Let it be read, or name a file with --out."
        ) from error
    last = max((int(name[1]) for name in names if name), default=0)
    yield from (folder / f"reprint-{number}.pdf" for number in count(last + 1))


def _put_first(folder: Path, out: Path | None, files: Mapping[str, bytes]) -> list[Path]:
    """Put files where they are to be, or under the next number that nobody else takes."""
    for place in _places(folder, out):
        try:
            with finishing():
                return _put(place, files)
        except FileTakenError:
            if place == out:
                raise
    raise AssertionError  # either the name was given, or there is no end of numbers


def _put(place: Path, files: Mapping[str, bytes]) -> list[Path]:
    """Put one or two new files in their place, all or none."""
    made: list[Path] = []
    try:
        for name, data in files.items():
            path = place.with_name(f"{place.stem}-{name}{place.suffix}") if name else place
            save_new(path, data)
            made.append(path)
    except BaseException:
        for path in made:
            path.unlink(missing_ok=True)
        raise
    return made


def _about(deck: Deck, found: Picked, loads: Sequence[Load]) -> list[str]:
    leaves = sum(len(load.leaves) for load in loads)
    piles = [pile_told(own, deck) for _, own in groupby(found.cards, key=lambda card: card.owner)]
    cards = f"{counted(len(found.cards), 'card')} again, on {counted(leaves, 'leaf', 'leaves')}"
    return [f"{deck.name}: {cards}: {'; '.join(piles)}."]


def _printing(made: Sequence[Path], fit: Refitted, loads: Sequence[Load]) -> list[str]:
    """Say which file goes on which paper, and how."""
    first, *behind = made
    lines = [f"Print   {first.name}: {loading(fit.grid)}."]
    lines += [f"        {path.name}: on the same sheets, put in again by hand." for path in behind]
    if loads[0].paper:
        sheets = [f"{len(load.leaves)} of {_paper(load)}" for load in loads]
        lines.append(f"Load    {listed(sheets, 'and')}.")
    lines.append(f"Folder  {first.parent}")
    return lines


def _paper(load: Load) -> str:
    return f"{load.paper} ({load.owner.name})" if load.owner else "any"


def _notes(deck: Deck, found: Picked, fit: Refitted) -> list[str]:
    notes = list(fit.notes)
    if found.repeated:
        is_one = len(found.repeated) == 1
        which = f"Card {found.repeated[0]} is" if is_one else "These cards are"
        owner = deck.owners[found.cards[0].owner].name
        notes.append(f'{which} in several piles. For one of them only: --team "{owner}".')
    return [f"Note    {note}" for note in notes]
