"""Every setting that the Deck sheet and the command line have."""

from decks.amounts import read_cards, read_mix, read_percent
from decks.languages import NAMES, near_language, read_language
from decks.lengths import read_walk
from decks.recipe import Activity, Aim, Dealing, Form, GuideFor, Sets, Support
from decks.settings.pages import PAGES
from decks.settings.setting import Setting, one_of
from decks.settings.values import (
    MOST_EXTRA,
    MOST_GRADE,
    MOST_MINUTES,
    MOST_ROUNDS,
    MOST_STUDENTS,
    YES_OR_NO,
    number_from,
    read_points,
    read_teams,
    read_text,
    read_yes_or_no,
)
from decks.team import MOST_TEAMS

MOST_IN_LIST = 25
"""How many languages a cell offers: a list in a cell has room for 255 characters."""

SETTINGS = (
    Setting(
        "Title", "title", "a text", read_text, "The name on every page; without it, the file’s name"
    ),
    Setting(
        "Language",
        "language",
        "a language by its name, as French, or by its tag, as es-MX",
        read_language,
        "The language of the content, which papers for students tell to screen readers",
        NAMES[:MOST_IN_LIST],
        NAMES[0],
        near_language,
    ),
    one_of("Activity", "activity", Activity, "What the deck is for", Activity.REVIEW),
    Setting(
        "Teams",
        "teams",
        f"a number from 1 to {MOST_TEAMS}, or as many different names separated by commas",
        read_teams,
        "Who plays; without it, the Teams sheet, or else four teams",
        tuple(map(str, range(1, MOST_TEAMS + 1))),
    ),
    one_of(
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
        "three shares for easy, medium and hard, as 40/40/20 or 5; 3; 2",
        read_mix,
        "How many of the chosen items are easy, medium and hard; without it, as the content has it",
    ),
    *PAGES,
    one_of(
        "Guide",
        "guide",
        GuideFor,
        "Who gets a study guide; without it, each team, or the class if every team gets copies",
    ),
    one_of(
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
        number_from(0, MOST_EXTRA),
        "How many words in a word bank fit no blank",
        tuple(map(str, range(MOST_EXTRA + 1))),
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
        number_from(1, MOST_ROUNDS),
        "How many rounds are called, or how many sets replace each other; without it, by content",
        tuple(map(str, range(1, MOST_ROUNDS + 1))),
    ),
    one_of(
        "Sets",
        "sets",
        Sets,
        "Whether the sets at bases are as hard as one another, or rise",
        Sets.EQUAL,
    ),
    one_of(
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
        number_from(1, MOST_STUDENTS),
        "How many students are in the class",
        default="24",
    ),
    Setting(
        "Minutes",
        "minutes",
        f"a number from 1 to {MOST_MINUTES}",
        number_from(1, MOST_MINUTES),
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
        number_from(1, MOST_GRADE),
        "Prompts that are harder to read than this grade are noted; without it, only the hardest",
        tuple(map(str, range(1, MOST_GRADE + 1))),
    ),
    one_of("Aim", "aim", Aim, "What the next deck is for, after the first", Aim.HARDER),
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
"""Every setting that the Deck sheet and the command line have; a new one is a row here and a field
of `Recipe`."""
