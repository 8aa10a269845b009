"""Choosing against every choice there is: no choice comes nearer than the bound, goal by goal.

The proportions are those of Hamilton's method (largest remainder): never off by a whole seat, the
"quota rule" of apportionment (M. L. Balinski and H. P. Young, "Fair Representation", 1982; from
memory). That levels and topics can both keep to it, whatever the content, is the integrality of
network flows: the content's own proportions are a flow in fractions (L. R. Ford and D. R.
Fulkerson, "Flows in Networks", 1962; from memory).
"""

from itertools import combinations
from math import ceil, floor

from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card

from cards.item import Level
from decks.choosing import choose

MIXES = st.tuples(*[st.integers(0, 4)] * 3).filter(any)


@st.composite
def contents(draw, most=9):
    """Draw items with shares of their own, some of them pinned."""
    pins = st.sampled_from([None, None, None, TEAMS[0]])
    row = st.tuples(st.integers(1, 3), st.sampled_from(["Tides", "Zones", "Weed"]), pins)
    rows = draw(st.lists(row, min_size=1, max_size=most))
    items = [card(n, level, topic, team=team) for n, (level, topic, team) in enumerate(rows)]
    shares = draw(
        st.lists(st.integers(0, 200), min_size=len(items), max_size=len(items))
        if draw(st.booleans())
        else st.just([round(200 * item.level.expected_share) for item in items])
    )
    return items, dict(zip(items, [steps / 200 for steps in shares], strict=True))


def strays(wanted, chosen, value):
    """Return by how many cards the values lie outside what is wanted, rounded down and up."""
    total = 0
    for key, number in wanted.items():
        held = sum(value(item) == key for item in chosen)
        total += max(floor(number) - held, held - ceil(number), 0)
    return total


def misses(chosen, items, shares, mix, target):
    """Return how far a choice misses levels, topics and mean share, from their definitions."""
    count = len(chosen)
    mix = mix or [sum(item.level == level for item in items) for level in Level]
    levels = {level: count * part / sum(mix) for level, part in zip(Level, mix, strict=True)}
    topics = {
        topic: count * sum(item.topic == topic for item in items) / len(items)
        for topic in sorted({item.topic for item in items})
    }
    steps = sum(round(200 * shares[item]) for item in chosen)
    return (
        strays(levels, chosen, lambda item: item.level),
        strays(topics, chosen, lambda item: item.topic),
        abs(steps - round(200 * target * count)),
    )


@settings(deadline=None, max_examples=150)
@given(contents(), st.integers(1, 10), st.none() | MIXES, st.integers(0, 20))
def test_no_choice_of_all_comes_nearer(content, count, mix, twentieths):
    items, shares = content
    target = twentieths / 20
    choice = choose(
        items, count=count, seed="s", mix=mix, target=target, share=lambda item: shares[item]
    )
    pinned = {item for item in items if item.team}
    taken = min(max(count, len(pinned)), len(items))
    best = min(
        misses(chosen, items, shares, mix, target)
        for chosen in combinations(items, taken)
        if pinned <= set(chosen)
    )
    assert len(choice.items) == taken
    assert misses(choice.items, items, shares, mix, target) == best
    level, topic, share = choice.goals[1:]
    assert (level.reached, topic.reached) == (level.bound, topic.bound) == best[:2]
    assert round(share.reached * 200 * taken) == round(share.bound * 200 * taken) == best[2]


@settings(deadline=None, max_examples=60)
@given(
    st.lists(st.tuples(st.integers(1, 3), st.integers(0, 5)), min_size=1, max_size=80), st.data()
)
def test_levels_and_topics_always_keep_the_contents_proportions_within_one(rows, data):
    items = [card(n, level, f"Topic {topic}") for n, (level, topic) in enumerate(rows)]
    count = data.draw(st.integers(1, len(items)))
    choice = choose(items, count=count, seed="s")
    assert [goal.reached for goal in choice.goals[:3]] == [0, 0, 0]
    shares = {item: item.level.expected_share for item in items}
    assert misses(choice.items, items, shares, None, 0)[:2] == (0, 0)
    assert choice.advice == ()
