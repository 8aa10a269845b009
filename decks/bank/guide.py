"""A study guide: its blanks in an order of their own, in parts that each have a bank."""

import random
import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass

from cards.item import Item, folded
from decks.bank.accepting import one_line
from decks.bank.extras import Word, choose_extras, word_of
from decks.bank.fits import fits_of
from decks.bank.guessing import chance_of_full_score, mean_earned
from decks.bank.parting import parted


@dataclass(frozen=True, slots=True)
class GuidePart:
    """Some blanks and the bank that they share.

    A blank's clue is its item's prompt; the blanks stand in the order printed. `bank` is
    alphabetical and holds every answer and every extra word once. `reusable` says that two blanks
    have the same answer, so that a word may be used again. `guess_mean` is the number of blanks
    that guessing gets right on average, `guess_all` the chance that it gets all of them right.
    """

    blanks: tuple[Item, ...]
    bank: tuple[str, ...]
    extra_words: tuple[str, ...]
    reusable: bool
    guess_mean: float
    guess_all: float


@dataclass(frozen=True, slots=True)
class Guide:
    """The study guide of a team, or of all where `team` is None."""

    team: str | None
    parts: tuple[GuidePart, ...]


def make_guide(  # noqa: PLR0913  (three things, three choices)
    team: str | None,
    items: Sequence[Item],
    pool: Sequence[Item],
    *,
    extra_words: int,
    seed: str,
    most: int = 10,
) -> Guide:
    """Write the study guide for the items, at most `most` blanks in a part.

    The extra words of each part come from the answers of the pool. A kind has parts of its own
    where it has four items or more.
    """
    rng = random.Random(f"{seed}/guide/{team}")
    order = list(items)
    rng.shuffle(order)
    words = [word_of(item) for item in pool]
    parts = [_part(part, words, extra_words, rng) for part in parted(order, most)]
    return Guide(team, tuple(parts))


def _part(
    blanks: Sequence[Item], pool: Sequence[Word], extra_words: int, rng: random.Random
) -> GuidePart:
    extras = choose_extras([word_of(blank) for blank in blanks], pool, extra_words, rng)
    answers: dict[str, str] = {}
    for blank in blanks:
        answers.setdefault(folded(blank.answer), one_line(blank.answer))
    bank = sorted([*answers.values(), *extras], key=_alphabetical)
    reusable = len(answers) < len(blanks)
    fits = fits_of(blanks, bank)
    return GuidePart(
        blanks=tuple(blanks),
        bank=tuple(bank),
        extra_words=extras,
        reusable=reusable,
        guess_mean=mean_earned(fits, len(bank)),
        guess_all=float(chance_of_full_score(fits, len(bank), reusable=reusable)),
    )


def _alphabetical(text: str) -> tuple[str, str]:
    """Order as a dictionary does, accents and capitals aside, and leading numbers by size."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", text) if not _is_accent(sign))
    return re.sub(r"^\d+", lambda number: number[0].zfill(9), bare.casefold()), text


def _is_accent(sign: str) -> bool:
    return unicodedata.category(sign) == "Mn"
