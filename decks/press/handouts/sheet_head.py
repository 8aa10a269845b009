"""The head of a sheet that students write on: what it is, whose it is, and lines to fill in."""

from collections.abc import Sequence

from decks.layout.fitting import shorten
from decks.layout.frame import Frame, Line, Placed, Thing
from decks.press.handouts.guide_type import GuideType
from decks.press.type.fonts import measure
from decks.press.type.setting import (
    framed,
    gap,
    line_of,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
    width_of,
)

RIBBON = 12.0
BESIDE_RIBBON = 22.0
BETWEEN = 16.0


def sheet_head(  # noqa: PLR0913 (what it says, for whom, and the room below it)
    title: str,
    subtitle: str,
    blanks: Sequence[tuple[str, float]],
    width: float,
    sizes: GuideType,
    *,
    team: int | None,
    below: float,
) -> Frame:
    """Return the head with `below` points under it; in large print the blanks come below the title.

    `blanks` are words, each with the length in points of the line after it. A `team` has its
    ribbon beside the title.
    """
    lines = _to_fill_in(blanks, sizes)
    indent = 0 if team is None else BESIDE_RIBBON
    room = width - indent - (lines.width + BETWEEN if sizes.beside else 0)
    words = under_one_another(
        [
            paragraph(_in_two_lines(title, room, sizes), room, sizes.title),
            paragraph(subtitle, room, sizes.subtitle),
        ],
        gap=3,
    )
    if sizes.beside:
        header = side_by_side([(indent, words), (width - lines.width, lines)], width)
    else:
        header = side_by_side([(indent, under_one_another([words, gap(10), lines]))], width)
    if team is not None:
        ribbon = Placed(0, 0, swatch(team, width=RIBBON, height=header.height))
        header = framed(header, [ribbon])
    return under_one_another([header, gap(below)])


def _in_two_lines(title: str, room: float, sizes: GuideType) -> str:
    """Return the title, shortened to two lines."""
    most = 2 * room / sizes.title.size - 4
    return shorten(title, most, measure=measure, strong=True, between=True)


def _to_fill_in(blanks: Sequence[tuple[str, float]], sizes: GuideType) -> Frame:
    things: list[Thing] = []
    x = 0.0
    for word, line in blanks:
        things.append(line_of(word, sizes.label, x=x, y=4))
        x += width_of(word, sizes.label) + 4
        things.append(Line(x, 2, x + line, 2, 0.6))
        x += line + 8
    return Frame(x - 8, 1.8 * sizes.label.size, tuple(things))
