"""What marks say in words, whole sentences, and where each begins to be said."""

import pytest
from support.items import item
from support.marking import TEAMS, deck, for_class, in_rounds

from cards.item import Level
from decks.marks.estimate import Belief
from decks.marks.forms import blanks_of
from decks.marks.marked import Count, MarkedGuide, Marks
from decks.marks.results import ItemResult, results
from decks.marks.summary import (
    Sentence,
    is_key_doubtful,
    is_still_missed,
    needs_lesson,
    sentences,
    two_places,
)
from decks.recipe import Dealing, GuideFor
from decks.words import percent


def counted(made, *counts):
    """Marks of the cards in their order: right and tries each."""
    pairs = zip(made.cards, counts, strict=False)
    return Marks(tuple(Count(card.item.key, *count) for card, count in pairs))


def told(made, marks):
    return sentences(results(made, marks))


def class_papers(made, rows):
    keys = tuple(one.key for one in blanks_of(made.guides[0]).values())
    return Marks(guides=(MarkedGuide(None, keys, tuple(rows)),))


def test_an_item_that_all_have_and_one_that_is_still_missed_are_told_in_whole_sentences():
    made = for_class(3)
    answers = [card.item.answer for card in made.hands[0]]
    # all are easy: (7.2 + 2) / (8 + 4) = .77 is expected of the second from now on
    assert told(made, counted(made, (4, 4), (2, 4))) == [
        Sentence("6 of 8 answers were right: 75 %."),
        Sentence(f"Missed most: 2 ({answers[1]}) 2 of 4.", to_do=True),
        Sentence("Nobody who was asked missed 1."),
        Sentence("1 of 3 items has no marks."),
    ]


def test_where_nobody_missed_anything_that_is_all_there_is_to_say():
    made = for_class(3)
    assert told(made, counted(made, (4, 4), (5, 5), (7, 7))) == [
        Sentence("16 of 16 answers were right: 100 %."),
        Sentence("Nobody missed any of it."),
    ]


def test_five_items_are_named_and_the_others_counted():
    made = in_rounds(8)
    named = [f"{card.label} ({card.item.answer}) 0 of 9" for card in made.cards]

    def missed(count):
        nothing_else = [(0, 9)] * count + [(5, 6)] * (8 - count)
        (one,) = (
            each for each in told(made, counted(made, *nothing_else)) if "Missed" in each.text
        )
        return one.text

    assert missed(5).endswith("0 of 9.")
    assert missed(6).endswith("0 of 9; and 1 more.")
    assert missed(8).endswith("0 of 9; and 3 more.")
    assert sum(name in missed(8) for name in named) == 5


def test_a_long_answer_is_named_by_its_beginning():
    long = item("What is low water?", "the lowest level that the sea reaches", level=Level.HARD)
    made = in_rounds(chosen=[long])
    assert told(made, counted(made, (2, 4)))[1].text == (
        "Missed most: 1 (the lowest level that the…) 2 of 4."
    )


def test_topics_that_need_a_lesson_are_told_from_the_weakest():
    """Newcombe 1998, Table I: 0/20 is 0-.1611, 15/148 .0624-.1605, 81/263 .2553-.3662."""
    topics = ("Zones", "", "Life")
    made = in_rounds(
        chosen=[item(f"Clue {n}", f"word{n}", row=n, topic=topic) for n, topic in enumerate(topics)]
    )
    counts = {"Zones": (0, 20), "": (15, 148), "Life": (81, 263)}
    marks = counted(made, *[counts[card.item.topic] for card in made.cards])
    assert [one for one in told(made, marks) if "lesson" in one.text] == [
        Sentence("Zones needs another lesson: 0 % right (0–16 %).", to_do=True),
        Sentence("What has no topic needs another lesson: 10 % right (6–16 %).", to_do=True),
        Sentence("Life needs another lesson: 31 % right (26–37 %).", to_do=True),
    ]


def test_a_lesson_without_topics_is_told_of_as_a_whole():
    made = in_rounds(chosen=[item(f"Clue {n}", f"word{n}", row=n, topic="") for n in range(3)])
    first = next(one for one in told(made, counted(made, *[(5, 20)] * 3)) if one.to_do)
    assert first.text == "All of it needs another lesson: 25 % right (16–37 %)."


@pytest.mark.parametrize(("high", "needs"), [(0.7999, True), (0.80, False), (0.81, False)])
def test_a_topic_that_may_have_reached_eighty_per_cent_needs_no_lesson(high, needs):
    assert needs_lesson((0.4, high)) is needs


def test_a_topic_without_marks_needs_no_lesson():
    assert not needs_lesson(None)


@pytest.mark.parametrize(
    ("right", "tries", "missed"),
    [(0, 0, False), (2, 5, True), (3, 5, False), (59, 100, True), (60, 100, False)],
)
def test_three_of_five_are_not_too_few_right(right, tries, missed):
    """The item is of medium level: no more than (6 + right) / (8 + tries) is expected of it."""
    made = in_rounds(chosen=[item()])
    (one,) = results(made, counted(made, (right, tries))).items
    assert is_still_missed(one) is missed


