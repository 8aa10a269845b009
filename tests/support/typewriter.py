"""A typewriter's face: every letter is half an em wide, or six tenths where it is bold."""

from decks.layout.breaking import break_prose
from decks.layout.prose import prose_of
from decks.layout.runs import Styled, plain


def typewriter(text, strong=False):
    return len(text) * (0.6 if strong else 0.5)


def broken(text, column):
    """Return the lines of a text in a column of so many ems, or None where a word is wider."""
    lines = break_prose(prose_of(Styled(text), typewriter), column)
    return lines and [plain(line) for line, _ in lines]
