"""How many words a team can be expected to bring home, and whether the deck is of that size."""

import math
from collections.abc import Iterator

from decks.deck import Deck
from decks.layout.flow import Block
from decks.lesson.walking import (
    CAUGHT,
    SECONDS_TO_HAND_OVER,
    SECONDS_TO_TAKE,
    Amount,
    Reckoning,
    metres_for,
    reckon,
)
from decks.press.teacher.how.counts import (
    a_team,
    blanks,
    each_told,
    hands,
    metres,
    spread,
)
from decks.press.teacher.keys import title_block
from decks.press.teacher.room_plan import room_plan
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import NOTE, STRONG, Style, panel, paragraph
from decks.settings.values import MOST_MINUTES
from decks.words import counted

FIGURES = Style(11)
STYLES = (FIGURES, STRONG, FIGURES)
ROUNDED_TO = 5
LONGEST_WALK = 30.0
"""A longer way, in metres, is not advised: few rooms have it."""

CAUGHT_TOLD = "one carrier in four caught"


def reckoning(deck: Deck, width: float) -> list[Block]:
    """Return the page that says whether the words last for the time."""
    ways = reckoned(deck), reckoned(deck, caught=CAUGHT)
    names = [team.name for team in deck.recipe.teams]
    columns = [
        Column("For the team" if deck.is_one_team else "For one team", 0.46 * width),
        Column("nobody caught", 0.27 * width),
        Column(CAUGHT_TOLD, 0.27 * width),
    ]
    rows = [
        [
            cell(column, (text, style))
            for column, text, style in zip(columns, row, STYLES, strict=True)
        ]
        for row in _rows(deck, *ways)
    ]
    subtitle = (
        f"{counted(deck.recipe.minutes, 'minute')} · {metres(deck.recipe.walk)} to the cards · "
        f"{each_told(hands(deck), 'card')} and {each_told(a_team(deck), 'student')}{_each(deck)}"
    )
    return [
        title_block("Are there enough words?", subtitle, width),
        Block(panel(_verdict(ways[0]), advice(deck), width), space=14, with_next=True),
        *table(columns, rows, space=14),
        Block(paragraph(_assumed(deck, ways[0]), width, NOTE), space=8),
        Block(paragraph("The room from above", width, STRONG), space=20, with_next=True),
        Block(room_plan(names, metres(deck.recipe.walk), width), space=8),
    ]


def _each(deck: Deck) -> str:
    return "" if deck.is_one_team else " a team"


def reckoned(deck: Deck, *, caught: float = 0) -> Reckoning:
    """Return what the team with the most cards brings home, walking one at a time."""
    recipe = deck.recipe
    return reckon(
        metres=recipe.walk / 1000,
        minutes=recipe.minutes,
        cards=max(hands(deck)),
        blanks=max(blanks(deck)),
        students=min(a_team(deck)),
        caught=caught,
    )


def is_enough(deck: Deck) -> bool:
    """Say whether the words are as many as the time is for."""
    return reckoned(deck).amount is Amount.ENOUGH


def _rows(deck: Deck, free: Reckoning, hunted: Reckoning) -> list[tuple[str, str, str]]:
    rows = [
        (
            f"Walks there and back in {deck.recipe.minutes} minutes",
            str(free.trips),
            str(hunted.trips),
        ),
        ("Words home by then", _words(free), _words(hunted)),
        ("The last word is home after", _after(free), _after(hunted)),
        ("Each student walks", _walks(deck, 0), _walks(deck, CAUGHT)),
    ]
    if max(blanks(deck)):
        what = f"Fills the {counted(max(blanks(deck)), 'blank')} of the guide"
        rows.append((what, _filled(free), _filled(hunted)))
    return rows


def _words(reckoned_: Reckoning) -> str:
    return f"{reckoned_.words} of {reckoned_.cards}"


def _after(reckoned_: Reckoning) -> str:
    return f"about {counted(_minutes(reckoned_), 'minute')}"


def _minutes(reckoned_: Reckoning) -> int:
    return max(1, round(reckoned_.minutes_for_all))


def _walks(deck: Deck, caught: float) -> str:
    """Return how often a student walks, in the largest team and in the smallest."""
    least = min(_of_team(deck, students, caught).walks[0] for students in a_team(deck))
    most = max(_of_team(deck, students, caught).walks[1] for students in a_team(deck))
    return "once" if least == most == 1 else f"{spread((least, most))} times"


