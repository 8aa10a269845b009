"""A digest of what a file says, however it is laid out."""

import hashlib
import json
from collections.abc import Sequence

from cards.content import SettingRow, TeamRow
from cards.item import Item


def digest_of(
    items: Sequence[Item], teams: Sequence[TeamRow], settings: Sequence[SettingRow]
) -> str:
    """Return the hexadecimal SHA-256 of the texts, in their order, without their places."""
    said = {
        "items": [_said(item) for item in items],
        "teams": [[row.name.text, row.colour.text if row.colour else ""] for row in teams],
        "settings": [[row.name.text, row.value.text] for row in settings],
    }
    return hashlib.sha256(json.dumps(said, sort_keys=True).encode()).hexdigest()


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
    ]
