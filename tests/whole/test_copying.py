"""Text that is copied out of a PDF is the text that was put in."""

import io
import re
import unicodedata

import pdfplumber
import pikepdf
import pypdfium2
import pytest

from cards.style import Span, TextStyle
from decks.layout.frame import Frame, Placed
from decks.layout.runs import Styled
from decks.press.pdf import make_pdf
from decks.press.type.setting import BODY, STRONG, paragraph

LEFT_TO_RIGHT = [
    "Ebb tide: é ñ ő ș Ž ß æ",
    "Thủy triều lên xuống, nước mặn",
    "Η παλίρροια ανεβαίνει, ᾠδή",
    "Прилив и отлив, їжак, Ђурђевак",
    "/ˈsɔːlt.mɑːʃ/ [ɹʷˠ] ɛ̃ ɑ̃ t͡ʃ",
    "5′ 12″, ʻokina, ḥ, x₁ + yₙ, 20 ℃",
    "Henry Ⅷ, 𝑥 + 𝑦",
    "ज्वार-भाटा: क्षेत्र, श्रृंखला, र्की, ३.५",
    "समुद्र तट पर पक्षी (heron) 12",
    "✓ ✔ ✗ ☐ ☑ ☒ ■ □ ▲ △ ● ○ ★ ☆ ◆",
    "♩ = 120 ♪ ♫ ♬ A♭ F♯ B♮",
    "← ↑ → ↓ ↔ ⇒ ⇔ ⇌ ↦ 20 °C ±5 ≤ ≥ ≠",
    "∠ABC ∥ ∈ ∪ ∩ ∴ ∝ ≅ ⊕ ⌊x⌋ √2 ∞ ∑ ∫ π",
]
RIGHT_TO_LEFT = [
    "שלום עולם (מים) 12/3 ABC",
    "מַיִם מְלוּחִים וְגַלִּים",
    "המדוזה [אנפה] חיה במים",
    "المد والجزر (البحر) 12/3",
    "مستنقع ملحي: ١٢٣ طائر",
    "اَلْمَدُّ وَالْجَزْرُ پانی گھر",
    "ماء، ملح؛ طين؟",
    "لا إله الأرض",
]


def page_of(text, style=BODY):
    """Return a page with the text, and plain text below it as on any page."""
    below = paragraph("Samphire grows where the tide comes and goes twice a day. " * 3, 400)
    things = (Placed(25, 140, paragraph(text, 400, style)), Placed(25, 40, below))
    return make_pdf([Frame(450, 200, things)], title="Copying")


def by_pdfium(data):
    text = pypdfium2.PdfDocument(data)[0].get_textpage().get_text_range()
    return nfc(text.partition("\r\nSamphire")[0].strip("\r\n"))


def by_pdfplumber(data):
    with pdfplumber.open(io.BytesIO(data)) as document:
        return nfc(document.pages[0].extract_text().partition("\nSamphire")[0])


def nfc(text):
    return unicodedata.normalize("NFC", text)


@pytest.mark.parametrize("style", [BODY, STRONG])
@pytest.mark.parametrize("text", LEFT_TO_RIGHT)
def test_text_from_left_to_right_is_copied_whole_by_two_readers(text, style):
    data = page_of(text, style)
    assert by_pdfium(data) == nfc(text)
    assert by_pdfplumber(data) == nfc(text)


@pytest.mark.parametrize("style", [BODY, STRONG])
@pytest.mark.parametrize("text", RIGHT_TO_LEFT)
def test_text_from_right_to_left_is_copied_in_the_order_it_is_read(text, style):
    assert by_pdfium(page_of(text, style)) == nfc(text)


# pdfplumber gives letters as they stand on paper, from the left
@pytest.mark.parametrize(
    ("text", "on_paper"),
    [
        ("שלום עולם", "םלוע םולש"),
        ("שפל (מים) 12/3", "12/3 (םימ) לפש"),
        ("المد والجزر", "رزجلاو دملا"),
    ],
)
def test_letters_that_run_to_the_left_stand_from_right_to_left(text, on_paper):
    assert by_pdfplumber(page_of(text)) == on_paper


def test_words_of_both_directions_are_all_found_in_a_mixed_line():
    text = by_pdfium(page_of("Tide גאות (high) and שפל, 3.5 m"))
    assert sorted(re.findall(r"[\w.]+", text)) == sorted(
        ["Tide", "גאות", "high", "and", "שפל", "3.5", "m"]
    )


def test_a_line_in_several_styles_is_ordered_as_a_whole():
    text = "המים (מלוחים) 12/3"
    bold = Styled(text, spans=(Span(0, 4, TextStyle.BOLD),))
    assert by_pdfium(page_of(bold)) == text


def test_letters_join_over_a_change_of_weight():
    whole, parted = "بحر", Styled("بحر", spans=(Span(1, 2, TextStyle.BOLD),))
    assert by_pdfium(page_of(parted)) == whole
    strokes = [_strokes(page_of(text)) for text in (whole, parted)]
    assert strokes == [1, 1]


def _strokes(data):
    """Return how often ink stops and starts again from left to right."""
    image = pypdfium2.PdfDocument(data)[0].render(scale=6, grayscale=True).to_numpy()
    inked = (image[: 6 * 60] < 128).any(axis=0)
    return int((inked[1:] & ~inked[:-1]).sum())


@pytest.mark.parametrize("text", [*LEFT_TO_RIGHT, *RIGHT_TO_LEFT])
def test_pdfs_are_sound_and_every_font_is_embedded_with_its_text(text):
    with pikepdf.open(io.BytesIO(page_of(text))) as document:
        assert document.check_pdf_syntax() == []
        fonts = document.pages[0].Resources.Font
        for font in fonts.values():
            holder = font.DescendantFonts[0] if "/DescendantFonts" in font else font
            assert "/FontFile2" in holder.FontDescriptor
            assert "/ToUnicode" in font


def test_plain_text_can_be_searched_as_ever():
    data = page_of("Samphire, heron and otter: ✓ מים")
    page = pypdfium2.PdfDocument(data)[0].get_textpage()
    assert page.search("heron and otter").get_next() is not None
    assert page.search("✓").get_next() is not None


def test_the_same_text_gives_the_same_bytes():
    text = " ".join([*LEFT_TO_RIGHT, *RIGHT_TO_LEFT])
    assert page_of(text) == page_of(text)
