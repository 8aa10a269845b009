"""The sheets of a blank workbook: their headings, and what goes below each."""

from msgspec import Struct

from cards.exercises import EFFORTS

LEVELS = ("easy", "medium", "hard")


class Column(Struct, frozen=True):
    """A column: its heading, the note on it, and its width in characters.

    `needed` says that a row says nothing without it; `choices` are the values of its list.
    """

    heading: str
    note: str
    width: int
    needed: bool = False
    choices: tuple[str, ...] = ()


class Plan(Struct, frozen=True):
    """A sheet: its name, and its columns from left to right."""

    name: str
    columns: tuple[Column, ...]


_TOPIC = Column(
    "Topic",
    "What the row belongs to. It stands at the top of the card, "
    "and every team gets its fair share of each topic.",
    20,
)
_LEVEL = Column(
    "Level",
    "easy, medium or hard. Every team gets its fair share of each. Blank counts as medium.",
    12,
    choices=LEVELS,
)
_ALSO_RIGHT = Column(
    "Also right",
    "Other answers that you accept, with a semicolon between two. They stand in your answer key.",
    30,
)
_TEAM = Column(
    "Team",
    "Only if one team must have this row: the team’s name. "
    "Leave it blank to have the row dealt fairly.",
    14,
)
_PICTURE = Column(
    "Picture",
    "Not needed. The name of a picture in the folder of this file, as crab.png; "
    "or paste the picture into the row.",
    16,
)
_ABOUT_ITEM = (_TOPIC, _LEVEL, _ALSO_RIGHT, _TEAM, _PICTURE)

VOCABULARY = Plan(
    "Vocabulary",
    (
        Column("Word", "The word itself: the back of the card.", 24, needed=True),
        Column(
            "Meaning",
            "What the word means, in words your students know: the front of the card. "
            "The word itself should not be in it.",
            60,
            needed=True,
        ),
        *_ABOUT_ITEM,
    ),
)
FACTS = Plan(
    "Facts",
    (
        Column(
            "Prompt", "A sentence with its end left out: the front of the card.", 54, needed=True
        ),
        Column("Answer", "What completes it: the back of the card.", 24, needed=True),
        *_ABOUT_ITEM,
    ),
)
QUESTIONS = Plan(
    "Questions",
    (
        Column("Question", "The question: the front of the card.", 60, needed=True),
        Column("Answer", "The right answer: the back of the card.", 24, needed=True),
        Column(
            "Wrong answers",
            "Not needed. Choices that are wrong but could be believed, with a semicolon between. "
            "They are printed if the Deck sheet says Choices: shown.",
            34,
        ),
        *_ABOUT_ITEM,
    ),
)
DETAILS = Plan(
    "Details",
    (
        Column("Topic", "The text or subject that the details are about.", 24),
        Column("Heading", "The heading that the detail belongs under.", 28, needed=True),
        Column("Detail", "One supporting detail, short enough for a card.", 60, needed=True),
    ),
)
EXERCISES = Plan(
    "Exercises",
    (
        Column("Exercise", "What everyone does together, beside their seats.", 30, needed=True),
        Column("How many", "How often, or how long.", 18),
        Column(
            "Gentler option",
            "A way without jumping, and one sitting down. "
            "Anyone may take it without giving a reason.",
            58,
        ),
        Column(
            "Effort",
            "gentle, moderate or strong, for most of your class.",
            14,
            choices=EFFORTS,
        ),
    ),
)
TEAMS = Plan(
    "Teams",
    (
        Column("Team", "The team’s name, as it stands on its cards.", 26, needed=True),
        Column(
            "Colour",
            "Pick one from the list, or leave it blank to have one chosen. "
            "A code such as #0072B2 works too.",
            20,
        ),
    ),
)
DECK = Plan(
    "Deck",
    (
        Column("Setting", "What can be chosen. Leave the names as they are.", 18),
        Column(
            "Value",
            "Your choice. Blank means the usual. An option on the command line goes first.",
            24,
            needed=True,
        ),
        Column("What it does", "What the setting is for. This column is not read.", 80),
    ),
)
CONTENT = (VOCABULARY, FACTS, QUESTIONS, DETAILS)
