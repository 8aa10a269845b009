"""Rivals: items that could answer each other's blank."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from cards.answers import accepted
from cards.item import Item, folded
from decks.dealing.even import evenest

NO_RIVALS = -1


@dataclass(frozen=True, slots=True)
class Rivals:
    """Items in groups of one answer: all items of a group are rivals of each other.

    `group[item]` is the group's number, or -1 for an item without rivals; `beside[group]` holds
    the other groups whose items are rivals of this group's, because of other right answers.
    Groups keep a thousand items with the answer “yes” from being half a million pairs.
    """

    group: tuple[int, ...]
    beside: tuple[tuple[int, ...], ...]


def rivals_among(items: Sequence[Item]) -> Rivals:
    """Find the items of which the one's answer is right for the other's prompt."""
    signs = [(folded(item.answer), tuple(sorted(accepted(item)))) for item in items]
    groups = {sign: number for number, sign in enumerate(sorted(set(signs)))}
    by_answer: dict[str, list[int]] = {}
    for (answer, _texts), number in groups.items():
        by_answer.setdefault(answer, []).append(number)
    beside: list[set[int]] = [set() for _ in groups]
    for (_answer, texts), number in groups.items():
        for other in (found for text in texts for found in by_answer.get(text, ())):
            beside[number].add(other)
            beside[other].add(number)
    numbers = [groups[sign] for sign in signs]
    size = Counter(numbers)
    return Rivals(
        tuple(n if size[n] > 1 or len(beside[n]) > 1 else NO_RIVALS for n in numbers),
        tuple(tuple(sorted(others - {n})) for n, others in enumerate(beside)),
    )


def clashes_in(hand: Sequence[Item]) -> int:
    """Return the number of pairs of rivals in a hand."""
    rivals = rivals_among(hand)
    size = Counter(rivals.group)
    size.pop(NO_RIVALS, None)
    alike = sum(count * (count - 1) for count in size.values())
    across = sum(count * size[other] for n, count in size.items() for other in rivals.beside[n])
    return (alike + across) // 2


def fewest_clashes(items: Sequence[Item], homes: Sequence[int | None], teams: int) -> int:
    """Return a number of clashing pairs that no deal goes below.

    Equal answers alone are counted, spread over the teams as evenly as the pinned ones allow.
    """
    pinned: dict[str, list[int]] = {}
    free: Counter[str] = Counter()
    for item, home in zip(items, homes, strict=True):
        answer = folded(item.answer)
        row = pinned.setdefault(answer, [0] * teams)
        if home is None:
            free[answer] += 1
        else:
            row[home] += 1
    return sum(_fewest_pairs(row, free[answer]) for answer, row in pinned.items())


def _fewest_pairs(pinned: Sequence[int], free: int) -> int:
    least, _most = evenest(pinned, free)
    level = [max(have, least) for have in pinned]
    spare = sum(pinned) + free - sum(level)
    # each card that is left over lies on top of `least` others
    return sum(have * (have - 1) // 2 for have in level) + spare * least
