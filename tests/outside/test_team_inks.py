"""The default colours of 2 to 12 teams, measured by coloraide (MIT) and not by our own sums.

No standard says how far teams' colours should be apart; the limits are our own choice.
"""

from itertools import combinations, pairwise

import pytest
from coloraide import Color

from decks.press.inks import GREY_RIBBON
from decks.team import COLOURS, make_teams

COUNTS = range(2, 13)
DEFICIENCIES = ("protan", "deutan", "tritan")


def inks(count):
    return [Color(team.colour) for team in make_teams([None] * count, [None] * count)]


def least(colours):
    return min(
        one.delta_e(other, method="2000", space="lab-d65")
        for one, other in combinations(colours, 2)
    )


@pytest.mark.parametrize("count", COUNTS)
def test_no_two_teams_are_nearer_than_20_to_ordinary_eyes(count):
    assert least(inks(count)) >= 20


@pytest.mark.parametrize("deficiency", DEFICIENCIES)
@pytest.mark.parametrize("count", COUNTS)
def test_no_two_teams_are_nearer_than_10_to_eyes_that_lack_a_cone(count, deficiency):
    seen = [ink.filter(deficiency, 1, method="machado").clip("srgb") for ink in inks(count)]
    assert least(seen) >= 10


@pytest.mark.parametrize("count", [2, 3, 4, 5])
def test_up_to_five_teams_are_15_steps_of_lightness_apart_on_a_grey_copier(count):
    steps = sorted(ink.convert("lab-d65")["l"] for ink in inks(count))
    assert min(high - low for low, high in pairwise(steps)) >= 15


@pytest.mark.parametrize("word", sorted(COLOURS))
def test_every_ink_but_yellow_has_the_3_to_1_that_wcag_asks_of_marks(word):
    ratio = Color(COLOURS[word]).contrast(Color("white"), method="wcag21")
    assert ratio >= (1.8 if word == "yellow" else 3)


def test_the_grey_ribbon_has_3_to_1_on_white():
    assert Color(GREY_RIBBON).contrast(Color("white"), method="wcag21") >= 3
