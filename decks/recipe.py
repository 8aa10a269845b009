"""The choices that shape a deck."""

from enum import StrEnum

from msgspec import Struct

from cards.item import Kind
from decks.amounts import ALL, Mix
from decks.languages import ENGLISH
from decks.lengths import NO_SHIFT, WHITE_EDGE, CardMeasure, Margins, Shift
from decks.team import Team


class Activity(StrEnum):
    """What the deck is for."""

    REVIEW = "review"
    COLLECT = "collect"
    ROUNDS = "rounds"
    STATIONS = "stations"
    ORGANIZER = "organizer"

    @property
    def asks(self) -> tuple[Kind, ...]:
        """What it is made of: supporting details are for sorting, not for asking."""
        if self is Activity.ORGANIZER:
            return (Kind.DETAIL,)
        return (Kind.VOCABULARY, Kind.FACT, Kind.QUESTION)


class Dealing(StrEnum):
    """Who gets which item."""

    SHARES = "shares"
    COPIES = "copies"


class PaperName(StrEnum):
    """The paper that the printer is loaded with."""

    LETTER = "letter"
    LEGAL = "legal"
    TABLOID = "tabloid"
    A3 = "a3"
    A4 = "a4"
    A5 = "a5"
    INDEX_3X5 = "index-3x5"
    INDEX_4X6 = "index-4x6"
    INDEX_5X8 = "index-5x8"


class CardSize(StrEnum):
    """How large a card is."""

    SMALL = "small"
    MEDIUM = "medium"
    LARGE = "large"
    FULL = "full"


class Sides(StrEnum):
    """How a card gets its back."""

    DUPLEX = "duplex"
    FOLD = "fold"
    TENT = "tent"
    FRONTS = "fronts"
    TWO_PASSES = "two-passes"


class Flip(StrEnum):
    """The edge of the paper that the printer flips on."""

    LONG = "long"
    SHORT = "short"


class ComesOut(StrEnum):
    """How printed paper lies in the output tray; it matters where it goes in again by hand."""

    FACE_DOWN = "face-down"
    FACE_UP = "face-up"


class Ink(StrEnum):
    """What tells the team: its colour, grey textures, or the coloured stock that is loaded."""

    COLOUR = "colour"
    GREY = "grey"
    STOCK = "stock"


class Fractions(StrEnum):
    """Whether 3/4 is printed as it is typed or built as a fraction."""

    PLAIN = "plain"
    BUILT = "built"


class Choices(StrEnum):
    """Whether a question is printed with its wrong answers among the right one, or without."""

    HIDDEN = "hidden"
    SHOWN = "shown"


class GuideFor(StrEnum):
    """Who gets a study guide of their own."""

    CLASS = "class"
    TEAM = "team"
    NONE = "none"


class Support(StrEnum):
    """What a study guide offers besides its clues."""

    BANK = "bank"
    HINTS = "hints"
    NONE = "none"


class Sets(StrEnum):
    """Whether sets that replace each other are as hard as one another, or rise."""

    EQUAL = "equal"
    RISING = "rising"


class Form(StrEnum):
    """How a planning sheet is drawn."""

    BODY = "body"
    TREE = "tree"
    COLUMNS = "columns"


class Aim(StrEnum):
    """What a deck after the first is for."""

    HARDER = "harder"
    RETEACH = "reteach"
    MIXED = "mixed"


class Points(Struct, frozen=True):
    """What a team earns for an answer: right, right and first, and for moving together."""

    right: int = 1
    first: int = 1
    together: int = 1


ONE_EACH = Points()


class Recipe(Struct, frozen=True):
    """Every choice that shapes a deck, resolved; `seed` is None until the deck has a number.

    `language` is the tag (RFC 5646) of the content's language. Lengths are in millimetres. `rounds`
    is the number of rounds, or of sets, or None where the content decides; `walk` is the way from
    a team's home to its cards. `printer` names a printer that was measured, `shift` is what its
    backs are moved by. `target`, `seen_before` and `floor` are whole percents. `closer_words` takes
    the extra words that look most like an answer.
    """

    title: str
    teams: tuple[Team, ...]
    language: str = ENGLISH
    activity: Activity = Activity.REVIEW
    deal: Dealing = Dealing.SHARES
    cards: int = ALL
    mix: Mix | None = None
    paper: PaperName = PaperName.LETTER
    margins: Margins = WHITE_EDGE
    card_size: CardSize | CardMeasure = CardSize.SMALL
    bleed: float = 0
    sides: Sides = Sides.DUPLEX
    flip: Flip = Flip.LONG
    comes_out: ComesOut = ComesOut.FACE_DOWN
    printer: str | None = None
    shift: Shift = NO_SHIFT
    ink: Ink = Ink.COLOUR
    read_from: float = 400
    fractions: Fractions = Fractions.PLAIN
    choices: Choices = Choices.HIDDEN
    guide: GuideFor = GuideFor.TEAM
    support: Support = Support.BANK
    extra_words: int = 2
    early_finishers: bool = False
    large_print: bool = False
    rounds: int | None = None
    sets: Sets = Sets.EQUAL
    form: Form | None = None
    points: Points = ONE_EACH
    students: int = 24
    minutes: int = 20
    walk: float = 10_000
    reading_grade: int | None = None
    aim: Aim = Aim.HARDER
    target: int = 80
    seen_before: int = 30
    floor: int = 60
    closer_words: bool = False
    seed: str | None = None


def choices_are_printed(recipe: Recipe) -> bool:
    """Say whether a question is printed with its choices.

    Where words are gathered they are what to choose from: of the choices, only the right one would
    be among them.
    """
    return recipe.choices is Choices.SHOWN and recipe.activity is not Activity.COLLECT


def cards_are_the_bank(recipe: Recipe) -> bool:
    """Say whether the word cards that a team gathers are the only bank of its study guide."""
    return recipe.activity is Activity.COLLECT and recipe.support is not Support.BANK
