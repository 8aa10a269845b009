"""Where lines break: as few lines as can be; on cards as even as can be, in running text as full.

Texts break at white space only, never inside a word, and always where the teacher broke the line.
A non-breaking space holds words together, and so do numbers, names and formulas: see `joints`.
"""

from collections.abc import Sequence
from itertools import pairwise
from math import inf

from decks.layout.balance import HAIR, break_evenly, break_full
from decks.layout.prose import Group, Prose, groups_of, prose_of
from decks.layout.runs import Line, Measure, Styled, Word
from decks.layout.splitting import split


def break_prose(prose: Sequence[Prose], width: float) -> list[tuple[Line, float]] | None:
    """Return the even lines of a text in a column of `width` ems, each with its own width in ems.

    None where a word is wider.
    """
    lines: list[tuple[Line, float]] = []
    for line in prose:
        if line.whole <= width:
            lines.append((line.line(0, len(line.words)), line.whole))
            continue
        groups = groups_of(line, width)
        ends = break_evenly(
            [group.width for group in groups],
            line.space,
            width,
            prices=[group.price for group in groups],
            lone=[line.is_lone(group) for group in groups],
        )
        if ends is None:
            return None
        places = _places(groups, ends)
        lines += [(line.line(*place), line.width(*place)) for place in places]
    return lines


def count_lines(prose: Sequence[Prose], width: float, *, whole: float = inf) -> int | None:
    """Return how many lines `break_prose` would return, in a fraction of its time.

    None where a word is wider, or a group of words that are joined at `whole` or more.
    """
    count = 0
    for line in prose:
        if line.whole <= width:
            count += 1
            continue
        widths = line.group_widths
        if max(widths) > width:
            widths = [group.width for group in groups_of(line, width, whole=whole)]
            if max(widths) > width:
                return None
        count += len(break_full(widths, line.space, width))
    return count


def count_words(prose: Sequence[Prose], width: float, lines: int) -> int:
    """Return how many words stand on so many lines of `width` ems, up to one that is wider."""
    words = 0
    for line in prose:
        start = line.up_to(lines * (width + line.space))
        for first, end in _full(start, width):
            if not lines or start.width(first, end) > width + HAIR:
                return words
            words, lines = words + end - first, lines - 1
        if start is not line:
            break
    return words


def fill_text(styled: Styled, width: float, *, measure: Measure) -> list[Line]:
    """Return the full lines of running text in a column of `width` ems.

    A word that is wider than the column is split, after a hyphen if it can be.
    """
    lines: list[Line] = []
    for line in prose_of(styled, measure):
        if line.whole <= width:
            lines.append(line.line(0, len(line.words)))
            continue
        parted = _with_wide_words_split(line, width, measure)
        groups = groups_of(parted, width)
        ends = break_full([group.width for group in groups], parted.space, width)
        places = _places(groups, _with_company(parted, groups, ends, width))
        lines += [parted.line(*place) for place in places]
    return lines


def _full(line: Prose, width: float) -> list[tuple[int, int]]:
    """Return the first word of each full line and the one after its last."""
    groups = groups_of(line, width)
    ends = break_full([group.width for group in groups], line.space, width)
    return _places(groups, ends) if groups else [(0, 0)]


def _places(groups: Sequence[Group], ends: Sequence[int]) -> list[tuple[int, int]]:
    """Return the first word of each line and the one after its last."""
    return list(pairwise([0, *(groups[end - 1].end for end in ends)]))


def _with_company(
    prose: Prose, groups: Sequence[Group], ends: list[int], width: float
) -> list[int]:
    """Return the ends with a lone short word on the last line joined by what stands before it."""
    if len(ends) < 2 or ends[-1] - ends[-2] > 1 or not prose.is_lone(groups[-1]):  # noqa: PLR2004
        return ends
    start, before = [0, *ends[:-1]][-2:]
    pulled = before - 1
    fits = prose.width(groups[pulled].start, groups[-1].end) <= width
    return [*ends[:-2], pulled, ends[-1]] if fits and pulled > start else ends


def _with_wide_words_split(prose: Prose, width: float, measure: Measure) -> Prose:
    if prose.widest <= width:
        return prose
    words: list[Word] = []
    joints: list[float] = []
    for word, joint in zip(prose.words, (*prose.joints, 0), strict=True):
        pieces = split(word, width, measure)
        words += pieces
        joints += [*[0.0] * (len(pieces) - 1), joint]
    return Prose.of(tuple(words), measure, strong=prose.strong, joints=tuple(joints[:-1]))
