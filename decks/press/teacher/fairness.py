"""How fair the deal is, so that a student can check it by counting."""

from decks.dealing import Goal, fairness_sentence
from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.press.fonts import measure
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import Column, cell, table
from decks.press.type import BODY, HEAD, NOTE, STRONG, Style, paragraph, swatch, under_one_another
from decks.recipe import Dealing

HEADS = {"cards": "", "level": "By level", "topic": "By topic", "kind": "By kind"}
FIGURES = Style(11)
LABEL = 98.0
DIFFERENCE = 50.0
NARROW = 4.0


def fairness(deck: Deck, width: float) -> list[Block]:
    """Return the page that shows how the cards were dealt."""
    names = [team.name for team in deck.recipe.teams]
    subtitle = "Who got what, and how near to equal that is"
    sentence = fairness_sentence(deck.deal, names)
    blocks = [
        title_block("How fair the deal is", subtitle, width),
        Block(paragraph(sentence, width, BODY), space=14),
    ]
    if deck.recipe.deal is Dealing.SHARES:
        for goal in deck.deal.goals:
            blocks += _goal(goal, names, width)
    return blocks


def _goal(goal: Goal, names: list[str], width: float) -> list[Block]:
    each = (width - LABEL - DIFFERENCE) / len(names)
    columns = [
        Column(HEADS[goal.name], LABEL),
        *(Column(_team(n, name, each - NARROW), each, NARROW) for n, name in enumerate(names)),
        Column("Difference", DIFFERENCE, NARROW),
    ]
    rows = [_row(columns, value, counts) for value, counts in goal.counts]
    return [*table(columns, rows, space=16), Block(paragraph(_verdict(goal), width, NOTE), space=5)]


def _team(number: int, name: str, room: float) -> Frame:
    """Return a team's ribbon over its name, shortened where there are many teams."""
    short = shorten(name, room / HEAD.size, measure=measure)
    return under_one_another([swatch(number, height=12), paragraph(short, room, HEAD)], gap=3)


def _row(columns: list[Column], value: str, counts: tuple[int, ...]) -> list[Frame]:
    return [
        cell(columns[0], (value, STRONG)),
        *(
            cell(column, (str(count), FIGURES))
            for column, count in zip(columns[1:-1], counts, strict=True)
        ),
        cell(columns[-1], (str(max(counts) - min(counts)), FIGURES)),
    ]


def _verdict(goal: Goal) -> str:
    reached = f"Largest difference: {goal.reached}."
    if goal.proven:
        return f"{reached} No deal can make it smaller."
    return f"{reached} No deal can go below {goal.bound}."
