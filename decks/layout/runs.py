"""Texts with bold, raised and lowered letters, parted into runs of one style."""

import re
from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from typing import TypeAlias

from msgspec import Struct

from cards.indents import STAYS, with_indents
from cards.style import Span, Spans, TextStyle

Measure: TypeAlias = Callable[[str, bool], float]
"""Width of a text in ems; the second argument says whether it is set in the strong weight."""

SMALL = 0.64
"""Raised and lowered letters by size: figures of a 12-point text still measure 16′ at 400 mm."""

RISES = {
    TextStyle.RAISED: 0.33,
    TextStyle.LOWERED: -0.14,
    TextStyle.NUMERATOR: 0.27,
    TextStyle.DENOMINATOR: 0.0,
}
"""Their baselines above the line's, in ems of the text's size."""


_LONG_RULE = re.compile(r"([_.…–—-])\1{12,}")
_RULE = r"\1" * 12
"""A line to write on, typed of more signs than this, is printed shorter, so that it fits a card."""


class Run(Struct, frozen=True):
    """Letters of one style; `strong` and the style say how they are set."""

    text: str
    strong: bool = False
    style: TextStyle | None = None

    @property
    def scale(self) -> float:
        """The size of the letters as a share of the text's."""
        return 1 if self.style in {None, TextStyle.BOLD} else SMALL

    @property
    def rise(self) -> float:
        """How far the baseline lies above the line's, in ems of the text's size."""
        return RISES.get(self.style, 0) if self.style else 0

    def width(self, measure: Measure) -> float:
        """Return the width of the letters in ems of the text's size."""
        width = measure(self.text, self.strong)
        return width * self.scale if self.style else width


class Styled(Struct, frozen=True):
    """A text to be set: in the strong weight or not, with the styles of some of its letters."""

    text: str
    strong: bool = False
    spans: Spans = ()


Word: TypeAlias = tuple[Run, ...]
Line: TypeAlias = tuple[Run, ...]


def runs_of(styled: Styled) -> list[Run]:
    """Part a text into runs; letters in no span have no style."""
    text, strong = styled.text, styled.strong
    if not styled.spans:
        return [Run(text, strong)] if text else []
    runs = []
    at = 0
    for span in sorted(styled.spans):
        runs.append(Run(text[at : span.start], strong))
        bold = strong or span.style is TextStyle.BOLD
        runs.append(Run(text[span.start : span.end], bold, span.style))
        at = span.end
    return [run for run in (*runs, Run(text[at:], strong)) if run.text]


def words_of(runs: Sequence[Run]) -> list[Word]:
    """Part runs at blanks into the words that must stay whole; a non-breaking space is no blank."""
    words: list[Word] = [()]
    for run in runs:
        first, *others = run.text.replace("\t", " ").split(" ")
        words[-1] += _word(first, run.strong, run.style)
        words += [_word(letters, run.strong, run.style) for letters in others]
    return [word for word in words if word]


@lru_cache(maxsize=32768)
def _word(text: str, strong: bool, style: TextStyle | None) -> Word:  # noqa: FBT001 (for the cache)
    return (Run(_LONG_RULE.sub(_RULE, text), strong, style),) if text else ()


def lines_of(styled: Styled) -> list[Styled]:
    """Part a text at the teacher's own line breaks; each line's spans count from its start.

    The blanks at the start of indented lines are kept, as non-breaking ones.
    """
    if "\n" not in styled.text:
        return [styled]
    lines = []
    start = 0
    for line in with_indents(styled.text).split("\n"):
        end = start + len(line)
        lines.append(Styled(line, styled.strong, tuple(_within(styled.spans, start, end))))
        start = end + 1
    return lines


def begins_indented(line: Line) -> bool:
    """Return whether a line is indented, as a program's may be."""
    return bool(line) and line[0].text.startswith(2 * STAYS)


def _within(spans: Spans, start: int, end: int) -> Iterator[Span]:
    for span in spans:
        first, last = max(span.start, start), min(span.end, end)
        if first < last:
            yield Span(first - start, last - start, span.style)


def set_line(words: Sequence[Word], *, strong: bool) -> Line:
    """Return words as a line, with blanks between; neighbouring runs of one style are one run."""
    line: list[Run] = []
    for n, word in enumerate(words):
        for run in (Run(" ", strong), *word) if n else word:
            if line and (line[-1].strong, line[-1].style) == (run.strong, run.style):
                line[-1] = Run(line[-1].text + run.text, run.strong, run.style)
            else:
                line.append(run)
    return tuple(line)


def width_of(runs: Sequence[Run], measure: Measure) -> float:
    """Return the width of runs beside one another, in ems of the text's size."""
    if len(runs) == 1:
        return runs[0].width(measure)
    return sum(run.width(measure) for run in runs)


def has_fractions(runs: Sequence[Run]) -> bool:
    """Return whether there is a built fraction among the runs."""
    return any(run.style is TextStyle.NUMERATOR for run in runs)


def plain(runs: Sequence[Run]) -> str:
    """Return the letters of runs without their styles."""
    if len(runs) == 1:
        return runs[0].text
    return "".join(run.text for run in runs)
