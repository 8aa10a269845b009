"""Rivals stand apart wherever there is a way."""

from itertools import combinations, product

from hypothesis import given
from hypothesis import strategies as st

from decks.bank.apart import spread


@st.composite
def crowds(draw):
    """Draw up to seven items, which of them are rivals, and rooms that hold all of them."""
    count = draw(st.integers(1, 7))
    pairs = draw(st.sets(st.sampled_from([*combinations(range(7), 2)])))
    rivals = [set() for _ in range(count)]
    for one, other in pairs:
        if other < count:
            rivals[one].add(other)
            rivals[other].add(one)
    parts = draw(st.integers(1, 3).filter(lambda parts: parts <= count))
    return rivals, [count // parts + (n < count % parts) for n in range(parts)]


def there_is_a_way(rivals, rooms):
    return any(
        all(way.count(part) == room for part, room in enumerate(rooms))
        and not any(way[one] == way[other] for one, held in enumerate(rivals) for other in held)
        for way in product(range(len(rooms)), repeat=len(rivals))
    )


@given(crowds())
def test_rivals_are_kept_apart_exactly_when_they_can_be(crowd):
    rivals, rooms = crowd
    parts = spread(rivals, rooms)
    assert [len(part) for part in parts] == rooms
    assert sorted(item for part in parts for item in part) == [*range(len(rivals))]
    apart = not any(part & rivals[item] for part in parts for item in part)
    assert apart == there_is_a_way(rivals, rooms)


def test_a_crowd_that_cannot_be_kept_apart_is_spread_all_the_same():
    everyone = [set(range(60)) - {item} for item in range(60)]
    parts = spread(everyone, [10] * 6)
    assert [len(part) for part in parts] == [10] * 6
