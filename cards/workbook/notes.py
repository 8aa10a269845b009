"""Notes on cells: what we write into them, and what the teacher had written before."""

from collections.abc import Sequence

from cards.finding import Finding
from cards.workbook.texts import escaped, writable

AUTHOR = "Fairdeal"
# By this line our part of a note is known again, whichever program has saved it meanwhile.
_SIGNED = f"— {AUTHOR}"
_BETWEEN = "\n\n"


def note_on(findings: Sequence[Finding], before: str = "") -> str:
    """Return the note for a cell: what was there before, then what was found and how to mend it."""
    lines = [
        f"{one.severity.capitalize()}: {_line(one.wrong)} {_line(one.mend)}" for one in findings
    ]
    ours = "\n".join([*lines, _SIGNED])
    before = before.rstrip("\n")
    return f"{before}{_BETWEEN}{ours}" if before else ours


def without_ours(note: str) -> str:
    """Return what a note says beside what we wrote into it."""
    parts = note.replace("\r\n", "\n").split(_BETWEEN)
    kept = [part for part in parts if not part.rstrip().endswith(_SIGNED)]
    return note if len(kept) == len(parts) else _BETWEEN.join(kept)


def _line(text: str) -> str:
    return escaped(writable(" ".join(text.split())))
