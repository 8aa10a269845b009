"""Which words can go into which blanks: whether a complete matching is the only one, and how many.

`fits[b]` holds the numbers of the words that are right for blank b. A matching is complete when
every blank has a word and no word is used twice; words may be left over.
"""

from collections import deque
from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet

Fits = Sequence[AbstractSet[int]]
Matching = tuple[int, ...]  # [blank] -> word

_STEPS = 1_000_000
"""Counted in steps and not in seconds: a slower machine must not come to other rounds."""


def is_only_matching(fits: Fits, matching: Matching) -> bool:
    """Say whether a complete matching is the only one, in time that grows with the pairs of `fits`.

    Two matchings differ by paths and cycles whose pairs belong to them in turn (Berge 1957): there
    is another one exactly when a blank fits a word that is left over, or when blanks can hand
    their words round. There is no handing round when they can be struck off one by one, each when
    no other blank that is still there wants its word.
    """
    used = frozenset(matching)
    if any(word not in used for words in fits for word in words):
        return False
    wanted = wants(fits, matching)
    wanting = [0] * len(fits)
    for others in wanted:
        for other in others:
            wanting[other] += 1
    free = [blank for blank, count in enumerate(wanting) if not count]
    for blank in free:
        for other in wanted[blank]:
            wanting[other] -= 1
            if not wanting[other]:
                free.append(other)
    return len(free) == len(fits)


def wants(fits: Fits, matching: Matching) -> list[list[int]]:
    """Return for each blank the others whose words it could take, in their order."""
    holder = {word: blank for blank, word in enumerate(matching)}
    return [
        sorted(holder[word] for word in words if word in holder and holder[word] != blank)
        for blank, words in enumerate(fits)
    ]


def rounds(fits: Fits, matching: Matching) -> Iterator[tuple[int, ...]]:
    """Yield for each blank the shortest round that it is in, each round once.

    Only so many steps are gone in all: more words right for more blanks than any class has would
    take the square of the time.
    """
    wanted = wants(fits, matching)
    steps = iter(range(_STEPS))
    told: set[frozenset[int]] = set()
    for start in range(len(fits)):
        way = round_from(wanted, start, steps)
        if way and frozenset(way) not in told:
            told.add(frozenset(way))
            yield way


def round_from(
    wanted: Sequence[Sequence[int]], start: int, steps: Iterator[int]
) -> tuple[int, ...]:
    """Return the shortest round of blanks, each of which can take the word of the next.

    It begins with the blank `start`; the last blank can take the word of the first. It is empty
    where there is no such round, and where there are not enough `steps` to find it.
    """
    came_from: dict[int, int] = {}
    line = deque([start])
    while line:
        blank = line.popleft()
        for other, _step in zip(wanted[blank], steps, strict=False):
            if other == start:
                return _way(start, blank, came_from)
            if other not in came_from:
                came_from[other] = blank
                line.append(other)
    return ()


def _way(start: int, end: int, came_from: dict[int, int]) -> tuple[int, ...]:
    way = [end]
    while way[-1] != start:
        way.append(came_from[way[-1]])
    return tuple(reversed(way))


def count_complete(fits: Fits) -> int:
    """Return how many complete matchings there are: as many as the sets of words in use allow.

    For the few blanks of a part: in the worst case each one more doubles the time.
    """
    ways = {0: 1}  # words in use, as the bits of a number -> ways to come to it
    for words in fits:
        more: dict[int, int] = {}
        for used, count in ways.items():
            for word in words:
                if not used >> word & 1:
                    taken = used | 1 << word
                    more[taken] = more.get(taken, 0) + count
        ways = more
    return sum(ways.values())
