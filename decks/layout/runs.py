"""Texts with bold, raised and lowered letters, parted into runs of one style."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from cards.style import Spans, TextStyle

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


@dataclass(frozen=True, slots=True)
class Run:
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
        return measure(self.text, self.strong) * self.scale


@dataclass(frozen=True, slots=True)
class Styled:
    """A text to be set: in the strong weight or not, with the styles of some of its letters."""

    text: str
    strong: bool = False
    spans: Spans = ()


Word: TypeAlias = tuple[Run, ...]
Line: TypeAlias = tuple[Run, ...]


def runs_of(styled: Styled) -> list[Run]:
    """Part a text into runs; letters in no span have no style."""
    text, strong = styled.text, styled.strong
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
        first, *more = re.split(r"[ \t]+", run.text)
        words[-1] = _joined(words[-1], replace(run, text=first))
        words += [_joined((), replace(run, text=piece)) for piece in more]
    return [word for word in words if word]


def _joined(word: Word, run: Run) -> Word:
    return (*word, run) if run.text else word


def lines_of(styled: Styled) -> list[Styled]:
    """Part a text at the teacher's own line breaks; each line's spans count from its start."""
    lines = []
    start = 0
    for line in styled.text.split("\n"):
        end = start + len(line)
        lines.append(replace(styled, text=line, spans=_within(styled.spans, start, end)))
        start = end + 1
    return lines


def _within(spans: Spans, start: int, end: int) -> Spans:
    clipped = (replace(s, start=max(s.start, start), end=min(s.end, end)) for s in spans)
    return tuple(
        replace(s, start=s.start - start, end=s.end - start) for s in clipped if s.start < s.end
    )


def set_line(words: Sequence[Word], *, strong: bool) -> Line:
    """Return words as a line, with blanks between; neighbouring runs of one style are one run."""
    line: list[Run] = []
    for n, word in enumerate(words):
        for run in (Run(" ", strong), *word) if n else word:
            if line and (line[-1].strong, line[-1].style) == (run.strong, run.style):
                line[-1] = replace(run, text=line[-1].text + run.text)
            else:
                line.append(run)
    return tuple(line)


def width_of(runs: Sequence[Run], measure: Measure) -> float:
    """Return the width of runs beside one another, in ems of the text's size."""
    return sum(run.width(measure) for run in runs)


def has_fractions(runs: Sequence[Run]) -> bool:
    """Return whether there is a built fraction among the runs."""
    return any(run.style is TextStyle.NUMERATOR for run in runs)


def plain(runs: Sequence[Run]) -> str:
    """Return the letters of runs without their styles."""
    return "".join(run.text for run in runs)
