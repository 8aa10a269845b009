"""Items get their pictures: those named in their cells, else those pasted into their rows."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

from msgspec import Struct, field
from msgspec.structs import replace

from cards.finding import Finding, Severity, UnusablePictureError
from cards.item import Item
from cards.picture import Picture
from cards.place import Place
from cards.quoting import quoted
from cards.reading.pictures.beside import bytes_beside
from cards.reading.pictures.looking import picture_in
from cards.reading.pictures.pasted import Pasted
from cards.reading.pictures.unusable import too_large

MOST_TOGETHER = 400_000_000
"""Bytes of all the pictures of a file."""

_ORNAMENTS = frozenset(("picture-blank", "picture-too-narrow"))
"""Lines and white boxes that are pasted upon a sheet: nobody meant them for a card."""

Rows = Mapping[tuple[str, int], Sequence[Pasted]]
_Seen = Picture | UnusablePictureError | None


class _Album(Struct):
    """The pictures seen so far: each is read once, however many rows it stands in."""

    seen: dict[object, _Seen] = field(default_factory=dict)
    size: int = 0

    def picture(self, key: object, read: Callable[[], Picture | None]) -> _Seen:
        """Return a picture, or why it cannot be used, or None where there is none."""
        if key not in self.seen:
            try:
                self.seen[key] = self._counted(read())
            except UnusablePictureError as error:
                self.seen[key] = error
        return self.seen[key]

    def _counted(self, picture: Picture | None) -> Picture | None:
        self.size += len(picture.data) if picture else 0
        if self.size > MOST_TOGETHER:
            raise too_large(f"makes more than {MOST_TOGETHER // 1_000_000} MB with the others")
        return picture


def illustrated(
    items: Iterable[Item], pasted: Rows, folder: Path | None
) -> tuple[tuple[Item, ...], tuple[Finding, ...]]:
    """Return the items with their pictures, and what is amiss with these.

    `pasted` holds the pictures that are pasted into rows, by sheet and row; without a `folder`
    no file is looked for. A file that is not there is left for checking to find.
    """
    album = _Album()
    done: list[Item] = []
    findings: list[Finding] = []
    for item in items:
        here = pasted.get((item.prompt_place.sheet, item.prompt_place.row), ())
        place, name, seen = _one(album, item, here, folder)
        if isinstance(seen, UnusablePictureError) and place:
            is_ornament = not item.picture and seen.code in _ORNAMENTS
            about = _ornament if is_ornament else _unusable
            findings.append(about(seen, place, name))
        if not item.picture and len(here) > 1:
            findings.append(_one_too_many(here[1].place, len(here)))
        image = seen if isinstance(seen, Picture) else None
        done.append(replace(item, image=image, picture_place=place) if image else item)
    return tuple(done), tuple(findings)


def _one(
    album: _Album, item: Item, here: Sequence[Pasted], folder: Path | None
) -> tuple[Place | None, str, _Seen]:
    """Return where an item's picture stands, what it is called, and the picture."""
    if item.picture and folder:
        name = item.picture
        seen = album.picture(name, lambda: _beside(name, folder))
        return item.picture_place, f"The picture {quoted(name)}", seen
    if here and not item.picture:
        first = here[0]
        return first.place, "The picture in this row", album.picture(first.key, first.picture)
    return None, "", None


def _beside(name: str, folder: Path) -> Picture | None:
    data = bytes_beside(name, folder)
    return None if data is None else picture_in(data)


def _unusable(error: UnusablePictureError, place: Place, name: str) -> Finding:
    wrong = f"{name} {error.wrong}."
    return Finding(error.code, Severity.ERROR, place, "", wrong, error.mend)


def _ornament(error: UnusablePictureError, place: Place, name: str) -> Finding:
    wrong = f"{name} {error.wrong}; it is not printed."
    return Finding(error.code, Severity.NOTE, place, "", wrong, error.mend)


def _one_too_many(place: Place, count: int) -> Finding:
    return Finding(
        "pictures-in-one-row",
        Severity.WARNING,
        place,
        "",
        f"{count} pictures lie in this row; the first, furthest to the left, is printed.",
        "Move the others to rows of their own, or put them together into one picture.",
    )
