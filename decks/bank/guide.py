"""A study guide: its blanks in an order of their own, in parts that each have a bank."""

import random
import re
import unicodedata
from collections.abc import Sequence

from msgspec import Struct

from cards.answers import answered
from cards.item import Item
from decks.bank.entries import entry_of
from decks.bank.extras import choose_extras, word_of
from decks.bank.fits import fits_of
from decks.bank.guessing import chance_of_full_score, mean_earned
from decks.bank.parting import parted
from decks.bank.pool import Pool

MORE = 4
"""The second version has as many extra words as blanks, so that guessing earns half as much as
without them, and at least so many more than the first; our own judgement."""


class SharedBank(Struct, frozen=True):
    """Some blanks and the bank that they share.

    A blank's clue is its item's prompt; the blanks stand in the order printed. `bank` is
    alphabetical and holds every answer and every extra word once. `reusable` says that two blanks
    have the same answer, so that a word may be used again.
    """

    blanks: tuple[Item, ...]
    bank: tuple[str, ...]
    reusable: bool


class GuidePart(SharedBank, frozen=True):
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


def make_guide(  # noqa: PLR0913 (three things, four choices)
    team: str | None,
    items: Sequence[Item],
    pool: Pool,
    *,
    extra_words: int,
    seed: str,
    second: bool = False,
    closer: bool = False,
    most: int = 10,
) -> Guide:
    """Write the study guide for the items, at most `most` blanks in a part.

    The extra words of each part come from the answers of the pool. A kind has parts of its own
    where it has four items or more. `second` asks for a second version, whose banks have more
    extra words, and closer ones; `closer` takes closer ones in the first version too.
    """
    rng = random.Random(f"{seed}/guide/{team}")
    order = list(items)
    rng.shuffle(order)
    parted_order = parted(order, most)
    parts = [
        _part(part, _extras(part, pool, extra_words, rng, closest=closer)) for part in parted_order
    ]
    harder = [
        _part(part, _extras(part, pool, count, rng, closest=True))
        for part in (parted_order if second else [])
        for count in [max(len(part), extra_words + MORE)]
    ]
    return Guide(team, tuple(parts), tuple(harder))


def as_one(parts: Sequence[GuidePart]) -> SharedBank:
    """Return the parts as one, for students who have the words of all of them on cards.

    Nobody is told what guessing earns there, and counting it would take for ever.
    """
    blanks = [blank for part in parts for blank in part.blanks]
    return _shared(blanks, [word for part in parts for word in part.extra_words])


def _extras(
    part: Sequence[Item], pool: Pool, count: int, rng: random.Random, *, closest: bool
) -> tuple[str, ...]:
    blanks = [word_of(blank) for blank in part]
    return choose_extras(blanks, pool.look_at(blanks, rng), count, rng, closest=closest)


def _part(blanks: Sequence[Item], extras: tuple[str, ...]) -> GuidePart:
    shared = _shared(blanks, extras)
    fits, words = fits_of(blanks, shared.bank), len(shared.bank)
    return GuidePart(
        blanks=shared.blanks,
        bank=shared.bank,
        extra_words=extras,
        reusable=shared.reusable,
        guess_mean=mean_earned(fits, words),
        guess_all=float(chance_of_full_score(fits, words, reusable=shared.reusable)),
    )


def _shared(blanks: Sequence[Item], extras: Sequence[str]) -> SharedBank:
    answers: dict[str, str] = {}
    for blank in blanks:
        answers.setdefault(answered(blank), entry_of(blank))
    bank = sorted([*answers.values(), *extras], key=_alphabetical)
    return SharedBank(tuple(blanks), tuple(bank), reusable=len(answers) < len(blanks))


def _alphabetical(text: str) -> tuple[str, str]:
    """Order as a dictionary does, accents and capitals aside, and leading numbers by size."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", text) if not _is_accent(sign))
    return re.sub(r"^\d+", lambda number: number[0].zfill(9), bare.casefold()), text


def _is_accent(sign: str) -> bool:
    return unicodedata.category(sign) == "Mn"
