"""Pairs of brackets, as the Unicode bidirectional algorithm sees them (UAX #9, BD14–BD16)."""

from collections.abc import Sequence
from functools import cache
from unicodedata import category, mirrored

DEEPEST = 63
"""Brackets nested deeper than this are not paired (BD16)."""

ODD_PAIRS = {"\u298d": "\u2990", "\u298f": "\u298e"}
"""Pairs that do not stand side by side in the code charts (BidiBrackets.txt)."""


@cache
def closing(bracket: str) -> str | None:
    """Return the bracket that closes this one; None where it opens nothing.

    In the code charts a closing bracket follows its opening one, with at most one sign between.
    """
    if category(bracket) != "Ps" or not mirrored(bracket):
        return None
    near = (chr(ord(bracket) + step) for step in (1, 2))
    return ODD_PAIRS.get(bracket) or next((c for c in near if category(c) == "Pe"), None)


def pairs_of(letters: Sequence[str]) -> list[tuple[int, int]]:
    """Return where the brackets of each pair stand, in the order they open."""
    waiting: list[tuple[str, int]] = []
    pairs = []
    for n, letter in enumerate(letters):
        if not letter:
            continue
        if partner := closing(letter):
            if len(waiting) == DEEPEST:
                return []
            waiting.append((partner, n))
        elif category(letter) == "Pe":
            depth = next((d for d, (c, _) in reversed([*enumerate(waiting)]) if c == letter), None)
            if depth is not None:
                pairs.append((waiting[depth][1], n))
                del waiting[depth:]
    return sorted(pairs)
