"""How a bank shows an answer."""

import re

from cards.item import Item
from cards.raised import written_out


def entry_of(item: Item) -> str:
    """Return an item's answer as it stands in a bank: on one line, as 10² if the 2 is raised."""
    return one_line(written_out(item.answer, item.answer_spans))


def one_line(text: str) -> str:
    """Return a text as it stands in a bank: line breaks and runs of spaces become one space.

    Non-breaking spaces stay.
    """
    return re.sub(r"[^\S\u00a0\u202f]+", " ", text).strip()
