"""The choices that shape a deck."""

from dataclasses import dataclass
from enum import StrEnum

from decks.amounts import ALL, Mix
from decks.team import Team


class Activity(StrEnum):
    """What the deck is for."""

    REVIEW = "review"


class Dealing(StrEnum):
    """Who gets which item."""

    SHARES = "shares"
    COPIES = "copies"


class PaperName(StrEnum):
    """The paper that the printer is loaded with."""

    LETTER = "letter"
    A4 = "a4"


class CardSize(StrEnum):
    """How large a card is."""

    SMALL = "small"
    MEDIUM = "medium"
    LARGE = "large"


class Sides(StrEnum):
    """How a card gets its back."""

    DUPLEX = "duplex"
    FOLD = "fold"


class Flip(StrEnum):
    """The edge of the paper that the printer flips on."""

    LONG = "long"
    SHORT = "short"


class Ink(StrEnum):
    """What the team's ribbon is printed with."""

    COLOUR = "colour"
    GREY = "grey"


class GuideFor(StrEnum):
    """Who gets a study guide of their own."""

    CLASS = "class"
    TEAM = "team"
    NONE = "none"


@dataclass(frozen=True, slots=True)
class Recipe:
    """Every choice that shapes a deck, resolved; `seed` is None until the deck has a number."""

    title: str
    teams: tuple[Team, ...]
    activity: Activity = Activity.REVIEW
    deal: Dealing = Dealing.SHARES
    cards: int = ALL
    mix: Mix | None = None
    paper: PaperName = PaperName.LETTER
    card_size: CardSize = CardSize.SMALL
    sides: Sides = Sides.DUPLEX
    flip: Flip = Flip.LONG
    ink: Ink = Ink.COLOUR
    guide: GuideFor = GuideFor.TEAM
    extra_words: int = 2
    reading_grade: int | None = None
    seed: str | None = None
