"""In which order groups visit bases.

A Williams design (E. J. Williams, 1949, Australian Journal of Scientific Research A 2, 149-168):
no two groups are at one base at the same time, and over all orders every base follows every other
equally often, so that no group always arrives fresh from the same one.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import islice, pairwise
from typing import TypeAlias

Order: TypeAlias = tuple[int, ...]


def williams_orders(bases: int) -> Iterator[Order]:
    """Yield the orders for a number of bases, which are numbered from 0.

    There are as many orders as bases where that is even, twice as many where it is odd. Any
    `bases` of them from the start on can be walked at the same time without meeting.
    """
    first = _zigzag(bases)
    whole_alone = bases % 2 == 0 or bases == 1
    for step in (1,) if whole_alone else (1, -1):
        for turn in range(bases):
            yield tuple((base + turn) % bases for base in first[::step])


def _zigzag(bases: int) -> Order:
    """Return 0, 1, n - 1, 2, n - 2 and so on.

    Round a ring of an even number no two steps are equal; of an odd number each comes twice, and
    the same order backwards has the steps that it lacks.
    """
    return tuple((n + 1) // 2 if n % 2 else (bases - n // 2) % bases for n in range(bases))


def companies_of(groups: int, bases: int) -> list[list[int]]:
    """Return the groups, numbered from 0, that go together: one each where there are bases enough.

    Companies differ in size by one at the most.
    """
    return [list(range(first, groups, bases)) for first in range(min(groups, bases))]


def orders_for(groups: int, bases: int, *, second: bool = False) -> tuple[Order, ...]:
    """Return the order of bases for each of up to as many groups as bases; they never meet.

    `second` gives the orders for a second lesson: the first ones backwards. For an odd number of
    bases only both together make the whole design.
    """
    orders = islice(williams_orders(bases), groups)
    return tuple(order[::-1] if second else order for order in orders)


def followings(orders: Sequence[Order]) -> Counter[tuple[int, int]]:
    """Return how often each base is visited straight after each other one."""
    return Counter(pair for order in orders for pair in pairwise(order))
