from itertools import combinations

import numpy as np
import pypdfium2
import pytest
import uharfbuzz as hb

from decks.layout.frame import Frame, Text
from decks.press.pdf import make_pdf
from decks.press.script.composing import Composite, composed, tables_of
from decks.press.script.faces import FIRA, SOURCES, open_face, source_of
from decks.press.script.glyph_font import GlyphFont
from decks.press.script.glyphs import Part
from decks.press.script.signs import SIGNS
from decks.press.script.signs.outlines import box, disc, hollow
from decks.press.script.signs.truetype import Drawn, font_file

SAME = {
    frozenset(pair)
    for pair in ("✕✗", "✖✘", "○⚪", "●⚫", "✖❌", "✘❌", "➔➜", "★⭐", "▶►", "◀◄", "◆⬥", "◇⬦")
}
"""Signs that Unicode has twice and that we draw alike."""


def drawn(sign, *, strong=False):
    page = Frame(120, 120, (Text(20, 40, sign, 60, strong),))
    data = make_pdf([page], title="Signs")
    return 255 - pypdfium2.PdfDocument(data)[0].render(grayscale=True).to_numpy().astype(float)


@pytest.mark.parametrize("strong", [False, True])
@pytest.mark.parametrize("sign", sorted(SIGNS))
def test_every_sign_leaves_ink_within_its_own_room(sign, strong):
    columns = np.flatnonzero(drawn(sign, strong=strong).any(axis=0))
    assert len(columns) > 0
    # the text begins at 20 points, and its size is 60
    assert columns[0] >= 20 - 1
    assert columns[-1] <= 20 + 60 * SIGNS[sign].width + 1


def test_no_two_signs_look_alike():
    inks = {sign: drawn(sign) for sign in sorted(SIGNS)}
    alike = [
        (a, b)
        for a, b in combinations(inks, 2)
        if np.abs(inks[a] - inks[b]).sum() < 2000 and frozenset((a, b)) not in SAME
    ]
    assert alike == []


def test_strong_signs_of_lines_are_heavier():
    for sign in "✓✗⇌∠♯☐△":
        assert drawn(sign, strong=True).sum() > 1.1 * drawn(sign).sum()


def test_minus_or_plus_has_its_bar_at_the_top_and_plus_or_minus_at_the_foot():
    for sign, bar_at_top in (("±", False), ("∓", True)):
        rows = [row for row in (drawn(sign) > 128).sum(axis=1) if row]
        assert (rows[1] > rows[-2]) == bar_at_top


def test_a_face_is_taken_before_a_sign_of_ours_but_for_the_face_of_code():
    assert source_of("→") is FIRA
    assert source_of("✓") is None
    assert source_of("∈") is SOURCES[-1]


# HarfBuzz reads the file back: the OpenType reader of another project
def test_drawn_outlines_become_a_font_file():
    file = font_file(
        [Drawn([], 0), Drawn(box(50, 0, 300, 400), 400), Drawn(disc(200, 300, 100), 500)]
    )
    font = hb.Font(hb.Face(file))
    assert font.face.upem == 1000
    assert font.face.glyph_count == 3
    assert [font.get_glyph_h_advance(n) for n in range(3)] == [0, 400, 500]
    extents = font.get_glyph_extents(1)
    assert (extents.x_bearing, extents.y_bearing) == (50, 400)
    assert (extents.width, extents.height) == (300, -400)


def test_a_hole_runs_the_other_way_round():
    def area(outline):
        turned = (*outline[1:], outline[0])
        return (
            sum(ax * by - bx * ay for (ax, ay), (bx, by) in zip(outline, turned, strict=True)) / 2
        )

    outer, inner = hollow(0, 0, 100, 100, wide=10)
    assert area(outer) == 10_000
    assert area(inner) == -6_400


def test_glyphs_are_put_together_at_their_places():
    face = open_face(FIRA, strong=False)
    letter, mark = (face.font.get_nominal_glyph(ord(c)) for c in "o\u0303")
    shape = ((Part(letter), Part(mark, 290, 20)), 0.6)
    data, places = GlyphFont("S", face).file([((Part(0),), 0.0), shape])
    made, alone = hb.Font(hb.Face(data)), face.font
    o, tilde, both = (
        alone.get_glyph_extents(letter),
        alone.get_glyph_extents(mark),
        made.get_glyph_extents(places[1]),
    )
    assert made.get_glyph_h_advance(places[1]) == 600
    assert both.x_bearing == min(o.x_bearing, tilde.x_bearing + 290)
    assert both.y_bearing == max(o.y_bearing, tilde.y_bearing + 20)


# OpenType specification, "Calculating checksums": the file adds up to 0xB1B0AFBA
def test_checksums_of_a_composed_file_add_up():
    plain = font_file([Drawn([], 0), Drawn(box(0, 0, 10, 10), 20)])
    data = composed(plain, [Composite((Part(1), Part(1, 30, 0)), 60)])
    words = np.frombuffer(data + b"\0" * (-len(data) % 4), dtype=">u4")
    assert int(words.sum()) % 2**32 == 0xB1B0AFBA
    assert sorted(tables_of(data)) == ["glyf", "head", "hhea", "hmtx", "loca", "maxp"]


# a stem is measured across its middle, in the ink; Fira Sans says 92 and 142 thousandths
@pytest.mark.parametrize("strong", [False, True])
@pytest.mark.parametrize("upright", ["ן", "ا", "‖"])
def test_other_faces_are_as_heavy_as_the_plain_one(upright, strong):
    stems = [stem(sign, strong=strong) for sign in ("l", upright)]
    assert stems[1] == pytest.approx(stems[0], rel=0.22)


def stem(sign, *, strong):
    """Return the width of the first stroke that a middle row of a sign crosses, in ems."""
    page = Frame(300, 400, (Text(40, 120, sign, 200, strong),))
    data = make_pdf([page], title="Stems")
    image = pypdfium2.PdfDocument(data)[0].render(scale=4, grayscale=True).to_numpy()
    ink = (255 - image.astype(float)) / (255 - image.min())
    rows = ink[np.flatnonzero(ink.any(axis=1))]
    middle = rows[len(rows) // 2 - 100 : len(rows) // 2 + 100].sum(axis=1)
    return float(np.median(middle)) / (2 if sign == "‖" else 1) / 800
