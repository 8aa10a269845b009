"""The comparison sheets of groups: who has which detail of one text, what two texts have in common.

No sheet says which detail belongs under which heading: that is for the groups to find.
"""

from collections.abc import Sequence

from msgspec import Struct

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame, Placed, Ribbon, Thing
from decks.lesson import Story, Telling
from decks.press.handouts.forms import by_alphabet, headings_of
from decks.press.handouts.forms.overlap import overlapping
from decks.press.handouts.forms.writing import detail, lines
from decks.press.handouts.group_head import group_header
from decks.press.handouts.guide_type import GuideType, guide_type
from decks.press.handouts.planning import page_room
from decks.press.type.pages import column, foot_of, page_paper, pages
from decks.press.type.setting import (
    Style,
    line_of,
    paragraph,
    side_by_side,
    under_one_another,
    upright,
    width_of,
)
from decks.recipe import Support

WHAT = "Comparison sheet"
TICK = 13.0
LONGEST = 130.0
WIDEST, NARROWEST = 64.0, 24.0
MORE = 1
"""A line for a detail that a group found besides those on the cards."""

MOST_TOGETHER = 12

THEN = "Then ask the other groups: a tick for each group that has this detail under this heading."

WHAT_GOES_WHERE = (
    "What only one of them says goes to its side, what both say into the middle: ideas, headings, "
    "details."
)

PAD = 12.0
RIBBON, RIBBON_HEIGHT = 9.0, 16.0


def comparing_pages(deck: Deck) -> list[Frame]:
    """Return the comparison sheets: one for each text that several groups have, one for two texts.

    None where there is nothing to compare: one text with one group.
    """
    lesson = deck.lesson
    if not isinstance(lesson, Telling):
        return []
    made = []
    for story, teams in shared_stories(lesson):
        made += _same_text(deck, story, teams)
    if meet_other_texts(lesson):
        made += _two_texts(deck, lesson)
    return made


def shared_stories(telling: Telling) -> list[tuple[Story, list[int]]]:
    """Return each text that several groups have, with the numbers of these groups."""
    return [(story, teams) for story, teams in telling.teams_by_story.items() if len(teams) > 1]


def meet_other_texts(telling: Telling) -> bool:
    """Say whether a group meets a text that it has not, or has several texts all by itself."""
    if len(telling.stories) == 1:
        return len(telling.stories[0]) > 1
    return not telling.is_alike


class _Grid(Struct, frozen=True):
    """The columns of boxes to tick: their heads, how many and how wide they are, and the type."""

    heads: Frame
    teams: int
    each: float
    sizes: GuideType

    @property
    def room(self) -> float:
        """The width for what is written."""
        return self.heads.width - self.teams * self.each - PAD


def _same_text(deck: Deck, story: Story, teams: Sequence[int]) -> list[Frame]:
    """Return the sheet on which groups tick which details of one text they have."""
    paper, recipe = page_paper(deck.recipe.paper), deck.recipe
    width, sizes = column(paper), guide_type(large_print=recipe.large_print)
    header = group_header(deck, story.topic, WHAT, width, sizes=sizes, team=None)
    each = min(WIDEST, max(NARROWEST, 0.52 * width / len(teams)))
    grid = _Grid(_team_heads(deck, teams, each, width, sizes), len(teams), each, sizes)
    told = paragraph(f"{_first(recipe.support)} {THEN}", width, sizes.words)
    blocks = [Block(told, with_next=True)]
    # in this order the places are the headings' own
    for place, (name, _items) in zip(
        headings_of(story, Support.HINTS), by_alphabet(story), strict=True
    ):
        named = name if recipe.support is Support.BANK else ""
        blocks += _heading(place.number, named, place.details + MORE, grid)
    return pages(blocks, paper, foot=foot_of(deck), header=header)


def _first(support: Support) -> str:
    """Return what is written first: details alone where the headings are printed."""
    if support is Support.BANK:
        return "Under each heading write its supporting details, or the numbers of their cards."
    return "Write a heading and its supporting details, or the numbers of their cards."


