"""How sure a share is that was counted on few tries."""

from math import sqrt

Z95 = 1.959963984540054
"""The standard normal quantile at .975: an interval that holds the truth 95 times in 100."""


def wilson(right: float, tries: float, z: float = Z95) -> tuple[float, float] | None:
    """Return the Wilson score interval for a share, or None where nothing was tried.

    E. B. Wilson 1927, Journal of the American Statistical Association 22, 209-212; method 3 in
    Newcombe 1998. Raises `ValueError` for more right than tried.
    """
    if not 0 <= right <= tries:
        raise ValueError(right, tries)
    if not tries:
        return None
    share = right / tries
    centre = share + z * z / (2 * tries)
    half = z * sqrt(share * (1 - share) / tries + z * z / (4 * tries * tries))
    whole = 1 + z * z / tries
    return max(0.0, (centre - half) / whole), min(1.0, (centre + half) / whole)
