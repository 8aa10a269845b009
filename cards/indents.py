"""Blanks at the start of lines, which mean something in a program."""

import re

STAYS = "\N{NO-BREAK SPACE}"
_INDENTED = re.compile(r"\n {2,}[^ \n]")
_START = re.compile(r"(?<=\n) +(?=[^ \n])")
_TABS = re.compile(r"(?<![^\n])[ \t]*\t")
_TAB = 4
"""Blanks up to the next stop of a tab; common practice in programs."""


def is_indented(text: str) -> bool:
    """Say whether a line below the first begins with two blanks or more: one is a slip."""
    return _INDENTED.search(text) is not None


def indents(text: str) -> tuple[int, ...]:
    """Return how many blanks each line begins with, or nothing where none is indented."""
    if not is_indented(text):
        return ()
    return tuple(map(_blanks, text.split("\n")))


def _blanks(line: str) -> int:
    return len(line) - len(line.lstrip(" ")) if line.strip() else 0


def with_indents(text: str) -> str:
    """Return a text, if it is indented, with non-breaking blanks at the start of its lines."""
    if not is_indented(text):
        return text
    return _START.sub(lambda found: STAYS * len(found[0]), text)


def outdented(text: str, blanks: int) -> str:
    """Return a text with up to so many blanks less before each line below the first."""
    return re.sub(rf"\n {{0,{blanks}}}", "\n", text) if "\n" in text else text


def without_tabs(text: str) -> str:
    """Return a text with blanks for the tabs at the start of its lines."""
    return _TABS.sub(lambda found: found[0].expandtabs(_TAB), text)
