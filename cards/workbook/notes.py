"""Notes on cells: what we write into them, and what the teacher had written before."""

from collections.abc import Sequence

from cards.finding import Finding, ranked
from cards.workbook.texts import escaped, writable

AUTHOR = "Fairdeal"
# By this line our part of a note is known again, whichever program has saved it meanwhile.
_SIGNED = f"— {AUTHOR}"
_BETWEEN = "\n\n"
_MOST = 5
"""How many findings a note tells; more make it longer than the screen is high."""


def note_on(findings: Sequence[Finding], before: str = "") -> str:
    """Return the note for a cell: what was there before, then what was found and how to mend it.

    Of many findings it tells the gravest, and how many more there are.
    """
    lines = [
        f"{one.severity.capitalize()}: {_line(one.wrong)} {_line(one.mend)}"
        for one in ranked(findings)[:_MOST]
    ]
    ours = "\n".join([*lines, *_rest(len(findings) - _MOST), _SIGNED])
    before = before.rstrip("\n")
    return f"{before}{_BETWEEN}{ours}" if before else ours


def without_ours(note: str) -> str:
    """Return what a note says beside what we wrote into it."""
    parts = note.replace("\r\n", "\n").split(_BETWEEN)
    kept = [part for part in parts if not part.rstrip().endswith(_SIGNED)]
    return note if len(kept) == len(parts) else _BETWEEN.join(kept)


def _rest(number: int) -> list[str]:
    if number < 1:
        return []
    return [f"{number} more {'is' if number == 1 else 'are'} listed on the first sheet."]


def _line(text: str) -> str:
    return escaped(writable(" ".join(text.split())))
