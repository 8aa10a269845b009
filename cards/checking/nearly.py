"""Prompts that are nearly the same."""

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence

from cards.answers import answered
from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.checking.slips import is_slip
from cards.checking.words import ARTICLES, words
from cards.content import Content
from cards.item import Item, folded
from cards.quoting import quoted

Pair = tuple[Item, Item]
_LEAST_WORDS = 4
_LEAST_LETTERS = 20
_MOST_WORDS = 60
# signs that make another prompt of the same words
_SIGNS = re.compile(r"[+−×÷=<>≤≥%√°^*/²³→←&#]|(?<!\w)[-–]")


def nearly_same_prompt(content: Content) -> Iterator[Remark]:
    """Find prompts that part from an earlier one only by a slip of the typing."""
    for first, item in near_pairs(content.items):
        prompt, answer = PROMPT_NAMES[item.kind], ANSWER_NAMES[first.kind]
        same = answered(item) == answered(first)
        but = "" if same else f", but there the {answer} is {quoted(first.answer)}"
        yield Remark(
            item.prompt_place,
            item.prompt,
            f"Nearly the same {prompt} stands in {first.prompt_place}{but}.",
            "If they are meant to be one, delete this row; else word them further apart.",
        )


def near_pairs(items: Iterable[Item]) -> Iterator[Pair]:
    """Yield each item whose prompt is nearly an earlier one, after that one.

    Prompts in which a number, a sign or a word of sense differs are not nearly the same.
    """
    firsts: dict[tuple[str, ...], Item] = {}
    for item in items:
        long_enough = len(item.prompt) >= _LEAST_LETTERS
        if long_enough and _LEAST_WORDS <= len(words(item.prompt)) <= _MOST_WORDS:
            firsts.setdefault((*words(item.prompt), *_SIGNS.findall(item.prompt)), item)
    told: set[int] = set()
    for first, item in (*_same_letters(items), *_one_word_apart(firsts.values())):
        if id(item) not in told and _differ_in_text(first, item):
            told.add(id(item))
            yield first, item


def _differ_in_text(first: Item, item: Item) -> bool:
    return first.image == item.image and folded(first.prompt) != folded(item.prompt)


def _same_letters(items: Iterable[Item]) -> Iterator[Pair]:
    """Yield prompts that part in spaces, stops, capitals, articles or a word written twice."""
    seen: dict[str, Item] = {}
    for item in items:
        said = _without_articles(words(item.prompt))
        if len(said) < _LEAST_WORDS - 1 or len(item.prompt) < _LEAST_LETTERS:
            continue
        once = [word for i, word in enumerate(said) if i == 0 or said[i - 1] != word]
        first = seen.setdefault("".join((*once, *_SIGNS.findall(item.prompt))), item)
        same_words = said == _without_articles(words(first.prompt)) or len(once) < len(said)
        # George Town and Georgetown are two places
        if first is not item and (same_words or answered(first) == answered(item)):
            yield first, item


def _without_articles(said: Sequence[str]) -> list[str]:
    """Leave out articles; what nothing follows is none, as the A of a code."""
    return [word for i, word in enumerate(said, 1) if word not in ARTICLES or i == len(said)]


def _one_word_apart(items: Iterable[Item]) -> Iterator[Pair]:
    """Yield prompts that part in one mistyped word.

    Three prompts and more that part in the same word are a pattern, and meant.
    """
    places: dict[tuple[str, str], list[Item]] = defaultdict(list)
    for item in items:
        said = (*words(item.prompt), *_SIGNS.findall(item.prompt))
        for at in range(len(words(item.prompt))):
            places[" ".join(said[:at]), " ".join(said[at + 1 :])].append(item)
    for (before, _), found in places.items():
        if len(found) == 2 and _mistyped(*found, at=len(before.split())):  # noqa: PLR2004
            yield found[0], found[1]


def _mistyped(first: Item, item: Item, *, at: int) -> bool:
    same = answered(first) == answered(item)
    return is_slip(words(first.prompt)[at], words(item.prompt)[at], same_sense=same)
