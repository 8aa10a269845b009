"""Every figure of one small class, worked out by hand or by another library."""

from math import sqrt

import pytest
from support.items import item
from support.marking import deck, for_class

from cards.item import Level
from decks.marks.credible import beta_cdf
from decks.marks.discrimination import corrected_point_biserial, upper_lower
from decks.marks.estimate import Belief
from decks.marks.figures import figures
from decks.marks.forms import blanks_of
from decks.marks.interval import wilson
from decks.marks.marked import Count, MarkedGuide, Marks
from decks.marks.results import results

KELP = item("What grows in forests?", "kelp", row=2, topic="Tides", level=Level.EASY)
CRAB = item("What runs sideways?", "crab", row=3, topic="Tides", level=Level.HARD)
WRACK = item("What pops underfoot?", "wrack", row=4, topic="", level=Level.MEDIUM)

PAPERS = ((0, 1, 1),) * 5 + ((1, 0, 0),) * 5 + ((1, None, None),)
"""Kelp, crab, wrack: who has both others has kelp wrong, as with a wrong key; one is half marked.

Of whole papers ten: five have 2 points, five have 1; the mean is 1.5, the variance .25. Each blank
varies by .5 · .5 = .25, so KR-20 is 3/2 · (1 - .75/.25) = -3, and the error is that of no
reliability at all: the standard deviation of scores, .5.
"""


def small_class():
    """The deck and its marks: the papers, and the card of wrack 14 times right of 14."""
    made = for_class(chosen=[KELP, CRAB, WRACK])
    asked = (KELP, CRAB, WRACK)
    order = [asked.index(one) for one in blanks_of(made.guides[0]).values()]
    keys = tuple(asked[n].key for n in order)
    papers = tuple(tuple(paper[n] for n in order) for paper in PAPERS)
    marks = Marks((Count(WRACK.key, 14, 14),), (MarkedGuide(None, keys, papers),))
    return made, marks


def name_of(made, asked):
    return next(card.label for card in made.hands[0] if card.item == asked)


def test_every_figure_of_an_item_is_there_for_programs_under_its_name():
    made, marks = small_class()
    by_answer = {one["answer"]: one for one in figures(results(made, marks))["items"]}
    # intervals: scipy.stats.binomtest(...).proportion_ci(method="wilson"), and beta(a, b).interval
    assert by_answer["kelp"] == {
        "item": KELP.key,
        "card": name_of(made, KELP),
        "prompt": "What grows in forests?",
        "answer": "kelp",
        "topic": "Tides",
        "level": 1,
        "right": 6,
        "tries": 11,
        "share": 0.545455,
        "interval": [0.280092, 0.787287],
        "expected_before": 0.9,
        # eight tries at .90 and these: (7.2 + 6) / 19; beta(13.2, 5.8)
        "expected_after": 0.694737,
        "expected_interval": [0.476616, 0.874128],
        "whole_papers": 10,
        "too_few_papers": False,
        # all of the upper 2.7 papers have it wrong, all of the lower have it right
        "upper_lower": -1.0,
        "upper_lower_band": "look at the key",
        # right where the rest has 0 points, wrong where it has 2
        "corrected_point_biserial": -1.0,
        "look_at_key": True,
        "everyone_has_it": False,
        "missed": True,
    }
    assert by_answer["crab"] == {
        "item": CRAB.key,
        "card": name_of(made, CRAB),
        "prompt": "What runs sideways?",
        "answer": "crab",
        "topic": "Tides",
        "level": 3,
        "right": 5,
        "tries": 10,
        "share": 0.5,
        "interval": [0.236593, 0.763407],
        "expected_before": 0.6,
        # eight tries at .60 and these: (4.8 + 5) / 18; beta(9.8, 8.2)
        "expected_after": 0.544444,
        "expected_interval": [0.318792, 0.760738],
        "whole_papers": 10,
        "too_few_papers": False,
        "upper_lower": 1.0,
        "upper_lower_band": "very good",
        # the rest has 1 point on every paper
        "corrected_point_biserial": None,
        "look_at_key": False,
        "everyone_has_it": False,
        "missed": True,
    }


