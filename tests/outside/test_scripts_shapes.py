"""Shaped text against another engine: Pillow's Raqm, which orders by FriBidi, over FreeType.

The very same font files are set by both, and the ink is compared.
"""

import io
from importlib.resources import files

import numpy as np
import pypdfium2
import pytest
from PIL import Image, ImageDraw, ImageFont, features

from decks.layout.frame import Frame, Text
from decks.press.pdf import make_pdf

SIZE = 96
WEIGHTS = {"Hebrew": (500, 690), "Phonetics": (415, 660)}
FACES = {
    "Hebrew": ("fontpkg_assistant", "Assistant[wght].ttf", "Assistant[wght].ttf"),
    "Arabic": (
        "fontpkg_ibm_plex_sans_arabic",
        "IBMPlexSansArabic-Regular.ttf",
        "IBMPlexSansArabic-Bold.ttf",
    ),
    "Devanagari": ("fontpkg_mukta", "Mukta-Regular.ttf", "Mukta-Bold.ttf"),
    "Phonetics": ("fontpkg_noto_sans", "NotoSans[wdth,wght].ttf", "NotoSans[wdth,wght].ttf"),
}
WORDS = [
    ("Hebrew", "שלום"),
    ("Hebrew", "מְלוּחִים"),
    ("Hebrew", "שׁוֹנִית"),
    ("Arabic", "المستنقع"),
    ("Arabic", "لأجزاء"),
    ("Arabic", "اَلْمَدُّ"),
    ("Arabic", "گھونگھے"),
    ("Devanagari", "क्षेत्र"),
    ("Devanagari", "श्रृंखला"),
    ("Devanagari", "र्किज्ञान"),
    ("Devanagari", "समुद्री"),
    ("Phonetics", "℞ʳˁ"),
]

needs_raqm = pytest.mark.skipif(
    not features.check("raqm"), reason="this Pillow comes without the Raqm engine"
)


def cut(ink):
    rows, columns = np.flatnonzero(ink.any(axis=1)), np.flatnonzero(ink.any(axis=0))
    return ink[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]


def printed(word, *, strong):
    page = Frame(700, 300, (Text(60, 120, word, SIZE, strong),))
    data = make_pdf([page], title="Scripts")
    image = pypdfium2.PdfDocument(io.BytesIO(data))[0].render(scale=1, grayscale=True)
    return cut(255 - image.to_numpy()[:, :].reshape(300, 700).astype(float))


def expected(script, word, *, strong):
    package, regular, bold = FACES[script]
    path = files(package) / "files" / (bold if strong else regular)
    font = ImageFont.truetype(str(path), SIZE, layout_engine=ImageFont.Layout.RAQM)
    if "[" in path.name:
        axes = [a["name"] for a in font.get_variation_axes()]
        values = {b"Weight": WEIGHTS[script][strong], b"Width": 100}
        font.set_variation_by_axes([values[axis] for axis in axes])
    image = Image.new("L", (900, 300))
    ImageDraw.Draw(image).text((60, 60), word, 255, font=font)
    return cut(np.asarray(image).astype(float))


def likeness(one, other):
    """Return the best correlation of two pictures of ink, moved by up to two pixels."""
    places = [(y, x) for y in range(5) for x in range(5)]
    still = laid(one, 2, 2).ravel()
    return max(float(np.corrcoef(still, laid(other, y, x).ravel())[0, 1]) for y, x in places)


def laid(ink, y, x):
    sheet = np.zeros((150, 400))
    sheet[y : y + ink.shape[0], x : x + ink.shape[1]] = ink
    return sheet


@needs_raqm
@pytest.mark.parametrize("strong", [False, True])
@pytest.mark.parametrize(("script", "word"), WORDS)
def test_words_have_the_shapes_that_another_engine_gives_them(script, word, strong):
    own, other = printed(word, strong=strong), expected(script, word, strong=strong)
    assert abs(own.shape[0] - other.shape[0]) <= 3
    assert abs(own.shape[1] - other.shape[1]) <= 3
    assert likeness(own, other) > 0.93


@needs_raqm
def test_a_word_spelt_backwards_has_another_shape():
    other = expected("Arabic", "المستنقع"[::-1], strong=False)
    assert likeness(printed("المستنقع", strong=False), other) < 0.7


# ArabicShaping.txt, Unicode 15.0.0: beh and hah are dual-joining, reh is right-joining; the forms
# stand in the chart of Arabic Presentation Forms-B
@pytest.mark.parametrize(
    ("word", "forms"),
    [
        ("بحر", "\ufe91\ufea4\ufeae"),
        ("حبر", "\ufea3\ufe92\ufeae"),
        ("رحب", "\ufead\ufea3\ufe90"),
        ("درب", "\ufea9\ufead\ufe8f"),
    ],
)
def test_arabic_letters_take_the_form_that_their_neighbours_ask_for(word, forms):
    assert likeness(printed(word, strong=False), printed(forms, strong=False)) > 0.99


# Unicode Standard 15.0, chapter 12.1: rules R2 to R4 of Devanagari; a reph and a short i are moved
@pytest.mark.parametrize(("word", "unlike"), [("र्क", "रक"), ("कि", "क"), ("क्ष", "कष")])
def test_devanagari_conjuncts_are_not_letters_side_by_side(word, unlike):
    assert likeness(printed(word, strong=False), printed(unlike, strong=False)) < 0.9
