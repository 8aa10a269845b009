"""Decks made in memory, and their records."""

from pathlib import Path

from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import TEAMS, card

from cards.item import Item, Kind, Level
from cards.reading.pictures.looking import picture_in
from cards.style import Span, TextStyle
from decks.activities import make_deck
from decks.amounts import ALL
from decks.bank import GuidePart
from decks.deck import Deck
from decks.lengths import CardMeasure, Margins, Shift
from decks.recipe import (
    Activity,
    CardSize,
    Dealing,
    Flip,
    GuideFor,
    Ink,
    PaperName,
    Points,
    Recipe,
    Sets,
    Sides,
    Support,
)
from decks.record import Colophon, picture_files, read_record, with_pictures, write
from decks.team import make_teams
from support.pictures import SHELL, coded, disc

COLOPHON = Colophon(
    made_from="Saltmarsh week.xlsx",
    digest="ab" * 32,
    left_out=(("Facts B7", "There is no answer."),),
    papers={"cards.pdf": "cd" * 32},
    leaves=3,
)
CRAB = picture_in(coded(disc(60)))
DRAWN = picture_in(SHELL.encode())
BOLD = (Span(0, 4, TextStyle.BOLD),)
MEASURES = st.sampled_from([*CardSize, CardMeasure(90, 60.5), CardMeasure(63, 88)])


def rows(count: int) -> list[Item]:
    """Return items of every kind, level and sort of text, some with pictures."""
    return [
        card(
            number,
            level=tuple(Level)[number % 3],
            topic=("Tides", "Zones", "Ébb “&” <flow>")[number % 3],
            kind=tuple(Kind)[number % 4],
            answer=f"word {number // 5 * 4 if number % 5 == 0 else number}",
            also_right=("other", "ένα") if number % 2 else (),
            wrong=("no\nway",) if number % 3 else (),
            team="Otter" if number == 4 else None,
            prompt_spans=BOLD if number % 4 == 1 else (),
            answer_spans=BOLD if number % 4 == 2 else (),
            image={2: CRAB, 5: DRAWN, 6: CRAB}.get(number),
        )
        for number in range(count)
    ]


@st.composite
def recipes(draw) -> Recipe:
    """Draw a recipe with every sort of value that a recipe has."""
    return Recipe(
        title="Saltmarsh “week” — été",
        teams=make_teams(TEAMS[: draw(st.integers(2, 5))], [None] * 5),
        language=draw(st.sampled_from(["en", "cy", "es-MX"])),
        activity=draw(st.sampled_from(Activity)),
        deal=draw(st.sampled_from(Dealing)),
        cards=draw(st.sampled_from([ALL, 6])),
        mix=draw(st.sampled_from([None, (40, 40, 20)])),
        paper=draw(st.sampled_from(PaperName)),
        margins=draw(st.sampled_from([Margins(), Margins(4, 5.5, 9, 7)])),
        card_size=draw(MEASURES),
        bleed=draw(st.sampled_from([0, 3.0])),
        sides=draw(st.sampled_from(Sides)),
        flip=draw(st.sampled_from(Flip)),
        printer=draw(st.sampled_from([None, "Staff room"])),
        shift=draw(st.sampled_from([Shift(), Shift(0.5, -1.25, 0.1)])),
        ink=draw(st.sampled_from(Ink)),
        guide=draw(st.sampled_from(GuideFor)),
        support=draw(st.sampled_from(Support)),
        early_finishers=draw(st.booleans()),
        rounds=draw(st.sampled_from([None, 2])),
        sets=draw(st.sampled_from(Sets)),
        points=draw(st.sampled_from([Points(), Points(3, 0, 2)])),
    )


def deck_of(recipe: Recipe, count: int = 14, number: int = 2):
    """Return a deck of these rows."""
    return make_deck(recipe, rows(count), number=number, seed="low")


def read_with_pictures(folder: Path) -> Deck:
    """Read a deck's record, and open all of its pictures."""
    deck = read_record(folder)
    hands = tuple(with_pictures(hand, folder) for hand in deck.hands)
    opened = {
        told.item: card.item
        for told, card in zip(deck.cards, [card for hand in hands for card in hand], strict=True)
    }

    def asked(parts: tuple[GuidePart, ...]) -> tuple[GuidePart, ...]:
        return tuple(
            replace(part, blanks=tuple(opened[blank] for blank in part.blanks)) for part in parts
        )

    guides = tuple(
        replace(guide, parts=asked(guide.parts), second=asked(guide.second))
        for guide in deck.guides
    )
    return replace(deck, hands=hands, guides=guides)


def put_down(deck, folder: Path) -> str:
    """Write a deck's record and its pictures into a folder, and return the record's text."""
    text = write(deck, COLOPHON)
    folder.mkdir(parents=True, exist_ok=True)
    for name, data in picture_files(deck).items():
        (folder / name).parent.mkdir(exist_ok=True)
        (folder / name).write_bytes(data)
    (folder / "deck.json").write_text(text, encoding="utf-8")
    return text
