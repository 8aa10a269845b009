"""In which order questions are called: rising in each round, topics mixed, a good end."""

import math
import random
from collections import defaultdict, deque
from collections.abc import Sequence
from heapq import heapify, heappop, heappush

from cards.item import Item, Level
from decks.choices import choices_of
from decks.dealing import ShareOf, share_by_level
from decks.lesson.exercises import Exercise, seconds_of
from decks.recipe import Choices

MOST_A_ROUND = 10
WORDS_A_SECOND = 2.5
"""Reading aloud at 150 words a minute: common practice."""

HUDDLE = {Level.EASY: 20, Level.MEDIUM: 30, Level.HARD: 45}
SHOWING = 10
"""Seconds to put heads together and write, and to show and count; our own judgement."""

GOOD_END = 0.75
"""The least expected share of the last question of all, so that most finish on a success."""


def seconds_to_allow(item: Item, exercise: Exercise, choices: Choices) -> int:
    """Return the seconds from reading a question out to the cards going up, in steps of five.

    Reading aloud, with the choices where they are shown, a huddle that is longer for a harder
    question, the exercise, and showing.
    """
    said = [item.prompt, *(choices_of(item) if choices is Choices.SHOWN else ())]
    words = sum(len(text.split()) for text in said)
    seconds = words / WORDS_A_SECOND + HUDDLE[item.level] + seconds_of(exercise) + SHOWING
    return 5 * math.ceil(seconds / 5)


def rounds_for(items: int, wanted: int | None = None) -> int:
    """Return into how many rounds so many items are parted: as wanted, or of ten at the most."""
    return max(1, min(items, wanted or -(-items // MOST_A_ROUND)))


def calling_order(
    items: Sequence[Item],
    rounds: int,
    generator: random.Random,
    share_of: ShareOf = share_by_level,
) -> tuple[tuple[Item, ...], ...]:
    """Return the items in their calling order, round by round.

    Rounds differ in length by one at most and are as hard as one another as far as levels can be
    parted evenly. Each begins easy and rises; items of one level are ordered so that topics change
    as often as can be. The last question of all is one that most get, where there is one to spare.
    """
    shuffled = generator.sample(list(items), len(items))
    last = _for_the_end(shuffled, share_of) if len(items) > rounds else None
    rising = sorted(
        (item for item in shuffled if item is not last), key=lambda item: -share_of(item)
    )
    called = [_topics_mixed(rising[n::rounds]) for n in range(rounds)]
    if last is not None:
        shortest = min(range(rounds), key=lambda n: (len(called[n]), -n))
        called.append(called.pop(shortest))
        called[-1].append(last)
    return tuple(tuple(each) for each in called)


def _for_the_end(items: Sequence[Item], share_of: ShareOf) -> Item | None:
    """Return the hardest of the items that most get right, sparing the easiest for a start."""
    likely = [item for item in items if share_of(item) >= GOOD_END]
    return min(likely, key=share_of, default=None)


def _topics_mixed(rising: Sequence[Item]) -> list[Item]:
    """Reorder items within each level so that neighbours differ in topic as often as can be."""
    ordered: list[Item] = []
    for level in sorted({item.level for item in rising}):
        waiting: dict[str, deque[tuple[int, Item]]] = defaultdict(deque)
        for place, item in enumerate(rising):
            if item.level is level:
                waiting[item.topic].append((place, item))
        _take_in_turn(waiting, ordered)
    return ordered


def _take_in_turn(waiting: dict[str, deque[tuple[int, Item]]], ordered: list[Item]) -> None:
    """Take the items of topics, always of another topic where one is left, of the fullest first."""
    fullest = [(-len(queue), queue[0][0], topic) for topic, queue in waiting.items()]
    heapify(fullest)
    while fullest:
        held = [heappop(fullest)]
        if ordered and held[0][2] == ordered[-1].topic and fullest:
            held.append(heappop(fullest))
        *_, topic = held.pop()
        queue = waiting[topic]
        ordered.append(queue.popleft()[1])
        if queue:
            held.append((-len(queue), queue[0][0], topic))
        for one in held:
            heappush(fullest, one)
