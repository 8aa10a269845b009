"""Clues and words as a graph: which words of a bank are right for which blank."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet

from cards.answers import accepted, answered, as_meant
from cards.item import Item
from decks.bank.values import Worth, is_sum, worth_of, worths_of


def fits_of(blanks: Sequence[Item], bank: Sequence[str]) -> tuple[frozenset[int], ...]:
    """Return for each blank the numbers of the bank's words that its item accepts.

    A sum accepts its result however it is written.
    """
    number = {as_meant(word): index for index, word in enumerate(bank)}
    same: defaultdict[Worth, set[int]] = defaultdict(set)
    for index, word in enumerate(bank):
        for worth in worth_of(word):
            same[worth].add(index)
    return tuple(
        _fitting(item, frozenset(number[text] for text in accepted(item) if text in number), same)
        for item in blanks
    )


def _fitting(
    item: Item, words: frozenset[int], same: Mapping[Worth, AbstractSet[int]]
) -> frozenset[int]:
    """Return the words that a blank accepts by their letters, and those of the same worth."""
    if not same:
        return words
    others = words.union(*(same.get(worth, ()) for worth in worths_of(item)))
    # reading a clue as a sum takes longest: it is done where it makes a difference
    return others if others != words and is_sum(item) else words


def own_words(blanks: Sequence[Item], bank: Sequence[str]) -> tuple[int, ...]:
    """Return for each blank the number of its own answer in the bank."""
    number = {as_meant(word): index for index, word in enumerate(bank)}
    return tuple(number[answered(item)] for item in blanks)
