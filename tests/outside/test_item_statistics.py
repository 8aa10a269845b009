"""Item analysis against published data and output.

LSAT-6 and LSAT-7: Bock & Lieberman 1970, Psychometrika 35, 179-197; figures as printed in the
documentation of the R packages mirt and ltm (Rizopoulos 2006). Ten students by ten items:
K. L. Wuensch, East Carolina University. Knox Cube Test: Wright & Stone 1979, Best Test Design.
The sources stand in the first line of each table in `data`.
"""

from random import Random

import pytest
from support.tables import table

from decks.marks.discrimination import corrected_point_biserial, upper_lower
from decks.marks.matrix import variance, whole_papers
from decks.marks.reliability import kr20, standard_error


def lsat(test):
    patterns = table("lsat6_lsat7_patterns.csv")
    papers = [
        [int(pattern[f"Q{n}"]) for n in range(1, 6)]
        for pattern in patterns
        for _ in range(int(pattern[f"n_{test}"]))
    ]
    # the order of the papers plays no part
    return Random(6).sample(papers, len(papers))


def marked(papers, blank):
    """Return the marks of a blank, and the papers' scores."""
    return [paper[blank] for paper in papers], [sum(paper) for paper in papers]


def rows_of(name, prefix):
    rows = table(name)
    return [[int(row[key]) for key in row if key.startswith(prefix)] for row in rows]


@pytest.mark.parametrize(("test", "alpha"), [("lsat6", 0.294997), ("lsat7", 0.453409)])
def test_the_reliability_of_the_law_school_tests_is_the_published_one(test, alpha):
    papers = lsat(test)
    assert len(papers) == 1000
    assert kr20(papers) == pytest.approx(alpha, abs=5e-7)


@pytest.mark.parametrize("test", ["lsat6", "lsat7"])
def test_every_item_of_the_law_school_tests_has_its_published_figures(test):
    papers = lsat(test)
    for blank, row in enumerate(table(f"{test}_expected.csv")):
        marks, totals = marked(papers, blank)
        assert sum(marks) / len(marks) == pytest.approx(float(row["p"]))
        rest = corrected_point_biserial(marks, totals)
        assert rest == pytest.approx(float(row["r_rest"]), abs=6e-4)
        others = [[*paper[:blank], *paper[blank + 1 :]] for paper in papers]
        assert kr20(others) == pytest.approx(float(row["alpha_if_dropped"]), abs=6e-4)


def test_upper_and_lower_groups_share_their_ties():
    papers = lsat("lsat6")
    for blank, row in enumerate(table("lsat6_expected.csv")):
        expected = float(row["D27_tie_averaged"])
        assert upper_lower(*marked(papers, blank)) == pytest.approx(expected, abs=6e-5)


def test_ten_students_by_ten_items_have_one_divisor():
    """Wuensch prints a variance of 5.84 and a sum of pq of 2.18; .737823 would mix divisors."""
    papers = rows_of("kr20_10x10.csv", "q")
    assert variance([sum(paper) for paper in papers]) == pytest.approx(5.84)
    assert kr20(papers) == pytest.approx(10 / 9 * (1 - 2.18 / 5.84), abs=1e-9)
    assert kr20(papers) == pytest.approx(0.696347, abs=5e-7)
    assert standard_error(papers) == pytest.approx((5.84 * (1 - 0.696347)) ** 0.5, abs=1e-5)


def test_two_items_are_as_reliable_as_two_halves():
    """Of two parts it is 2 (1 - sum of variances / variance of the sum): Rulon 1939, Guttman 1945.

    By hand, from four papers: .75 · .25 + .5 · .5 = 7/16, and 2, 2, 0, 1 vary by 11/16.
    """
    papers = [[1, 1], [1, 1], [0, 0], [1, 0]]
    assert kr20(papers) == pytest.approx(2 * (1 - 7 / 11))
    assert kr20([[1], [0]]) is None


def test_items_that_all_or_none_of_a_class_get_right_have_no_correlation():
    papers = rows_of("knox_cube_35x18.csv", "i")
    assert (len(papers), len(papers[0])) == (35, 18)
    for blank in (0, 1, 2, 17):
        assert corrected_point_biserial(*marked(papers, blank)) is None
        assert upper_lower(*marked(papers, blank)) == 0
    for row in table("knox_cube_expected.csv"):
        blank = int(row["item"]) - 1
        assert sum(marked(papers, blank)[0]) == int(row["n_correct"])
        assert corrected_point_biserial(*marked(papers, blank)) is not None


@pytest.mark.parametrize("papers", [[], [[1]], [[1, 0]], [[1, 1], [1, 1]], [[None, 1], [1, None]]])
def test_what_is_undefined_is_none_and_no_crash(papers):
    whole = whole_papers(papers)
    assert kr20(whole) is None
    assert standard_error(whole) is None
    assert upper_lower(*marked(whole, 0)) is None
    assert corrected_point_biserial(*marked(whole, 0)) is None


def test_papers_with_a_blank_unmarked_are_not_added_up():
    papers = [[1, 0, 1], [1, None, 1], [0, 0, 1], [1, 1, 1]]
    assert whole_papers(papers) == [[1, 0, 1], [0, 0, 1], [1, 1, 1]]
