"""In which order groups visit bases.

A Williams design (E. J. Williams, 1949, Australian Journal of Scientific Research A 2, 149-168):
no two groups are at one base at the same time, and over all orders every base follows every other
equally often, so that no group always arrives fresh from the same one.
"""

from typing import TypeAlias

Order: TypeAlias = tuple[int, ...]


def williams_orders(bases: int) -> tuple[Order, ...]:
    """Return the orders for a number of bases, which are numbered from 0.

    There are as many orders as bases where that is even, twice as many where it is odd. Any
    `bases` of them from the start on can be walked at the same time without meeting.
    """
    first = _zigzag(bases)
    orders = tuple(tuple((base + turn) % bases for base in first) for turn in range(bases))
    if bases % 2 == 0 or bases == 1:
        return orders
    return orders + tuple(order[::-1] for order in orders)


def _zigzag(bases: int) -> Order:
    """Return 0, 1, n - 1, 2, n - 2 and so on: each step has a length that no other has."""
    return tuple((n + 1) // 2 if n % 2 else (bases - n // 2) % bases for n in range(bases))
