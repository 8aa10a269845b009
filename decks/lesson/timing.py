"""How long a lesson of called questions takes, and how much of it there is time for."""

from collections.abc import Sequence
from itertools import accumulate

from decks.lesson import Call, Called
from decks.lesson.exercises import seconds_of
from decks.words import counted

WELL_FILLED = 0.75
"""Whole rounds are advised where they fill at least so much of the time; else questions."""

WORTH_ADDING = 3
"""So many questions more than there are, and it is worth telling that there is time for them."""


def seconds_in_all(calls: Sequence[Call]) -> int:
    """Return the seconds from the first word of the first call to the last answer counted."""
    return sum(call.seconds for call in calls)


def seconds_moving(calls: Sequence[Call]) -> float:
    """Return the seconds in which everybody moves."""
    return sum(seconds_of(call.exercise) for call in calls)


def calls_told(calls: Sequence[Call]) -> str:
    """Say how long some calls take: `about 12 minutes, 5 of them moving`."""
    minutes = _minutes(seconds_in_all(calls))
    moving = seconds_moving(calls)
    if minutes == 1:
        return f"about 1 minute, {_seconds(moving)} seconds of it moving"
    if moving < 60:  # noqa: PLR2004 (seconds of a minute)
        return f"about {minutes} minutes, {_seconds(moving)} seconds of them moving"
    return f"about {minutes} minutes, {round(moving / 60)} of them moving"


def calls_within(called: Called, minutes: int) -> int:
    """Return how many of the calls, from the first on, take no more than some minutes."""
    taken = accumulate(call.seconds for call in called.calls)
    fitting = [n for n, seconds in enumerate(taken, start=1) if _minutes(seconds) <= minutes]
    return max(fitting, default=0)


def about_time(called: Called, minutes: int) -> str:
    """Say how long the lesson takes and what that means for the minutes that there are."""
    calls = called.calls
    taken = f"{calls_told(calls).capitalize()}."
    count = max(1, calls_within(called, minutes))
    if count < len(calls):
        call = f"call {_advised(called, count)}"
        return f"{taken} With Minutes at {minutes}: {call}, or build with {counted(count, 'card')}."
    spare = minutes * 60 - seconds_in_all(calls)
    more = int(spare * len(calls) / seconds_in_all(calls))
    if more < WORTH_ADDING:
        return taken
    return f"{taken} With Minutes at {minutes} there is time for {more} more questions."


def _advised(called: Called, count: int) -> str:
    """Return which calls to make where there is time for `count` of them."""
    ends = [sum(map(len, called.rounds[: n + 1])) for n in range(len(called.rounds))]
    rounds = sum(end <= count for end in ends)
    if rounds and ends[rounds - 1] >= WELL_FILLED * count:
        return _numbered("round", rounds)
    return _numbered("question", count)


def _numbered(word: str, last: int) -> str:
    if last == 1:
        return f"{word} 1"
    return f"{word}s 1 {'and' if last == 2 else 'to'} {last}"  # noqa: PLR2004 (two in number)


def _minutes(seconds: float) -> int:
    return max(1, round(seconds / 60))


def _seconds(seconds: float) -> int:
    return 5 * max(1, round(seconds / 5))
