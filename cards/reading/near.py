"""What a misspelt word was probably meant to be."""

from collections.abc import Iterable
from difflib import get_close_matches

from cards.item import folded


def near_miss(word: str, known: Iterable[str], *, closeness: float = 0.6) -> str | None:
    """Return the known word that is most like `word`, or None if none is like it.

    `closeness` runs from 0 (anything is like anything) to 1 (only the same word is), as in
    `difflib.SequenceMatcher.ratio`. Case and runs of white space do not count.
    """
    by_fold = {folded(other): other for other in known}
    found = get_close_matches(folded(word), sorted(by_fold), n=1, cutoff=closeness)
    return by_fold[found[0]] if found else None
