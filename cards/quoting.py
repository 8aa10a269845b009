"""A text from a cell, as messages show it."""

import re

_LONGEST = 60
_STEERING = re.compile("[\0-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ud800-\udfff]")
"""What does not show, or turns round what stands beside it (Unicode Standard Annex 9, table 4)."""


def quoted(text: str) -> str:
    """Return the text in quotation marks, as `in_line` does."""
    return f"“{in_line(text)}”"


def in_line(text: str) -> str:
    """Return the text on one line, cut short if it is long.

    A sign that would change what stands beside it shows as one that could not be read.
    """
    # far more than is shown, so that a very long text need not be gone through
    line = _STEERING.sub("\ufffd", " ".join(text[: 100 * _LONGEST].split()))
    return line if len(line) <= _LONGEST else f"{line[: _LONGEST - 1].rstrip()}…"
