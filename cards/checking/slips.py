"""Whether two words are one, with a slip of the typing."""

from cards.checking.syllables import is_listed

_LEAST_LETTERS = 5
_LONG = 9
_MOST_LETTERS = 40
"""No word has more; of two that are longer, letters would be compared for minutes."""


def is_slip(word: str, other: str, *, same_sense: bool) -> bool:
    """Say whether one of two different words is a mistyping of the other.

    Two words that English has are two words, as desert and dessert. Where the rest does not say
    the same (`same_sense`), only letters that have changed places or are doubled are a slip: the
    nitrite and the nitrate are two things, whatever the list knows of them.
    """
    shorter, longer = sorted((len(word), len(other)))
    if shorter < _LEAST_LETTERS or longer > _MOST_LETTERS or not (word + other).isalpha():
        return False
    if not same_sense and not _swapped_or_doubled(word, other):
        return False
    allowed = 2 if longer >= _LONG else 1
    # no slip changes more than two letters, and this is quickly seen
    if len(set(word) ^ set(other)) > 2 * allowed or longer - shorter > allowed:
        return False
    if distance(word, other, allowed) > allowed:
        return False
    known = is_listed(word) + is_listed(other)
    return known == 1 or (known == 0 and same_sense)


def distance(word: str, other: str, most: int | None = None) -> int:
    """Return how many letters to add, leave out, change or swap with the next make one the other.

    The optimal string alignment distance; where it is more than `most`, some number above that.
    """
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(word, 1):
        before, above, row = row, before, [i]
        for j, counterpart in enumerate(other, 1):
            cost = min(before[j] + 1, row[-1] + 1, before[j - 1] + (letter != counterpart))
            if i > 1 and j > 1 and word[i - 2] == counterpart and letter == other[j - 2]:
                cost = min(cost, above[j - 2] + 1)
            row.append(cost)
        # a swap reaches over one row
        if most is not None and min(*row, *before) > most:
            return min(row)
    return row[-1]


def _swapped_or_doubled(word: str, other: str) -> bool:
    if len(word) == len(other):
        return sorted(word) == sorted(other) and distance(word, other) == 1
    return _undoubled(word) == _undoubled(other)


def _undoubled(word: str) -> str:
    return "".join(letter for i, letter in enumerate(word) if word[i - 1 : i] != letter)
