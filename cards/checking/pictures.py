"""Pictures that are named in a row and are not where they should be."""

from collections.abc import Iterator, Sequence
from pathlib import Path, PurePath

from cards.checking.rule import Remark
from cards.content import Content
from cards.quoting import quoted
from cards.reading.near import near_miss
from cards.reading.pictures.beside import is_beside

_MOST_LIKENED = 20
"""Of so many names the likest is looked for; more of them are one mistake."""

SUFFIXES = (".png", ".jpg", ".jpeg", ".svg")


def missing_picture(content: Content) -> Iterator[Remark]:
    """Find pictures that are no file in the workbook's folder; no file is opened."""
    folder = content.folder
    if folder is None:
        return
    names: list[str] | None = None
    told: dict[str, str] = {}
    for item in content.items:
        if not item.picture or not item.picture_place or is_beside(item.picture, folder):
            continue
        if names is None:
            names = _pictures_in(folder)
        if item.picture not in told:
            told[item.picture] = _mend(item.picture, names, is_looked_for=len(told) < _MOST_LIKENED)
        yield Remark(
            item.picture_place,
            item.picture,
            f"There is no picture {quoted(item.picture)} in the folder of this file.",
            told[item.picture],
        )


def _pictures_in(folder: Path) -> list[str]:
    try:
        return sorted(
            file.name
            for file in folder.iterdir()
            if file.suffix.lower() in SUFFIXES and is_beside(file.name, folder)
        )
    except OSError:
        return []


def _mend(name: str, names: Sequence[str], *, is_looked_for: bool) -> str:
    """Say what to do; the name that was meant `is_looked_for` where there is time to compare."""
    stem = PurePath(name).stem.casefold()
    near = next((one for one in names if PurePath(one).stem.casefold() == stem), None)
    if near is None and is_looked_for:
        near = near_miss(name, names)
    hint = f"Did you mean {near}? " if near else ""
    return f"{hint}Put the picture beside the file and write its name here, such as crab.png."
