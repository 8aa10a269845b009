"""A digest of what a file says, however it is laid out."""

import hashlib
import json
from collections.abc import Sequence

from cards.content import Cell, ExerciseRow, SettingRow, TeamRow
from cards.item import Item


def digest_of(
    items: Sequence[Item],
    teams: Sequence[TeamRow],
    settings: Sequence[SettingRow],
    exercises: Sequence[ExerciseRow] = (),
) -> str:
    """Return the hexadecimal SHA-256 of texts and pictures, in order, without their places."""
    said = {
        "items": [_said(item) for item in items],
        "teams": [[row.name.text, _text(row.colour)] for row in teams],
        "settings": [[row.name.text, row.value.text] for row in settings],
        "exercises": [
            [row.name.text, *map(_text, (row.how_many, row.gentler, row.effort))]
            for row in exercises
        ],
    }
    return hashlib.sha256(json.dumps(said, sort_keys=True).encode()).hexdigest()


def _text(cell: Cell | None) -> str:
    return cell.text if cell else ""


def _said(item: Item) -> list[object]:
    return [
        item.prompt,
        item.answer,
        item.kind.value,
        int(item.level),
        item.topic,
        item.also_right,
        item.wrong,
        item.team or "",
        item.picture,
        *([item.image.digest] if item.image else []),
    ]
