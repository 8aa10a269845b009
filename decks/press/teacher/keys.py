"""The answer keys: the study guides in their own order, and the cards by label."""

from decks.bank import Guide, GuidePart
from decks.bank.telling import about_guessing, about_last_blank, about_solutions
from decks.deck import Card, Deck
from decks.layout.flow import Block
from decks.press.faces import styled_of
from decks.press.teacher.table import Column, cell, table
from decks.press.type import (
    BODY,
    HEADING,
    NOTE,
    STRONG,
    SUBTITLE,
    TITLE,
    Style,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
)
from decks.recipe import Dealing, Fractions

FIGURE = Style(11, strong=True, tone="quiet")


def guide_key(deck: Deck, width: float) -> list[Block]:
    """Return the key to every study guide, part by part in the order of its blanks."""
    if not deck.guides:
        return []
    title = title_block("Answer key: study guide", "In the order of the guide", width)
    return [title, *(block for guide in deck.guides for block in _guide(deck, guide, width))]


def card_key(deck: Deck, width: float) -> list[Block]:
    """Return the key to the cards in the order of their labels, team by team."""
    alike = deck.recipe.deal is Dealing.COPIES
    subtitle = "In the order of the labels" + (", the same for every team" if alike else "")
    blocks = [title_block("Answer key: cards", subtitle, width)]
    for team, hand in enumerate(deck.hands[:1] if alike else deck.hands):
        if not alike:
            blocks.append(_team_head(deck.owners[team].name, team, width))
        blocks += _cards(hand, deck.recipe.fractions, width)
    return blocks


def title_block(title: str, subtitle: str, width: float) -> Block:
    """Return the head of a chapter of the teacher's pages; it begins a page."""
    words = under_one_another(
        [paragraph(title, width, TITLE), paragraph(subtitle, width, SUBTITLE)], gap=3
    )
    return Block(words, with_next=True, new_page=True)


def _team_head(name: str, team: int, width: float) -> Block:
    words = paragraph(name, width - 18, HEADING)
    ribbon = swatch(team, height=words.height)
    return Block(side_by_side([(0, ribbon), (18, words)], width), space=20, with_next=True)


def _guide(deck: Deck, guide: Guide, width: float) -> list[Block]:
    columns = [
        Column("Blank", 42),
        Column("Clue", 0.57 * width - 42),
        Column("Answer", 0.43 * width - 36),
        Column("Card", 36),
    ]
    labels = {card.item: card.label for card in deck.cards}
    names = [team.name for team in deck.recipe.teams]
    fractions = deck.recipe.fractions
    blocks = []
    if guide.team is not None:
        blocks.append(_team_head(guide.team, names.index(guide.team), width))
    for n, part in enumerate(guide.parts, start=1):
        if len(guide.parts) > 1:
            head = paragraph(f"Part {n}", width, STRONG)
            blocks.append(Block(head, space=14, with_next=True))
        rows = [
            [
                cell(columns[0], (str(blank), FIGURE)),
                cell(columns[1], (styled_of(item, back=False, fractions=fractions), BODY)),
                cell(
                    columns[2],
                    (styled_of(item, back=True, fractions=fractions), STRONG),
                    (_also(item.also_right), NOTE),
                ),
                cell(columns[3], (labels[item], NOTE)),
            ]
            for blank, item in enumerate(part.blanks, start=1)
        ]
        blocks += table(columns, rows)
        blocks.append(_about(part, deck.recipe.extra_words, width))
    return blocks


def _about(part: GuidePart, asked: int, width: float) -> Block:
    """Return the note under a part: its extra words, its solutions, and what guessing earns."""
    extra = ", ".join(part.extra_words)
    sentences = [
        f"Extra words, right for no blank: {extra}." if extra else "",
        about_solutions(part),
        about_guessing(part),
        about_last_blank(part, asked=asked),
    ]
    return Block(paragraph(" ".join(filter(None, sentences)), width, NOTE), space=5)


def _cards(hand: tuple[Card, ...], fractions: Fractions, width: float) -> list[Block]:
    columns = [
        Column("Card", 42),
        Column("Front", 0.5 * width - 42),
        Column("Back", 0.31 * width),
        Column("Topic and level", 0.19 * width),
    ]
    rows = [
        [
            cell(columns[0], (card.label, FIGURE)),
            cell(columns[1], (styled_of(card.item, back=False, fractions=fractions), BODY)),
            cell(
                columns[2],
                (styled_of(card.item, back=True, fractions=fractions), STRONG),
                (_also(card.item.also_right), NOTE),
            ),
            cell(
                columns[3],
                (card.item.topic or "no topic", NOTE),
                (card.item.level.name.lower(), NOTE),
            ),
        ]
        for card in hand
    ]
    return table(columns, rows)


def _also(answers: tuple[str, ...]) -> str:
    return f"also: {', '.join(answers)}" if answers else ""
