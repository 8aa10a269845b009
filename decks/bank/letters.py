"""Letters as a person counts them: a base with its accents, points and vowel signs is one."""

import re
import unicodedata

_LIGATURES = re.compile("[\ufb00-\ufdff\ufe70-\ufefc]")
_STRETCH = "\u0640"  # the line that only makes an Arabic word wider
_JOINER, _NON_JOINER = "\u200d", "\u200c"
_VIRAMAS = frozenset("\u094d\u09cd\u0acd\u0b4d\u0c4d\u0d4d")
"""The signs that join two consonants into one, in the scripts where that is one sign to read."""


def letters_of(word: str) -> list[str]:
    """Return a word's letters, each with the marks that belong to it.

    These are the extended grapheme clusters of Unicode Standard Annex 29 for the scripts that the
    press has. Ligatures count as the letters that they join, and the stretching line of Arabic is
    none.
    """
    composed = unicodedata.normalize("NFC", _LIGATURES.sub(_parted, word)).replace(_STRETCH, "")
    letters: list[str] = []
    for sign in composed:
        if letters and (_is_mark(sign) or _joins(letters[-1], sign)):
            letters[-1] += sign
        else:
            letters.append(sign)
    return letters


def _parted(ligature: re.Match[str]) -> str:
    return unicodedata.normalize("NFKC", ligature[0])


def _is_mark(sign: str) -> bool:
    return unicodedata.category(sign).startswith("M") or sign in {_JOINER, _NON_JOINER}


def _joins(before: str, sign: str) -> bool:
    """Say whether a consonant makes one sign with the one before it, through a virama."""
    last = max(n for n, one in enumerate(before) if not _is_mark(one) or not n)
    marks = before[last + 1 :]
    return (
        unicodedata.category(sign) == unicodedata.category(before[last]) == "Lo"
        and not _VIRAMAS.isdisjoint(marks)
        # a vowel sign stands between them, where a mark has no class to be ordered by
        and all(one == _JOINER or unicodedata.combining(one) for one in marks)
    )
