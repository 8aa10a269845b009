"""What guessing earns: k blanks filled at random from a bank of n words.

Every assignment of words to blanks is taken to be equally likely.
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from fractions import Fraction
from math import perm, prod

from decks.bank.matching import count_complete


def mean_earned(fits: Sequence[AbstractSet[int]], words: int) -> float:
    """Return the mean number of blanks right where blank b accepts the words `fits[b]`.

    Every blank gets each of the words equally often, whether or not a word may be used again.
    """
    return sum(map(len, fits)) / words


def chance_of_full_score(
    fits: Sequence[AbstractSet[int]], words: int, *, reusable: bool
) -> Fraction:
    """Return the chance that every blank gets a word that it accepts.

    Each word used once at most: complete matchings of `fits` in all n!/(n - k)! ways to fill the
    blanks. Used as often as one likes: the blanks are filled each for itself, in n^k ways.
    """
    if reusable:
        return Fraction(prod(map(len, fits)), words ** len(fits))
    return Fraction(count_complete(fits), perm(words, len(fits)))
