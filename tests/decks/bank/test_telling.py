"""What the answer key says of a part."""

import pytest
from strategies import card

from decks.bank import Pool, make_guide
from decks.bank.telling import about_cards, about_guessing, about_last_blank, about_solutions


def items_of(answers):
    rows = [text.split("|") for text in answers]
    return [
        card(number, answer=answer, also_right=tuple(more))
        for number, (answer, *more) in enumerate(rows)
    ]


def part(*answers, extra=(), asked=None):
    items = items_of(answers)
    pool = [card(100 + number, answer=word) for number, word in enumerate(extra)]
    extra_words = len(extra) if asked is None else asked
    (only,) = make_guide(None, items, Pool(pool), extra_words=extra_words, seed="shore").parts
    return only


EIGHT = tuple(f"word {number}" for number in range(8))


def test_eight_blanks_and_ten_words():
    # 10!/2! = 1,814,400 ways to fill eight blanks with ten words
    assert about_guessing(part(*EIGHT, extra=("eel", "goby"))) == (
        "Guessing alone earns 0.8 of 8 on average; all right by luck: 1 time in 1,814,400."
    )


@pytest.mark.parametrize(
    ("answers", "extra", "odds"),
    [
        (("ebb",), (), "1.0 of 1 on average; right by luck: always."),
        (("ebb",), ("crab", "eel"), "0.3 of 1 on average; right by luck: 1 time in 3."),
        (("ebb", "flood"), (), "1.0 of 2 on average; all right by luck: 1 time in 2."),
        # the twins are right once in two each, and so is the third: 1 in 8
        (("ebb", "Ebb", "flood"), (), "1.5 of 3 on average; all right by luck: 1 time in 8."),
        # of six ways to fill three blanks two are right
        (("a|b", "b|a", "c"), (), "1.7 of 3 on average; all right by luck: 1 time in 3."),
        # 2 · 2 · 1 of 3 · 3 · 3 · 3 ways: a word may be used again, and two blanks accept two
        (
            ("ebb|b", "Ebb|b", "b", "c"),
            (),
            "2.0 of 4 on average; all right by luck: about 1 time in 20.",
        ),
        # 2 · 2 · 2 · 3 of 3 · 3 · 3 · 3 ways
        (
            ("ebb|b", "Ebb|b", "b|ebb", "c|b|ebb"),
            (),
            "3.0 of 4 on average; all right by luck: about 1 time in 3.4.",
        ),
    ],
)
def test_what_guessing_earns(answers, extra, odds):
    assert about_guessing(part(*answers, extra=extra)) == f"Guessing alone earns {odds}"


def test_a_chance_beyond_imagining_is_not_counted_out():
    ten = [f"word {number}" for number in range(10)]
    told = about_guessing(part(*ten, extra=[f"more {number}" for number in range(20)]))
    assert told.endswith("less than 1 time in a thousand million.")


def test_without_extra_words_the_last_blank_is_given_away():
    told = about_last_blank(part(*EIGHT), asked=0)
    assert told.startswith("A student who knows 7 of 8 gets the last for nothing: ask for two")
    assert "Extra words on the Deck sheet" in told


def test_where_the_unit_has_no_more_words_none_are_asked_for():
    told = about_last_blank(part(*EIGHT, asked=2), asked=2)
    assert told.endswith(
        "gets the last for nothing: the unit has no other words that could be extra words here."
    )


@pytest.mark.parametrize(
    "silent", [part(*EIGHT, extra=("eel",)), part("ebb"), part("ebb", "Ebb", "flood")]
)
def test_nothing_is_said_where_nothing_is_given_away(silent):
    assert about_last_blank(silent, asked=0) == ""


def test_how_many_solutions_there_are():
    assert about_solutions(part("ebb", "flood")) == "Each clue has one fitting word."
    assert about_solutions(part("ebb")) == ""


def numbers(written, *answers):
    order = [item.answer for item in written.blanks]
    return sorted(order.index(answer) + 1 for answer in answers)


def test_a_clue_with_two_words_of_which_one_is_needed_elsewhere():
    one_way = part("crab|animal", "animal", "flood")
    (number,) = numbers(one_way, "crab")
    assert about_solutions(one_way) == (
        f"Blank {number} has more than one right word, but only one way fills every blank."
    )
    two = part("crab|animal", "animal|being", "being", "flood")
    one, other = numbers(two, "crab", "animal")
    assert about_solutions(two) == (
        f"Blanks {one} and {other} have more than one right word, but only one way fills every "
        "blank."
    )


def test_answers_that_can_be_swapped_are_named_by_their_blanks():
    swapped = part("crab", "ebb|falling tide", "falling tide|ebb", "silt")
    first, second = numbers(swapped, "ebb", "falling tide")
    assert about_solutions(swapped) == (
        f"Blanks {first} and {second}: accept their answers either way round."
    )
    for words in (("ebb|rip", "rip|neap", "neap|ebb"), ("ebb|neap", "rip|ebb", "neap|rip")):
        round_about = part("crab", *words)
        one, two, three = numbers(round_about, "ebb", "rip", "neap")
        assert about_solutions(round_about) == (
            f"Blanks {one}, {two} and {three}: accept their answers changed round."
        )
    again = part("twelve", "Twelve|dozen", "dozen")
    (number,) = numbers(again, "Twelve")
    assert about_solutions(again) == f"Blank {number}: accept “dozen” too."


def test_one_sentence_for_each_pair():
    pairs = part("ebb|neap", "neap|ebb", "crab|whelk", "whelk|crab")
    both = [numbers(pairs, "ebb", "neap"), numbers(pairs, "crab", "whelk")]
    sentences = [
        f"Blanks {one} and {other}: accept their answers either way round."
        for one, other in sorted(both)
    ]
    assert about_solutions(pairs) == " ".join(sentences)


def gathered(*answers, most):
    return make_guide("Otter", items_of(answers), Pool([]), extra_words=0, seed="shore", most=most)


def test_cards_of_one_part_are_told_by_the_numbers_of_its_blanks():
    guide = gathered("crab", "ebb|neap", "neap|ebb", "silt", most=10)
    one, other = numbers(guide.parts[0], "ebb", "neap")
    assert about_cards(guide) == f"Blanks {one} and {other}: accept their answers either way round."


def test_cards_of_several_parts_are_told_by_part_and_blank():
    guide = gathered("ebb|neap", "neap|ebb", "crab|whelk", "whelk|crab", most=2)
    assert len(guide.parts) == 2
    place = {
        blank.answer: f"part {n}, blank {number}"
        for n, one in enumerate(guide.parts, start=1)
        for number, blank in enumerate(one.blanks, start=1)
    }
    sentences = set()
    for pair in (("ebb", "neap"), ("crab", "whelk")):
        first, last = sorted(place[answer] for answer in pair)
        sentences.add(f"P{first[1:]} and {last}: accept their answers either way round.")
    told = about_cards(guide)
    assert {f"{sentence}." for sentence in told.rstrip(".").split(". ")} == sentences
