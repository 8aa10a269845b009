"""Languages, by name and by tag.

Tags, and the case of their letters, are examples of RFC 5646: section 2.1.1 and appendix A.
"""

import pytest

from decks.languages import near_language, read_language

LONGEST_IN_THE_STANDARD = "sl-latn-it-rozaj-nedis-1994-x-wadegi"
RFC_5646 = [
    *("de", "fr", "ja"),
    *("zh-Hant", "zh-Hans", "sr-Cyrl", "sr-Latn"),
    *("zh-cmn-Hans-CN", "cmn-Hans-CN", "zh-yue-HK", "yue-HK"),
    *("zh-Hans-CN", "sr-Latn-RS", "mn-Cyrl-MN"),
    *("sl-rozaj", "sl-rozaj-biske", "sl-nedis", "de-CH-1901", "sl-IT-nedis"),
    *("hy-Latn-IT-arevela", "de-DE", "en-US", "es-419"),
    *("de-CH-x-phonebk", "az-Arab-x-aze-derbend", "en-CA-x-ca", "az-Latn-x-latn"),
    *("en-US-u-islamcal", "zh-CN-a-myext-x-private", "en-a-myext-b-another"),
]


@pytest.mark.parametrize("tag", RFC_5646)
def test_a_tag_is_taken_in_any_case_and_given_the_usual_one(tag):
    assert {read_language(one) for one in (tag, tag.lower(), tag.upper(), f" {tag} ")} == {tag}


@pytest.mark.parametrize(
    "text",
    [
        # invalid by RFC 5646, appendix A: two regions; a single character in front
        *("de-419-DE", "a-DE"),
        # private use alone and tags from before the standard tell a reader nothing
        *("x-whatever", "i-klingon"),
        # letters that only look like the plain ones, or become them when made small
        *("\u212aa", "d\u0435", "\uff44\uff45-DE"),
        *("en-", "-en", "en--US", "en-US-x", "en\nUS", "e", "", " ", "12", "en US"),
        *("Spanglish", "<b>fr</b>", "=fr", "fr;de", "French, Spanish"),
        f"en{'-abcde' * 6}",
        "en" * 20_000,
        "\ud800",
    ],
)
def test_what_is_neither_name_nor_tag_is_refused(text):
    assert read_language(text) is None


@pytest.mark.parametrize(
    ("text", "tag"),
    [
        ("French", "fr"),
        (" french ", "fr"),
        ("Français", "fr"),
        ("FRANCAIS", "fr"),
        ("Scottish gaelic", "gd"),
        ("Te reo Maori", "mi"),
        ("עברית", "he"),
        ("中文", "zh"),
    ],
)
def test_a_language_is_known_by_its_name_in_english_or_in_itself(text, tag):
    assert read_language(text) == tag


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("Frensh", "French"),
        ("Portugese", "Portuguese"),
        ("Spanish (Mexico)", "Spanish"),
        ("Deutch", "Deutsch"),
        ("zh_hans", "zh-Hans"),
        ("en\u2013gb", "en-GB"),
        ("Klingish", None),
        ("", None),
        ("French" * 9_000, None),
    ],
)
def test_the_near_miss_is_told_where_there_is_one(text, meant):
    assert read_language(text) is None
    assert near_language(text) == meant
