"""The pictures of a deck, which stand beside its record.

They stand there as they are, so that they can be looked at, and each but once; inside the record
every picture would be a third larger, and no longer a line to read.
"""

import re
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

from msgspec import Struct, field
from msgspec.structs import replace

from cards.finding import UnusablePictureError
from cards.item import Item
from cards.picture import Picture, PictureKind
from cards.reading.pictures.looking import picture_in
from decks.card import Card
from decks.deck import Deck
from decks.record.damage import DamagedRecordError, WrongValueError
from decks.record.finding_it import bytes_of
from decks.record.values import mapping, text, whole

PICTURES = "pictures"
"""The folder beside the record that holds its pictures."""

_NAME = re.compile(rf"{PICTURES}/[0-9a-f]{{16}}\.({'|'.join(PictureKind)})")
_DIGEST = re.compile(r"[0-9a-f]{64}")


def pictures_of(deck: Deck) -> list[Picture]:
    """Return each picture of a deck's cards once, in an order of their own."""
    shown = {card.item.image for card in deck.cards if card.item.image}
    return sorted(shown, key=lambda one: one.digest)


def picture_files(deck: Deck) -> dict[str, bytes]:
    """Return the files, by name, of the pictures that the record names."""
    return {file_of(picture): picture.data for picture in pictures_of(deck)}


def file_of(picture: Picture) -> str:
    """Return a picture's file, from the deck's folder."""
    return f"{PICTURES}/{picture.file_name}"


def picture_file(item: Item) -> str | None:
    """Return the file of an item's picture, or None where it has none."""
    return file_of(item.image) if item.image else None


def picture_table(deck: Deck) -> dict[str, dict[str, Any]]:
    """Return what the record tells of each picture, by its file."""
    return {
        file_of(picture): {
            "sha256": picture.digest,
            "width": picture.width,
            "height": picture.height,
            "alpha": picture.alpha,
        }
        for picture in pictures_of(deck)
    }


class Album(Struct):
    """The pictures of a deck's folder, each read once.

    `table` is what the record tells of them. A picture that is told of is known by its digest and
    size and has no bytes; a record of an earlier day tells nothing, so that it is opened.
    """

    folder: Path
    table: Mapping[str, Any]
    seen: dict[str, Picture] = field(default_factory=dict)

    def picture(self, name: object) -> Picture | None:
        """Return a picture by its name in the record, or None for no name.

        Raises `WrongValueError` for a name that leads elsewhere and `DamagedRecordError` for a file
        that is missing or is not the picture that was printed.
        """
        if name is None:
            return None
        name = text(name)
        if not _NAME.fullmatch(name):
            raise WrongValueError(name)
        if name not in self.seen:
            self.seen[name] = self._read(name)
        return self.seen[name]

    def _read(self, name: str) -> Picture:
        if name in self.table:
            return _recorded(name, self.table[name])
        return _opened(self.folder / name, name, None)


def with_pictures(cards: Iterable[Card], folder: Path) -> tuple[Card, ...]:
    """Return cards whose pictures are known by their digests with the pictures themselves.

    Each is read once, and those of other cards not at all: one that was lost spoils no more than
    the cards that show it. Raises `DamagedRecordError` as `Album.picture` does.
    """
    seen: dict[str, Picture] = {}
    return tuple(_with_picture(card, folder, seen) for card in cards)


def _with_picture(card: Card, folder: Path, seen: dict[str, Picture]) -> Card:
    told = card.item.image
    if told is None or told.data:
        return card
    name = file_of(told)
    if name not in seen:
        seen[name] = _opened(folder / name, name, told)
    return replace(card, item=replace(card.item, image=seen[name]))


def _opened(path: Path, name: str, recorded: Picture | None) -> Picture:
    try:
        found = picture_in(bytes_of(path), may_be_blank=True)
    except UnusablePictureError as error:
        raise DamagedRecordError(path, error.wrong) from error
    if file_of(found) != name or (recorded and found != replace(recorded, data=found.data)):
        raise DamagedRecordError(path, "is not the picture that was printed")
    return found


def _recorded(name: str, record: object) -> Picture:
    """Return a picture without its bytes."""
    given = mapping(record)
    digest, alpha = text(given["sha256"]), given["alpha"]
    if not _DIGEST.fullmatch(digest) or not isinstance(alpha, bool):
        raise WrongValueError(record)
    width, height = whole(given["width"], 1), whole(given["height"], 1)
    picture = Picture(b"", width, height, PictureKind(name.rpartition(".")[2]), alpha, digest)
    if file_of(picture) != name:
        raise WrongValueError(name)
    return picture
