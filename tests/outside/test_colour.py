"""Colour sums against published values and against the library coloraide (MIT)."""

import csv
from pathlib import Path

import pytest
from coloraide import Color
from hypothesis import given
from hypothesis import strategies as st

from decks.colour import Lab, Sight, contrast, difference, lab, seen

PAIRS = Path(__file__).parent / "data" / "ciede2000_sharma_2005.csv"
CODES = st.from_regex(r"#[0-9A-F]{6}", fullmatch=True)


def pairs():
    lines = [line for line in PAIRS.read_text().splitlines() if not line.startswith("#")]
    return [tuple(map(float, row)) for row in list(csv.reader(lines))[1:]]


def test_all_34_published_pairs_are_there():
    assert len(pairs()) == 34


@pytest.mark.parametrize("row", pairs())
def test_ciede2000_gives_the_differences_of_sharma_wu_and_dalal(row):
    one, other = Lab(*row[:3]), Lab(*row[3:6])
    assert difference(one, other) == pytest.approx(row[6], abs=5e-5)
    assert difference(other, one) == pytest.approx(row[6], abs=5e-5)


@pytest.mark.parametrize(
    # the formula of WCAG 2.2 (relative luminance, contrast ratio) worked out for known codes
    ("code", "ratio"),
    [("#767676", 4.5422), ("#777777", 4.4781), ("#595959", 7.0047), ("#FFFF00", 1.0738)],
)
def test_contrast_with_white_is_as_published(code, ratio):
    assert contrast(code) == pytest.approx(ratio, abs=5e-5)


@pytest.mark.parametrize(
    # vermilion of Okabe & Ito (2008) through the matrices of Machado et al. (2009)
    ("sight", "shown"),
    [(Sight.PROTAN, (129, 113, 0)), (Sight.DEUTAN, (158, 140, 0))],
)
def test_vermilion_is_olive_to_those_who_lack_red_or_green_cones(sight, shown):
    expected = Color("srgb", [channel / 255 for channel in shown]).convert("lab-d65")
    assert difference(seen("#D55E00", sight), Lab(*expected.coords())) < 0.5


@pytest.mark.parametrize(
    # of the palette of Okabe & Ito (2008), to one decimal
    ("code", "expected"),
    [("#E69F00", 70.6), ("#56B4E9", 69.8), ("#009E73", 57.7), ("#0072B2", 46.0), ("#000000", 0)],
)
def test_lightness_of_known_inks(code, expected):
    assert lab(code).lightness == pytest.approx(expected, abs=0.05)


@given(CODES)
def test_cielab_is_that_of_coloraide(code):
    assert lab(code) == pytest.approx(Color(code).convert("lab-d65").coords(), abs=1e-4)


@given(CODES, CODES)
def test_differences_are_those_of_coloraide(one, other):
    expected = Color(one).delta_e(Color(other), method="2000", space="lab-d65")
    assert difference(lab(one), lab(other)) == pytest.approx(expected, abs=2e-4)


@given(CODES, CODES)
def test_contrast_is_that_of_coloraide(one, other):
    expected = Color(one).contrast(Color(other), method="wcag21")
    assert contrast(one, other) == pytest.approx(expected, rel=1e-3)


@pytest.mark.parametrize("sight", [Sight.PROTAN, Sight.DEUTAN, Sight.TRITAN])
@given(CODES)
def test_what_is_left_of_a_colour_is_that_of_coloraide(sight, code):
    shown = Color(code).filter(sight.value, 1, method="machado").clip("srgb")
    assert seen(code, sight) == pytest.approx(shown.convert("lab-d65").coords(), abs=2e-3)
