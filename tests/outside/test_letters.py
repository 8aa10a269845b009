"""Letters are counted as Unicode counts what a reader takes for one letter.

Source: the Unicode Consortium's GraphemeBreakTest.txt for Unicode Standard Annex 29 (extended
grapheme clusters, with conjuncts of Indian scripts), the lines that concern letters. ÷ is where a
letter ends, × where none does.
"""

import unicodedata

import pytest

from decks.bank.letters import letters_of

CASES = """
÷ 0061 × 0308 ÷ 0062 ÷
÷ 0061 × 0903 ÷ 0062 ÷
÷ 0646 × 200D ÷ 0020 ÷
÷ AC00 × 11A8 ÷ 1100 ÷
÷ 0915 ÷ 0924 ÷
÷ 0300 ÷ 0915 ÷
÷ 0915 × 094D × 0924 ÷
÷ 0915 × 094D × 094D × 0924 ÷
÷ 0915 × 094D × 200D × 0924 ÷
÷ 0915 × 093C × 200D × 094D × 0924 ÷
÷ 0915 × 093C × 094D × 200D × 0924 ÷
÷ 0915 × 094D × 0924 × 094D × 092F ÷
÷ 0915 × 094D ÷ 0061 ÷
÷ 0061 × 094D ÷ 0924 ÷
÷ 003F × 094D ÷ 0924 ÷
"""


@pytest.mark.parametrize("case", CASES.strip().splitlines())
def test_a_letter_ends_where_the_standard_ends_it(case):
    clusters = [
        "".join(chr(int(code, 16)) for code in cluster.replace("×", " ").split())
        for cluster in case.split("÷")
        if cluster.strip()
    ]
    composed = [unicodedata.normalize("NFC", cluster) for cluster in clusters]
    assert letters_of("".join(clusters)) == composed


def test_a_vowel_sign_between_two_consonants_keeps_them_apart():
    # rule GB9c: only marks with a combining class, and the joiner, may stand between them (from
    # memory; kā with a virama before the vowel sign, and ta)
    assert letters_of("\u0915\u094d\u093e\u0924") == ["\u0915\u094d\u093e", "\u0924"]
