"""Extra words: right for no blank, and not to be told from the answers by their look."""

import random
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from itertools import islice

from msgspec import Struct

from cards.answers import accepted, as_meant, asked
from cards.checking.plurals import is_plural
from cards.checking.sums.worth import Worth, worths_of
from cards.entries import entry_of
from cards.item import Item, Kind, folded

_LEEWAY = 2  # letters by which an extra word may be shorter or longer than every answer


class Word(Struct, frozen=True):
    """An item's answer as it is weighed for a bank; `prompt`, `topic`, `accepted` as compared.

    `worths` is what it is worth if it is a number. `form` says whether it has a figure, begins with
    a capital, and ends in a plural.
    """

    text: str
    prompt: str
    accepted: frozenset[str]
    worths: frozenset[Worth]
    kind: Kind
    topic: str
    words: int
    letters: int
    form: tuple[bool, bool, bool]


def word_of(item: Item) -> Word:
    """Return the answer of an item with what matters of it."""
    text = entry_of(item)
    return Word(
        text=text,
        prompt=asked(item),
        accepted=accepted(item),
        worths=worths_of(item),
        kind=item.kind,
        topic=folded(item.topic),
        words=len(text.split()),
        letters=len(text),
        form=(any(sign.isdigit() for sign in text), text[:1].isupper(), is_plural(text)),
    )


class Right(Struct, frozen=True):
    """What is right for some blanks: what they ask, and the texts and numbers that they accept."""

    prompts: frozenset[str]
    accepted: frozenset[str]
    worths: frozenset[Worth]

    def has(self, word: Word) -> bool:
        """Say whether a word is right for a blank.

        It is where the blank accepts it, where both ask the same, or where both accept a text or a
        number in common: two words for one thing are right for each other, and so are 3/5 and 0.6.
        """
        return (
            word.prompt in self.prompts
            or not word.accepted.isdisjoint(self.accepted)
            or not word.worths.isdisjoint(self.worths)
        )


def right_for(blanks: Sequence[Word]) -> Right:
    """Return what is right for the blanks."""
    return Right(
        prompts=frozenset(blank.prompt for blank in blanks),
        accepted=frozenset(text for blank in blanks for text in blank.accepted),
        worths=frozenset(worth for blank in blanks for worth in blank.worths),
    )


def choose_extras(
    blanks: Sequence[Word],
    pool: Sequence[Word],
    count: int,
    rng: random.Random,
    *,
    closest: bool,
) -> tuple[str, ...]:
    """Choose words of the pool that fit no blank: fewer than `count` where there are no more.

    Taken first are those of the kind that most blanks have, of like form, and of the blanks'
    topics; the rest is by lot. With `closest` they are those that are most easily taken for the
    answer of some blank.
    """
    right = right_for(blanks)
    extras = [word for word in pool if not right.has(word)]
    rng.shuffle(extras)
    if closest:
        extras.sort(key=lambda word: min(_distance(word, blank) for blank in blanks))
    else:
        extras.sort(key=_Likeness(blanks).unlike)
    return tuple(islice(_once(word.text for word in extras if word.text), count))


def _distance(word: Word, blank: Word) -> tuple[int, ...]:
    """Return how far a word is from a blank's answer: in kind, topic, form, then in length."""
    return (
        word.kind is not blank.kind,
        word.topic != blank.topic,
        word.form != blank.form,
        abs(word.words - blank.words),
        abs(word.letters - blank.letters),
    )


def _once(texts: Iterable[str]) -> Iterator[str]:
    said: set[str] = set()
    for text in texts:
        if as_meant(text) not in said:
            said.add(as_meant(text))
            yield text


class _Likeness:
    """What the blanks of a part have in common."""

    def __init__(self, blanks: Sequence[Word]) -> None:
        self._kind = Counter(blank.kind for blank in blanks).most_common(1)[0][0]
        self._topics = {blank.topic for blank in blanks}
        self._forms = {blank.form for blank in blanks}
        words = [blank.words for blank in blanks]
        letters = [blank.letters for blank in blanks]
        self._words = range(min(words), max(words) + 1)
        self._letters = range(min(letters) - _LEEWAY, max(letters) + _LEEWAY + 1)

    def unlike(self, word: Word) -> tuple[bool, bool, bool]:
        """Return what speaks against a word, the weightiest first."""
        like_form = (
            word.words in self._words and word.letters in self._letters and word.form in self._forms
        )
        return word.kind is not self._kind, not like_form, word.topic not in self._topics
