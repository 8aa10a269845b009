"""Rivals: items that could answer each other's blank."""

from collections import Counter
from collections.abc import Sequence

from msgspec import Struct

from cards.answers import answered
from cards.entries import entry_of
from cards.fitting import fitting, index_of
from cards.item import Item
from decks.dealing.even import evenest

NO_RIVALS = -1


class Rivals(Struct, frozen=True):
    """For each item the number of its answer, and the other answers that are right for its blank.

    Numbers are given to the answers of items; `answer` is -1 for an item without rivals.
    """

    answer: tuple[int, ...]
    accepts: tuple[tuple[int, ...], ...]


class Meeting:
    """The rivals in one hand, counted by their answers.

    Counts keep a thousand items with the answer “yes”, or that many blanks for which it is right,
    from being half a million pairs.
    """

    __slots__ = ("_accepting", "_answers", "_both", "_rivals")

    def __init__(self, rivals: Rivals) -> None:
        self._rivals = rivals
        self._answers: Counter[int] = Counter()
        self._accepting: Counter[int] = Counter()
        self._both: Counter[tuple[int, int]] = Counter()

    def add(self, item: int, by: int = 1) -> None:
        """Count an item in, or out again."""
        answer = self._rivals.answer[item]
        self._answers[answer] += by
        for other in self._rivals.accepts[item]:
            self._accepting[other] += by
            self._both[answer, other] += by

    def rivals_of(self, item: int) -> int:
        """Return how many others an item, which is counted in, meets."""
        answer = self._rivals.answer[item]
        # two items that are right for each other are one pair
        seen = sum(
            self._answers[other] - self._both[other, answer] for other in self._rivals.accepts[item]
        )
        return self._answers[answer] - 1 + self._accepting[answer] + seen


def rivals_among(items: Sequence[Item]) -> Rivals:
    """Find the items of which the one's answer is right for the other's prompt."""
    answers = [answered(item) for item in items]
    texts = dict(zip(answers, map(entry_of, items), strict=True))
    number = {answer: n for n, answer in enumerate(sorted(texts))}
    index = index_of(texts[answer] for answer in number)
    right = [fitting(item, index) for item in items]
    own = [number[answer] for answer in answers]
    accepts = [tuple(sorted(texts - {n})) for texts, n in zip(right, own, strict=True)]
    wanted = Counter(n for texts in right for n in texts)
    alone = [wanted[n] == 1 and not others for n, others in zip(own, accepts, strict=True)]
    return Rivals(
        tuple(NO_RIVALS if lone else n for n, lone in zip(own, alone, strict=True)), tuple(accepts)
    )


def clashes_in(hand: Sequence[Item]) -> int:
    """Return the number of pairs of rivals in a hand."""
    rivals = rivals_among(hand)
    meeting, clashes = Meeting(rivals), 0
    for item, answer in enumerate(rivals.answer):
        if answer != NO_RIVALS:
            meeting.add(item)
            clashes += meeting.rivals_of(item)
    return clashes


def fewest_clashes(items: Sequence[Item], homes: Sequence[int | None], teams: int) -> int:
    """Return a number of clashing pairs that no deal goes below.

    Equal answers alone are counted, spread over the teams as evenly as the pinned ones allow.
    """
    pinned: dict[str, list[int]] = {}
    free: Counter[str] = Counter()
    for item, home in zip(items, homes, strict=True):
        answer = answered(item)
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
