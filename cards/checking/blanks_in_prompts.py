"""A word before a blank that does not go with the answer."""

import re
from collections.abc import Iterator

from cards.checking.plurals import is_one, is_plural
from cards.checking.rule import Remark
from cards.checking.words import is_english
from cards.content import Content
from cards.quoting import quoted

_BLANK = r"\s+(?:_{2,}|…|\.{3,}|\[ *\])"
# a capital within a sentence is a name: vitamin A
_ARTICLE = re.compile(rf"(?:^|(?<=\s)(?=a))([Aa]n?){_BLANK}")
_CALLED = re.compile(
    rf"\b(is|was|are|were) (?:called|known as|named|termed){_BLANK}", re.IGNORECASE
)
_ONE_OF = re.compile(rf"\b(?:is|was|called|as|named) (an?){_BLANK}")
# spelt with a consonant first and spoken with a vowel, and the other way round
_SPOKEN_VOWEL = re.compile(r"hour|honest|hono[u]?r|heir|[8]|1[18](?!\d)", re.IGNORECASE)
_SPOKEN_CONSONANT = re.compile(
    r"eu|ew|u(?:ni(?!n|m)|s[aeu]|r[aei]n|ti|ten|bi|kul|ku)|one\b|once\b|ouija", re.IGNORECASE
)
_LETTER_BY_LETTER = re.compile(r"[A-Z](?:[A-Z\d]|\b)")
_VOWEL_LETTERS = "AEFHILMNORSX"
_STARTS_WITH_ARTICLE = re.compile(r"(?:an?|the)\s", re.IGNORECASE)


def article_before_blank(content: Content) -> Iterator[Remark]:
    """Find `a` or `an` before a blank, where the answer as it is spoken wants the other."""
    for item in content.items:
        article = _ARTICLE.search(item.prompt)
        if not article or not is_english(item.prompt) or _STARTS_WITH_ARTICLE.match(item.answer):
            continue
        wanted = _wanted(item.answer)
        if wanted and wanted != article[1].lower():
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The blank stands after “{article[1]}”, but it is “{wanted} "
                f"{item.answer.split()[0]}”.",
                "Write “a(n)” before the blank: so nobody can tell the answer from it either.",
            )


def number_before_blank(content: Content) -> Iterator[Remark]:
    """Find `is`, `are` or `a` before a blank, where the answer is plural or singular instead."""
    for item in content.items:
        if not is_english(item.prompt) or _STARTS_WITH_ARTICLE.match(item.answer):
            continue
        before = _jarring(item.prompt, item.answer)
        if before:
            number = "many" if is_plural(item.answer) else "one"
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"{quoted(before)} before the blank does not go with {quoted(item.answer)}, "
                f"which is {number}.",
                "Change the one or the other, so that they read as one sentence.",
            )


def _jarring(prompt: str, answer: str) -> str | None:
    """Return the words before the blank that jar with the answer, or None."""
    called, one_of = _CALLED.search(prompt), _ONE_OF.search(prompt)
    if one_of and is_plural(answer):
        return one_of[1]
    if called and called[1].lower() in {"is", "was"} and is_plural(answer):
        return called[1]
    if called and called[1].lower() in {"are", "were"} and is_one(answer):
        return called[1]
    return None


def _wanted(answer: str) -> str | None:
    """Return the article that an answer is spoken with, or None if it cannot be told."""
    first = answer.lstrip("‘“'\"(")
    if not first[:1].isascii() or not first[:1].isalnum():
        return None
    if _LETTER_BY_LETTER.match(first):
        by_letter, by_sound = first[0] in _VOWEL_LETTERS, first[0] in "AEIOU"
        return None if by_letter is not by_sound else "an" if by_letter else "a"
    if _SPOKEN_CONSONANT.match(first):
        return "a"
    return "an" if _SPOKEN_VOWEL.match(first) or first[0] in "aeiouAEIOU" else "a"