def _team_heads(
    deck: Deck, teams: Sequence[int], each: float, width: float, sizes: GuideType
) -> Frame:
    """Return the groups' ribbons and names over their columns; upright where these are narrow."""
    names = [deck.owners[team].name for team in teams]
    style = sizes.strong
    lying = all(width_of(name, style) <= each - 4 for name in names)
    longest = min(LONGEST, max(width_of(name, style) for name in names))
    height = RIBBON_HEIGHT + 8 + (style.size if lying else longest)
    start = width - len(teams) * each
    things: list[Thing] = []
    for n, (team, name) in enumerate(zip(teams, names, strict=True)):
        middle = start + (n + 0.5) * each
        things.append(Ribbon(middle - RIBBON / 2, 0, RIBBON, RIBBON_HEIGHT, team))
        words = _lying(name, style) if lying else upright(name, style, longest=LONGEST)
        things.append(Placed(middle - words.width / 2, RIBBON_HEIGHT + 4, words))
    return Frame(width, height, tuple(things))


def _lying(name: str, style: Style) -> Frame:
    return Frame(width_of(name, style), style.size, (line_of(name, style, y=0.22 * style.size),))


def _heading(number: int, named: str, count: int, grid: _Grid) -> list[Block]:
    """Return a heading's lines to write details on, each with a box to tick for every group."""
    sizes, width = grid.sizes, grid.heads.width
    start = 2 * sizes.number.size
    room = grid.room - start
    words = paragraph(named, room, sizes.strong) if named else _blank(room, sizes)
    figure = paragraph(str(number), start, sizes.number)
    title = side_by_side([(0, figure), (start, words)], width)
    height = max(grid.heads.height, title.height)
    headed = Frame(width, height, (Placed(0, 0, title), Placed(0, 0, grid.heads)))
    row = _ticks(detail(1, grid.room, sizes.next_line), grid)
    together = count <= MOST_TOGETHER
    first = Block(title, space=16, head=grid.heads, with_next=True)
    if number == 1:
        first = Block(headed, space=16, with_next=True)
    return [
        first,
        *(
            Block(row, head=headed, with_next=n == 0 or (together and n < count - 1))
            for n in range(count)
        ),
    ]


def _blank(width: float, sizes: GuideType) -> Frame:
    return lines(1, width, 1.2 * sizes.strong.size)


def _ticks(words: Frame, grid: _Grid) -> Frame:
    width = grid.heads.width
    start = width - grid.teams * grid.each - TICK / 2
    boxes = tuple(
        Box(start + (n + 0.5) * grid.each, 2, TICK, TICK, radius=2, stroke="rule")
        for n in range(grid.teams)
    )
    return Frame(width, words.height, (Placed(0, 0, words), *boxes))


def _two_texts(deck: Deck, telling: Telling) -> list[Frame]:
    """Return the sheet for what two texts have each for itself, and what both have."""
    paper, recipe = page_paper(deck.recipe.paper), deck.recipe
    width, sizes = column(paper), guide_type(large_print=recipe.large_print)
    header = group_header(deck, "", WHAT, width, sizes=sizes, team=None)
    told = paragraph(f"{_titles(telling)} {WHAT_GOES_WHERE}", width, sizes.words)
    last = _how_alike(width, sizes)
    left = page_room(paper, header) - told.height - last.height - 2 * PAD
    blocks = [
        Block(told, with_next=True),
        Block(overlapping(width, left, sizes), space=PAD, with_next=True),
        Block(last, space=PAD),
    ]
    return pages(blocks, paper, foot=foot_of(deck), header=header)


def _titles(telling: Telling) -> str:
    texts = {story for stories in telling.stories for story in stories}
    if len(texts) > 2:  # noqa: PLR2004 - the sheet is for two
        return "Choose two texts and write their titles."
    return "Write the titles of the two texts."


def _how_alike(width: float, sizes: GuideType) -> Frame:
    asked = "Most alike in our two texts is …"
    return under_one_another(
        [paragraph(asked, width, sizes.label), lines(2, width, sizes.next_line)]
    )
