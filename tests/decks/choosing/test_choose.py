"""k of n items: what is in, how near to what was wanted, and what to add where it is not."""

import re
import subprocess
import sys
from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TOPICS, card, decks

from cards.item import Level
from decks.amounts import ALL
from decks.choosing import choose

SHORE = [card(n, 1 + n % 3, TOPICS[n // 3 % 5]) for n in range(60)]  # four of each level and topic


def levels(choice):
    held = Counter(item.level for item in choice.items)
    return [held[level] for level in Level]


def reached(choice):
    return {goal.name: goal.reached for goal in choice.goals}


@settings(deadline=None)
@given(decks(pins=True), st.integers(1, 45), st.text(max_size=3), st.data())
def test_the_choice_has_its_size_its_order_and_all_that_must_be_in(deck, count, seed, data):
    items, _teams = deck
    required = data.draw(st.sets(st.sampled_from(items))) if items else set()
    choice = choose(items, count=count, seed=seed, required=required)
    must = {item for item in items if item.team} | required
    assert len(choice.items) == min(max(count, len(must)), len(items))
    assert must <= set(choice.items)
    assert list(choice.items) == [item for item in items if item in set(choice.items)]
    assert all(goal.bound <= goal.reached for goal in choice.goals)


def test_a_mix_is_met():
    choice = choose(SHORE, count=20, seed="s", mix=(40, 40, 20))
    assert levels(choice) == [8, 8, 4]
    assert choice.advice == ()
    assert {Counter(item.topic for item in choice.items)[topic] for topic in TOPICS} == {4}


def test_a_mix_that_divides_nothing_goes_by_the_largest_remainder():
    # 10 cards at 45/35/20 are 4.5, 3.5 and 2: the shares between lie at 4 or 5, 3 or 4, and 2
    easy, medium, hard = levels(choose(SHORE, count=10, seed="s", mix=(45, 35, 20)))
    assert (easy, medium, hard) in ((5, 3, 2), (4, 4, 2))
    # 9.2, 5.4 and 5.4 of 20: the two remainders of 0.4 go before that of 0.2, by one card
    assert levels(choose(SHORE, count=20, seed="s", mix=(46, 27, 27)))[0] == 9


def test_without_marks_the_share_follows_the_mix():
    choice = choose(SHORE, count=20, seed="s", mix=(40, 40, 20))
    # 8 at .90, 8 at .75, 4 at .60
    assert choice.share == pytest.approx((8 * 0.9 + 8 * 0.75 + 4 * 0.6) / 20)
    assert reached(choice)["share"] == 0


def test_shares_from_marks_come_next_to_the_target():
    shares = {item: 0.4 + 0.01 * (n * 7 % 50) for n, item in enumerate(SHORE)}
    for target in (0.6, 0.65, 0.7):
        choice = choose(SHORE, count=20, seed="s", target=target, share=lambda item: shares[item])
        assert choice.share == pytest.approx(target)
        assert reached(choice) == {"cards": 0, "level": 0, "topic": 0, "share": 0}


def test_all_are_all():
    choice = choose(SHORE, count=ALL, seed="s")
    assert choice.items == tuple(SHORE)
    assert set(reached(choice).values()) == {0}


def test_all_of_a_mix_are_as_many_as_meet_it():
    # 20 easy at 40 % are at most 51 cards: 20.4, 20.4 and 10.2 round to 20, 20 and 11; with 52
    # the hard would have to be 12 where 10.4 are wanted
    choice = choose(SHORE, count=ALL, seed="s", mix=(40, 40, 20))
    assert levels(choice) == [20, 20, 11]
    assert reached(choice)["level"] == 0


def test_nothing_to_choose_from():
    choice = choose([], count=5, seed="s")
    assert choice.items == ()
    assert choice.advice == ("There are 0 items for the 5 cards asked for: 5 more would do.",)


def test_fewer_items_than_cards_are_told_of():
    choice = choose(SHORE, count=61, seed="s", mix=(1, 1, 1))
    assert choice.items == tuple(SHORE)
    assert choice.advice == ("There are 60 items for the 61 cards asked for: 1 more would do.",)


def test_a_negative_count_is_refused():
    with pytest.raises(ValueError, match="not negative"):
        choose(SHORE, count=-1, seed="s")


def test_too_few_hard_items_the_nearest_is_taken_and_the_missing_are_named():
    easy = [card(n, 1 + n % 2, TOPICS[n // 2 % 2]) for n in range(20)]
    hard = [card(n, 3, "Zones") for n in range(20, 25)]
    choice = choose([*easy, *hard], count=20, seed="s", mix=(30, 20, 50))
    # ten hard cards are wanted, five are there; medium is nearest in their place
    assert levels(choice) == [6, 9, 5]
    assert choice.goals[1].reached == choice.goals[1].bound == 10  # five lacking, five too many
    (advice,) = choice.advice
    assert advice == "5 more hard items in Tides would meet the mix."


LEVEL_OF = {level.name.lower(): level for level in Level}


@settings(deadline=None, max_examples=60)
@given(
    decks(most_cards=30),
    st.integers(1, 25),
    st.tuples(*[st.integers(0, 4)] * 3).filter(any),
)
def test_adding_what_is_advised_meets_the_mix_and_no_fewer_would(deck, count, mix):
    items, _teams = deck
    choice = choose(items, count=count, seed="s", mix=mix)
    met = reached(choice)["level"] == 0
    told = [advice for advice in choice.advice if advice.endswith("would meet the mix.")]
    assert len(told) == (not met and len(items) >= count)
    if told:
        found = re.findall(r"(\d+) more (\w+) items?(?: in (\w+))?", told[0])
        more = [
            (LEVEL_OF[level], topic or items[0].topic)
            for number, level, topic in found
            for _ in range(int(number))
        ]
        added = [card(100 + n, level, topic) for n, (level, topic) in enumerate(more)]
        assert reached(choose([*items, *added], count=count, seed="s", mix=mix))["level"] == 0
        for left_out in range(len(added)):
            fewer = [*items, *added[:left_out], *added[left_out + 1 :]]
            assert reached(choose(fewer, count=count, seed="s", mix=mix))["level"] > 0


def test_items_that_are_set_to_a_team_can_stand_in_the_way_of_a_mix():
    items = [card(n, 1, team="Heron") for n in range(9)] + [card(n, 3) for n in range(9, 30)]
    choice = choose(items, count=20, seed="s", mix=(30, 0, 70))
    assert levels(choice) == [9, 0, 11]
    (advice,) = choice.advice
    assert advice == (
        "9 easy items are set to be in, where the mix has room for 6. Change the mix, or let fewer "
        "be set to a team (column Team) or come back as missed."
    )


def test_more_items_set_to_a_team_than_cards_are_all_in():
    items = [card(n, team="Heron") for n in range(6)]
    choice = choose(items, count=4, seed="s")
    assert choice.items == tuple(items)
    assert choice.advice[0].startswith("6 items are set to be in, more than the 4 cards asked for.")


def test_topics_give_way_to_the_mix_and_that_is_told():
    items = [card(n, 1, "Tides") for n in range(10)] + [card(n, 3, "Zones") for n in range(10, 20)]
    choice = choose(items, count=10, seed="s", mix=(80, 0, 20))
    assert Counter(item.topic for item in choice.items) == {"Tides": 8, "Zones": 2}
    assert reached(choice)["topic"] == 6
    (advice,) = choice.advice
    assert "Zones" in advice


def test_the_seed_alone_decides_between_choices_that_are_as_good():
    choices = {seed: choose(SHORE, count=20, seed=seed).items for seed in "abcdefgh"}
    assert len(set(choices.values())) > 5
    assert choose(SHORE, count=20, seed="a").items == choices["a"]


def test_the_choice_does_not_hang_on_the_hash_seed():
    program = (
        "import sys; sys.path[:0] = ['tests']\n"
        "from strategies import TOPICS, card\n"
        "from decks.choosing import choose\n"
        "items = [card(n, 1 + n % 3, TOPICS[n // 3 % 5]) for n in range(60)]\n"
        "chosen = choose(items, count=20, seed='s', mix=(3, 2, 2), required=items[:3])\n"
        "print([item.prompt for item in chosen.items])"
    )
    printed = {
        subprocess.run(
            [sys.executable, "-c", program],
            capture_output=True,
            check=True,
            env={"PYTHONHASHSEED": seed, "PYTHONPATH": "."},
        ).stdout
        for seed in ("0", "1", "2")
    }
    assert len(printed) == 1
