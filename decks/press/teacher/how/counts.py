"""What a deck and its class amount to, in words."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.evenly import even_sizes
from decks.layout.page import FOLDED
from decks.lengths import MM
from decks.press.type.pages import page_paper
from decks.recipe import CardSize, GuideFor, Sides, Support
from decks.words import counted

NO_POINTS = "No points are counted: what counts is what everyone can say now."


def spread(numbers: Sequence[int]) -> str:
    """Return how many each has: `18`, `17 or 18`, `3 to 6`."""
    least, most = min(numbers), max(numbers)
    if least == most:
        return str(least)
    return f"{least} {'or' if most == least + 1 else 'to'} {most}"


def each_has(numbers: Sequence[int]) -> str:
    """Return how many each of these has: as `spread`, but of two that are far apart `3 and 6`."""
    least, most = min(numbers), max(numbers)
    return f"{least} and {most}" if len(numbers) == 2 and most > least + 1 else spread(numbers)  # noqa: PLR2004


def cards_dealt(deck: Deck, owner: str) -> str:
    """Return how many cards there are, and how many each `owner` has where there are several."""
    cards = counted(len(deck.cards), "card")
    return f"{cards}, {each_has(hands(deck))} a {owner}" if deck.hands[1:] else cards


def each_told(numbers: Sequence[int], one: str) -> str:
    """Return how many of something each has: `1 card`, `17 or 18 cards`."""
    return f"{each_has(numbers)} {one if max(numbers) == 1 else one + 's'}"


def span(first: int, last: int) -> str:
    """Return the numbers from one to another: `7`, `7 and 8`, `7 to 9`."""
    if first == last:
        return str(first)
    return f"{first} {'and' if last == first + 1 else 'to'} {last}"


def a_team(deck: Deck) -> tuple[int, int]:
    """Return how many students a team has, at the least and at the most: at least one each."""
    sizes = even_sizes(deck.recipe.students, len(deck.recipe.teams))
    return max(1, sizes[-1]), max(1, sizes[0])


def every_team(deck: Deck) -> str:
    """Return `every team`, or `the team` where there is one."""
    return "the team" if deck.is_one_team else "every team"


def in_all(deck: Deck) -> str:
    """Return `, 4 in all` of what each of several teams has."""
    return "" if deck.is_one_team else f", {len(deck.recipe.teams)} in all"


def hands(deck: Deck) -> list[int]:
    """Return how many cards each owner has."""
    return [len(hand) for hand in deck.hands] or [0]


def cards_told(deck: Deck) -> str:
    """Return `72 cards for 4 teams`, `72 cards in 3 sets of 24`."""
    cards = counted(len(deck.cards), "card")
    owner = deck.owner_word
    owners = counted(len(deck.hands), owner)
    if owner == "team":
        return f"{cards} for {owners}"
    return f"{cards} in {owners} of {each_has(hands(deck))}"


def class_told(deck: Deck) -> str:
    """Return `4 teams · 24 students, 6 a team`."""
    students = counted(deck.recipe.students, "student")
    teams = len(deck.recipe.teams)
    if teams == 1:
        return f"1 team · {students}"
    return f"{counted(teams, 'team')} · {students}, {spread(a_team(deck))} a team"


def cards_file(deck: Deck) -> str:
    """Return the file, or the files, that the cards are printed from."""
    if deck.recipe.sides is Sides.TWO_PASSES:
        return "cards-fronts.pdf and cards-backs.pdf"
    return "cards.pdf"


def cards_made(deck: Deck) -> str:
    """Return the cards as they lie ready: `cards.pdf, cut and folded`, `cards.pdf` if uncut."""
    cut = "cut" if deck.recipe.card_size is not CardSize.FULL else ""
    folded = "folded" if deck.recipe.sides in FOLDED else ""
    done = " and ".join(filter(None, [cut, folded]))
    return f"{cards_file(deck)}, {done}" if done else cards_file(deck)


def where_answers_are(deck: Deck) -> str:
    """Return what tells whether an answer is right."""
    return "the list" if deck.recipe.sides is Sides.FRONTS else "the back"


def answers_needed(deck: Deck) -> list[str]:
    """Return the list of answers where cards have no backs: one for every team."""
    if deck.recipe.sides is not Sides.FRONTS:
        return []
    if deck.owner_word != "team":
        return ["answers.pdf for whoever checks"]
    return [f"answers.pdf: one for {every_team(deck)}{in_all(deck)}"]


def guides_needed(deck: Deck) -> list[str]:
    """Return the study guides to copy, if there are any."""
    if not deck.guides:
        return []
    students = counted(deck.recipe.students, "student")
    paper = page_paper(deck.recipe.paper).name
    if deck.recipe.guide is GuideFor.TEAM and not deck.is_one_team:
        return [f"study-guide.pdf on {paper}: for each of {students} the pages of their own team"]
    return [f"study-guide.pdf on {paper}: the same pages for each of {students}"]


def blanks(deck: Deck) -> list[int]:
    """Return how many blanks each study guide has; nought where there is none."""
    return [sum(len(part.blanks) for part in guide.parts) for guide in deck.guides] or [0]


def helped(deck: Deck) -> str:
    """Return what the study guide offers, as the end of a sentence."""
    if not any(guide.has_words for guide in deck.guides):
        return ""
    return {
        Support.BANK: " with its word bank",
        Support.HINTS: " with its hints",
        Support.NONE: "",
    }[deck.recipe.support]


def earned(ways: Sequence[tuple[int, str]]) -> list[str]:
    """Return each way to earn points, its number in the place of `{}`: after others it is more."""
    there = [(number, way) for number, way in ways if number]
    return [
        way.format(f"{number} more" if n else points(number))
        for n, (number, way) in enumerate(there)
    ]


def points(number: int) -> str:
    """Return a number of points: `1 point`, `2 points`."""
    return counted(number, "point")


def lost(spare: str, key: str) -> str:
    """Say what to do when a card is lost; `key` is where it stands."""
    return f"Write it again by hand on {spare}: {key} has it under its number."


def metres(millimetres: float) -> str:
    """Return a way across a room in metres and in feet: `10 m (33 ft)`."""
    feet = round(millimetres / MM["ft"])
    return f"{round(millimetres / 1000, 1):g} m ({feet} ft)"
