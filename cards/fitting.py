"""Which answers are right for which prompt: by their letters or, for a sum, by their worth."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from typing import TypeAlias

from cards.answers import accepted, as_meant
from cards.checking.sums.worth import Worth, is_sum, worth_of, worths_of
from cards.item import Item

Index: TypeAlias = Mapping[str | Worth, set[int]]
"""The numbers of texts, by the text as it is compared and by what it is worth."""


def index_of(texts: Iterable[str]) -> Index:
    """Return an index of texts, which are numbered from 0."""
    index: defaultdict[str | Worth, set[int]] = defaultdict(set)
    for number, text in enumerate(texts):
        keys: list[str | Worth] = [as_meant(text), *worth_of(text)]
        for key in keys:
            index[key].add(number)
    return index


def fitting(item: Item, index: Index) -> set[int]:
    """Return the numbers of the texts that are right for an item's prompt.

    A sum accepts its result however it is written.
    """
    found = set[int]().union(*(index.get(text, ()) for text in accepted(item)))
    same = found.union(*(index.get(worth, ()) for worth in worths_of(item)))
    # reading a prompt as a sum takes longest: it is done where it makes a difference
    return same if same != found and is_sum(item) else found
