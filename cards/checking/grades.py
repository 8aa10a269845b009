"""How hard a prompt is to read."""

import re
from collections.abc import Callable, Iterator, Sequence
from statistics import median

from cards.checking.rule import Remark
from cards.checking.syllables import estimated_syllables, syllables
from cards.checking.words import is_english, words
from cards.content import Content
from cards.item import Item

_LEAST_WORDS = 8
_LEAST_PROMPTS = 6
# in one short sentence a long word or two is worth four grades, so less than this says nothing
_FAR_ABOVE = 6
_EASY_ENOUGH = 12
# how far a grade by estimated syllables may be from the grade by the list
_DOUBT = 2
_SENTENCE_END = re.compile(r"[.!?]+(?=\s+\S)")


def flesch_kincaid_grade(*, words: int, sentences: int, syllables: int) -> float:
    """Return the school grade of a text, by Kincaid et al. 1975."""
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59


def hard_to_read(content: Content, *, grade: int | None) -> Iterator[Remark]:
    """Find English prompts above a school grade; without one, those far above the rest."""
    items = [item for item in content.items if _can_be_graded(item)]
    estimates = [_grade(item.prompt, estimated_syllables) for item in items]
    if not items or max(estimates) + _DOUBT < _limit(estimates, grade):
        return
    grades = [_grade(item.prompt, syllables) for item in items]
    limit = _limit(grades, grade)
    for item, found in zip(items, grades, strict=True):
        if found > limit:
            yield _remark(item, found, grade)


def _limit(grades: Sequence[float], asked: int | None) -> float:
    if asked is not None:
        return asked
    few = len(grades) < _LEAST_PROMPTS
    return float("inf") if few else max(_EASY_ENOUGH, median(grades) + _FAR_ABOVE)


def _can_be_graded(item: Item) -> bool:
    """Say whether a prompt is long enough: names, which make no text harder, do not count."""
    names = sum(word[:1].isupper() for word in item.prompt.split()[1:])
    return len(words(item.prompt)) - names >= _LEAST_WORDS and is_english(item.prompt)


def _grade(text: str, count: Callable[[str], int]) -> float:
    said = [word for word in words(text) if not word.isdigit()]
    sentences = len(_SENTENCE_END.findall(text.strip())) + 1
    spoken = sum(map(count, said))
    return flesch_kincaid_grade(words=max(1, len(said)), sentences=sentences, syllables=spoken)


def _remark(item: Item, grade: float, asked: int | None) -> Remark:
    than = f"grade {asked}, which is asked for" if asked else "the other prompts"
    return Remark(
        item.prompt_place,
        item.prompt,
        f"This reads like a text for grade {grade:.0f}, harder than {than}.",
        "Use shorter words, or make two sentences of it.",
    )
