"""Open reference data as content: no error, and few warnings, each of which can be defended."""

import gettext
import json
import unicodedata
from collections import Counter
from importlib.resources import files

import periodictable
import pycountry
import pytest

from cards.checking import check
from cards.content import Content
from cards.finding import Severity
from cards.item import Item, Kind, Level
from cards.place import Place

# Where the rows come from:
# periodictable (public domain): names and symbols of the elements as IUPAC has them
# pycountry (LGPL-2.1): ISO 3166, 639, 4217 and 15924 with their translations, from Debian iso-codes
# countryinfo (MIT): capitals
# the Unicode Character Database, version as in the running Python: names of characters
ELEMENTS = [element for element in periodictable.elements if element.number]
LANGUAGES = ("ar", "el", "fa", "he", "hi", "ja", "ko", "ru", "ta", "th", "uk", "vi", "zh_CN")
NEIGHBOURS = ("cs", "de", "es", "fi", "fr", "hu", "pl", "pt", "ro", "sv", "tr")
SCRIPTS = [
    *[(0x391, 0x3CA), (0x410, 0x450), (0x531, 0x557), (0x5D0, 0x5EB), (0x627, 0x64B)],
    *[(0x905, 0x93A), (0xE01, 0xE2F), (0x3041, 0x3097), (0x2200, 0x2300), (0xC0, 0x250)],
]


def content(rows, kind):
    items = tuple(
        Item(prompt, answer, kind, Level.MEDIUM, "", Place("Facts", row, 1), Place("Facts", row, 2))
        for row, (prompt, answer) in enumerate(rows, 2)
    )
    return Content("Reference", items, (), (), (), "")


def found(rows, kind=Kind.FACT):
    """Return how many findings of each code there are; none may be an error."""
    findings = check(content(rows, kind), ())
    assert [str(finding) for finding in findings if finding.severity is Severity.ERROR] == []
    return Counter(finding.code for finding in findings)


def capitals():
    for path in sorted(files("countryinfo").joinpath("data").iterdir(), key=lambda path: path.name):
        record = json.loads(path.read_text("utf-8")) if path.name.endswith(".json") else {}
        capital = record.get("capital")
        if capital:
            yield record["name"], capital if isinstance(capital, str) else capital[0]


def translated(language):
    in_language = gettext.translation("iso3166-1", pycountry.LOCALES_DIR, [language]).gettext
    names = ((country.name, in_language(country.name)) for country in pycountry.countries)
    return [(name, other) for name, other in names if other != name]


def characters():
    return [chr(code) for low, high in SCRIPTS for code in range(low, high)]


def names_of(some):
    return [(sign, name.capitalize()) for sign in some if (name := unicodedata.name(sign, ""))]


def test_elements_by_symbol_name_and_number_say_nothing() -> None:
    names = [(f"The element with the symbol {e.symbol}", e.name) for e in ELEMENTS]
    symbols = [(f"Symbol of {e.name}", e.symbol) for e in ELEMENTS]
    numbers = [(f"Atomic number of {e.name}", str(e.number)) for e in ELEMENTS]
    assert len(ELEMENTS) == 118
    assert found(names + symbols + numbers) == {}
    assert found([(e.symbol, e.name) for e in ELEMENTS], Kind.VOCABULARY) == {}


def test_countries_languages_and_scripts_by_code_say_little() -> None:
    countries = [(f"Which country has the code {c.alpha_2}?", c.name) for c in pycountry.countries]
    languages = [
        (f"Which language has the code {language.alpha_2}?", language.name)
        for language in pycountry.languages
        if hasattr(language, "alpha_2")
    ]
    scripts = [(f"Which script has the code {s.alpha_4}?", s.name) for s in pycountry.scripts]
    assert found(countries, Kind.QUESTION) == {}
    # one name of 58 letters among names of seven
    assert found(languages, Kind.QUESTION) <= Counter({"uneven-length": 1})
    # scripts such as Cham and Moon are coded by their own names; one has 95 letters of by-names
    assert found(scripts, Kind.QUESTION) <= Counter({"answer-in-own-prompt": 8, "uneven-length": 1})


def test_currencies_by_code_say_little() -> None:
    currencies = [
        (f"Which currency has the code {c.alpha_3}?", c.name) for c in pycountry.currencies
    ]
    # VED and VES have one name
    assert found(currencies, Kind.QUESTION) <= Counter({"same-answer": 1})


def test_full_names_that_are_the_short_names_are_told_of() -> None:
    rows = [
        (f"What is {c.name} called in full?", c.official_name)
        for c in pycountry.countries
        if hasattr(c, "official_name")
    ]
    # the full name of Hungary is Hungary, and ISO writes “Bolivia, Plurinational State of”
    assert found(rows, Kind.QUESTION) <= Counter({"answer-in-own-prompt": 20})


def test_capitals_say_only_where_a_capital_is_named_like_its_country() -> None:
    rows = sorted({(f"What is the capital of {name}?", capital) for name, capital in capitals()})
    assert len(rows) > 200
    # Djibouti, Luxembourg, Monaco, Singapore, ...; Kingston is Jamaica's and Norfolk Island's, and
    # three more capitals serve two entries of the source
    assert found(rows, Kind.QUESTION) <= Counter({"answer-in-own-prompt": 10, "same-answer": 5})


@pytest.mark.parametrize("language", LANGUAGES)
def test_countries_in_other_scripts_say_nothing_in_either_direction(language) -> None:
    rows = translated(language)
    assert len(rows) > 200
    assert found(rows) == {}
    assert found([(other, name) for name, other in rows], Kind.VOCABULARY) == {}


@pytest.mark.parametrize("language", NEIGHBOURS)
def test_countries_in_related_languages_say_little(language) -> None:
    rows = translated(language)
    assert len(rows) > 100
    # Brunei Darussalam is Brunei; “Bahama-szigetek” has Bahama in it; Georgia lies in South Georgia
    few = Counter({"answer-in-own-prompt": 15, "answer-in-other-prompt": 2})
    assert found(rows) <= few
    assert found([(other, name) for name, other in rows], Kind.VOCABULARY) <= few


def test_letters_and_signs_of_ten_scripts_say_nothing() -> None:
    rows = names_of(characters())
    assert len(rows) > 900
    assert found(rows) == {}
    assert found([(name, sign) for sign, name in rows]) == {}


@pytest.mark.parametrize("pattern", ["{} × {}", "{} x {} =", "What is {}·{}?", "{} times {}"])
def test_true_times_tables_say_nothing(pattern) -> None:
    pairs = [(a, b) for a in range(1, 13) for b in range(1, 13)]
    assert found([(pattern.format(a, b), str(a * b)) for a, b in pairs]) == {}


def test_true_divisions_with_what_remains_say_nothing() -> None:
    pairs = [(a, b) for a in range(2, 60) for b in range(2, 13)]
    rows = [(f"{a} ÷ {b} =", f"{a // b} r {a % b}" if a % b else str(a // b)) for a, b in pairs]
    assert found(rows) == {}
