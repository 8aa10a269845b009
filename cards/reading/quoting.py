"""A text from a cell, as messages show it."""

_LONGEST = 60


def quoted(text: str) -> str:
    """Return the text in quotation marks, on one line, cut short if it is long."""
    line = " ".join(text.split())
    return f"“{line if len(line) <= _LONGEST else f'{line[: _LONGEST - 1].rstrip()}…'}”"
