"""Pictures that are named in a row and are not where they should be."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from cards.checking.rule import Remark
from cards.content import Content
from cards.quoting import quoted
from cards.reading.near import near_miss
from cards.reading.pictures.beside import is_beside

SUFFIXES = (".png", ".jpg", ".jpeg", ".svg")


def missing_picture(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find pictures that are no file in the workbook's folder; no file is opened."""
    folder = content.folder
    if folder is None:
        return
    for item in content.items:
        if not item.picture or not item.picture_place or is_beside(item.picture, folder):
            continue
        yield Remark(
            item.picture_place,
            item.picture,
            f"There is no picture {quoted(item.picture)} in the folder of this file.",
            _mend(item.picture, folder),
        )


def _mend(name: str, folder: Path) -> str:
    try:
        names = [file.name for file in folder.iterdir() if file.suffix.lower() in SUFFIXES]
    except OSError:
        names = []
    near = near_miss(name, sorted(names))
    hint = f"Did you mean {near}? " if near else ""
    return f"{hint}Put the picture beside the file and write its name here, such as crab.png."
