"""In which order groups go round the bases, for the teacher."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.layout.flow import Block
from decks.lesson import Bases
from decks.lesson.crowd import crowd
from decks.lesson.rotation import Order, companies_of, followings, orders_for
from decks.press.teacher.base_words import without_card
from decks.press.teacher.how.sets import all_sets, keep_others
from decks.press.teacher.how.stations import how_checked
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import BETWEEN, Column, cell, table
from decks.press.type.setting import HEADING, NOTE, STRONG, TEXT_ASCENT, Style, paragraph, width_of
from decks.recipe import Sides
from decks.words import counted, listed

MOST_MOVES = 12
"""More stops than a lesson has; the grid would be too narrow to be read."""
NAME, WIDEST = 110.0, 0.34
"""The least width for names in points, and the most as a share of all."""

LEAST_SECONDS = 30
"""A stop that is shorter than this is not worth the walk; our own judgement."""

STOP = Style(14, strong=True)


def rotation(deck: Deck, bases: Bases, width: float) -> list[Block]:
    """Return the page for groups that go round the bases together; none for a single base."""
    count, groups = len(bases.sets[0]), len(deck.recipe.teams)
    if count == 1:
        return []
    go = "goes" if groups == 1 else "go"
    subtitle = f"{counted(groups, 'group')} {go} round {count} bases together, nobody catches"
    blocks = [
        title_block("Rotation", subtitle, width),
        Block(paragraph(_how(deck, bases), width), space=12),
    ]
    companies = companies_of(groups, count)
    lessons = (False, True) if count % 2 else (False,)
    for second in lessons:
        if len(lessons) > 1:
            title = "The second time" if second else "The first time"
            blocks.append(Block(paragraph(title, width, HEADING), space=18, with_next=True))
        orders = orders_for(len(companies), count, second=second)
        blocks += _grid([_names(deck, company) for company in companies], orders, width)
    notes = [_fairness(len(companies), count), _sharing(companies), _long(count)]
    return [*blocks, *(Block(paragraph(note, width, NOTE), space=6) for note in notes if note)]


def _names(deck: Deck, company: Sequence[int]) -> str:
    return listed([deck.recipe.teams[team].name for team in company], "and")


def _how(deck: Deck, bases: Bases) -> str:
    stops = min(len(bases.sets[0]), MOST_MOVES)
    seconds = 60 * deck.recipe.minutes / stops
    return (
        f"{_all_out(deck, len(bases.sets[0]))}{_walk(deck)} "
        f"{counted(stops, 'stop')} in {counted(deck.recipe.minutes, 'minute')} are "
        f"{_time(seconds)} each, with the walk. {_other_sets(bases, seconds)}"
    )


def _walk(deck: Deck) -> str:
    start, they, on = "Each group starts at the base in its", "they", "all walk on together"
    if deck.is_one_team:
        start, they, on = "The group starts at the base in the", "all", "they walk on"
    return (
        f"{start} first column. At the base {they} read, agree and answer, then "
        f"{how_checked(deck)}; at the signal {on}, one column to the right."
    )


def _other_sets(bases: Bases, seconds: float) -> str:
    sets = len(bases.sets)
    if sets == 1:
        return ""
    each = seconds / sets
    if each < LEAST_SECONDS:
        return f"That is one set; {keep_others(sets - 1)}."
    return (
        f"That is one set. For {all_sets(sets)} go round {_times(sets)}, {_time(each)} a stop, or "
        f"{keep_others(sets - 1)}. {_resting(bases)}"
    )


def _resting(bases: Bases) -> str:
    """Say what a group does at a base for which a later set has no card."""
    gone = without_card(bases, len(bases.sets[0]))
    return f"{gone}: whoever comes there waits for the signal." if gone else ""


def _all_out(deck: Deck, count: int) -> str:
    """Say that cards which wait in the game lie out here."""
    if crowd(deck.recipe.students, count).first == count:
        return ""
    lists = ", each with a list of answers" if deck.recipe.sides is Sides.FRONTS else ""
    return f"For this all {count} cards of the set lie out{lists}. "


def _time(seconds: float) -> str:
    """Return a time in words, rounded as one would say it."""
    if seconds < 90:  # noqa: PLR2004 (up to a minute and a half is said in seconds)
        return f"about {max(5, 5 * round(seconds / 5))} seconds"
    halves = round(seconds / 30)
    return f"about {halves // 2}{'½' if halves % 2 else ''} minutes"


def _grid(names: Sequence[str], orders: Sequence[Order], width: float) -> list[Block]:
    """Return the grid; the groups have no ribbons in it, as those of this deck are the sets'."""
    moves = min(len(orders[0]), MOST_MOVES)
    longest = max(width_of(name, STRONG) for name in names) + BETWEEN
    wide = min(max(NAME, longest), WIDEST * width)
    each = (width - wide) / moves
    columns = [
        Column("Group", wide),
        *(Column("start" if n == 0 else str(n + 1), each, 2) for n in range(moves)),
    ]
    rows = [
        [
            paragraph(name, columns[0].room, STRONG, first=TEXT_ASCENT * STOP.size),
            *(
                cell(column, (str(base + 1), STOP))
                for column, base in zip(columns[1:], order, strict=False)
            ),
        ]
        for name, order in zip(names, orders, strict=True)
    ]
    return table(columns, rows)


def _fairness(companies: int, count: int) -> str:
    """Say what the orders keep even, as far as it is so with this many groups."""
    if companies == 1:
        return ""
    design = "The orders are those of a Williams design (1949)"
    both = " over both times" if count % 2 else ""
    if companies == count:
        return f"{design}: every base follows every other equally often{both}."
    told = followings(orders_for(companies, count))
    if both:
        told += followings(orders_for(companies, count, second=True))
    return (
        f"{design}: with {counted(count, 'group')} every base would follow every other equally "
        f"often. With {companies} no base follows another more than "
        f"{_times(max(told.values()))}{both}."
    )


def _times(number: int) -> str:
    return {1: "once", 2: "twice"}.get(number, f"{number} times")


def _sharing(companies: Sequence[Sequence[int]]) -> str:
    if max(map(len, companies)) == 1:
        return ""
    return (
        "There are fewer bases than groups, so groups in one row go together: they answer in turn, "
        "or one asks and the other answers."
    )


def _long(count: int) -> str:
    if count <= MOST_MOVES:
        return ""
    return (
        f"The first {MOST_MOVES} of {count} stops are shown. For fewer bases make more sets: write "
        "a number beside Rounds on the Deck sheet."
    )