def test_what_most_likely_is_known_again_is_not_missed():
    made = in_rounds(chosen=[item()])
    before = {made.cards[0].item.key: Belief(0.875, 8)}
    # (7 + 1) / (8 + 2) = .80, and (7 + 1) / (8 + 3) = .73
    for count, missed in (((1, 2), False), ((1, 3), True)):
        (one,) = results(made, counted(made, count), before=before).items
        assert is_still_missed(one) is missed


@pytest.mark.parametrize(
    ("papers", "lower", "rest", "doubtful"),
    [
        # one over the root of 16 is .25, of 9 it is .3333
        (17, -0.10, -0.2501, True),
        (17, -0.10, -0.25, False),
        (17, -0.10, 0.10, False),
        (10, -0.10, -0.34, True),
        (10, -0.10, -0.33, False),
        (17, -0.01, -0.90, True),
        (17, 0.0, -0.90, False),
        (17, 0.10, -0.90, False),
        (9, -0.90, -0.90, False),
        (17, None, -0.90, False),
        (17, -0.90, None, False),
    ],
)
def test_a_key_is_doubted_where_both_figures_are_below_nought_by_more_than_chance(
    papers, lower, rest, doubtful
):
    belief = Belief(0.5, 8)
    one = ItemResult("7", item(), 5, 10, None, belief, belief, None, papers, lower, rest)
    assert is_key_doubtful(one) is doubtful


def test_a_key_to_look_at_is_something_to_do():
    made = for_class(3)
    # who has the two others has the first wrong; the first is named by its card
    marks = class_papers(made, [(0, 1, 1)] * 5 + [(1, 0, 0)] * 5)
    first = next(iter(blanks_of(made.guides[0]).values()))
    card = next(card for card in made.hands[0] if card.item == first)
    assert told(made, marks)[1] == Sentence(
        f"Look at the key of {card.label} ({first.answer}): those who did better on the rest did "
        "worse here, perhaps by chance.",
        to_do=True,
    )


def test_papers_that_are_all_alike_tell_no_student_from_others():
    made = for_class(3)
    assert told(made, class_papers(made, [(1, 1, 0)] * 10))[-1] == Sentence(
        "All scores on the study guide are alike, so it tells no student from others."
    )


FOUR = [(1, 1), (1, 1), (0, 0), (1, 0)]
"""Scores 2, 2, 0, 1 vary by 11/16, the blanks by 3/16 and 4/16: KR-20 is 2 (1 - 7/11) = .73, and
the error the root of 11/16 · (1 - 8/11) = 3/16, .43."""


def test_how_far_a_score_may_be_off_is_told_with_whose_guide_it_is():
    made = deck(2, deal=Dealing.COPIES, guide=GuideFor.TEAM)
    keys = tuple(card.item.key for card in made.hands[0])
    guides = tuple(MarkedGuide(team.name, keys, tuple(FOUR)) for team in TEAMS[:3])
    assert told(made, Marks(guides=guides))[-1] == Sentence(
        "A score on the guide of Heron, Otter and Samphire may be off by about 0.4 of 2 points "
        "(standard error; KR-20 .73, 12 papers)."
    )


@pytest.mark.parametrize(
    ("count", "papers"),
    [(1, "1 whole paper"), (2, "2 whole papers"), (9, "9 whole papers")],
)
def test_from_fewer_than_ten_papers_no_blank_is_judged(count, papers):
    made = for_class(2)
    assert told(made, class_papers(made, [(1, 0)] * count))[-1] == Sentence(
        f"There are too few papers to say how single blanks work: {papers} so far, and it takes 10."
    )


def test_papers_that_are_half_marked_are_no_whole_ones():
    made = for_class(2)
    assert told(made, class_papers(made, [(1, None)] * 12))[-2] == Sentence(
        "There are too few papers to say how single blanks work: "
        "no whole paper so far, and it takes 10."
    )


def test_of_several_guides_with_too_few_papers_the_most_is_told():
    made = deck(8)
    first, second = (
        MarkedGuide(guide.team, tuple(one.key for one in blanks_of(guide).values()), rows)
        for guide, rows in zip(made.guides, [((1, 0), (0, 1), (1, 1)), ((0, 0),)], strict=False)
    )
    assert (len(first.items), len(second.items)) == (2, 2)
    assert told(made, Marks(guides=(first, second)))[-2:] == [
        Sentence(
            "There are too few papers to say how single blanks work: "
            "at most 3 whole papers of a guide so far, and it takes 10."
        ),
        Sentence("4 of 8 items have no marks."),
    ]


def test_a_share_is_in_whole_per_cent_and_a_dash_where_there_is_none():
    assert [percent(share) for share in (0.0, 0.504, 5 / 8, 1.0, None)] == [
        *("0 %", "50 %", "63 %", "100 %", "–")
    ]


def test_a_figure_that_rounds_to_nought_has_no_sign():
    assert [two_places(figure) for figure in (-0.0049, -0.005, -0.0051)] == [".00", "−.01", "−.01"]
