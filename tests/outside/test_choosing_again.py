"""Choosing a next deck against every choice there is: no choice comes nearer, goal by goal.

The goals are reckoned here from their definitions, by going through all choices.
"""

import re
from itertools import combinations, product
from math import ceil, floor

from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card

from cards.item import Level
from decks.choosing import Again, choose, most_cards

TOPICS = ("Tides", "Zones", "Weed")
MOST_TRIED = 3


@st.composite
def contents(draw, most=8):
    """Draw items with shares of their own; some are pinned, some were seen before."""
    row = st.tuples(
        st.integers(1, 3),
        st.sampled_from(TOPICS),
        st.sampled_from([None, None, None, TEAMS[0]]),
        st.integers(60, 200),
        st.booleans(),
    )
    rows = draw(st.lists(row, min_size=1, max_size=most))
    items = [card(n, level, topic, team=team) for n, (level, topic, team, *_) in enumerate(rows)]
    shares = {item: row[3] / 200 for item, row in zip(items, rows, strict=True)}
    return items, shares, [item for item, row in zip(items, rows, strict=True) if row[4]]


def strays(wanted, chosen, value):
    return sum(
        max(
            floor(number) - sum(value(item) == key for item in chosen),
            sum(value(item) == key for item in chosen) - ceil(number),
            0,
        )
        for key, number in wanted.items()
    )


def seen_off(held, count, again):
    """Return by how many cards the seen ones are too many or too few."""
    wanted = again.percent * count
    least = 0 if again.at_most else wanted // 100
    most = wanted // 100 if again.at_most else -(-wanted // 100)
    return max(least - held, held - most, 0)


def misses(chosen, content, aim, again, liked=()):
    target, near = aim
    items, shares, seen = content
    count = len(chosen)
    levels = {
        level: count * sum(item.level == level for item in items) / len(items) for level in Level
    }
    topics = {
        topic: count * sum(item.topic == topic for item in items) / len(items) for topic in TOPICS
    }
    gap = abs(sum(round(200 * shares[item]) for item in chosen) - 2 * target * count)
    return (
        seen_off(sum(item in seen for item in chosen), count, again),
        max(0, gap - 2 * near * count),
        len(set(liked) - set(chosen)),
        strays(levels, chosen, lambda item: item.level),
        strays(topics, chosen, lambda item: item.topic),
        gap,
    )


@settings(deadline=None, max_examples=150)
@given(
    contents(),
    st.integers(1, 9),
    st.integers(30, 100),
    st.integers(0, 3),
    st.tuples(st.sampled_from([0, 20, 30, 50, 100]), st.booleans()),
)
def test_no_choice_comes_nearer_to_what_a_next_deck_wishes(content, count, target, near, part):
    items, shares, seen = content
    again = Again(frozenset(item.key for item in seen), part[0], at_most=part[1])
    liked = seen[::2]
    choice = choose(
        items,
        count=count,
        seed="s",
        target=target / 100,
        near=near / 100,
        share=lambda item: shares[item],
        again=again,
        liked=liked,
    )
    pinned = {item for item in items if item.team}
    taken = min(max(count, len(pinned)), len(items))
    best = min(
        misses(chosen, content, (target, near), again, liked)
        for chosen in combinations(items, taken)
        if pinned <= set(chosen)
    )
    assert misses(choice.items, content, (target, near), again, liked) == best
    goals = {goal.name: goal for goal in choice.goals}
    names = ["cards", "seen", "target", *(["liked"] if liked else []), "level", "topic", "share"]
    assert list(goals) == names
    whole = {"target": 200 * taken, "share": 200 * taken}
    for name, least in zip(
        ("seen", "target", "liked", "level", "topic", "share"), best, strict=True
    ):
        if name in goals:
            size = whole.get(name, 1)
            assert round(goals[name].reached * size) == round(goals[name].bound * size) == least


@settings(deadline=None, max_examples=100)
@given(contents(), st.integers(1, 9))
def test_with_any_level_and_weights_topics_go_first_and_then_the_easiest(content, count):
    items, shares, _seen = content
    weights = {"tides": 2, "zones": 1}
    choice = choose(
        items,
        count=count,
        seed="s",
        target=1.0,
        share=lambda item: shares[item],
        topics=weights,
        any_level=True,
    )
    pinned = {item for item in items if item.team}
    taken = len(choice.items)

    def missed(chosen):
        present = {item.topic for item in items}
        parts = {topic: weights.get(topic.casefold(), 0) for topic in TOPICS if topic in present}
        whole = sum(parts.values()) or 1
        wanted = {topic: taken * part / whole for topic, part in parts.items()}
        steps = sum(round(200 * shares[item]) for item in chosen)
        return strays(wanted, chosen, lambda item: item.topic), 200 * taken - steps

    best = min(missed(c) for c in combinations(items, taken) if pinned <= set(c))
    assert missed(choice.items) == best


@settings(deadline=None, max_examples=150)
@given(contents(), st.integers(30, 100), st.integers(0, 3), st.sampled_from([0, 30, 50]), st.data())
def test_no_larger_deck_meets_the_wishes(content, target, near, percent, data):
    items, shares, seen = content
    least = data.draw(st.integers(1, len(items)))
    pinned = {item for item in items if item.team}
    again = Again(frozenset(item.key for item in seen), percent)
    liked = seen[::2]
    found = most_cards(
        items,
        least=least,
        most=len(items),
        target=target / 100,
        near=near / 100,
        share=lambda item: shares[item],
        again=again,
        liked=liked,
    )
    meeting = [
        (len(set(liked) & set(chosen)), count)
        for count in range(least, len(items) + 1)
        for chosen in combinations(items, count)
        if pinned <= set(chosen) and misses(chosen, content, (target, near), again)[:2] == (0, 0)
    ]
    assert found == max(meeting, default=(0, None))[1]


@settings(deadline=None, max_examples=60)
@given(contents(most=6), st.integers(2, 5), st.integers(60, 95))
def test_what_is_to_be_written_would_do_and_no_fewer_items_would(content, count, target):
    items, shares, seen = content
    wishes = {"target": target / 100, "near": 0.01, "seed": "s"}
    again = Again(frozenset(item.key for item in seen), 30)

    def met(more):
        given = shares | {item: item.level.expected_share for item in more}
        choice = choose(
            [*items, *more], count=count, share=lambda item: given[item], again=again, **wishes
        )
        held = {goal.name: goal.reached for goal in choice.goals}
        return held["cards"] == held["seen"] == held["target"] == 0, choice

    done, choice = met([])
    told = [line for line in choice.advice if line.startswith("Write ")]
    if choice.goals[0].reached:
        return
    assert len(told) <= (not done)
    found = re.findall(r"(\d+) more (\w+) items?(?: in (\w+))?", told[0]) if told else []
    fewest = sum(int(number) for number, _level, _topic in found)
    if told:
        rows = [(level, topic) for number, level, topic in found for _ in range(int(number))]
        written = [
            card(100 + n, Level[level.upper()], topic or items[0].topic)
            for n, (level, topic) in enumerate(rows)
        ]
        assert met(written)[0]
    for number in range(1, min(fewest, MOST_TRIED) if told else MOST_TRIED):
        for levels in product(Level, repeat=number):
            more = [card(100 + n, level) for n, level in enumerate(levels)]
            assert done or not met(more)[0]
