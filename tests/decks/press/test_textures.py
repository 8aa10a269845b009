"""The textures as the press prints them, in grey, after a copier has softened them.

The copier is modelled: 200 dots an inch, and an edge softened by a Gaussian of 0.15 mm. How alike
two ribbons may be is our own choice: no standard sets it.
"""

from functools import cache
from itertools import combinations

import numpy as np
import pypdfium2
import pytest
from scipy.ndimage import gaussian_filter

from decks.layout.frame import Frame, Ribbon
from decks.layout.units import mm
from decks.press import textures
from decks.press.cards.shape import RIBBON
from decks.press.pdf import make_pdf
from decks.recipe import Ink
from decks.team import TEXTURES, make_teams

LENGTH = mm(40)
COPIER = 200
FINE = 3 * COPIER
WINDOW = 9 * COPIER // 25
"""What an eye takes in at a glance: 9 mm of a ribbon."""
MOST_ALIKE = 0.5


@cache
def printed(texture, ink=Ink.GREY):
    """Return a ribbon's lightness by pixel, 0 for its own ink and 1 for white."""
    teams = make_teams([None] * 12, [None] * 12)
    ribbon = Ribbon(0, 0, RIBBON, LENGTH, TEXTURES.index(texture))
    pdf = make_pdf([Frame(RIBBON, LENGTH, (ribbon,))], title="x", owners=teams, ink=ink)
    page = pypdfium2.PdfDocument(pdf)[0]
    pixels = np.squeeze(page.render(scale=FINE / 72, grayscale=True).to_numpy()) / 255
    return pixels, (pixels - pixels.min()) / (1 - pixels.min())


@cache
def copied(texture):
    _, white = printed(texture)
    soft = gaussian_filter(white, 0.15 * FINE / 25.4, mode="nearest")
    return soft[::3, ::3]


def likeness(texture, other):
    """Return the greatest correlation of a window of one with the other, shifted and turned."""
    piece = copied(texture)[40 : 40 + WINDOW]
    places = windows(other)
    return max(
        (places @ standard(turned.reshape(1, -1)).T).max() / piece.size
        for turned in (piece, piece[::-1, ::-1])
    )


@cache
def windows(texture):
    shape = (WINDOW, copied(texture).shape[1])
    views = np.lib.stride_tricks.sliding_window_view(copied(texture), shape)
    return standard(views.reshape(len(views), -1))


def standard(rows):
    rows = rows - rows.mean(axis=1, keepdims=True)
    return rows / rows.std(axis=1, keepdims=True)


@pytest.mark.parametrize("texture", TEXTURES)
def test_a_texture_leaves_most_of_the_ink_and_takes_enough_to_be_seen(texture):
    _, white = printed(texture)
    assert 0.45 <= 1 - white.mean() <= 0.85


@pytest.mark.parametrize("texture", TEXTURES)
def test_a_texture_is_still_there_after_a_copier(texture):
    dark, light = np.percentile(copied(texture), (5, 95))
    assert light - dark >= 0.6


@pytest.mark.parametrize(("one", "other"), [*combinations(TEXTURES, 2)])
def test_no_two_textures_are_alike_after_a_copier_however_they_are_laid(one, other):
    assert max(likeness(one, other), likeness(other, one)) <= MOST_ALIKE


@pytest.mark.parametrize("texture", TEXTURES)
def test_a_texture_is_alike_to_itself_by_the_same_measure(texture):
    assert likeness(texture, texture) > 0.99


@pytest.mark.parametrize("texture", TEXTURES)
def test_white_on_the_team_s_own_ink_shows_in_grey(texture):
    pixels, _ = printed(texture, Ink.COLOUR)
    # yellow on white, the palest, has L* 77 against 100: a grey of about 190 of 255
    assert pixels.max() == 1
    assert pixels.min() <= 0.78


def test_every_texture_can_be_drawn():
    assert set(TEXTURES) == set(textures.STROKED) | set(textures.FILLED)


def test_the_ribbon_is_drawn_and_not_a_picture():
    teams = make_teams([None], [None])
    frame = Frame(RIBBON, LENGTH, (Ribbon(0, 0, RIBBON, LENGTH, 0),))
    pdf = make_pdf([frame], title="x", owners=teams)
    assert b"/Subtype /Image" not in pdf
