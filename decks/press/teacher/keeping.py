"""How to keep a deck so that it is whole the next time."""

from decks.card import Card
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame
from decks.press.teacher.keys import title_block
from decks.press.teacher.noting import how_to_note
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import (
    BODY,
    STRONG,
    Style,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
)
from decks.recipe import Activity, Sides

FIGURES = Style(11)
NOT_TYPED = frozenset('"$`\\!')
"""What a shell takes for something else than itself even between quotation marks."""

TICKS = 5
TICK = 12.0
"""A pile is counted after each of so many lessons, in a square of so many points."""


def keeping(deck: Deck, width: float) -> list[Block]:
    """Return the page that says what belongs together, and how it stays so."""
    pile = "each pile" if len(deck.owners) > 1 else "the pile"
    subtitle = f"Count {pile} after the lesson; tick it when it is whole"
    words = [
        ("Write down what was right", how_to_note(deck, width)),
        ("Store", _store(deck)),
        ("A card is lost", _lost(deck)),
        ("Print again", _again(deck)),
        ("What stays private", _private(deck)),
    ]
    return [
        title_block("Keep it", subtitle, width),
        *_piles(deck, width),
        *(Block(_said(title, text, width), space=14) for title, text in words),
    ]


def _piles(deck: Deck, width: float) -> list[Block]:
    word = deck.owner_word
    columns = [
        Column(word.capitalize(), 0.4 * width),
        Column("Labels", 0.18 * width),
        Column("Cards", 0.12 * width),
        Column("Whole after the lesson", 0.3 * width, 0),
    ]
    rows = [
        [
            _owner(deck, number, columns[0].room),
            cell(columns[1], (_labels(hand), FIGURES)),
            cell(columns[2], (str(len(hand)), STRONG)),
            _squares(),
        ]
        for number, hand in enumerate(deck.hands)
        if hand
    ]
    return table(columns, rows)


def _owner(deck: Deck, number: int, room: float) -> Frame:
    name = paragraph(deck.owners[number].name, room - 18, STRONG)
    return side_by_side([(0, swatch(number, height=name.height)), (18, name)], room)


def _labels(hand: tuple[Card, ...]) -> str:
    first, last = hand[0].label, hand[-1].label
    return first if first == last else f"{first}–{last}"


def _squares() -> Frame:
    step = TICK + 8
    boxes = [Box(n * step, 0, TICK, TICK, radius=2, stroke="rule") for n in range(TICKS)]
    return Frame(TICKS * step, TICK, tuple(boxes))


def _said(title: str, text: str, width: float) -> Frame:
    return under_one_another([paragraph(title, width, STRONG), paragraph(text, width, BODY)], gap=1)


def _store(deck: Deck) -> str:
    several = len(deck.owners) > 1
    what = f"for each {deck.owner_word}" if several else "for the cards"
    guides = ", one study guide" if deck.guides else ""
    return (
        f"A band or an envelope {what}, numbers in order; {'all of them ' if several else ''}in "
        f"one box with this file{guides} and the name of the deck: {deck.name}. Dry and flat: card "
        "that has bent does not lie well."
    )


def _lost(deck: Deck) -> str:
    where = "the call sheet" if deck.recipe.activity is Activity.ROUNDS else "the answer keys"
    if deck.recipe.activity is Activity.COLLECT:
        return (
            "Take the team’s spare card and write the word on it: the key to the cards has it "
            "under its number. If the spare card is gone as well, print the last leaf of its "
            "stack again."
        )
    sides = "front" if deck.recipe.sides is Sides.FRONTS else "front, back"
    return (
        f"Take a blank card of the same paper, and write {sides} and number as they stand in "
        f"{where}{f', and the {deck.owner_word}’s name' if len(deck.owners) > 1 else ''}."
    )


def _again(deck: Deck) -> str:
    return (
        "The PDF files can be printed as often as you like. Single cards are printed again, as "
        f"they were, by fairdeal reprint with this deck’s folder and their numbers "
        f"({_cards_named(deck)}). Leave deck.json where it is: it is the record of every card and "
        "of how the deck was made."
    )


def _cards_named(deck: Deck) -> str:
    """Return how cards of this deck are named, by those at the ends of a pile.

    Of the owners it is the first whose name can be typed between quotation marks. Where no owner's
    can, none is named.
    """
    piles = [
        (owner.name, hand) for owner, hand in zip(deck.owners, deck.hands, strict=True) if hand
    ]
    typed = [pile for pile in piles if not NOT_TYPED.intersection(pile[0])]
    name, hand = (typed or piles)[0]
    named = f"--cards {','.join(dict.fromkeys([hand[0].label, hand[-1].label]))}"
    labels = [card.label for card in deck.cards]
    if len(set(labels)) == len(labels) or not typed:
        return named
    return f'{named} --team "{name}"'


def _private(deck: Deck) -> str:
    own = "No student’s name is kept in this deck, in its files or in its points."
    if not deck.guides:
        return own
    return (
        f"{own} Study guides that students have written on are theirs: they are kept or given back "
        "by the school’s rules."
    )
