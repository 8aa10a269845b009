"""Each team's chance to win, as a picture: a bar for each team, and a mark at the equal chance."""

from collections.abc import Sequence

from decks.dealing import Deal, chance_sentence
from decks.layout.fitting import shorten
from decks.layout.flow import Block
from decks.layout.frame import Frame, Line, Ribbon, Thing
from decks.press.type.fonts import measure
from decks.press.type.setting import BODY, NOTE, Style, line_of, paragraph, width_of

NAME = Style(9.5)
ROW = 17.0
BAR = 9.0
THINNEST = 0.5
LABEL = 98.0
FIGURE = 40.0
EQUAL_AT = 0.7
"""How far along the scale the equal chance stands, unless a longer bar needs the room."""

HEAD = 16.0
AIR = 5.0
"""Between a figure and what stands before it."""


def chances(deal: Deal, names: Sequence[str], width: float) -> list[Block]:
    """Return the sentence, the picture and how it was reckoned; nothing where there is no race."""
    sentence = chance_sentence(deal, names)
    if not sentence:
        return []
    return [
        Block(paragraph(sentence, width, BODY), space=10, with_next=True),
        Block(_picture(deal.chances, names, width), space=8, with_next=True),
        Block(paragraph(_reckoning(deal), width, NOTE), space=5),
    ]


def _reckoning(deal: Deal) -> str:
    said = (
        "Reckoned from how many students are expected to get each card right, one point a card, "
        "each card for itself; teams that tie share the win."
    )
    if len(set(map(len, deal.hands))) == 1:
        return said
    return f"{said} Points are counted, so a team with fewer cards wins less often."


def _picture(values: Sequence[float], names: Sequence[str], width: float) -> Frame:
    equal = 1 / len(values)
    room = width - LABEL - FIGURE
    scale = room / max(equal / EQUAL_AT, *values)
    height = HEAD + ROW * len(values)
    mark = LABEL + equal * scale
    said = f"equal chance: {100 * equal:.1f} %".replace(".0 %", " %")
    # what stands above is drawn first: the text of a page is read in the order of drawing
    label = line_of(said, NOTE, x=mark - width_of(said, NOTE) / 2, y=height - 10)
    things: list[Thing] = [label]
    for team, (value, name) in enumerate(zip(values, names, strict=True)):
        top = height - HEAD - ROW * team
        things += _bar(team, value * scale, value, name, top, mark)
    things.append(Line(mark, 0, mark, height - HEAD, 0.8, "ink"))
    return Frame(width, height, tuple(things))


def _bar(  # noqa: PLR0913, PLR0917 (a team, its bar, and where it stands)
    team: int, length: float, value: float, name: str, top: float, mark: float
) -> list[Thing]:
    foot = top - (ROW + BAR) / 2
    short = shorten(name, (LABEL - 8) / NAME.size, measure=measure)
    figure = f"{100 * value:.1f} %"
    x = _beside(LABEL + length, width_of(figure, NAME), mark)
    return [
        line_of(short, NAME, y=foot + 1.5),
        *_ribbons(team, length, foot),
        line_of(figure, NAME, x=x, y=foot + 1.5),
    ]


def _beside(end: float, width: float, mark: float) -> float:
    """Return where a figure of this width begins: after its bar, or after the mark in its way."""
    x = end + AIR
    return mark + AIR if x - AIR < mark < x + width + AIR else x


def _ribbons(team: int, length: float, foot: float) -> list[Thing]:
    """Return a bar in pieces: a texture is as coarse as its ribbon is wide."""
    whole, rest = divmod(length, BAR)
    widths = [BAR] * int(whole) + [rest] * (rest > THINNEST)
    return [Ribbon(LABEL + n * BAR, foot, width, BAR, team) for n, width in enumerate(widths)]
