"""Runs of words in a text."""

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from typing import TypeAlias

Words: TypeAlias = tuple[str, ...]
Lengths: TypeAlias = Mapping[str, Collection[int]]
"""By the first word of some texts, how many words they have."""

LONGEST = 12
"""Longer texts are not looked for among many: those of all lengths would take for ever."""


def lengths_of(texts: Iterable[Words]) -> Lengths:
    """Return the lengths of texts that are looked for; longer ones are left out."""
    lengths: dict[str, set[int]] = defaultdict(set)
    for text in texts:
        if len(text) <= LONGEST:
            lengths[text[0]].add(len(text))
    return {first: sorted(found) for first, found in lengths.items()}


def runs(said: Words, lengths: Lengths) -> list[Words]:
    """Return the runs of words that begin like one of some texts and are as long, each once."""
    found = (
        said[at : at + length] for at, word in enumerate(said) for length in lengths.get(word, ())
    )
    return list(dict.fromkeys(found))


def is_within(part: Words, whole: Words) -> bool:
    """Say whether some words stand together in a text, of whatever length."""
    return f" {' '.join(part)} " in f" {' '.join(whole)} "
