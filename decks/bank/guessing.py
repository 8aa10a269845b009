"""What guessing earns: k blanks filled at random from a bank of n words, each used once at most.

Every assignment of words to blanks is taken to be equally likely. With n = k this is the matching
problem of Montmort (1708); with n > k it follows by inclusion and exclusion: any i given blanks
are all right with the chance (n - i)!/n!.
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from fractions import Fraction
from math import comb, perm, prod

from decks.bank.matching import count_complete


def mean_right(blanks: int, words: int) -> float:
    """Return the mean number of blanks right, k/n, also where a word may be used again."""
    return blanks / words if blanks else 0.0


def chance_of_all(blanks: int, words: int) -> float:
    """Return the chance that every blank is right: (n - k)!/n!.

    Raises ValueError where there are fewer words than blanks.
    """
    return chance_of_exactly(blanks, blanks, words)


def chance_of_exactly(right: int, blanks: int, words: int) -> float:
    """Return the chance of j blanks right: C(k, j) Σ_i (-1)^i C(k - j, i) (n - j - i)!/n!.

    Summed in whole numbers, since terms of opposite sign cancel. Raises ValueError where there are
    fewer words than blanks, or j is not one of 0 to k.
    """
    if not 0 <= right <= blanks <= words:
        raise ValueError(f"{right} of {blanks} blanks cannot be right with {words} words.")
    wrong = blanks - right
    terms = (Fraction((-1) ** i * comb(wrong, i), perm(words, right + i)) for i in range(wrong + 1))
    return float(comb(blanks, right) * sum(terms))


def mean_earned(fits: Sequence[AbstractSet[int]], words: int) -> float:
    """Return the mean number of blanks right where blank b accepts the words `fits[b]`.

    Every blank gets each of the words equally often, whether or not a word may be used again.
    """
    return sum(map(len, fits)) / words if fits else 0.0


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
