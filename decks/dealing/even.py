"""The evenest way to share out one pile: what no deal can beat, by counting alone."""

from collections.abc import Iterable, Sequence

from msgspec import Struct

from decks.dealing.cells import Attribute, Group, Table


class Range(Struct, frozen=True):
    """Each team holds at least `least` and at most `most` cards of a group, pinned ones included.

    `free` is the number of cards of the group that are still to be dealt, `pinned` what each team
    has beside them.
    """

    group: Group
    free: int
    pinned: tuple[int, ...]
    least: int
    most: int

    @property
    def width(self) -> int:
        """The largest difference between two teams."""
        return self.most - self.least


def evenest(pinned: Sequence[int], free: int) -> tuple[int, int]:
    """Return the least and the most that a team holds when every card goes to a team in need.

    `pinned` holds what each team has, `free` is the number of cards to come. Giving each card to
    a team that has fewest makes the least as large and the most as small as any deal can, both at
    once: to lift every team to a height h, the k lowest need k·h less what they have, for every k.
    """
    rising = sorted(pinned)
    held = [sum(rising[:k]) for k in range(1, len(rising) + 1)]
    least = min((have + free) // k for k, have in enumerate(held, start=1))
    spare = free - sum(max(0, least - have) for have in pinned)
    return least, max(least + (spare > 0), rising[-1])


def even_range(table: Table, group: Group) -> Range:
    """Return the range that no deal can make narrower."""
    free = sum(table.free[cell] for cell in group)
    pinned = tuple(sum(row[cell] for cell in group) for row in table.pinned)
    return Range(group, free, pinned, *evenest(pinned, free))


def even_ranges(table: Table, attributes: Iterable[Attribute]) -> tuple[Range, ...]:
    """Return the narrowest range of every value of every attribute."""
    return tuple(
        even_range(table, group) for attribute in attributes for group in table.groups(attribute)
    )
