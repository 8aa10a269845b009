"""Texts in the cells of the workbooks that we write."""

import re

TEXT = "@"
"""The number format that leaves what is typed as it is: `3/4` stays `3/4`."""

# What stands for one character in a text of a workbook (ECMA-376 part 1, 22.9.2.19, ST_Xstring).
_LIKE_AN_ESCAPE = re.compile(r"_(?=x[0-9A-Fa-f]{4}_)")
# What XML has no place for.
_NOT_ALLOWED = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")


def writable(text: str) -> str:
    """Return a text with a sign in place of each character that the file cannot hold."""
    return _NOT_ALLOWED.sub("\N{REPLACEMENT CHARACTER}", text)


def escaped(text: str) -> str:
    """Return a text escaped so that the library writes it unchanged: `_x000D_` stays itself.

    Else a spreadsheet program would show a line break, or whatever the escape stands for.
    """
    return _LIKE_AN_ESCAPE.sub("_x005F_", text)
