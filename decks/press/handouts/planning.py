"""The planning sheets of groups: a text's main idea, its headings and their supporting details."""

from collections.abc import Sequence
from typing import Final

from decks.deck import Deck
from decks.layout.flow import Block, height_of
from decks.layout.frame import Box, Frame, Placed
from decks.layout.paper import Paper
from decks.layout.runs import Styled
from decks.lesson import Story, Telling
from decks.press.cards.arranging import styled_of
from decks.press.handouts.forms import (
    Plan,
    by_alphabet,
    columns,
    figure,
    form_for,
    headings_of,
    tree,
)
from decks.press.handouts.forms.writing import main_idea, symbols
from decks.press.handouts.group_head import group_header
from decks.press.handouts.guide_type import GuideType, guide_type
from decks.press.type.fonts import measure
from decks.press.type.pages import BOTTOM, TOP, column, foot_of, page_paper, pages
from decks.press.type.setting import gap, paragraph, side_by_side, under_one_another
from decks.recipe import Form, Fractions, Recipe, Support

PAD = 12.0
DRAWN: Final = {Form.COLUMNS: columns, Form.TREE: tree, Form.BODY: figure}
SYMBOLS = range(2, 5)
BEFORE_SYMBOLS = 14.0
SPARE = 2.0
ACROSS = 4


def planning_pages(deck: Deck) -> list[Frame]:
    """Return the planning sheets: one a text where all groups have the same, else each group's."""
    lesson = deck.lesson
    if not isinstance(lesson, Telling):
        return []
    return [page for team, story in sheets_of(lesson) for page in _sheet(deck, story, team)]


def sheets_of(telling: Telling) -> list[tuple[int | None, Story]]:
    """Return each sheet's group, None for any group, and its text."""
    if telling.is_alike:
        return [(None, story) for story in telling.stories[0]]
    return [(team, story) for team, stories in enumerate(telling.stories) for story in stories]


def _sheet(deck: Deck, story: Story, team: int | None) -> list[Frame]:
    paper, recipe = page_paper(deck.recipe.paper), deck.recipe
    width, sizes = column(paper), guide_type(large_print=recipe.large_print)
    header = group_header(deck, story.topic, "Planning sheet", width, sizes=sizes, team=team)
    chosen = form_for(story, recipe.form)
    start = _start(story, chosen, recipe, width)
    room = page_room(paper, header)
    used = height_of(start)
    least = symbols(SYMBOLS[0], sizes, width).height + BEFORE_SYMBOLS
    plan = Plan(
        headings_of(story, recipe.support),
        sizes,
        width,
        first=room - used - least,
        page=room - least,
    )
    drawn = DRAWN[chosen](plan)
    foot = foot_of(deck, *([] if team is None else [deck.owners[team].name]))
    rows = _symbol_rows(room - height_of([*start, *drawn]) - BEFORE_SYMBOLS, sizes, width)
    blocks = [*start, *drawn, Block(symbols(rows, sizes, width), space=BEFORE_SYMBOLS)]
    return pages(blocks, paper, foot=foot, header=header)


def _symbol_rows(room: float, sizes: GuideType, width: float) -> int:
    """Return how many rows of symbols there are: as many as fill the first page, within reason."""
    fitting = [n for n in SYMBOLS if symbols(n, sizes, width).height <= room]
    return max(fitting, default=SYMBOLS[0])


def page_room(paper: Paper, header: Frame) -> float:
    """Return the height that a page has below a header."""
    return paper.height - TOP - BOTTOM - header.height - SPARE


def _start(story: Story, form: Form, recipe: Recipe, width: float) -> list[Block]:
    sizes, support = guide_type(large_print=recipe.large_print), recipe.support
    told = paragraph(_directions(form, support), width, sizes.words)
    blocks = [Block(told, with_next=True)]
    if support is Support.BANK:
        entries = _entries(story, recipe.fractions)
        blocks.append(Block(_bank(entries, width, sizes), space=10, with_next=True))
    if form is not Form.BODY:
        blocks.append(Block(main_idea(sizes, width), space=10, with_next=form is Form.TREE))
    return blocks


def _directions(form: Form, support: Support) -> str:
    first = "First sort the cards under their headings."
    where = {
        Form.BODY: "The main idea goes into the head, headings and details into the other parts",
        Form.TREE: "The main idea goes on top, headings on the branches, details on the twigs",
        Form.COLUMNS: "Then write the main idea, the headings, and the details under them",
    }[form]
    hinted = " Each heading has a hint." if support is Support.HINTS else ""
    return f"{first} {where}, in few words or with symbols.{hinted}"


def _entries(story: Story, fractions: Fractions) -> list[Styled]:
    """Return the headings in the order of the alphabet."""
    return [
        styled_of(items[0], back=True, fractions=fractions)
        for _heading, items in by_alphabet(story)
    ]


def _bank(entries: Sequence[Styled], width: float, sizes: GuideType) -> Frame:
    """Return the headings in a thin frame, down its columns."""
    inner = width - 2 * PAD
    longest = max(measure(entry.text, sizes.strong.strong) * sizes.strong.size for entry in entries)
    across = min(len(entries), ACROSS, max(1, int(inner // (longest + PAD))))
    deep = -(-len(entries) // across)
    each = inner / across
    frames = [paragraph(entry, each - PAD, sizes.strong) for entry in entries]
    cells = [
        (n * each, under_one_another(frames[n * deep : (n + 1) * deep], gap=5))
        for n in range(across)
        if frames[n * deep : (n + 1) * deep]
    ]
    label = paragraph("Choose from these headings", inner, sizes.label)
    inside = under_one_another([label, gap(3), side_by_side(cells, inner)])
    height = inside.height + 2 * PAD - 6
    box = Box(0, 0, width, height, radius=7, stroke="frame")
    return Frame(width, height, (box, Placed(PAD, PAD - 3, inside)))
