"""The sizes of a study guide: as usual, and in large print."""

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.units import mm
from decks.press.type.setting import HEADING, NOTE, TITLE, Style


class GuideType(Struct, frozen=True):
    """The type of a guide and the room for a hand, in points.

    `row` is the least height of a clue with its line; `next_line` is from one line of an answer to
    the next; `letters` says how many letters a hand sets on a line. `beside` says whether the lines
    stand beside their clue, as long as that is short, or always below. No line has less room above
    it than on wide ruled paper of the United States, on which the youngest of a school write: 11/32
    of an inch.
    """

    title: Style
    subtitle: Style
    heading: Style
    words: Style
    strong: Style
    number: Style
    label: Style
    foot: Style
    indent: float
    row: float
    next_line: float
    letters: int
    beside: bool
    name: float
    date: float
    picture: tuple[float, float]


USUAL = GuideType(
    title=TITLE,
    subtitle=Style(12, tone="quiet"),
    heading=HEADING,
    words=Style(12),
    strong=Style(12, strong=True),
    number=Style(12, strong=True, tone="quiet"),
    label=Style(12, tone="quiet"),
    foot=NOTE,
    indent=26,
    row=mm(12.5),
    next_line=mm(9),
    letters=26,
    beside=True,
    name=mm(38),
    date=mm(20),
    picture=(mm(55), mm(24)),
)
"""Twelve points are the least of RNIB Clear Print. Smaller are only the foot, which is for whoever
copies and sorts the pages, and raised and lowered letters and the parts of built fractions."""

LARGE = GuideType(
    title=Style(26, strong=True),
    subtitle=Style(18),
    heading=Style(20, strong=True),
    words=Style(18),
    strong=Style(18, strong=True),
    number=Style(18, strong=True),
    label=Style(18),
    foot=Style(18),
    indent=36,
    row=mm(15),
    next_line=mm(15),
    letters=34,
    beside=False,
    name=mm(70),
    date=mm(40),
    picture=(mm(80), mm(36)),
)
"""Eighteen points or more for all that stands on the page (American Printing House for the Blind),
in ink and not in grey; the parts of built fractions, and raised and lowered letters, are smaller.
Lines lie 15 mm apart, as in the exercise books that the National Handwriting Association (UK)
recommends for ages five to seven; they are below the clue, so that a large hand has the whole
width."""

FRACTIONS = {12: (17, 34), 18: (24, 46)}
"""The size, and the indent, of clues among built fractions, for each usual size of clues.

The figures of a fraction are 0.64 of the size: 10.9 points where all else is 12 or more, and 15.4
where it is 18. For the whole of it the clues would be as large as titles."""


def for_fractions(sizes: GuideType) -> GuideType:
    """Return the sizes with larger clues and banks, for a part that has built fractions.

    They are for the whole part: clues of two sizes under one another look like a mistake.
    """
    size, indent = FRACTIONS[int(sizes.words.size)]
    return replace(
        sizes,
        words=replace(sizes.words, size=size),
        strong=replace(sizes.strong, size=size),
        number=replace(sizes.number, size=size),
        indent=indent,
    )


def guide_type(*, large_print: bool) -> GuideType:
    """Return the sizes of a guide."""
    return LARGE if large_print else USUAL
