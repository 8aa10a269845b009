"""What stands on paper for each character: itself, a plainer spelling, nothing, or no letter."""

from collections.abc import Iterator
from functools import cache
from unicodedata import category, combining, decomposition, normalize

from decks.press.script.faces import drawn, source_of

INVISIBLE = (
    frozenset("\u00ad\u034f\u061c\u180e\ufeff")
    | {chr(code) for code in (*range(0x200B, 0x2010), *range(0x2028, 0x202F))}
    | {chr(code) for code in (*range(0x2060, 0x2070), *range(0xFE00, 0xFE10))}
    | {chr(code) for code in range(0xE0100, 0xE01F0)}
)
"""Controls without ink: joiners, direction marks, variation selectors and the like."""

MEANINGLESS = frozenset({"Cc", "Cn", "Co", "Cs"})
"""Controls, and codes that have no meaning or another one in every font."""

BLANKS = frozenset("\t\n\r\u2028\u2029")
MEANT = frozenset({"<circle>", "<super>", "<sub>", "<fraction>"})
"""Compatibility forms whose plainer spelling would say something else."""


@cache
def spelt(letter: str) -> str | None:
    """Return what is set for a character, None where no face has it.

    A form kept in Unicode for compatibility (a Roman numeral, a full-width letter, a letter of a
    mathematical alphabet) is spelt with the letters it stands for where no face has it.
    """
    if letter in INVISIBLE:
        return letter
    if letter in BLANKS:
        return " "
    if category(letter) in MEANINGLESS:
        return None
    if drawn(letter) or source_of(letter):
        return letter
    form = decomposition(letter).partition(" ")[0]
    plainer = normalize("NFKC", letter)
    if form.startswith("<") and form not in MEANT and plainer != letter:
        return plainer if all(drawn(c) or source_of(c) for c in plainer) else None
    return None


def clusters(text: str) -> Iterator[str]:
    """Part a text into letters with the marks and joiners that belong to each."""
    cluster = ""
    for letter in text:
        if cluster and not belongs(letter):
            yield cluster
            cluster = ""
        cluster += letter
    if cluster:
        yield cluster


@cache
def belongs(letter: str) -> bool:
    """Whether a character goes with the one before it."""
    return bool(combining(letter)) or category(letter).startswith("M") or letter in INVISIBLE
