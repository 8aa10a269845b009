"""Whether two words are forms of one."""

from cards.checking.words import word_set

_LEAST = 5
_ENDINGS = word_set(
    "s es ed d ing er ers r rs "
    "or ors ion ions e y ies ied al ic ous ment ments ation ative ist ists "
    "en 's ly able ance ence ant ent ate ates ated ating"
) | {""}


def same_stem(word: str, other: str) -> bool:
    """Say whether two words are equal, or part only in their endings after five letters or more."""
    if word == other or _plain(word) == _plain(other):
        return True
    stem = _shared(word, other)
    return stem >= _LEAST and {word[stem:], other[stem:]} <= _ENDINGS


def _shared(word: str, other: str) -> int:
    """Return how many letters two words begin with alike."""
    pairs = enumerate(zip(word, other, strict=False))
    return next((i for i, (a, b) in pairs if a != b), min(len(word), len(other)))


def _plain(word: str) -> str:
    """Return a word without the ending of a plural or of an owner."""
    word = word.removesuffix("'s")
    if word.endswith("ies"):
        return word[:-3] + "y"
    if word.endswith(("ches", "shes", "sses", "xes")):
        return word[:-2]
    return word if word.endswith(("ss", "us", "is")) else word.removesuffix("s")
