"""What a blank accepts, and how a bank shows it."""

import re

from cards.answers import accepted

__all__ = ["accepted", "one_line"]


def one_line(text: str) -> str:
    """Return a text as it stands in a bank: line breaks and runs of spaces become one space.

    Non-breaking spaces stay.
    """
    return re.sub(r"[^\S\u00a0\u202f]+", " ", text).strip()
