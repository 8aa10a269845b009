"""The words of a text, as the rules compare them."""

import re
import unicodedata
from functools import cache, lru_cache

from cards.item import folded

_PLAIN_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*")


def word_set(text: str) -> frozenset[str]:
    """Return the words of a list that is written as one text."""
    return frozenset(text.split())


ARTICLES = word_set("a an the")
_FUNCTION = word_set(
    "a an and are as at be been but by can did do does for from had has have he her his how "
    "if in into is it its kind many most much name not of off on one or other our out over "
    "she so some such term than that the their them then there these they thing this those "
    "to type up used very was we were what when where which while who whom whose why will "
    "with word would you your el la los las un una de del en y o que le les des du et ou "
    "der die das ein eine und oder"
)
# words that only English has, so that a rule of English keeps away from other languages
_ENGLISH = word_set(
    "the of is are and with called that which what has was were for from this these by it"
)
_NUMBER_WORDS = word_set(
    "zero none one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty "
    "ninety hundred thousand million half once twice first second third"
)
_VERDICTS = word_set("yes no true false sí verdadero falso oui non vrai faux ja nein")
_NOTE = re.compile(r"A[ -](?:major|minor|sharp|flat)\b")
_VALUE = re.compile(r"[\W_]*\d")


@lru_cache(maxsize=65536)
def words(text: str) -> tuple[str, ...]:
    """Return the words of a text, caseless and bare: `it's sea-lavender` has three."""
    bare = folded(text).replace("’", "'")
    word = _PLAIN_WORD if bare.isascii() else _word_with_marks()
    return tuple(word.findall(bare))


@cache
def _word_with_marks() -> re.Pattern[str]:
    """Return what a word is where letters may carry marks of their own; it takes long to make."""
    marks = "".join(c for c in map(chr, range(0x300, 0x1E00)) if unicodedata.category(c)[0] == "M")
    letter = rf"(?:[^\W_]|[{marks}])"
    return re.compile(rf"{letter}+(?:'{letter}+)*")


def content_words(text: str) -> tuple[str, ...]:
    """Return the words that carry the sense of a text."""
    return tuple(word for word in words(text) if word not in _FUNCTION)


def begins_with_a_note(text: str) -> bool:
    """Say whether what looks like an article is the name of a note: `A minor`, `A flat`."""
    return _NOTE.match(text) is not None


def is_english(text: str) -> bool:
    """Say whether a text has one of the words that only English has."""
    return not _ENGLISH.isdisjoint(words(text))


def is_value(text: str) -> bool:
    """Say whether a text is a number, begins with one, or says no more than yes or no."""
    found = words(text)
    if _VALUE.match(text) or not found:
        return True
    return found[0] in _NUMBER_WORDS or (len(found) == 1 and found[0] in _VERDICTS)
