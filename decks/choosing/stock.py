"""What there is to choose from, counted, and how many of what are wanted."""

from collections import Counter
from collections.abc import Callable, Hashable, Iterable, Mapping, Sequence
from fractions import Fraction
from math import ceil, floor
from typing import NamedTuple

from msgspec import Struct

from cards.item import Item, Level, folded
from decks.dealing.loads import ShareOf

STEPS = 200
"""Expected shares are counted in half percents: the steps from 0 to 1."""


class Group(NamedTuple):
    """What matters of an item for choosing; `topic` is folded, `steps` is the expected share.

    `seen` is one that was in an earlier deck, `liked` one of which as many as can be are wanted.
    """

    level: int
    topic: str
    steps: int
    seen: bool = False
    liked: bool = False


class Stock(Struct, frozen=True):
    """The items of each group that are on offer (`have`), and those that must be in (`must`)."""

    groups: tuple[Group, ...]
    have: tuple[int, ...]
    must: tuple[int, ...]


class Again(Struct, frozen=True):
    """Which items have been seen before, by their keys, and how many of the cards may be of them.

    At most so many percent of the cards, or just so many, within one.
    """

    keys: frozenset[str]
    percent: int
    at_most: bool = True


class Range(Struct, frozen=True):
    """How many cards of a value, such as a level or a topic, are wanted: `least` to `most`.

    `members` are the indexes of its groups, rising.
    """

    value: Hashable
    members: tuple[int, ...]
    wanted: Fraction
    least: int
    most: int

    def held(self, counts: Sequence[int]) -> int:
        """Return how many cards of it there are in counts by group."""
        return sum(counts[group] for group in self.members)

    def off(self, counts: Sequence[int]) -> int:
        """Return by how many cards it lies outside what is wanted."""
        held = self.held(counts)
        return max(self.least - held, held - self.most, 0)


def within_one(value: Hashable, members: tuple[int, ...], wanted: Fraction) -> Range:
    """Return the range that is wanted where a whole number may lie on either side."""
    return Range(value, members, wanted, floor(wanted), ceil(wanted))


def group_of(item: Item, share: ShareOf, *, seen: bool, liked: bool) -> Group:
    """Return the group that an item stands in."""
    return Group(int(item.level), folded(item.topic), round(share(item) * STEPS), seen, liked)


def stock_of(groups: Sequence[Group], must: Sequence[bool]) -> Stock:
    """Count the items, each given by its group; sorted, so that the order of rows is nothing."""
    have = Counter(groups)
    held = Counter(group for group, needed in zip(groups, must, strict=True) if needed)
    kinds = tuple(sorted(have))
    return Stock(kinds, tuple(have[g] for g in kinds), tuple(held[g] for g in kinds))


def level_ranges(stock: Stock, count: int, mix: Sequence[int] | None) -> tuple[Range, ...]:
    """Return what is wanted of each level: the mix's share, or the content's without a mix."""
    if mix is None:
        have = Counter[int]()
        for group, number in zip(stock.groups, stock.have, strict=True):
            have[group.level] += number
        mix = [have[level] for level in Level]
    shares: dict[Hashable, int] = dict(zip(map(int, Level), mix, strict=True))
    return _ranges(stock, count, shares, lambda group: group.level)


def most_for_mix(stock: Stock, mix: Sequence[int]) -> int:
    """Return the largest number of cards whose levels can meet the mix, or 0 if none can."""
    totals = _by_level(stock)
    for count in range(sum(stock.have), 0, -1):
        levels = level_ranges(totals, count, mix)
        least = [max(span.least, span.held(totals.must)) for span in levels]
        most = [min(span.most, span.held(totals.have)) for span in levels]
        if sum(least) <= count <= sum(most) and all(
            a <= b for a, b in zip(least, most, strict=True)
        ):
            return count
    return 0


def _by_level(stock: Stock) -> Stock:
    """Return the same with one group a level: more does not matter where only levels do."""
    have, must = Counter[int](), Counter[int]()
    for group, number, held in zip(stock.groups, stock.have, stock.must, strict=True):
        have[group.level] += number
        must[group.level] += held
    levels = sorted(have)
    groups = tuple(Group(level, "", 0) for level in levels)
    return Stock(groups, tuple(have[n] for n in levels), tuple(must[n] for n in levels))


def topic_ranges(
    stock: Stock, count: int, weights: Mapping[str, int] | None = None
) -> tuple[Range, ...]:
    """Return what is wanted of each topic: as large a part as it has of the content.

    With `weights`, by folded topic, its part is that of its weight.
    """
    have = Counter[Hashable]()
    for group, number in zip(stock.groups, stock.have, strict=True):
        have[group.topic] += number
    if weights is not None:
        have = Counter({topic: weights.get(str(topic), 0) for topic in have})
    return _ranges(stock, count, have, lambda group: group.topic)


def seen_ranges(stock: Stock, count: int, again: Again | None) -> tuple[Range, ...]:
    """Return what is wanted of the items seen before, if anything is."""
    if again is None:
        return ()
    members = _members(stock.groups, key=True, value=lambda group: group.seen)
    wanted = Fraction(again.percent * count, 100)
    least, most = (0, floor(wanted)) if again.at_most else (floor(wanted), ceil(wanted))
    return (Range("seen", members, wanted, least, most),)


def liked_ranges(stock: Stock) -> tuple[Range, ...]:
    """Return that all of the liked items are wanted, if there are any."""
    members = _members(stock.groups, key=True, value=lambda group: group.liked)
    have = sum(stock.have[group] for group in members)
    return (Range("liked", members, Fraction(have), have, have),) if have else ()


def _ranges(
    stock: Stock, count: int, shares: Mapping[Hashable, int], value: Callable[[Group], object]
) -> tuple[Range, ...]:
    whole = sum(shares.values()) or 1  # nothing to choose from has no shares
    return tuple(
        within_one(key, _members(stock.groups, key, value), Fraction(count * share, whole))
        for key, share in shares.items()
    )


def _members(
    groups: Iterable[Group], key: object, value: Callable[[Group], object]
) -> tuple[int, ...]:
    return tuple(index for index, group in enumerate(groups) if value(group) == key)


def rounded(ranges: Sequence[Range]) -> dict[Hashable, int]:
    """Return whole numbers of the same sum, by the largest remainder; the first goes first."""
    counts = {span.value: span.least for span in ranges}
    left = round(sum(span.wanted for span in ranges)) - sum(counts.values())
    for span in sorted(ranges, key=lambda span: span.least - span.wanted)[:left]:
        counts[span.value] += 1
    return counts


def target_of(stock: Stock, levels: Sequence[Range]) -> int:
    """Return the sum of steps that the wanted levels come to, each at its mean in the content."""
    total = Fraction(0)
    for level, count in zip(levels, rounded(levels).values(), strict=True):
        have = level.held(stock.have)
        steps = sum(stock.have[g] * stock.groups[g].steps for g in level.members)
        usual = Fraction(round(Level(int(str(level.value))).expected_share * STEPS))
        total += count * (Fraction(steps, have) if have else usual)
    return round(total)
