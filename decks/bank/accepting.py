"""What a blank accepts."""

import re

from cards.item import Item, folded


def accepted(item: Item) -> frozenset[str]:
    """Return, folded, every text that is right where an item's prompt stands."""
    return frozenset(map(folded, (item.answer, *item.also_right)))


def one_line(text: str) -> str:
    """Return a text as it stands in a bank: line breaks and runs of spaces become one space.

    Non-breaking spaces stay.
    """
    return re.sub(r"[^\S\u00a0\u202f]+", " ", text).strip()
