"""Rivals stand apart wherever there is a way."""

from itertools import combinations, product

from hypothesis import example, given
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


# three strangers leave room for one of the pair beside the one with two rivals, if it stands back
@example(([{1, 2}, {0}, {0}, {4}, {3}], [3, 2]))
@example(([{1, 2}, {0, 2}, {0, 1}], [1, 2]))
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


def test_rivals_that_must_meet_meet_as_few_as_can_be():
    # four items that are all each other's rivals, in two rooms: two and two are two pairs, and
    # three and one would be three
    four = [set(range(4)) - {item} for item in range(4)] + [set() for _ in range(4)]
    parts = spread(four, [4, 4])
    assert [len(part) for part in parts] == [4, 4]
    assert [len(part & set(range(4))) for part in parts] == [2, 2]


def test_a_search_that_would_take_years_is_given_up():
    # forty items in two camps find room in a great many ways, and seven rivals then in none
    camps = [set(range(20, 40)) if item < 20 else set(range(20)) for item in range(40)]
    seven = [set(range(40, 47)) - {item} for item in range(40, 47)]
    parts = spread([*camps, *seven, *[set()] * 13], [10] * 6)
    assert [len(part) for part in parts] == [10] * 6
