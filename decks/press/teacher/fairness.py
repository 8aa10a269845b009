"""How fair the deal is, so that a student can check it by counting."""

from collections.abc import Callable, Sequence

from msgspec.structs import replace

from decks.dealing import CARDS, PAIRS, THOUSANDTHS, WORDS, Deal, Goal, fairness_sentence
from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.flow import Block, height_of
from decks.layout.frame import Frame
from decks.press.teacher.chances import chances
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import Column, cell, table
from decks.press.type.fonts import measure
from decks.press.type.setting import (
    BODY,
    HEAD,
    STRONG,
    Style,
    gap,
    paragraph,
    swatch,
    under_one_another,
    upright,
    width_of,
)

WEIGHED = {
    THOUSANDTHS: "Points to expect",
    WORDS: "Words to read",
    PAIRS: "Clashes",
}
HEADS = {"cards": "", "level": "By level", "topic": "By topic", "kind": "By kind"}
FIGURES = Style(11)
LABEL = 98.0
DIFFERENCE = 50.0
NARROW = 4.0
WHOLE = 300.0
"""A table that is not higher, in points, is carried over whole rather than torn."""

ROOMY, LONGEST = 66.0, 110.0
"""In columns of so many points names lie; those that stand upright may be so long."""


def fairness(deck: Deck, deal: Deal, width: float) -> list[Block]:
    """Return the page that shows how the cards were dealt."""
    names = [team.name for team in deck.recipe.teams]
    subtitle = "Who got what, and how near to equal that is"
    sentence = fairness_sentence(deal, names)
    blocks = [
        title_block("How fair the deal is", subtitle, width),
        Block(paragraph(sentence, width, BODY), space=14),
    ]
    blocks += chances(deal, names, width)
    tables = [_goal(goal, names, width) for goal in deal.goals if _is_counted(goal)]
    for each in tables[:-1]:
        blocks += each
    # the last table is a short one, and would look lost on a page of its own
    blocks += [block for each in tables[-1:] for block in _held_to_the_next(each)]
    return [*blocks, *_weighed(deal.goals, names, width)]


def _held_to_the_next(rows: Sequence[Block]) -> list[Block]:
    """Return a table that goes on to the page of the next one: whole, or its end if it is long."""
    whole = height_of(rows) <= WHOLE
    return [
        replace(block, with_next=block.with_next or whole or n == len(rows) - 1)
        for n, block in enumerate(rows)
    ]


def _is_counted(goal: Goal) -> bool:
    """Whether a goal counts cards and has news: one topic alone has none."""
    return goal.unit == CARDS and (goal.name == "cards" or len(goal.counts) > 1)


def _goal(goal: Goal, names: list[str], width: float) -> list[Block]:
    columns = _columns(HEADS[goal.name], names, width)
    rows = [_row(columns, _label(goal, value), held, str) for value, held in goal.counts]
    return table(columns, rows, space=16, notes=[_verdict(goal)])


def _label(goal: Goal, value: str) -> str:
    return "cards" if goal.name == "cards" else value or f"no {goal.name}"


def _weighed(goals: Sequence[Goal], names: list[str], width: float) -> list[Block]:
    """Return the table of what is weighed and not counted by cards."""
    told = [goal for goal in goals if goal.unit in WEIGHED and _is_told(goal)]
    columns = _columns("In a whole hand", names, width)
    rows = [
        _row(columns, WEIGHED[goal.unit], counts, _figure(goal))
        for goal in told
        for _value, counts in goal.counts
    ]
    verdicts = [f"{WEIGHED[goal.unit]}. {_verdict(goal)}" for goal in told]
    return table(columns, rows, space=16, notes=verdicts)


def _is_told(goal: Goal) -> bool:
    """Whether a goal is worth a row: clashes are where there are any."""
    return goal.unit != PAIRS or goal.reached > 0


def _columns(head: str, names: list[str], width: float) -> list[Column]:
    each = (width - LABEL - DIFFERENCE) / len(names)
    teams = _teams(names, each - NARROW)
    return [
        Column(_at_the_foot(head, LABEL, teams[0].height), LABEL),
        *(Column(team, each, NARROW) for team in teams),
        Column(_at_the_foot("Difference", DIFFERENCE, teams[0].height), DIFFERENCE, NARROW),
    ]


def _teams(names: list[str], room: float) -> list[Frame]:
    """Return the teams' ribbons and names, all of one height.

    Names stand upright where the columns are narrow and one of them is too long.
    """
    ribbons = [swatch(team, height=12) for team in range(len(names))]
    if room >= ROOMY or all(width_of(name, HEAD) <= room for name in names):
        short = [shorten(name, room / HEAD.size, measure=measure) for name in names]
        words = [paragraph(name, room, HEAD) for name in short]
        return [under_one_another(both, gap=3) for both in zip(ribbons, words, strict=True)]
    words = [upright(name, HEAD, longest=LONGEST) for name in names]
    tallest = max(name.height for name in words)
    return [
        under_one_another([gap(tallest - name.height), name, gap(3), ribbon])
        for name, ribbon in zip(words, ribbons, strict=True)
    ]


def _at_the_foot(words: str, width: float, height: float) -> Frame:
    """Return words at the foot of the head's height."""
    written = paragraph(words, width, HEAD)
    return under_one_another([gap(height - written.height), written])


def _row(
    columns: list[Column], value: str, held: tuple[int, ...], figure: Callable[[int], str]
) -> list[Frame]:
    return [
        cell(columns[0], (value, STRONG)),
        *(
            cell(column, (figure(amount), FIGURES))
            for column, amount in zip(columns[1:-1], held, strict=True)
        ),
        cell(columns[-1], (figure(max(held) - min(held)), FIGURES)),
    ]


def _figure(goal: Goal) -> Callable[[int], str]:
    return _points if goal.unit == THOUSANDTHS else str


def _points(thousandths: int) -> str:
    """Return points with the decimals they have, two at the most."""
    return f"{thousandths / 1000:.2f}".rstrip("0").rstrip(".")


def _verdict(goal: Goal) -> str:
    figure = _figure(goal)
    if goal.unit == PAIRS:
        best = "No deal as even has fewer" if goal.proven else f"Any deal has at least {goal.bound}"
        found = f"Pairs in one hand that could answer each other’s blank: {goal.reached}."
        return f"{found} {best}."
    reached = f"Largest difference: {figure(goal.reached)}."
    if goal.proven:
        return f"{reached} No deal can make it smaller."
    return f"{reached} No deal can go below {figure(goal.bound)}."
