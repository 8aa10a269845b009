"""Keeping rivals apart: a colouring of a graph in which each colour has only so much room."""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet

_STEPS = 10_000


def spread(rivals: Sequence[AbstractSet[int]], rooms: Sequence[int]) -> list[set[int]]:
    """Return for each room the items in it, no room with more than it holds, rivals apart.

    `rivals[i]` holds the items that are not to meet item i. Where they cannot all be kept apart, or
    no way is found soon, each goes where it meets fewest. Items without rivals fill the rooms one
    after the other.
    """
    clashing = sorted(
        (item for item in range(len(rivals)) if rivals[item]), key=lambda item: -len(rivals[item])
    )
    search = _Search(rivals, rooms)
    parts = search.parts if search.place(clashing) else _nearly(rivals, rooms, clashing)
    free = iter([n for n, part in enumerate(parts) for _ in range(rooms[n] - len(part))])
    for item in range(len(rivals)):
        if not rivals[item]:
            parts[next(free)].add(item)
    return parts


class _Search:
    """Item after item into the first room that holds no rival, and back where there is none."""

    def __init__(self, rivals: Sequence[AbstractSet[int]], rooms: Sequence[int]) -> None:
        self.parts: list[set[int]] = [set() for _ in rooms]
        self._rivals = rivals
        self._rooms = rooms
        # counted in steps and not in seconds: a slower machine must not come to another guide
        self._left = _STEPS

    def place(self, items: Sequence[int]) -> bool:
        """Find room for the items, and say whether all have one."""
        tried: list[list[set[int]]] = []
        while len(tried) < len(items):
            tried.append(self._open_to(items[len(tried)]))
            while not tried[-1]:
                tried.pop()
                if not tried or not self._left:
                    return False
                tried[-1].pop(0).discard(items[len(tried) - 1])
            tried[-1][0].add(items[len(tried) - 1])
            self._left -= 1
            if not self._left:
                return len(tried) == len(items)
        return True

    def _open_to(self, item: int) -> list[set[int]]:
        """Return the parts that an item may go to, of empty ones of one size only the first."""
        seen: set[int] = set()
        parts = []
        for part, room in zip(self.parts, self._rooms, strict=True):
            if (
                len(part) >= room
                or not part.isdisjoint(self._rivals[item])
                or (not part and room in seen)
            ):
                continue
            if not part:
                seen.add(room)
            parts.append(part)
        return parts


def _nearly(
    rivals: Sequence[AbstractSet[int]], rooms: Sequence[int], items: Sequence[int]
) -> list[set[int]]:
    parts: list[set[int]] = [set() for _ in rooms]
    for item in items:
        free = [part for part, room in zip(parts, rooms, strict=True) if len(part) < room]
        min(free, key=lambda part: len(part & rivals[item])).add(item)
    return parts
