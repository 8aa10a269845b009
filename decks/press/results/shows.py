"""`what-it-shows.pdf`: what the marks of a deck say, in words, as a picture and as a table."""

from collections.abc import Sequence

from cards.entries import entry_of
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.marks.forms import in_short
from decks.marks.results import ENOUGH_PAPERS, ItemResult, Results
from decks.marks.summary import (
    Sentence,
    band,
    is_key_doubtful,
    sentences,
    span,
    two_places,
)
from decks.press.pdf import make_pdf
from decks.press.results.shares import item_rows, topic_rows
from decks.press.teacher.table import Column, cell, table
from decks.press.type.pages import column, foot_of, page_paper, pages
from decks.press.type.setting import (
    BODY,
    HEADING,
    NOTE,
    STRONG,
    SUBTITLE,
    TITLE,
    Style,
    paragraph,
    side_by_side,
    under_one_another,
)
from decks.words import percent

INDENT = 14.0
FIGURE = Style(10.5)
LABEL = Style(10.5, strong=True, tone="quiet")
ITEMS_TOLD = (
    "From the ring to the dot: the share expected to be right before the lesson and after its "
    "marks. The thin line holds the truth 95 times in 100. Hardest first."
)
TOPICS_TOLD = (
    "The share right of all answers on a topic; the thin line holds the truth 95 times in 100."
)
TABLE_TOLD = (
    "Share: of the tries, with Wilson’s 95 % interval. Expected: the mean of what the level says, "
    "worth {strength:g} tries, and of the marks. "
)
WORKING_TOLD = (
    "Upper−lower: the share right in the best 27 % of papers less that in the lowest, ties "
    "averaged; .40 and more is very good, .30 good, .20 marginal, less is poor (Ebel & Frisbie "
    "1991), and below nought look at the key. With the rest: correlation with the score on the "
    "other blanks."
)
TOO_FEW_TOLD = (
    f"How an item tells high scores from low is told from {ENOUGH_PAPERS} whole papers on; fewer "
    "say too little."
)


def shows_file(deck: Deck, found: Results) -> bytes:
    """Return the paper as a PDF."""
    return make_pdf(shows_pages(deck, found), title=f"{deck.name} · what it shows")


def shows_pages(deck: Deck, found: Results) -> list[Frame]:
    """Return the pages: sentences, items before and after, topics, and the table of items."""
    paper = page_paper(deck.recipe.paper)
    width = column(paper)
    blocks = [
        *_words(deck, sentences(found), width),
        *_titled("Topics", TOPICS_TOLD, topic_rows(found.topics, width), width),
        *_titled("Items, before and after", ITEMS_TOLD, item_rows(found.items, width), width),
        *_table(found, width),
    ]
    return pages(blocks, paper, foot=foot_of(deck, "what it shows"))


def _words(deck: Deck, told: Sequence[Sentence], width: float) -> list[Block]:
    head = under_one_another(
        [paragraph("What it shows", width, TITLE), paragraph(deck.name, width, SUBTITLE)], gap=3
    )
    first, *rest = told
    blocks = [Block(head), Block(paragraph(first.text, width, BODY), space=12)]
    for sentence in rest:
        style = STRONG if sentence.to_do else BODY
        words = paragraph(sentence.text, width - INDENT, style)
        bullet = paragraph("•", INDENT, Style(11, strong=True, tone="quiet"))
        blocks.append(Block(side_by_side([(0, bullet), (INDENT, words)], width), space=5))
    return blocks


def _titled(title: str, note: str, rows: list[Block], width: float) -> list[Block]:
    if not rows:
        return []
    head = under_one_another(
        [paragraph(title, width, HEADING), paragraph(note, width, NOTE)], gap=2
    )
    return [Block(head, space=20, with_next=True), *rows]


def _table(found: Results, width: float) -> list[Block]:
    """Return the table of items in the order of their labels."""
    working = any(not one.too_few for one in found.items)
    columns = _columns(width, found, working=working)
    rows = [_row(columns, one, working=working) for one in found.items]
    told = TABLE_TOLD.format(strength=found.strength) + (WORKING_TOLD if working else TOO_FEW_TOLD)
    return _titled("Every item", told, table(columns, rows, space=6), width)


def _columns(width: float, found: Results, *, working: bool) -> list[Column]:
    name = 64.0 if any(not one.name.isdecimal() for one in found.items) else 38.0
    figures = [
        Column("Right", 56),
        Column("Share", 92),
        Column("Expected", 84),
        *([Column("Upper−lower", 88), Column("With rest", 44, 0)] if working else []),
    ]
    rest = width - name - sum(each.width for each in figures)
    return [Column("Card", name), Column("Answer", rest), *figures]


def _row(columns: Sequence[Column], one: ItemResult, *, working: bool) -> list[Frame]:
    share = f"{percent(one.share)} ({span(one.interval).removesuffix(' %')})"
    texts: list[tuple[str, Style]] = [
        (one.name, LABEL),
        (in_short(entry_of(one.item)), STRONG),
        (f"{one.right} of {one.tries}" if one.tries else "–", FIGURE),
        (share if one.tries else "–", FIGURE),
        (f"{percent(one.before.mean)} → {percent(one.after.mean)}", FIGURE),
    ]
    if working:
        rest = None if one.too_few else one.correlation
        texts += [_upper_lower(one), (two_places(rest), FIGURE)]
    return [cell(each, text) for each, text in zip(columns, texts, strict=True)]


def _upper_lower(one: ItemResult) -> tuple[str, Style]:
    """Return how well an item tells high scores from low, with its word where that is sure."""
    if one.too_few or one.discrimination is None or one.correlation is None:
        return "–", FIGURE
    figure = two_places(one.discrimination)
    if is_key_doubtful(one):
        return f"{figure} look at the key", Style(10.5, strong=True)
    return (f"{figure} {band(one.discrimination)}" if one.discrimination >= 0 else figure), FIGURE
