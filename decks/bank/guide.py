"""A study guide: its blanks in an order of their own, in parts that each have a bank."""

import random
import re
import unicodedata
from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from cards.answers import answered
from cards.entries import entry_of
from cards.item import Item
from decks.bank.extras import Right, choose_extras, right_for, word_of
from decks.bank.fits import fits_of
from decks.bank.guessing import chance_of_full_score, mean_earned
from decks.bank.parting import parted
from decks.bank.pool import Pool
from decks.choices import choices_of

MORE = 4
"""The second version has as many extra words as blanks, so that guessing earns half as much as
without them, and at least so many more than the first; our own judgement."""


class SharedBank(Struct, frozen=True):
    """Some blanks and the bank that they share.

    A blank's clue is its item's prompt; the blanks stand in the order printed. `bank` is
    alphabetical and holds every extra word and the answer of every blank that is `worded`, once.
    `reusable` says that two such blanks have the same answer, so that a word may be used again.
    `choices` says for each blank how many choices are printed below it, 0 for none; it is empty
    where no blank has any.
    """

    blanks: tuple[Item, ...]
    bank: tuple[str, ...]
    reusable: bool
    choices: tuple[int, ...] = ()

    @property
    def worded(self) -> tuple[Item, ...]:
        """The blanks that take a word: where there are choices the letter is written.

        A bank with the right ones of all choices would give them away.
        """
        return tuple(self.blanks[number] for number in self.worded_places)

    @property
    def worded_places(self) -> Sequence[int]:
        """The places of these among the blanks, from 0."""
        if not self.choices:
            return range(len(self.blanks))
        return [number for number, count in enumerate(self.choices) if not count]


class GuidePart(SharedBank, frozen=True, kw_only=True):
    """A part of a guide: no more blanks than a student can look over.

    `guess_mean` is the number of blanks that guessing gets right on average, `guess_all` the chance
    that it gets all of them right.
    """

    extra_words: tuple[str, ...]
    guess_mean: float
    guess_all: float


class Guide(Struct, frozen=True):
    """The study guide of a team, or of all where `team` is None.

    `second` holds the parts of its second version, if there is one: the same blanks in the same
    order, with harder banks, so that one key serves both.
    """

    team: str | None
    parts: tuple[GuidePart, ...]
    second: tuple[GuidePart, ...] = ()

    @property
    def has_words(self) -> bool:
        """Whether any blank takes a word: where choices are printed below all, none does."""
        return any(part.worded for part in self.parts)


def make_guide(  # noqa: PLR0913 (three things, four choices)
    team: str | None,
    items: Sequence[Item],
    pool: Pool,
    *,
    extra_words: int,
    seed: str,
    second: bool = False,
    closer: bool = False,
    choices: bool = False,
    most: int = 10,
) -> Guide:
    """Write the study guide for the items, at most `most` blanks in a part.

    The extra words of each part come from the answers of the pool. A kind has parts of its own
    where it has four items or more. `second` asks for a second version, whose banks have more
    extra words, and closer ones, as far as the pool has any; `closer` takes closer ones in the
    first version too. `choices` says that the choices of a blank are printed with it.
    """
    rng = random.Random(f"{seed}/guide/{team}")
    order = list(items)
    rng.shuffle(order)
    asked = [_shared(part, (), _choices(part) if choices else ()) for part in parted(order, most)]
    told = right_for([word_of(item) for item in items if choices and choices_of(item)])
    parts = [
        _part(part, _extras(part, told, pool, extra_words, rng, closest=closer)) for part in asked
    ]
    harder = [
        _part(part, _extras(part, told, pool, count, rng, closest=True))
        for part in (asked if second and any(each.worded for each in asked) else [])
        for count in [max(len(part.worded), extra_words + MORE)]
    ]
    # a second version with the words of the first would be the same page again
    differs = any(more.bank != part.bank for more, part in zip(harder, parts, strict=False))
    return Guide(team, tuple(parts), tuple(harder) if differs else ())


def _choices(blanks: Sequence[Item]) -> tuple[int, ...]:
    counts = tuple(len(choices_of(blank)) for blank in blanks)
    return counts if any(counts) else ()


def as_one(parts: Sequence[GuidePart]) -> SharedBank:
    """Return the parts as one, for students who have the words of all of them on cards.

    Nobody is told what guessing earns there, and counting it would take for ever.
    """
    blanks = [blank for part in parts for blank in part.blanks]
    return _shared(blanks, [word for part in parts for word in part.extra_words])


def _extras(  # noqa: PLR0913  (what is asked, what is told already, what there is, how many)
    part: SharedBank, told: Right, pool: Pool, count: int, rng: random.Random, *, closest: bool
) -> tuple[str, ...]:
    """Choose a part's extra words.

    None is the answer of a blank of the guide that has its choices below it: of these it would be
    the only one in a bank.
    """
    blanks = [word_of(blank) for blank in part.worded]
    if not blanks:
        return ()
    words = pool.look_at(blanks, rng)
    if told.prompts:
        words = [word for word in words if not told.has(word)]
    return choose_extras(blanks, words, count, rng, closest=closest)


def _part(asked: SharedBank, extras: tuple[str, ...]) -> GuidePart:
    shared = _shared(asked.blanks, extras, asked.choices)
    fits, words = fits_of(shared.worded, shared.bank), len(shared.bank)
    choices = [count for count in shared.choices if count]
    return GuidePart(
        blanks=shared.blanks,
        bank=shared.bank,
        choices=shared.choices,
        extra_words=extras,
        reusable=shared.reusable,
        guess_mean=mean_earned(fits, words, choices),
        guess_all=float(chance_of_full_score(fits, words, choices, reusable=shared.reusable)),
    )


def _shared(
    blanks: Sequence[Item], extras: Sequence[str], choices: tuple[int, ...] = ()
) -> SharedBank:
    asked = SharedBank(tuple(blanks), (), reusable=False, choices=choices)
    answers: dict[str, str] = {}
    for blank in asked.worded:
        answers.setdefault(answered(blank), entry_of(blank))
    bank = sorted([*answers.values(), *extras], key=_alphabetical)
    return replace(asked, bank=tuple(bank), reusable=len(answers) < len(asked.worded))


def _alphabetical(text: str) -> tuple[str, str]:
    """Order as a dictionary does, accents and capitals aside, and leading numbers by size."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", text) if not _is_accent(sign))
    return re.sub(r"^\d+", lambda number: number[0].zfill(9), bare.casefold()), text


def _is_accent(sign: str) -> bool:
    return unicodedata.category(sign) == "Mn"
