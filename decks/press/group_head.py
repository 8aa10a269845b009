"""The head of a page that a group works on: which text, whose it is, and the date."""

from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.frame import Frame, Line, Placed, Thing
from decks.press.fonts import measure
from decks.press.guide_type import GuideType
from decks.press.type import (
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


def group_header(  # noqa: PLR0913 (what it says, and for whom)
    deck: Deck, title: str, what: str, width: float, *, sizes: GuideType, team: int | None
) -> Frame:
    """Return the head; without a team there is a line for the group's name.

    `title` may be blank: the deck's title stands for it.
    """
    blanks = _blanks(sizes, named=team is not None)
    indent = 0 if team is None else BESIDE_RIBBON
    whose = [] if team is None else [deck.owners[team].name]
    where = [deck.recipe.title] if title else []
    subtitle = " · ".join([what, *where, *whose])
    room = width - indent - (blanks.width + BETWEEN if sizes.beside else 0)
    words = under_one_another(
        [
            paragraph(_short(title or deck.recipe.title, room, sizes), room, sizes.title),
            paragraph(subtitle, room, sizes.subtitle),
        ],
        gap=3,
    )
    if sizes.beside:
        header = side_by_side([(indent, words), (width - blanks.width, blanks)], width)
    else:
        named = under_one_another([words, gap(10), blanks])
        header = side_by_side([(indent, named)], width)
    if team is not None:
        ribbon = Placed(0, 0, swatch(team, width=RIBBON, height=header.height))
        header = framed(header, [ribbon])
    return under_one_another([header, gap(16)])


def _short(title: str, room: float, sizes: GuideType) -> str:
    """Return the title, shortened to two lines."""
    return shorten(title, 2 * room / sizes.title.size - 4, measure=measure, strong=True)


def _blanks(sizes: GuideType, *, named: bool) -> Frame:
    wanted = [("Date", sizes.date)] if named else [("Group", sizes.name), ("Date", sizes.date)]
    things: list[Thing] = []
    x = 0.0
    for word, line in wanted:
        things.append(line_of(word, sizes.label, x=x, y=4))
        x += width_of(word, sizes.label) + 4
        things.append(Line(x, 2, x + line, 2, 0.6))
        x += line + 8
    return Frame(x - 8, 1.8 * sizes.label.size, tuple(things))
