"""Clues and words as a graph: which words of a bank are right for which blank."""

from collections.abc import Sequence

from cards.answers import answered, as_meant
from cards.fitting import fitting, index_of
from cards.item import Item


def fits_of(blanks: Sequence[Item], bank: Sequence[str]) -> tuple[frozenset[int], ...]:
    """Return for each blank the numbers of the bank's words that its item accepts."""
    index = index_of(bank)
    return tuple(frozenset(fitting(item, index)) for item in blanks)


def own_words(blanks: Sequence[Item], bank: Sequence[str]) -> tuple[int, ...]:
    """Return for each blank the number of its own answer in the bank."""
    number = {as_meant(word): index for index, word in enumerate(bank)}
    return tuple(number[answered(item)] for item in blanks)
