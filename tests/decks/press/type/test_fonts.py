import subprocess
import sys

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from decks.layout.frame import Frame, Text
from decks.press.pdf import make_pdf
from decks.press.type.embedded import font
from decks.press.type.fonts import letter_height, measure, unprintable
from decks.press.type.plain import font_name, is_plain


def printed(*texts):
    things = tuple(Text(20, 20 + 14 * n, text, 10) for n, text in enumerate(texts))
    return make_pdf([Frame(300, 300, things)], title="Fonts")


# published metrics of Fira Sans, facts §1: cap height .689, x-height .527 of the em
def test_letters_are_as_high_as_the_typeface_says():
    assert letter_height("heron") == pytest.approx(0.527)
    assert letter_height("HERON 24") == pytest.approx(0.689)
    assert letter_height("Heron", True) == pytest.approx(0.530, abs=0.005)


# reportlab reads the tables of the font by itself
@pytest.mark.parametrize("strong", [False, True])
def test_letters_are_as_wide_as_another_reader_of_the_font_finds_them(strong):
    widths = font(font_name(strong=strong)).face.charWidths
    plain = [code for code in widths if is_plain(chr(code))]
    assert len(plain) > 1_000
    for code in plain:
        assert measure(chr(code), strong) == pytest.approx(widths[code] / 1000)


def test_a_text_of_signs_only_counts_as_capitals():
    assert letter_height("+ −") == letter_height("H")
    assert letter_height("✓ ☐") == letter_height("H")
    assert letter_height("") == letter_height("H")


# common practice: Hebrew letters are of one height, between x and H
def test_the_height_of_a_script_without_capitals_is_that_of_its_plain_letter():
    assert letter_height("x") < letter_height("מים") < letter_height("H")
    assert letter_height("मछली") > letter_height("x")
    assert 0.3 < letter_height("ماء") < letter_height("H")


def test_the_least_of_several_scripts_counts():
    assert letter_height("HERON ماء") == letter_height("ماء")
    assert letter_height("heron मछली") == letter_height("heron")


def test_wide_texts_measure_wider_whatever_the_script():
    for short, long in (
        ("מים", "מים מלוחים"),
        ("ماء", "ماء مالح"),
        ("मछली", "मछली घर"),
        ("✓", "✓ ✓"),
    ):
        assert 0 < measure(short) < measure(long)
        assert measure(short, True) > 0


def test_a_blank_is_as_wide_in_every_script():
    blank = measure(" ")
    for word in ("מים", "ماء", "मछली", "heron"):
        assert measure(f"{word} {word}") == pytest.approx(2 * measure(word) + blank, abs=0.001)


def test_marks_over_letters_take_no_room():
    assert measure("ɛ̃") == pytest.approx(measure("ɛ"), abs=0.01)
    assert measure("מַ") == pytest.approx(measure("מ"), abs=0.03)


@pytest.mark.parametrize(
    "text",
    [
        "Ébb tide, naïve façade, Łódź, þorn, ŋ",
        "Thủy triều, nước mặn",
        "Η παλίρροια, ᾠδή",
        "Прилив, їжак, ђ",
        "/ˈsɔːlt.mɑːʃ/ t͡ʃ ɛ̃",
        "מַיִם ספרינג",
        "ماء، ١٢٣؟",
        "क्षेत्र ।",
        "5′ 3″ ✓ ✗ ☐ ☑ ■ ▲ → ⇌ ≤ ∈ ∠ ° ½ ² ₂ € ₹",
        "two\nlines",
        "✔\ufe0f",
    ],
)
def test_every_letter_of_the_supported_scripts_prints(text):
    assert unprintable(text) == []


def test_letters_that_no_face_has_are_told_in_order_each_once():
    assert unprintable("a海bย海") == ["海", "ย"]
    assert unprintable("\x07 \uf0fc \ud800 🦀") == ["\x07", "\uf0fc", "\ud800", "🦀"]


def test_a_letter_is_judged_as_it_is_composed():
    assert unprintable("e\u0301") == []


def test_a_letter_without_a_face_is_left_out_and_never_a_box():
    assert measure("海") == 0
    assert measure("a海b") == pytest.approx(measure("ab"))


@settings(max_examples=150, deadline=None)
@given(st.text(max_size=12), st.booleans())
def test_any_text_is_printed_or_told_of(text, strong):
    missing = unprintable(text)
    width = measure(text, strong)
    assert width >= 0
    assert letter_height(text, strong) > 0
    assert missing or width > 0 or not text.strip() or not text.isprintable()


@settings(max_examples=25, deadline=None)
@given(st.lists(st.text(max_size=20), max_size=6))
def test_any_text_can_be_drawn(texts):
    assert printed(*texts).startswith(b"%PDF-1.7")


SCRIPTS = "".join(
    chr(code)
    for first, last in (
        (0x590, 0x700),
        (0x900, 0x980),
        (0x300, 0x370),
        (0x20, 0x7F),
        (0x200B, 0x2010),
    )
    for code in range(first, last)
)


@settings(max_examples=60, deadline=None)
@given(st.text(st.sampled_from(SCRIPTS), max_size=16))
def test_any_mixture_of_scripts_marks_and_controls_can_be_drawn(text):
    assert printed(text).startswith(b"%PDF-1.7")


def loaded_by(text):
    """Return which modules a page with a text loads, in a fresh interpreter."""
    code = (
        "import sys\n"
        "from decks.layout.frame import Frame, Text\n"
        "from decks.press.pdf import make_pdf\n"
        "from decks.press.type.fonts import letter_height, measure, unprintable\n"
        f"text = {text!r}\n"
        "measure(text), unprintable(text), letter_height(text)\n"
        "page = Frame(300, 300, (Text(9, 9, text, 12),))\n"
        "make_pdf([page], title='x')\n"
        "print(*sys.modules)\n"
    )
    done = subprocess.run(  # the import state of this process is no measure
        [sys.executable, "-c", code], capture_output=True, text=True, check=True
    )
    return done.stdout.split()


def test_plain_type_is_not_shaped_and_loads_no_other_face():
    names = loaded_by("Ébb tide, Прилив, Η παλίρροια, nước mặn: 3 × 4 ≤ 12 °C →")
    assert "decks.press.pdf" in names
    assert not [name for name in names if name.startswith("fontpkg") and "fira_sans" not in name]
    assert "decks.press.script.shaping" not in names


def test_other_scripts_are_shaped_when_they_are_met():
    assert "decks.press.script.shaping" in loaded_by("מים")
