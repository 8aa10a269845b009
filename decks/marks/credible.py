"""Between which shares the truth most likely lies, after what is believed of it.

The quantiles of a Beta distribution, found by halving on the regularised incomplete beta function.
"""

from functools import lru_cache
from math import exp, inf, lgamma, log

from decks.marks.estimate import Belief

_SMALLEST = 1e-300
_NEAR_ENOUGH = 1e-12
_MOST_TERMS = 500
_HALVINGS = 44


# many items of a deck have as many right of as many tries
@lru_cache(maxsize=1024)
def credible(belief: Belief, level: float = 0.95) -> tuple[float, float] | None:
    """Return the interval with equal tails that holds the share with a probability of `level`.

    None where the belief counts for nothing, or leaves no doubt.
    """
    a, b = belief.a, belief.b
    if min(a, b) <= 0 or max(a, b) == inf:
        return None
    tail = (1 - level) / 2
    return _quantile(tail, a, b), _quantile(1 - tail, a, b)


def _quantile(probability: float, a: float, b: float) -> float:
    low, high = 0.0, 1.0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if beta_cdf(middle, a, b) < probability:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def beta_cdf(x: float, a: float, b: float) -> float:
    """Return the probability that a share is at most `x`: I_x(a, b).

    The continued fraction 8.17.22 of the Digital Library of Mathematical Functions (NIST).
    """
    if not 0 < x < 1:
        return float(x >= 1)
    front = exp(lgamma(a + b) - lgamma(a) - lgamma(b) + a * log(x) + b * log(1 - x))
    if x < (a + 1) / (a + b + 2):
        return front * _fraction(x, a, b) / a
    return 1 - front * _fraction(1 - x, b, a) / b


def _fraction(x: float, a: float, b: float) -> float:
    """Return 1/(1 + d1/(1 + d2/(1 + ...))), forwards (Lentz's method)."""
    value, upper, lower = 1.0, 1.0, 0.0
    for n in range(1, _MOST_TERMS):
        term = _term(n, x, a, b)
        lower = 1 / ((1 + term * lower) or _SMALLEST)
        upper = (1 + term / upper) or _SMALLEST
        value *= upper * lower
        if abs(upper * lower - 1) < _NEAR_ENOUGH:
            break
    return 1 / value


def _term(n: int, x: float, a: float, b: float) -> float:
    m, odd = divmod(n, 2)
    if odd:
        return -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))
    return m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
