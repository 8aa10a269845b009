"""What was found in the content, where, and how to mend it."""

from collections import Counter
from collections.abc import Iterable
from enum import StrEnum

from msgspec import Struct

from cards.place import Place


class Severity(StrEnum):
    """How much a finding matters: an error keeps its row out of every deck."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"


class Finding(Struct, frozen=True):
    """One thing found in the content.

    `found` is the text that was found (may be empty), `wrong` a sentence that says what is wrong
    with it, `mend` a sentence that says what to do.
    """

    code: str
    severity: Severity
    place: Place
    found: str
    wrong: str
    mend: str

    def __str__(self) -> str:
        return f"{self.place}: {self.wrong} {self.mend}"


def errors_in(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return the errors among findings, in their order."""
    return tuple(finding for finding in findings if finding.severity is Severity.ERROR)


def tally(findings: Iterable[Finding]) -> str:
    """Return how many findings there are of each severity, as `2 errors, 1 note`."""
    counts = Counter(finding.severity for finding in findings)
    there = (one for one in Severity if counts[one])
    return ", ".join(f"{counts[one]} {one}{'s' * (counts[one] > 1)}" for one in there)


def ranked(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return findings with errors first, then by sheet and cell."""
    order = tuple(Severity)
    return tuple(sorted(findings, key=lambda f: (order.index(f.severity), f.place, f.code)))


class FairdealError(Exception):
    """An expected failure: one line that says what is wrong and how to mend it."""


class UnusableFileError(FairdealError):
    """A file that could not be read or written."""


class UnusablePictureError(FairdealError):
    """A picture that cannot be printed: a finding's code, what is wrong with it, and the mend.

    `wrong` goes on from the picture's name: “is cut off in the middle”.
    """

    def __init__(self, code: str, wrong: str, mend: str) -> None:
        super().__init__(f"{wrong} {mend}")
        self.code = code
        self.wrong = wrong
        self.mend = mend
