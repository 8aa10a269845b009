"""A part is sound when the clues leave one way to fill it; what spoils it is named by cell."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import card, decks

from cards.finding import Severity
from decks.bank import Pool, findings_about, has_one_word_each, is_sound, make_guide, swappable
from decks.bank.guide import SharedBank


def guide(*answers, extra_words=0):
    """Write the guide of words, each with what else is right: `ebb` or `ebb|falling tide`."""
    items = []
    for number, text in enumerate(answers):
        answer, *more = text.split("|")
        items.append(card(number, answer=answer, also_right=tuple(more)))
    return make_guide("Otter", items, Pool(items), extra_words=extra_words, seed="shore")


def part(*answers):
    (only,) = guide(*answers).parts
    return only


def answers_of(swaps):
    return {frozenset(item.answer for item in swap.items) for swap in swaps}


def test_a_part_in_which_no_word_fits_another_clue_is_sound():
    plain = part("crab", "ebb|falling tide", "flood|rising tide")
    assert is_sound(plain)
    assert has_one_word_each(plain)
    assert swappable(plain) == []
    assert findings_about(guide("crab", "ebb|falling tide", "flood")) == ()


def test_a_word_that_fits_another_clue_leaves_one_solution_as_long_as_its_own_needs_it():
    one_way = part("crab|shore animal", "shore animal", "flood")
    assert is_sound(one_way)
    assert not has_one_word_each(one_way)
    assert swappable(one_way) == []


def test_two_answers_that_fit_both_clues_are_named_with_their_cells():
    words = ("crab", "ebb|falling tide", "flood", "falling tide|ebb")
    assert not is_sound(part(*words))
    assert answers_of(swappable(part(*words))) == {frozenset({"ebb", "falling tide"})}
    (found,) = findings_about(guide(*words))
    assert (found.code, found.severity) == ("two-answers-fit", Severity.WARNING)
    assert str(found.place) == "Vocabulary B5"
    assert found.found == "clue 3"
    assert "“falling tide” and “ebb” (Vocabulary B3) can be swapped" in found.wrong
    assert found.mend.startswith("Change one of the clues")


@pytest.mark.parametrize(
    "words",
    [
        ("ebb|flood", "flood|slack", "slack|ebb", "crab"),
        ("ebb|slack", "flood|ebb", "slack|flood", "crab"),
    ],
)
def test_three_answers_that_go_round_are_named_together(words):
    assert answers_of(swappable(part(*words))) == {frozenset({"ebb", "flood", "slack"})}
    (found,) = findings_about(guide(*words))
    assert str(found.place) == "Vocabulary B4"
    assert "“slack” and “ebb” (Vocabulary B2), “flood” (Vocabulary B3) can change" in found.wrong


def test_every_clue_concerned_is_named():
    words = ("ebb|flood", "flood|ebb", "crab|whelk", "whelk|crab", "silt")
    pairs = {frozenset({"ebb", "flood"}), frozenset({"crab", "whelk"})}
    assert answers_of(swappable(part(*words))) == pairs


def test_where_words_may_be_used_again_a_second_fitting_word_is_enough():
    again = part("twelve", "Twelve", "dozen", "six|half a dozen")
    assert again.reusable
    assert is_sound(again)
    spoilt = part("twelve", "Twelve|dozen", "dozen", "six")
    assert not is_sound(spoilt)
    (swap,) = swappable(spoilt)
    assert (swap.items[0].answer, swap.word) == ("Twelve", "dozen")
    (found,) = findings_about(guide("twelve", "Twelve|dozen", "dozen", "six"))
    assert str(found.place) == "Vocabulary B3"
    assert "both “Twelve” and “dozen” fit here" in found.wrong


def test_a_word_left_over_that_fits_a_clue_is_named():
    items = (card(0, answer="ebb", also_right=("falling tide",)), card(1, answer="crab"))
    bank = ("crab", "ebb", "falling tide")
    loose = SharedBank(items, bank, reusable=False)
    (swap,) = swappable(loose)
    assert (swap.items, swap.word) == ((items[0],), "falling tide")


def test_a_word_left_over_and_answers_that_can_be_swapped_are_both_named():
    items = (
        card(0, answer="ebb", also_right=("rip", "falling tide")),
        card(1, answer="rip", also_right=("ebb",)),
    )
    loose = SharedBank(items, ("ebb", "falling tide", "rip"), reusable=False)
    over, pair = swappable(loose)
    assert (over.items, over.word) == ((items[0],), "falling tide")
    assert (set(pair.items), pair.word) == (set(items), "")


def test_rivals_that_stand_in_different_parts_are_no_finding():
    others = [f"word {number}" for number in range(10)]
    apart = guide(*others, "ebb|falling tide", "falling tide|ebb")
    assert findings_about(apart) == ()
    (found,) = findings_about(apart, gathered=True)
    assert "“falling tide” and “ebb” (Vocabulary B12) can be swapped" in found.wrong


@pytest.mark.parametrize(
    ("count", "named"),
    [
        (10, [f"“word {number}” (Vocabulary B{number + 2})" for number in range(9)]),
        (
            11,
            [*(f"“word {n}” (Vocabulary B{n + 2})" for n in range(3)), "“word 3” (Vocabulary B5)"],
        ),
    ],
)
def test_of_a_long_round_only_a_few_are_named(count, named):
    ring = guide(*(f"word {n}|word {(n + 1) % count}" for n in range(count)))
    (found,) = findings_about(ring, gathered=True)
    more = f" and {count - 1 - len(named)} more" if len(named) < count - 1 else ""
    others = ", ".join(named) + more
    assert f"“word {count - 1}” and {others} can change places" in found.wrong


@settings(deadline=None)
@given(decks(), st.integers(0, 3))
def test_items_that_share_no_answer_make_no_finding(deck, extra_words):
    items, _teams = deck
    written = make_guide(None, items, Pool(items), extra_words=extra_words, seed="shore")
    assert findings_about(written) == ()
    assert all(has_one_word_each(part) for part in written.parts)


WORDS = ("ebb", "flood", "slack", "neap", "spring", "surge")


@given(
    st.lists(st.frozensets(st.sampled_from(WORDS), max_size=3), min_size=6, max_size=6),
    st.booleans(),
)
def test_a_part_has_swaps_exactly_when_it_is_not_sound(also, twins):
    items = [card(n, answer=WORDS[n], also_right=tuple(sorted(a))) for n, a in enumerate(also)]
    items += [card(6, answer=WORDS[0].upper())] if twins else []
    (written,) = make_guide(None, items, Pool(items), extra_words=0, seed="s").parts
    assert written.reusable == twins
    assert (swappable(written) == []) == is_sound(written)
    assert has_one_word_each(written) <= is_sound(written)


@pytest.mark.parametrize("count", [*range(1, 42), 99, 100, 101, 200])
def test_groups_of_at_most_ten_each_with_its_own_bank(count):
    items = [card(number) for number in range(count)]
    parts = make_guide(None, items, Pool(items), extra_words=2, seed="shore").parts
    sizes = [len(part.blanks) for part in parts]
    assert sum(sizes) == count
    assert len(sizes) == -(-count // 10)
    assert max(sizes) - min(sizes) <= 1
    for written in parts:
        assert {blank.answer for blank in written.blanks} <= set(written.bank)
        assert len(written.bank) == len(written.blanks) + min(2, count - len(written.blanks))
