"""The order of letters against the conformance data of UAX #9, the bidirectional algorithm."""

from pathlib import Path
from unicodedata import bidirectional

import pytest

from decks.press.script.direction import IGNORED, levels_of, right_to_left, visual

SAMPLE = Path(__file__).parent / "data" / "bidi_character_sample.txt"
WHOLE = Path("/usr/share/unicode/BidiCharacterTest.txt")
CONTROLS = IGNORED - {"BN"}
"""Embeddings, overrides and isolates: we give them no effect, so their cases do not apply."""


def cases(file):
    for line in file.read_text("utf-8").splitlines():
        row = line.partition("#")[0].strip()
        if row:
            codes, asked, base, levels, order = row.split(";")
            text = "".join(chr(int(code, 16)) for code in codes.split())
            if not any(bidirectional(c) in CONTROLS for c in text):
                yield text, asked, int(base), levels.split(), [int(n) for n in order.split()]


def wrong(file):
    found = []
    for text, asked, base, levels, order in cases(file):
        own = levels_of(text, base)
        shown = [n for n in visual(own) if levels[n] != "x"]
        agrees = all(wanted in {"x", str(level)} for wanted, level in zip(levels, own, strict=True))
        if not agrees or shown != order or (asked == "2" and right_to_left(text) != bool(base)):
            found.append((text, own, shown))
    return found


def test_levels_and_order_are_those_of_the_conformance_data():
    assert len(list(cases(SAMPLE))) == 500
    assert wrong(SAMPLE) == []


@pytest.mark.skipif(not WHOLE.exists(), reason="needs Debian's package unicode-data")
def test_levels_and_order_are_those_of_all_the_conformance_data():
    assert wrong(WHOLE) == []


# UAX #9, section 3.3.5, the examples of rule N0, and 3.3.4 of rule W4
@pytest.mark.parametrize(
    ("text", "base", "shown"),
    [
        ("smith (fabrikam ARABIC) HEBREW", 1, "WERBEH (CIBARA fabrikam) smith"),
        ("ARABIC (book(s) title) OTHER", 1, "REHTO (book(s) title) CIBARA"),
        ("he said ABC 3,5", 0, "he said 3,5 CBA"),
    ],
)
def test_the_examples_of_the_standard_are_ordered_as_it_shows_them(text, base, shown):
    letters = "".join(chr(0x05D0 + ord(c) - ord("A")) if c.isupper() else c for c in text)
    turned = [(text[n], levels_of(letters, base)[n]) for n in visual(levels_of(letters, base))]
    mirror = str.maketrans("()", ")(")
    assert "".join(c.translate(mirror) if level % 2 else c for c, level in turned) == shown


# BidiBrackets.txt, Unicode 15.0.0: an opening bracket and its partner
def test_brackets_find_their_partners():
    from decks.press.script.brackets import closing  # noqa: PLC0415

    pairs = "() [] {} ⁅⁆ ⁽⁾ ⌈⌉ ⌊⌋ 〈〉 ⟨⟩ ⟦⟧ ⦃⦄ ⦍⦐ ⦏⦎ 「」 （） ［］ ｛｝"
    assert [(a, closing(a)) for a, _b in pairs.split()] == [tuple(p) for p in pairs.split()]
    assert [closing(c) for c in ")]}«‘“x<"] == [None] * 8
