"""What is looked at in a group's organiser, and a grid to write it down: groups, no students."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame, Placed
from decks.lesson import Telling
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import Column, cell, table
from decks.press.type.fonts import measure
from decks.press.type.setting import (
    HEAD,
    NOTE,
    STRONG,
    Style,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
)

BEST = 3
UNNAMED = "a text without a name"
LOOKED_AT = (
    (
        "Main idea",
        "None, or one detail taken for the whole.",
        "One sentence in own words, under which all headings fit.",
    ),
    (
        "Details",
        "None, or none from the text.",
        "Every heading has what supports it, and nothing else.",
    ),
    (
        "Organisation",
        "Details stand anywhere.",
        "Each detail stands under its heading; headings are told from details at a glance.",
    ),
    (
        "Symbols explained",
        "No symbols, or nobody can say what they mean.",
        "Every symbol stands for one thing, and the group says which.",
    ),
)
"""What is looked at, and what nought and three look like; our own judgement."""

NAME = 150.0
SWATCH = 18.0
BOX_HEIGHT = 22.0
BETWEEN = 9.0


def checking_grid(deck: Deck, telling: Telling, width: float) -> list[Block]:
    """Return the page on which a group's organiser is given 0 to 3 for each of four things."""
    most = BEST * len(LOOKED_AT)
    subtitle = f"0 to {BEST} for each, {most} at the most; a group is looked at, not a student"
    return [
        title_block("Checking grid", subtitle, width),
        *_looks(width),
        Block(paragraph("1 and 2 lie between.", width, NOTE), space=5),
        *_grid(deck, telling, width),
    ]


def _looks(width: float) -> list[Block]:
    columns = [
        Column("Looked at", 0.24 * width),
        Column("0 looks like", 0.34 * width),
        Column(f"{BEST} looks like", 0.42 * width),
    ]
    style = Style(10)
    rows = [
        [
            cell(columns[0], (name, STRONG)),
            cell(columns[1], (none, style)),
            cell(columns[2], (all_, style)),
        ]
        for name, none, all_ in LOOKED_AT
    ]
    return table(columns, rows, space=14)


def _grid(deck: Deck, telling: Telling, width: float) -> list[Block]:
    """Return a row of boxes for every group, or for each of its texts."""
    heads = [name for name, _none, _best in LOOKED_AT]
    each = (width - NAME) / (len(heads) + 1)
    columns = [Column(head, each, BETWEEN) for head in (*heads, f"of {BEST * len(heads)}")]
    head = side_by_side(
        [(0, paragraph("Group", NAME, HEAD)), *_across([_label(c) for c in columns], each)], width
    )
    rows = [
        Block(_row(deck, team, topic, each, len(columns), width), space=9, head=head)
        for team, stories in enumerate(telling.stories)
        for topic in ([story.topic or UNNAMED for story in stories] if len(stories) > 1 else [""])
    ]
    return [Block(head, space=22, with_next=True), *rows]


def _label(column: Column) -> Frame:
    return paragraph(str(column.head), column.room, HEAD)


def _across(frames: Sequence[Frame], each: float) -> list[tuple[float, Frame]]:
    return [(NAME + n * each, frame) for n, frame in enumerate(frames)]


def _row(  # noqa: PLR0913, PLR0917 (a group, its text and the boxes)
    deck: Deck, team: int, topic: str, each: float, boxes: int, width: float
) -> Frame:
    words = [paragraph(_short(deck.owners[team].name, STRONG), NAME - SWATCH, STRONG)]
    if topic:
        words.append(paragraph(_short(topic, NOTE), NAME - SWATCH, NOTE))
    told = under_one_another(words)
    height = max(BOX_HEIGHT, told.height)
    box = Frame(
        each - BETWEEN,
        height,
        (Box(0, 0, each - BETWEEN, height, radius=4, stroke="frame"),),
    )
    named = Frame(NAME, height, (Placed(SWATCH, (height - told.height) / 2, told),))
    ribbon = swatch(team, height=height)
    return side_by_side([(0, named), (0, ribbon), *_across([box] * boxes, each)], width)


def _short(text: str, style: Style) -> str:
    return shorten(text, (NAME - SWATCH - 8) / style.size, measure=measure, strong=style.strong)