def test_an_item_without_papers_has_the_figures_of_its_tries_alone():
    made = for_class(chosen=[KELP, CRAB, WRACK])
    marks = Marks((Count(CRAB.key, 1, 1),))
    found = results(made, marks, before={CRAB.key: Belief(0.5, 2)})
    assert found.items[int(name_of(made, CRAB)) - 1].papers == 0
    (one,) = [one for one in figures(found)["items"] if one["tries"]]
    assert one == {
        "item": CRAB.key,
        "card": name_of(made, CRAB),
        "prompt": "What runs sideways?",
        "answer": "crab",
        "topic": "Tides",
        "level": 3,
        "right": 1,
        "tries": 1,
        "share": 1.0,
        # n / (n + 1.959964²) for n of n: 1 / 4.841459
        "interval": [0.206549, 1.0],
        "expected_before": 0.5,
        "expected_after": 0.666667,
        # at most x with a probability of x², by Beta(2, 1): the roots of .025 and of .975
        "expected_interval": [0.158114, 0.987421],
        "whole_papers": 0,
        "too_few_papers": True,
        "upper_lower": None,
        "upper_lower_band": None,
        "corrected_point_biserial": None,
        "look_at_key": False,
        "everyone_has_it": False,
        "missed": False,
    }


def test_every_figure_of_the_lesson_its_topics_and_guides_is_there_for_programs():
    made, marks = small_class()
    document = figures(results(made, marks))
    del document["items"]
    topics = {topic["topic"]: topic for topic in document.pop("topics")}
    kelp, crab = name_of(made, KELP), name_of(made, CRAB)
    assert document == {
        "strength": 8.0,
        "enough_papers": 10,
        # kelp 6 of 11, crab 5 of 10, wrack 5 of 10 and 14 of 14
        "right": 30,
        "tries": 45,
        "words": [
            "30 of 45 answers were right: 67 %.",
            (
                f"Look at the key of {kelp} (kelp): those who did better on the rest did worse "
                "here, perhaps by chance."
            ),
            "Tides needs another lesson: 52 % right (32–72 %).",
            f"Missed most: {crab} (crab) 5 of 10; {kelp} (kelp) 6 of 11.",
            (
                "A score on the study guide may be off by about 0.5 of 3 points "
                "(standard error; KR-20 −3.00, 10 papers)."
            ),
        ],
        "guides": [
            {
                "teams": [],
                "blanks": 3,
                "papers": 11,
                "whole_papers": 10,
                "too_few_papers": False,
                "mean": 1.5,
                "kr20": -3.0,
                "standard_error": 0.5,
            }
        ],
    }
    # scipy.stats.binomtest(11, 21) and (19, 24): .proportion_ci(method="wilson")
    assert topics == {
        "Tides": {
            "topic": "Tides",
            "items": 2,
            "right": 11,
            "tries": 21,
            "interval": [0.323695, 0.71656],
            "share": 0.52381,
            "needs_lesson": True,
        },
        "": {
            "topic": "",
            "items": 1,
            "right": 19,
            "tries": 24,
            "interval": [0.595295, 0.907552],
            "share": 0.791667,
            "needs_lesson": False,
        },
    }


def test_of_two_guides_that_ask_an_item_the_one_with_more_whole_papers_tells_how_it_works():
    made = deck(chosen=[KELP, CRAB, WRACK])
    few = MarkedGuide("Heron", (KELP.key, CRAB.key), ((1, 1), (0, 0)))
    many = MarkedGuide("Otter", (KELP.key, WRACK.key), ((0, 1), (1, 0), (1, 0)))
    for guides in ((few, many), (many, few)):
        found = {one.item.answer: one for one in results(made, Marks(guides=guides)).items}
        assert (found["kelp"].papers, found["kelp"].correlation) == (3, pytest.approx(-1))
        assert (found["crab"].papers, found["crab"].correlation) == (2, pytest.approx(1))


def test_a_paper_that_is_partly_in_a_group_counts_by_that_part():
    """Of four papers .27 are 1.08: the best and .08 of the next, the worst and .08 of the next."""
    marks, totals = [1, 0, 1, 0], [3, 2, 1, 0]
    assert upper_lower(marks, totals) == pytest.approx(1 / 1.08 - 0.08 / 1.08)


def test_two_papers_are_a_line():
    assert corrected_point_biserial([1, 0], [2, 0]) == pytest.approx(1)
    assert corrected_point_biserial([1, 0], [1, 1]) == pytest.approx(-1)


def test_no_interval_reaches_beyond_none_or_all():
    """Of n tries all right it ends at 1, and of none right it begins at 0, by the formula."""
    for tries in range(1, 100):
        low, high = wilson(0, tries)[0], wilson(tries, tries)[1]
        assert (low, high) == (pytest.approx(0, abs=1e-12), pytest.approx(1, abs=1e-12))
        assert low >= 0
        assert high <= 1


def test_no_share_lies_beyond_none_or_all():
    assert [beta_cdf(x, 2, 3) for x in (-0.5, 0, 1, 1.5)] == [0, 0, 1, 1]
    # by hand for Beta(2, 1): x²
    assert beta_cdf(sqrt(0.5), 2, 1) == pytest.approx(0.5)
