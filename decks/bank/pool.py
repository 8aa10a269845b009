"""The words of a unit, of which each part of a guide looks at some for its extra words."""

import random
from collections import defaultdict
from collections.abc import Sequence

from cards.answers import as_meant
from cards.item import Item, Kind
from decks.bank.extras import Word, word_of

LOOKED_AT = 300
"""A choice among more words is no better, and would take longer the larger the unit is."""


class Pool:
    """The answers of the items that may be extra words of a deck's guides."""

    def __init__(self, items: Sequence[Item]) -> None:
        self._words = [word_of(item) for item in items]
        self._alike: dict[tuple[Kind, str], list[Word]] = defaultdict(list)
        if len(self._words) > LOOKED_AT:
            self._words = list({as_meant(word.text): word for word in self._words}.values())
            for word in self._words:
                self._alike[word.kind, word.topic].append(word)

    def look_at(self, blanks: Sequence[Word], rng: random.Random) -> Sequence[Word]:
        """Return what to choose the extra words for the blanks from: 300 words at most.

        Of a larger unit they are drawn by lot, one half of the blanks' own kinds and topics.
        """
        if len(self._words) <= LOOKED_AT:
            return self._words
        own = sorted({(blank.kind, blank.topic) for blank in blanks})
        each = LOOKED_AT // 2 // len(own)
        near = [word for one in own for word in _some(self._alike[one], each, rng)]
        far = _some(self._words, LOOKED_AT - len(near), rng)
        return list({word.text: word for word in (*near, *far)}.values())


def _some(words: Sequence[Word], count: int, rng: random.Random) -> Sequence[Word]:
    return words if len(words) <= count else rng.sample(words, count)
