"""What guessing earns: blanks filled at random from a bank, letters taken at random from choices.

Every assignment of words to blanks is taken to be equally likely, and so is every choice.
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from fractions import Fraction
from math import perm, prod

from decks.bank.matching import count_complete


def mean_earned(fits: Sequence[AbstractSet[int]], words: int, choices: Sequence[int] = ()) -> float:
    """Return the mean number of blanks right where blank b accepts the words `fits[b]`.

    Every blank gets each of the words equally often, whether or not a word may be used again.
    `choices` holds, for each blank beside these that has choices, how many: one of them is right.
    """
    from_bank = sum(map(len, fits)) / words if fits else 0
    return from_bank + sum(1 / count for count in choices)


def chance_of_full_score(
    fits: Sequence[AbstractSet[int]], words: int, choices: Sequence[int] = (), *, reusable: bool
) -> Fraction:
    """Return the chance that every blank gets a word that it accepts, or the letter of its answer.

    Each word used once at most: complete matchings of `fits` in all n!/(n - k)! ways to fill the
    blanks. Used as often as one likes: the blanks are filled each for itself, in n^k ways.
    """
    right = prod(map(len, fits)) if reusable else count_complete(fits)
    ways = words ** len(fits) if reusable else perm(words, len(fits))
    return Fraction(right, ways * prod(choices))
