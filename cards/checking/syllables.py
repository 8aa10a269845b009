"""Syllables of English words, from a word list that is loaded when it is first asked."""

import re

# y is a vowel within a word; a final e is mute unless it follows l after a consonant
_VOWELS = re.compile(r"[aeiouy]+")
_MUTE = re.compile(r"(?:[^l]|[aeiouy]l)e(?:s|d)?$")


def syllables(word: str) -> int:
    """Return the syllables of a word in small letters, by the list or else by its vowels."""
    return _listed(word) or estimated_syllables(word)


def is_listed(word: str) -> bool:
    """Say whether a word in small letters is a word of English that the list has."""
    return _listed(word) is not None


def estimated_syllables(word: str) -> int:
    """Return the groups of vowels in a word, but one: our own estimate, mostly within one."""
    groups = len(_VOWELS.findall(word))
    return max(1, groups - (groups > 1 and bool(_MUTE.search(word))))


def _listed(word: str) -> int | None:
    # a large list, seldom needed
    from pysyllables import get_syllable_count  # type: ignore[import-untyped]  # noqa: PLC0415

    count: int | None = get_syllable_count(word)
    return count
