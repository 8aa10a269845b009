"""The study guide: a word bank or hints, clues, and lines to write on; and its second version."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from cards.style import TextStyle
from decks.bank import Guide, GuidePart, directions
from decks.deck import Deck
from decks.layout.flow import Block, height_of, kept_at_the_ends
from decks.layout.frame import Frame
from decks.layout.units import mm
from decks.press.cards.arranging import as_printed
from decks.press.handouts.guide_head import guide_header
from decks.press.handouts.guide_lines import TALLEST_ROW
from decks.press.handouts.guide_rows import RowLook, guide_rows
from decks.press.handouts.guide_type import GuideType, for_fractions, guide_type
from decks.press.handouts.word_bank import Entries, entries_of, framed_bank, listed_bank
from decks.press.type.pages import column, foot_of, page_paper, pages
from decks.press.type.setting import gap, paragraph, under_one_another
from decks.recipe import Activity, Fractions, Support

TALL = mm(90)
"""A bank taller than this is not set again on the pages that its part goes on to."""

TALLEST = mm(150)
"""A bank taller than this has no frame, so that it can go on over pages."""

HARDER = {Support.BANK: Support.BANK, Support.HINTS: Support.NONE}
"""What the second version of a guide offers: a harder bank, or no hints any more."""


class _Look(Struct, frozen=True):
    """What all parts of a guide have in common."""

    sizes: GuideType
    width: float
    rows: RowLook
    entries: Entries
    support: Support
    gathered: bool


def guide_pages(deck: Deck) -> list[Frame]:
    """Return every guide's pages, guide after guide, each numbered by itself."""
    look = _look(deck, deck.recipe.support)
    return [page for guide in deck.guides for page in _pages(deck, guide, guide.parts, look)]


def second_pages(deck: Deck) -> list[Frame]:
    """Return the pages of the second versions, for those who are done early; none if not asked for.

    They have the same blanks in the same order, so that one key serves both.
    """
    look = _look(deck, HARDER.get(deck.recipe.support, Support.NONE))
    return [
        page
        for guide in deck.guides
        if guide.second
        for page in _pages(deck, guide, guide.second, look, second=True)
    ]


def _look(deck: Deck, support: Support) -> _Look:
    recipe = deck.recipe
    sizes = guide_type(large_print=recipe.large_print)
    width = column(page_paper(recipe.paper))
    rows = RowLook(sizes, width, recipe, support is Support.HINTS)
    entries = entries_of(deck.pool, recipe.fractions)
    return _Look(sizes, width, rows, entries, support, recipe.activity is Activity.COLLECT)


def _pages(
    deck: Deck, guide: Guide, parts: tuple[GuidePart, ...], look: _Look, *, second: bool = False
) -> list[Frame]:
    blocks = [block for n in range(len(parts)) for block in _part(parts, n, look)]
    about = [*([guide.team] if guide.team else []), *(["second version"] * second)]
    header = guide_header(deck, guide, look.width, look.sizes, second=second)
    paper = page_paper(deck.recipe.paper)
    return pages(blocks, paper, foot=foot_of(deck, *about), header=header, style=look.sizes.foot)


def _part(parts: tuple[GuidePart, ...], n: int, look: _Look) -> list[Block]:
    """Return a part's blocks.

    They stay on one page with their bank, as long as they are not taller than it. Without a bank,
    and with one that is not set again, the part goes on over pages as it comes.
    """
    part, sizes = parts[n], look.sizes
    told = directions(part, look.support, gathered=look.gathered)
    start = [Block(paragraph(told, look.width, sizes.words), space=4)]
    again = []
    if len(parts) > 1:
        head = paragraph(f"Part {n + 1}", look.width, sizes.heading)
        start.insert(0, Block(head, space=6))
        again = [paragraph(f"Part {n + 1}, continued", look.width, sizes.heading), gap(8)]
    look = _for_fractions(part, look)
    bank, bank_again = _bank(part, look)
    again += [bank_again] if bank_again else []
    rows = [
        Block(
            row,
            space=0 if bank or number else 14,
            head=under_one_another(again) if again else None,
        )
        for number, row in enumerate(guide_rows(part, look.rows))
    ]
    blocks = [*start, *bank, *rows]
    first = len(blocks) if bank_again else len(start) + _together([*bank, *rows][:2])
    return kept_at_the_ends(blocks, first=first, last=_together(rows[-2:]))


def _together(two: Sequence[Block]) -> int:
    """Return how many of two blocks are kept together: one where no page may have room for both.

    Asked for in vain, that would part the first of them from the head above it.
    """
    return 2 if height_of(two) <= TALLEST_ROW else 1


def _for_fractions(part: GuidePart, look: _Look) -> _Look:
    """Return the look of a part's clues and bank: larger where there are built fractions."""
    recipe = look.rows.recipe
    if recipe.fractions is not Fractions.BUILT:
        return look
    texts = [as_printed(blank, recipe, back=False) for blank in part.blanks]
    if look.support is Support.BANK:
        texts += [look.entries[word] for word in part.bank]
    if not any(span.style is TextStyle.NUMERATOR for text in texts for span in text.spans):
        return look
    sizes = for_fractions(look.sizes)
    return replace(look, sizes=sizes, rows=replace(look.rows, sizes=sizes))


def _bank(part: GuidePart, look: _Look) -> tuple[list[Block], Frame | None]:
    """Return the bank's blocks, and what of it is set again where the part goes on."""
    if look.support is not Support.BANK or not part.bank:
        return [], None
    bank = framed_bank(part, look.entries, look.width, look.sizes)
    if bank.height > TALLEST:
        return listed_bank(part, look.entries, look.width, look.sizes), None
    again = bank if bank.height <= TALL else None
    return [Block(bank, space=12, with_next=True)], again
