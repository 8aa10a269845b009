"""Every setting that the Deck sheet and the command line have."""

import re
from collections.abc import Callable
from enum import StrEnum

from cards.item import folded
from decks.amounts import read_cards, read_mix
from decks.lengths import CardMeasure, read_bleed, read_distance, read_margins, read_measure
from decks.recipe import (
    Activity,
    CardSize,
    ComesOut,
    Dealing,
    Flip,
    Fractions,
    GuideFor,
    Ink,
    PaperName,
    Sides,
)
from decks.settings.setting import Setting
from decks.team import MOST_TEAMS
from decks.words import listed


def _choice(values: type[StrEnum]) -> Callable[[str], StrEnum | None]:
    known = {value.value: value for value in values}
    return lambda text: known.get(OTHER_SPELLINGS.get(folded(text), folded(text)))


def _values(values: type[StrEnum]) -> list[str]:
    return [value.value for value in values]


def _card_size(text: str) -> CardSize | CardMeasure | None:
    named = {size.value: size for size in CardSize}
    return named.get(folded(text)) or read_measure(text)


def _setting(
    name: str, key: str, values: type[StrEnum], what: str, default: StrEnum | None = None
) -> Setting:
    choices = tuple(value.value for value in values)
    first = default.value if default else ""
    return Setting(name, key, listed(choices), _choice(values), what, choices, first)


def _text(text: str) -> str | None:
    return text.strip() or None


def _number(text: str, least: int, most: int) -> int | None:
    if not re.fullmatch(r"[0-9]{1,3}", text):
        return None
    return int(text) if least <= int(text) <= most else None


def _extra_words(text: str) -> int | None:
    return _number(text.strip(), 0, MOST_EXTRA)


def _teams(text: str) -> int | list[str] | None:
    """Read a number of teams, as a figure or a word, or their names."""
    names = [name for part in text.split(",") if (name := " ".join(part.split()))]
    if len(names) == 1:
        word = folded(names[0]).removesuffix("s").removesuffix(" team")
        if word in NUMBER_WORDS:
            return NUMBER_WORDS.index(word) + 1
        if re.fullmatch(r"[0-9]+", word):
            return _number(word, 1, MOST_TEAMS)
    distinct = len({folded(name) for name in names}) == len(names)
    return names if distinct and 1 <= len(names) <= MOST_TEAMS else None


MOST_EXTRA = 20
MOST_GRADE = 18
OTHER_SPELLINGS = {"color": "colour", "gray": "grey"}
NUMBER_WORDS = (
    "one two three four five six seven eight nine ten eleven twelve".split()  # noqa: SIM905
)

SETTINGS = (
    Setting(
        "Title", "title", "a text", _text, "The name on every page; without it, the file’s name"
    ),
    _setting("Activity", "activity", Activity, "What the deck is for", Activity.REVIEW),
    Setting(
        "Teams",
        "teams",
        f"a number from 1 to {MOST_TEAMS}, or as many different names separated by commas",
        _teams,
        "Who plays; without it, the Teams sheet, or else four teams",
        tuple(str(number) for number in range(1, MOST_TEAMS + 1)),
    ),
    _setting(
        "Deal",
        "deal",
        Dealing,
        "Whether the items are shared out or every team gets copies of all; without it, shares",
    ),
    Setting(
        "Cards",
        "cards",
        "a number of items, or all",
        read_cards,
        "How many items are chosen from the content",
        default="all",
    ),
    Setting(
        "Mix",
        "mix",
        "three shares for easy, medium and hard, as 40/40/20",
        read_mix,
        "How many of the chosen items are easy, medium and hard; without it, as the content has it",
    ),
    _setting("Paper", "paper", PaperName, "The paper in the printer", PaperName.LETTER),
    Setting(
        "Margins",
        "margins",
        "a length such as 5 mm or 0.25 in, or four: top, right, bottom and left, as 5, 5, 7, 5 mm",
        read_margins,
        "The edge that your printer leaves white",
        default="5 mm",
    ),
    Setting(
        "Card size",
        "card_size",
        f"{listed(_values(CardSize))}, or width by height, as 90 x 60 mm or 3.5 x 2.5 in",
        _card_size,
        "How large a card is; without it, small, or the whole card on index cards",
    ),
    Setting(
        "Bleed",
        "bleed",
        "a length up to 5 mm, or 0",
        read_bleed,
        "How far colour runs over the cut; with it, ribbons reach the edge and cards stand apart",
        default="0",
    ),
    _setting(
        "Sides",
        "sides",
        Sides,
        "How a card gets its back: both sides at once, folded beside it, folded as a tent, "
        "not at all, or by sending the paper through twice by hand",
        Sides.DUPLEX,
    ),
    _setting("Flip", "flip", Flip, "The edge that the paper is turned over on", Flip.LONG),
    _setting(
        "Comes out",
        "comes_out",
        ComesOut,
        "How printed paper lies in the tray, for two passes by hand",
        ComesOut.FACE_DOWN,
    ),
    Setting(
        "Printer",
        "printer",
        "the name that you gave a printer with fairdeal align",
        _text,
        "A printer that was measured, so that backs land behind their fronts",
    ),
    _setting("Ink", "ink", Ink, "What tells the teams on paper", Ink.COLOUR),
    Setting(
        "Read from",
        "read_from",
        "a distance from 20 cm to 10 m, as 40 cm, 1.5 m or 5 ft",
        read_distance,
        "How far from the cards the students stand who read them",
        default="40 cm",
    ),
    _setting(
        "Fractions",
        "fractions",
        Fractions,
        "Whether 3/4 is printed as typed or built as a fraction",
        Fractions.PLAIN,
    ),
    _setting(
        "Guide",
        "guide",
        GuideFor,
        "Who gets a study guide; without it, each team, or the class if every team gets copies",
    ),
    Setting(
        "Extra words",
        "extra_words",
        f"a number from 0 to {MOST_EXTRA}",
        _extra_words,
        "How many words in a word bank fit no blank",
        tuple(str(number) for number in range(MOST_EXTRA + 1)),
        "2",
    ),
    Setting(
        "Reading grade",
        "reading_grade",
        f"a school grade from 1 to {MOST_GRADE}",
        lambda text: _number(text.strip(), 1, MOST_GRADE),
        "Prompts that are harder to read than this grade are noted; without it, only the hardest",
        tuple(str(number) for number in range(1, MOST_GRADE + 1)),
    ),
    Setting(
        "Seed",
        "seed",
        "a text or a number",
        _text,
        "The same seed gives the same deck again; without it, every deck is new",
    ),
)
"""Every setting that the Deck sheet and the command line have; a new one is a row here, a field
of `Recipe` and an option of the build command."""
