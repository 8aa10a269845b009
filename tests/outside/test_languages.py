"""Codes and names of languages, as ISO 639 has them.

pycountry (LGPL-2.1) holds ISO 639-3 with the codes of ISO 639-1, and what translators of Debian
iso-codes call each language, in other languages and in its own.
"""

import gettext
import re
from collections import Counter

import pycountry
import pytest

from cards.languages import LANGUAGES
from cards.reading.languages import language_of
from decks.languages import TWO_LETTERS, read_language

OUR_NAMES = {code: [name.strip() for name in names.split(",")] for code, names in LANGUAGES.items()}
IN = ("es", "fr", "de", "pt")
BY_CODE = pytest.mark.parametrize("code", LANGUAGES)


def names_in_iso(code: str, language: str | None = None) -> list[str]:
    """Return what ISO 639-3 calls a language, in another one where it has words for it."""
    called = pycountry.languages.get(alpha_2=code).name
    if language:
        words = gettext.translation("iso639-3", pycountry.LOCALES_DIR, [language], fallback=True)
        called = words.gettext(called)
    # as in “Modern Greek (1453-)” and “中文; 汉语; 华语”
    return re.sub(r"\([^()]*\)", "", called).split(";")


@BY_CODE
def test_every_code_is_that_of_iso_639_1_for_the_english_name(code):
    # the standard parts today's Greek from the ancient one
    called = ["Greek"] if code == "el" else [name.strip() for name in names_in_iso(code)]
    assert set(called) & set(OUR_NAMES[code])


@BY_CODE
def test_no_name_of_another_tongue_is_taken_for_another_language(code):
    for language in (*IN, code):
        for name in names_in_iso(code, language):
            assert read_language(name) in {code, None}, (language, name)


@pytest.mark.parametrize(
    "code", [code for code in LANGUAGES if names_in_iso(code, code) != names_in_iso(code)]
)
def test_every_language_is_known_by_the_name_it_has_in_itself(code):
    own, *_ = names_in_iso(code, code)
    assert read_language(own) == code
    assert language_of(own) == code


@BY_CODE
def test_every_name_of_ours_is_read_as_its_own_code(code):
    for name in (*OUR_NAMES[code], code):
        assert read_language(name) == code
    assert {language_of(name) for name in OUR_NAMES[code]} == {code}


def test_the_codes_of_two_letters_are_those_of_iso_639_1():
    known = [language.alpha_2 for language in pycountry.languages if hasattr(language, "alpha_2")]
    assert TWO_LETTERS.split() == sorted(known)


@pytest.mark.parametrize("slip", ["sp", "jp", "gr", "dk", "cz", "sp-MX"])
def test_codes_of_countries_and_guesses_are_no_languages(slip):
    assert read_language(slip) is None


def test_no_two_languages_share_a_name():
    counts = Counter(name.casefold() for names in OUR_NAMES.values() for name in names)
    assert [name for name, count in counts.items() if count > 1] == []


def test_iso_has_enough_names_of_languages_in_themselves_to_compare_with():
    own = [code for code in LANGUAGES if names_in_iso(code, code) != names_in_iso(code)]
    assert len(own) > 30
