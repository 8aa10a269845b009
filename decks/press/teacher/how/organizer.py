"""Build, explain, compare: sort the details of a text, draw how it is built, and tell others."""

from decks.deck import Deck
from decks.lesson import Telling
from decks.press.handouts.comparing import meet_other_texts, shared_stories
from decks.press.teacher.how.counts import (
    a_team,
    answers_needed,
    cards_dealt,
    cards_made,
    each_told,
    hands,
    lost,
    spread,
    where_answers_are,
)
from decks.press.teacher.how.play import Part, Play
from decks.press.type.pages import page_paper
from decks.recipe import Sides, Support
from decks.words import counted, listed

SORTING, BUILDING = 0.2, 0.4
"""Which share of the time is for sorting, and which for building; our own judgement."""

MOST_TEXTS, LONGEST_TEXTS = 3, 60
"""More texts than these, or with so many letters in their titles, are told by their number."""

HIGHEST = 12
"""Four things to look at, nought to three points for each."""

EXPLAIN = (
    "Half of each group stays at its table, the other half walks to the next one. Those who stay "
    "explain the sheet, main idea first; those who came ask. On the signal they change places: all "
    "explain once."
)
ONE_GROUP_EXPLAINS = (
    "Half of the group explains the sheet to the other half, main idea first; those who listen "
    "ask. On the signal they change places: all explain once."
)


def organizer(deck: Deck, telling: Telling) -> Play:
    """Return how groups build an organiser with this deck."""
    return Play(
        name="Build, explain, compare",
        lasts=counted(deck.recipe.minutes, "minute"),
        needs=_needs(deck, telling),
        setting=_setting(deck, telling),
        steps=_steps(deck, telling),
        moving=3,
        asides=_asides(telling),
    )


def _needs(deck: Deck, telling: Telling) -> tuple[str, ...]:
    paper = page_paper(deck.recipe.paper).name
    return (
        f"The text itself for everyone: {_texts(telling)}",
        f"{cards_made(deck)}: {cards_dealt(deck, 'group')}",
        *answers_needed(deck),
        *_sheets(telling, paper, len(deck.recipe.teams)),
        "Pencils, colours for symbols, a clock, a stop signal; the checking grid of this file",
    )


def _sheets(telling: Telling, paper: str, groups: int) -> list[str]:
    """Return the sheets that groups write on, and how often they are copied."""
    copies = "1 copy" if groups == 1 else f"{groups} copies, one a group"
    planned = copies if telling.is_alike else "each group its own"
    sheets = [f"planning-sheet.pdf on {paper}: {planned}"]
    if is_compared(telling):
        sheets.append(f"comparison.pdf on {paper}: {copies}")
    return sheets


def is_compared(telling: Telling) -> bool:
    """Say whether there is anything to compare: a text that two have, or two texts."""
    return bool(shared_stories(telling)) or meet_other_texts(telling)


def _texts(telling: Telling) -> str:
    topics = list(
        dict.fromkeys(story.topic or "the text" for each in telling.stories for story in each)
    )
    if len(topics) > MOST_TEXTS or sum(map(len, topics)) > LONGEST_TEXTS:
        return counted(len(topics), "text")
    return listed([f"“{topic}”" for topic in topics], "and")


def _is_one(telling: Telling) -> bool:
    """Say whether there is one group, which meets no other."""
    return len(telling.stories) == 1


def _most_texts(telling: Telling) -> int:
    """Return how many texts the group with the most of them has."""
    return max(map(len, telling.stories))


def _setting(deck: Deck, telling: Telling) -> tuple[str, ...]:
    own = "are" if _most_texts(telling) > 1 else "is"
    share = f" The texts are shared out: the cards of a group say which {own} its own."
    if telling.is_alike:
        share = "" if _is_one(telling) else " Every group has the same."
    sit = "The group sits as a team" if _is_one(telling) else "Groups sit as teams"
    number = spread(a_team(deck))
    tables = f"A table for every group, {number} at each, with a clear way from one to the next."
    return (
        f"A table for the group, {number} at it." if _is_one(telling) else tables,
        f"On it the group’s cards, details up, mixed{_face_down(deck, telling)}.{share}",
        f"{sit}; who reads out, draws, and explains changes as they agree.",
    )


def _face_down(deck: Deck, telling: Telling) -> str:
    """Say that sheets which tell of the headings wait until these were looked for."""
    if deck.recipe.support is Support.NONE:
        return ""
    sheets = "sheets" if _most_texts(telling) > 1 else "sheet"
    return f"; the planning {sheets} face down until the cards are sorted"


def _steps(deck: Deck, telling: Telling) -> tuple[Part, ...]:
    minutes = deck.recipe.minutes
    sorting, building = (max(1, round(share * minutes)) for share in (SORTING, BUILDING))
    visiting = max(1, minutes - sorting - building)
    several = _most_texts(telling) > 1
    its = "its" if several else "the"
    return (
        Part(f"Sort, {sorting} min", _sort(deck, several=several)),
        Part(
            "Main idea",
            f"Close the text. In one sentence: what is all of this about? Write it on {its} "
            "planning sheet, in pencil.",
        ),
        Part(
            f"Build, {building} min",
            f"On {its} planning sheet: the headings, the details that support each, and a symbol "
            "or a sign for each heading, with a word that says what it stands for.",
        ),
        Part(f"Explain, {visiting} min", ONE_GROUP_EXPLAINS if _is_one(telling) else EXPLAIN),
        *([Part("Compare", _compare(telling))] if is_compared(telling) else []),
        Part("The end", _end(deck, telling)),
    )


def _sort(deck: Deck, *, several: bool) -> str:
    turn = "look" if deck.recipe.sides is Sides.FRONTS else "turn the cards"
    read = "Read the text. Lay the detail cards"
    if several:
        read = (
            "Take one text after another, steps 1 to 3 for each; the minutes are for all. Read it. "
            "Lay its detail cards"
        )
    its = "its" if several else "the"
    return (
        f"{read} in groups that belong together and find a heading for each. Then {turn}: "
        f"{where_answers_are(deck)} has the heading of the text. On the blank side of {its} "
        "planning sheet note the numbers of cards that lay under another heading."
    )


def _end(deck: Deck, telling: Telling) -> str:
    back = f"The cards are counted back: {each_told(hands(deck), 'card')}"
    if _is_one(telling):
        return f"{back}."
    return (
        "Everyone walks home, and each group adds one thing that it learned from another. "
        f"{back} a group."
    )


def _compare(telling: Telling) -> str:
    told = []
    if shared_stories(telling):
        told.append(
            "Groups with the same text tick on the comparison sheet which supporting details each "
            "has; what only one of them has, look up in the text."
        )
    if meet_other_texts(telling):
        told.append("Where the texts differ, write down what they have in common, and what not.")
    return " ".join(told)


def _asides(telling: Telling) -> tuple[Part, ...]:
    seated = (
        "Sheets walk instead of people: pass them to the next table and write questions on a slip."
    )
    if _is_one(telling):
        seated = "Explain and ask across the table."
    return (
        Part(
            "Points",
            "The checking grid: main idea, details, organisation, symbols explained, 0 to 3 each, "
            f"{HIGHEST} at the most{'' if _is_one(telling) else ' for a group'}.",
        ),
        Part(
            "Gentler, and seated",
            f"{seated} Fewer cards, or the headings told beforehand.",
        ),
        Part("A card is lost", lost("a blank card", "the key to the details")),
    )