def _of_team(deck: Deck, students: int, caught: float) -> Reckoning:
    recipe = deck.recipe
    return reckon(
        metres=recipe.walk / 1000,
        minutes=recipe.minutes,
        cards=max(hands(deck)),
        blanks=0,
        students=students,
        caught=caught,
    )


def _filled(reckoned_: Reckoning) -> str:
    """Return how often the guide is filled if cards are laid out again when they are home."""
    if reckoned_.rounds >= 1:
        times = int(reckoned_.rounds)
        return "once" if times == 1 else f"{times} times"
    return f"{math.floor(100 * reckoned_.rounds)} % of them"


def _verdict(reckoned_: Reckoning) -> str:
    return {
        Amount.TOO_FEW: "Too few for the time",
        Amount.ENOUGH: "Right for the time",
        Amount.TOO_MANY: "More than the time is for",
    }[reckoned_.amount]


def advice(deck: Deck) -> str:
    """Say whether the words last, and what to change if they do not."""
    found = reckoned(deck)
    minutes = counted(deck.recipe.minutes, "minute")
    words = f"{counted(found.cards, 'word')}{_each(deck)} {'is' if found.cards == 1 else 'are'}"
    home = f"{'it' if found.cards == 1 else 'they'} will be home after about"
    if found.amount is Amount.ENOUGH:
        late = reckoned(deck, caught=CAUGHT)
        between = spread([_minutes(found), _minutes(late)])
        return f"{words} right for {minutes}: {home} {between} minutes."
    if found.amount is Amount.TOO_MANY:
        return (
            f"{words} too many for {minutes}: about {found.words} will come home. "
            f"{_either(_fewer(deck, found))}"
        )
    return (
        f"{words} too few for {minutes}: {home} {counted(_minutes(found), 'minute')}. "
        f"{_either(_more(deck, found))}"
    )


def _either(ways: Iterator[str]) -> str:
    either = ", or ".join(ways)
    return f"{either[0].upper()}{either[1:]}."


def _fewer(deck: Deck, found: Reckoning) -> Iterator[str]:
    """Yield what to change where there are more words than time."""
    each = _rounded(found.words)
    if each:
        yield f"choose {_in_all(deck, each)} with Cards"
    needed = math.ceil(found.minutes_for_all)
    if needed <= MOST_MINUTES:
        yield f"take {needed} minutes with Minutes"
    yield f"let two{'' if deck.is_one_team else ' of a team'} walk at a time"


def _more(deck: Deck, found: Reckoning) -> Iterator[str]:
    """Yield what to change where there is more time than words."""
    times = int(found.minutes // found.minutes_for_all)
    yield f"plan {times} rounds: lay the cards out again when all are home"
    each = _rounded(found.trips)
    if deck.has_copies and len(deck.pool) > found.cards:
        yield f"take more cards: {min(each, len(deck.pool))} with Cards"
    if not deck.has_copies and len(deck.pool) > len(deck.cards):
        yield f"take more cards: {min(_in_all(deck, each), len(deck.pool))} with Cards"
    elif not deck.has_copies and not deck.is_one_team:
        words = min(each, len(deck.pool))
        yield f"give every team the same {words} words: copies with Deal, {words} with Cards"
    far = metres_for(minutes=found.minutes, cards=found.cards)
    if far <= LONGEST_WALK:
        yield f"take a longer way: {metres(int(far) * 1000)} with Walk"


def _rounded(number: int) -> int:
    """Return a number of cards that is easily said, no larger than this one."""
    return number if number < 2 * ROUNDED_TO else number // ROUNDED_TO * ROUNDED_TO


def _in_all(deck: Deck, each: int) -> int:
    """Return how many items give every team so many cards."""
    return each if deck.has_copies else each * len(deck.recipe.teams)


def _assumed(deck: Deck, found: Reckoning) -> str:
    walker = "one walker" if deck.is_one_team else "one walker of a team"
    return (
        f"Reckoned for {walker} at a time, who takes one card. Walking at 2.5 miles an hour (1.1 m "
        "a second), one of the walks of the Youth Compendium of Physical Activities "
        f"(Butte et al. 2018); {SECONDS_TO_TAKE:g} seconds to take a card and "
        f"{SECONDS_TO_HAND_OVER:g} to hand it over are our own judgement, and so is how many are "
        f"caught. A trip takes {found.seconds_a_trip:.0f} seconds. If your class is slower, a "
        "longer Walk says so. The figures change with Minutes, Walk, Students, Teams and Cards on "
        "the Deck sheet."
    )
