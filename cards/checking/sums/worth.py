"""Answers that are numbers, by their worth: 3/5 and 0.6 are one number."""

from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, TypeAlias

from cards.checking.sums import LONGEST
from cards.entries import entry_of
from cards.item import Item
from cards.style import Spans

if TYPE_CHECKING:
    # for numbers only, as cards.checking.sums.plain is
    from cards.checking.sums.numerals import Style

Worth: TypeAlias = tuple["Style", Fraction]
"""A number with the way it is read: 1,200 is 1200 with a point for decimals, else 1.2."""

_NOTHING: frozenset[Worth] = frozenset()


def worths_of(item: Item) -> frozenset[Worth]:
    """Return what the answers of an item are worth that are numbers."""
    return _NOTHING.union(*map(worth_of, (entry_of(item), *item.also_right)))


def worth_of(text: str) -> frozenset[Worth]:
    """Return what a text is worth in every way to read it; nothing if it is no plain number.

    A number with its unit is told by its letters, as all other words are.
    """
    if len(text) > LONGEST or any(map(str.isalpha, text)) or not any(map(str.isnumeric, text)):
        return _NOTHING
    return _worth(text)


@lru_cache(maxsize=16384)
def _worth(text: str) -> frozenset[Worth]:
    from cards.checking.sums.plain import worth_of_number  # noqa: PLC0415 (for numbers only)

    return worth_of_number(text)


def is_sum(item: Item) -> bool:
    """Say whether a clue is plain arithmetic, so that every way to write its result is right.

    Where a number is only to be written in another way, as 3/4 as a decimal, one way is right.
    """
    may_be = len(item.prompt) <= LONGEST and any(map(str.isnumeric, item.prompt))
    return may_be and _is_sum(item.prompt, item.prompt_spans, entry_of(item))


@lru_cache(maxsize=4096)
def _is_sum(prompt: str, spans: Spans, answer: str) -> bool:
    from cards.checking.sums.plain import is_plain_sum  # noqa: PLC0415 (for numbers only)

    return is_plain_sum(prompt, spans, answer)
