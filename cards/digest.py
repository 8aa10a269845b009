"""A digest of what a file says, however it is laid out."""

import hashlib
import json

from cards.content import Cell, Content
from cards.item import Item


def digest_of(content: Content) -> str:
    """Return the hexadecimal SHA-256 of texts and pictures, in order, without their places.

    It is of what the file says, not of its bytes: equal content has an equal digest.
    """
    said = {
        "items": [_said(item) for item in content.items],
        "teams": [[row.name.text, _text(row.colour)] for row in content.teams],
        "settings": [[row.name.text, row.value.text] for row in content.settings],
        "exercises": [
            [row.name.text, *map(_text, (row.how_many, row.gentler, row.effort))]
            for row in content.exercises
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
