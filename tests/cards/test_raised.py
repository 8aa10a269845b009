"""Raised and lowered letters as signs of their own."""

import unicodedata

import pytest

from cards.raised import in_signs, written_out
from cards.style import Span, TextStyle
from decks.press.type.fonts import unprintable

RAISED, LOWERED = TextStyle.RAISED, TextStyle.LOWERED


@pytest.mark.parametrize(
    ("text", "spans", "written"),
    [
        ("102", [(2, 3, RAISED)], "10²"),
        ("H2O", [(1, 2, LOWERED)], "H₂O"),
        ("SO42-", [(2, 3, LOWERED), (3, 5, RAISED)], "SO₄²⁻"),
        ("x2n", [(1, 3, RAISED)], "x²ⁿ"),
        ("xn + 1", [(1, 6, RAISED)], "xⁿ ⁺ ¹"),
        ("21st", [(2, 4, RAISED)], "21ˢᵗ"),
        ("102", [(0, 3, TextStyle.BOLD)], "102"),
        ("102", [], "102"),
    ],
)
def test_every_letter_gets_its_sign(text, spans, written):
    spans = tuple(Span(*span) for span in spans)
    assert written_out(text, spans) == in_signs(text, spans) == written


def test_letters_without_a_sign_are_marked():
    spans = (Span(1, 2, RAISED), Span(5, 6, LOWERED))
    assert written_out("xQ, FB", spans) == "x^Q, F_B"
    assert in_signs("xQ, FB", spans) is None


@pytest.mark.parametrize(("style", "tag"), [(RAISED, "<super>"), (LOWERED, "<sub>")])
def test_the_signs_are_those_of_unicode_and_the_typefaces_have_them(style, tag):
    # UnicodeData.txt says of each sign which letter it is, raised or lowered
    told = 0
    for code in range(0x20, 0x7F):
        sign = in_signs(chr(code), (Span(0, 1, style),))
        if sign is None or sign.isspace():
            continue
        told += 1
        letter = "2212" if chr(code) == "-" else f"{code:04X}"
        assert unicodedata.decomposition(sign) == f"{tag} {letter}"
        assert not unprintable(sign)
    assert told == (40 if style is RAISED else 32)
