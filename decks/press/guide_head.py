"""The head of a study guide's page: what it is, whose it is, and where to write one's name."""

from decks.bank import Guide
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


def guide_header(
    deck: Deck, guide: Guide, width: float, sizes: GuideType, *, second: bool = False
) -> Frame:
    """Return the head of every page of a guide; in large print the name has a line of its own."""
    blanks = _name_and_date(sizes)
    indent = 0 if guide.team is None else BESIDE_RIBBON
    room = width - indent
    if sizes.beside:
        words = _titles(deck, guide, room - blanks.width - BETWEEN, sizes, second=second)
        header = side_by_side([(indent, words), (width - blanks.width, blanks)], width)
    else:
        words = _titles(deck, guide, room, sizes, second=second)
        named = under_one_another([words, gap(10), blanks])
        header = side_by_side([(indent, named)], width)
    if guide.team is not None:
        team = [team.name for team in deck.recipe.teams].index(guide.team)
        ribbon = Placed(0, 0, swatch(team, width=RIBBON, height=header.height))
        header = framed(header, [ribbon])
    return under_one_another([header, gap(18)])


def _titles(deck: Deck, guide: Guide, room: float, sizes: GuideType, *, second: bool) -> Frame:
    parts = ["Study guide", *(["second version"] if second else []), guide.team or "everyone"]
    return under_one_another(
        [
            paragraph(_title(deck, room, sizes), room, sizes.title),
            paragraph(" · ".join(parts), room, sizes.subtitle),
        ],
        gap=3,
    )


def _title(deck: Deck, room: float, sizes: GuideType) -> str:
    """Return the title, shortened to two lines."""
    return shorten(deck.recipe.title, 2 * room / sizes.title.size - 4, measure=measure, strong=True)


def _name_and_date(sizes: GuideType) -> Frame:
    things: list[Thing] = []
    x = 0.0
    for word, line in (("Name", sizes.name), ("Date", sizes.date)):
        things.append(line_of(word, sizes.label, x=x, y=4))
        x += width_of(word, sizes.label) + 4
        things.append(Line(x, 2, x + line, 2, 0.6))
        x += line + 8
    return Frame(x - 8, 1.8 * sizes.label.size, tuple(things))
