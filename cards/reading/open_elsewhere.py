"""The files by which spreadsheet programs tell each other that they have a workbook open."""

import os
from pathlib import Path

_AFFIXES = (("~$", ""), (".~lock.", "#"))
"""What goes before and after the workbook's name: Excel's owner files, and the lock files of
LibreOffice."""


def workbook_of(sign: str) -> str | None:
    """Return the name of the workbook that a file's name says is open, or None."""
    for before, after in _AFFIXES:
        name = sign.removeprefix(before).removesuffix(after)
        if name and sign == f"{before}{name}{after}":
            return name
    return None


def seems_open(path: Path) -> bool:
    """Say whether a spreadsheet program has a workbook open, or had when it came to grief."""
    return any(
        os.path.lexists(path.with_name(f"{before}{path.name}{after}")) for before, after in _AFFIXES
    )
