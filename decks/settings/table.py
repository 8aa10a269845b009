"""Every setting that the Deck sheet and the command line have."""

from enum import StrEnum

from decks.amounts import read_cards, read_mix, read_percent
from decks.lengths import (
    LEAST_CARD,
    MOST_CARD,
    MOST_MARGIN,
    read_bleed,
    read_distance,
    read_margins,
    read_walk,
)
from decks.recipe import (
    Activity,
    Aim,
    CardSize,
    ComesOut,
    Dealing,
    Flip,
    Form,
    Fractions,
    GuideFor,
    Ink,
    PaperName,
    Sets,
    Sides,
    Support,
)
from decks.settings.setting import Setting
from decks.settings.values import (
    MOST_EXTRA,
    MOST_GRADE,
    MOST_MINUTES,
    MOST_ROUNDS,
    MOST_STUDENTS,
    YES_OR_NO,
    choice_of,
    read_card_size,
    read_extra_words,
    read_number,
    read_points,
    read_teams,
    read_text,
    read_yes_or_no,
)
from decks.team import MOST_TEAMS
from decks.words import listed


def _setting(
    name: str, key: str, values: type[StrEnum], what: str, default: StrEnum | None = None
) -> Setting:
    choices = tuple(value.value for value in values)
    first = default.value if default else ""
    return Setting(name, key, listed(choices), choice_of(values), what, choices, first)


SETTINGS = (
    Setting(
        "Title", "title", "a text", read_text, "The name on every page; without it, the file’s name"
    ),
    _setting("Activity", "activity", Activity, "What the deck is for", Activity.REVIEW),
    Setting(
        "Teams",
        "teams",
        f"a number from 1 to {MOST_TEAMS}, or as many different names separated by commas",
        read_teams,
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
        f"a length up to {MOST_MARGIN:g} mm, as 5 mm or 0.25 in, or four: "
        "top, right, bottom and left, as 5, 5, 7, 5 mm",
        read_margins,
        "The edge that your printer leaves white",
        default="5 mm",
    ),
    Setting(
        "Card size",
        "card_size",
        f"{listed(list(CardSize))}, or width by height, as 90 x 60 mm or 3.5 x 2.5 in, "
        f"each from {LEAST_CARD:g} to {MOST_CARD:g} mm",
        read_card_size,
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
        read_text,
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
    _setting(
        "Support",
        "support",
        Support,
        "What the study guide offers: a word bank, or hints (first letter and number of letters), "
        "or neither; without it, a bank, or neither where the gathered cards are the bank",
    ),
    Setting(
        "Extra words",
        "extra_words",
        f"a number from 0 to {MOST_EXTRA}",
        read_extra_words,
        "How many words in a word bank fit no blank",
        tuple(str(number) for number in range(MOST_EXTRA + 1)),
        "2",
    ),
    Setting(
        "Early finishers",
        "early_finishers",
        "yes or no",
        read_yes_or_no,
        "A second version of the study guide with more and closer extra words",
        YES_OR_NO,
        "no",
    ),
    Setting(
        "Large print",
        "large_print",
        "yes or no",
        read_yes_or_no,
        "The study guide in 18 points",
        YES_OR_NO,
        "no",
    ),
    Setting(
        "Rounds",
        "rounds",
        f"a number from 1 to {MOST_ROUNDS}",
        lambda text: read_number(text.strip(), 1, MOST_ROUNDS),
        "How many rounds are called, or how many sets replace each other; without it, by content",
        tuple(str(number) for number in range(1, MOST_ROUNDS + 1)),
    ),
    _setting(
        "Sets",
        "sets",
        Sets,
        "Whether the sets at bases are as hard as one another, or rise",
        Sets.EQUAL,
    ),
    _setting(
        "Form",
        "form",
        Form,
        "How a planning sheet is drawn; without it, as the text’s headings suggest",
    ),
    Setting(
        "Points",
        "points",
        "three numbers from 0 to 9, as 1, 1, 1",
        read_points,
        "What a team earns for a right answer, for being first and right, and for moving together",
        default="1, 1, 1",
    ),
    Setting(
        "Students",
        "students",
        f"a number from 1 to {MOST_STUDENTS}",
        lambda text: read_number(text.strip(), 1, MOST_STUDENTS),
        "How many students are in the class",
        default="24",
    ),
    Setting(
        "Minutes",
        "minutes",
        f"a number from 1 to {MOST_MINUTES}",
        lambda text: read_number(text.strip(), 1, MOST_MINUTES),
        "How long the moving part of the lesson is to last",
        default="20",
    ),
    Setting(
        "Walk",
        "walk",
        "a distance from 1 m to 200 m, as 10 m or 30 ft",
        read_walk,
        "How far it is from a team’s home to the cards that it gathers",
        default="10 m",
    ),
    Setting(
        "Reading grade",
        "reading_grade",
        f"a school grade from 1 to {MOST_GRADE}",
        lambda text: read_number(text.strip(), 1, MOST_GRADE),
        "Prompts that are harder to read than this grade are noted; without it, only the hardest",
        tuple(str(number) for number in range(1, MOST_GRADE + 1)),
    ),
    _setting("Aim", "aim", Aim, "What the next deck is for, after the first", Aim.HARDER),
    Setting(
        "Target",
        "target",
        "a share from 0 to 100 %",
        read_percent,
        "In a harder next deck, the share of answers that are expected to be right",
        default="80 %",
    ),
    Setting(
        "Seen before",
        "seen_before",
        "a share from 0 to 100 %",
        read_percent,
        "In a next deck, the share of cards from earlier decks: a harder one has no more of them, "
        "a mixed one about so many",
        default="30 %",
    ),
    Setting(
        "Floor",
        "floor",
        "a share from 0 to 100 %",
        read_percent,
        "In a harder next deck, no new item is expected to be right less often than this",
        default="60 %",
    ),
    Setting(
        "Seed",
        "seed",
        "a text or a number",
        read_text,
        "The same seed gives the same deck again; without it, every deck is new",
    ),
)
"""Every setting that the Deck sheet and the command line have; a new one is a row here, a field
of `Recipe` and an option of the build command."""
