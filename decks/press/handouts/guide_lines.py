"""How many lines a study guide rules for each answer, beside its clue and below it."""

from collections.abc import Sequence

from msgspec import Struct

from decks.bank import GuidePart
from decks.layout.units import mm
from decks.press.handouts.guide_type import GuideType

BESIDE = 0.65
"""The share of the width after which the lines begin that stand beside their clue."""

MOST_LINES = 3
"""An answer that takes more of the short lines beside a clue has lines of the whole width below."""

TALLEST_ROW = mm(150)
"""A clue with its lines stays on one page, whatever stands above it there."""


class Ruling(Struct, frozen=True):
    """The lines for an answer: so many where they stand beside the clue, so many below it.

    None `beside` says that there they would not do.
    """

    beside: int
    below: int


LETTER = Ruling(beside=1, below=1)
"""A letter takes one line."""


def rulings(part: GuidePart, sizes: GuideType, width: float) -> list[Ruling]:
    """Return the lines for each blank of a part: as many for all answers that three lines hold.

    The number of lines must not tell which of these is the longest; that may make the guide a page
    longer, which costs less than a blank that is filled by counting lines. A longer answer could
    not be written otherwise: it has lines of its own, and makes the others no longer.
    """
    below = _letters_below(sizes, width)
    most = MOST_LINES * sizes.letters
    lengths = [len(blank.answer) for blank in part.worded]
    longest = max((length for length in lengths if length <= most), default=0)
    alike = Ruling(_lines(longest, sizes.letters), _lines(longest, below))
    of_worded = (
        alike if length <= most else Ruling(0, _lines(length, below)) for length in lengths
    )
    return _among_letters(part, list(of_worded))


def _among_letters(part: GuidePart, of_worded: Sequence[Ruling]) -> list[Ruling]:
    found = [LETTER] * len(part.blanks)
    for place, ruling in zip(part.worded_places, of_worded, strict=True):
        found[place] = ruling
    return found


def _lines(letters: int, on_a_line: int) -> int:
    return max(1, -(-letters // on_a_line))


def _letters_below(sizes: GuideType, width: float) -> int:
    """Return how many letters a hand sets on a line of the whole width."""
    if not sizes.beside:
        return sizes.letters
    return int(sizes.letters * (width - sizes.indent) / (width * (1 - BESIDE)))


def lines_that_fit(lines: int, clue: float, sizes: GuideType) -> int:
    """Return how many of the lines stand below a clue of this height: three in any case."""
    room = int((TALLEST_ROW - clue - sizes.row) / sizes.next_line) + 1
    return min(lines, max(MOST_LINES, room))
