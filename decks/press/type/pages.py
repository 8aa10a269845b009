"""Pages of running type: blocks flow down them, and each says at its foot what it is."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.flow import Block, flow
from decks.layout.frame import Frame, Placed, Text
from decks.layout.paper import PAPERS, Paper
from decks.layout.units import mm
from decks.press.type.fonts import measure
from decks.press.type.setting import NOTE, Style, line_of, width_of
from decks.recipe import PaperName

MARGIN = mm(19)
TOP = mm(15)
BOTTOM = mm(19)
FOOT = mm(11)

DOT = " · "

METRIC = {PaperName.A3, PaperName.A4, PaperName.A5}


def page_paper(name: PaperName) -> Paper:
    """Return the paper for running type where cards are printed on this one: A4 or Letter.

    Lists and tables want a page that is neither a small card nor a poster.
    """
    return PAPERS[PaperName.A4 if name in METRIC else PaperName.LETTER]


def column(paper: Paper) -> float:
    """Return the width of the type on a page, in points."""
    return paper.width - 2 * MARGIN


def pages(
    blocks: Sequence[Block],
    paper: Paper,
    *,
    foot: tuple[str, ...],
    header: Frame | None = None,
    style: Style = NOTE,
) -> list[Frame]:
    """Return the blocks on pages of a paper, with `foot` and the page's number at the foot.

    The longest of the foot's texts are shortened where they have no room beside one another.
    A `header` is set at the top of every page; `style` is that of the foot.
    """
    top = paper.height - TOP - (header.height if header else 0)
    filled = flow(blocks, x=MARGIN, top=top, bottom=BOTTOM)
    head = [Placed(MARGIN, top, header)] if header else []
    return [
        Frame(
            paper.width, paper.height, (*head, *placed, *_foot(paper, foot, n, len(filled), style))
        )
        for n, placed in enumerate(filled, start=1)
    ]


def foot_of(deck: Deck, *more: str) -> tuple[str, ...]:
    """Return the foot of a deck's pages: its title, its number, and what is on them."""
    return deck.recipe.title, f"deck {deck.number}", *more


def _foot(
    paper: Paper, foot: tuple[str, ...], number: int, count: int, style: Style
) -> tuple[Text, Text]:
    page = f"page {number} of {count}"
    right = paper.width - MARGIN - width_of(page, style)
    said = DOT.join(_shortened(foot, right - MARGIN - style.size, style))
    return line_of(said, style, x=MARGIN, y=FOOT), line_of(page, style, x=right, y=FOOT)


def _shortened(texts: Sequence[str], room: float, style: Style) -> list[str]:
    """Return the texts, the longest of them shortened to one length so that all have room."""
    left = room - width_of(DOT, style) * (len(texts) - 1)
    widths = sorted(width_of(text, style) for text in texts)
    most = left
    for n, width in enumerate(widths):
        most = left / (len(widths) - n)
        if width > most:
            break
        left -= width
    return [shorten(text, most / style.size, measure=measure, between=True) for text in texts]
