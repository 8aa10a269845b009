"""Every tone of text against the formula of WCAG 2.2 (relative luminance, contrast ratio)."""

import pytest

from decks.press.inks import TONES

TEXT_TONES = ("ink", "quiet")


def luminance(code):
    channels = [int(code[n : n + 2], 16) / 255 for n in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize(
    ("code", "ratio"), [("#767676", 4.5422), ("#777777", 4.4781), ("#FF0000", 3.9985)]
)
def test_the_formula_here_gives_the_published_ratios_on_white(code, ratio):
    assert contrast(code, "#FFFFFF") == pytest.approx(ratio, abs=5e-5)


@pytest.mark.parametrize("tone", TEXT_TONES)
@pytest.mark.parametrize("ground", ["white", "panel"])
def test_text_passes_4_5_on_white_and_on_panels(tone, ground):
    assert contrast(TONES[tone], TONES[ground]) >= 4.5
