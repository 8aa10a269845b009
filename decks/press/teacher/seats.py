"""Whose turn it is to write: a roster of seats, not of names."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.evenly import even_sizes
from decks.layout.flow import Block
from decks.layout.frame import Frame, Line, Text
from decks.lesson.writers import writers
from decks.press.teacher.how.rounds import at_tables
from decks.press.teacher.keys import title_block
from decks.press.type.setting import (
    BODY,
    STRONG,
    Style,
    line_of,
    paragraph,
    under_one_another,
    width_of,
)
from decks.words import counted, listed

CARD = Style(9, tone="quiet")
SEAT = Style(13, strong=True)
TEAMS = Style(10)
LINE = 20.0
LEFT = 104.0
ACROSS = 12
"""So many questions stand in one line of the roster."""

HOW = (
    "count the seats clockwise from the one nearest the board: that is seat 1. The seat in the "
    "roster writes the team’s answer; after every question the pen goes to another. Wherever the "
    "lesson stops, every seat has written equally often or once more. Anyone may pass the pen to "
    "the next seat, no reason asked. If {team} is larger or smaller today, let the pen go round "
    "clockwise."
)


def seats(deck: Deck, width: float) -> list[Block]:
    """Return the roster: for each size of team, the seat that writes at each question."""
    sizes = even_sizes(deck.recipe.students, len(deck.recipe.teams))
    names = [team.name for team in deck.recipe.teams]
    by_size = {
        size: [name for name, own in zip(names, sizes, strict=True) if own == size]
        for size in sorted(set(sizes) - {0}, reverse=True)
    }
    title = title_block("Whose turn it is to write", _subtitle(by_size, sizes), width)
    blocks = [title, Block(paragraph(_how(deck), width, BODY), space=10)]
    roster = {size: writers(size, len(deck.cards)) for size in by_size}
    first = 0
    for owner, hand in zip(deck.owners, deck.hands, strict=True):
        labels = [card.label for card in hand]
        turns = {size: turn[first : first + len(hand)] for size, turn in roster.items()}
        blocks += _round(owner.name, labels, turns, width)
        first += len(hand)
    return blocks


def _how(deck: Deck) -> str:
    team = "the team" if deck.is_one_team else "a team"
    return f"A{at_tables(deck)[1:]}, {HOW.format(team=team)}"


def _subtitle(by_size: dict[int, list[str]], sizes: Sequence[int]) -> str:
    """Say how large the teams are, and which have one more."""
    count = counted(sum(sizes), "student")
    if len(sizes) == 1:
        return f"{count} in one team"
    if len(by_size) == 1 and 0 not in sizes:
        (size,) = by_size
        return f"{count}: {counted(size, 'student')} in each team"
    each = "; ".join(f"{size} in {listed(names, 'and')}" for size, names in by_size.items())
    none = "; fewer students than teams: take fewer teams" if 0 in sizes else ""
    return f"{count}: {each}{none}"


def _round(
    name: str, labels: Sequence[str], turns: dict[int, tuple[int, ...]], width: float
) -> list[Block]:
    lines = []
    for start in range(0, len(labels), ACROSS):
        part = slice(start, start + ACROSS)
        rows = {size: turn[part] for size, turn in turns.items()}
        lines.append(_lines("" if start else name, labels[part], rows, width))
    last = len(lines) - 1
    return [Block(frame, space=0 if n else 10, with_next=n < last) for n, frame in enumerate(lines)]


def _lines(
    name: str, labels: Sequence[str], rows: dict[int, tuple[int, ...]], width: float
) -> Frame:
    """Return the labels of some cards, and under each who writes in teams of every size."""
    cards = line_of("card", CARD, x=LEFT - 10 - width_of("card", CARD), y=5.5)
    head = [line_of(name, STRONG, y=5.5), cards, *_spread(labels, CARD, width)]
    frames = [Frame(width, LINE, (*head, Line(0, 0, width, 0, 0.6, "frame")))]
    for size, turn in rows.items():
        team = line_of(f"Team of {size}: seat", TEAMS, y=5.5)
        numbers = _spread([str(seat) for seat in turn], SEAT, width)
        rule = Line(0, 0, width, 0, 0.6, "hairline")
        frames.append(Frame(width, LINE, (team, *numbers, rule)))
    return under_one_another(frames)


def _spread(words: Sequence[str], style: Style, width: float) -> list[Text]:
    step = (width - LEFT) / ACROSS
    return [
        line_of(word, style, x=LEFT + (n + 0.5) * step - width_of(word, style) / 2, y=5.5)
        for n, word in enumerate(words)
    ]
