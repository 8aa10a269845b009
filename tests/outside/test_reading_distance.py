"""Letter heights against published figures, and letters on a printed card against the formula."""

from pathlib import Path

import pypdfium2
import pytest
from support.shore import fairdeal

from decks.layout.reading_distance import distance_for, least_step, letter_height, size_for

POINTS_PER_MM = 72 / 25.4


@pytest.mark.parametrize(
    ("distance", "angle", "height"),
    [
        # ISO 9241-3 and ISO 9241-303 ask for 16 minutes of arc at least and 20 to 22 rather, as
        # quoted by NUREG-0700 rev. 2, 1.3.1-4; heights by h = 2 d tan(a / 2)
        (400, 16, 1.862),
        (1000, 16, 4.654),
        (3000, 16, 13.963),
        (400, 22, 2.560),
        (1000, 22, 6.400),
        (3000, 22, 19.199),
        # Snellen's letter of five minutes at 20 feet
        (6096, 5, 8.866),
    ],
)
def test_letters_are_as_high_as_the_standards_ask(distance, angle, height):
    assert letter_height(distance, angle=angle) == pytest.approx(height, abs=0.0006)


@pytest.mark.parametrize(
    ("cap_height", "points"),
    # capital heights in ems as measured in the faces of Noto Sans and Atkinson Hyperlegible
    [(0.714, 76.22), (0.668, 81.47)],
)
def test_sizes_for_22_minutes_at_three_metres_by_capital_height(cap_height, points):
    size = letter_height(3000, angle=22) * POINTS_PER_MM / cap_height
    assert size == pytest.approx(points, abs=0.01)


@pytest.mark.parametrize(("x_height", "points"), [(0.496, 10.64), (0.536, 9.85)])
def test_sizes_for_16_minutes_at_400_mm_by_small_letters(x_height, points):
    # the same faces, Atkinson Hyperlegible and Noto Sans
    assert size_for(400, x_height) == pytest.approx(points, abs=0.01)


def test_sizes_are_rounded_up_to_the_ladder_and_never_below_12_points():
    # 1.862 mm = 5.278 pt; / .536 = 9.85. 4.654 mm = 13.19 pt; / .536 = 24.6 and the next step is 28
    assert least_step(400, 0.536) == 12
    assert least_step(1000, 0.536) == 28


@pytest.mark.parametrize("size", [12, 40, 150])
def test_the_distance_of_a_size_is_the_inverse_of_the_size_for_a_distance(size):
    assert size_for(distance_for(size, 0.527), 0.527) == pytest.approx(size)


def ink_height(page, at):
    """Return the height in mm of the ink in a box of the page: left, bottom, right, top."""
    scale = 16
    left, bottom, right, top = at
    width, height = page.get_size()
    crop = (left, bottom, width - right, height - top)
    dark = page.render(scale=scale, crop=crop, grayscale=True).to_numpy() < 128
    rows = dark.any(axis=1).nonzero()[0]
    return (rows[-1] - rows[0] + 1) / scale / POINTS_PER_MM


@pytest.mark.parametrize("distance", ["1.5 m", "2.4 m", "9 ft"])
def test_the_small_letters_of_a_printed_card_are_seen_under_16_minutes(tmp_path, distance):
    (tmp_path / "Shore.csv").write_text("Prompt,Answer\nxxx,xx\nzx,x\n", encoding="utf-8")
    done = fairdeal(
        *("build", tmp_path / "Shore.csv", "--out", tmp_path, "--teams", 1, "--guide", "none"),
        *("--size", "small", "--read-from", distance),
    )
    assert done.returncode == 0, done.stderr
    length, unit = distance.split()
    # h = 2 d tan(8'), and tan(8') = 0.0023271 in any table of tangents
    least = 2 * float(length) * {"m": 1000, "ft": 304.8}[unit] * 0.0023271
    for height in x_heights(tmp_path / "Shore decks" / "01" / "cards.pdf"):
        # a pixel of the measuring is 0.02 mm; no more than the next step of the ladder is needed
        assert least - 0.03 <= height < 1.25 * least


def x_heights(path: Path) -> list[float]:
    """Return the heights in mm of every x that is a text's whole line on the first two pages."""
    document = pypdfium2.PdfDocument(path)
    heights = []
    for page in list(document)[:2]:
        text = page.get_textpage()
        letters = text.get_text_range()
        boxes = [text.get_charbox(n) for n, c in enumerate(letters) if c == "x"]
        # the check rule and the small print have an x as well, in "fix" or "box", but small
        heights += [ink_height(page, box) for box in boxes if box[3] - box[1] > 15]
    assert heights
    return heights
