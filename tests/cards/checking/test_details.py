"""Supporting details: each defect is found in its cell, and good texts are left."""

import pytest

from cards.checking import check

HEADINGS = ["Topic", "Heading", "Detail"]
GOOD = [
    ["Between the tides", "Holding on", "Limpets clamp down with one strong foot"],
    ["Between the tides", "Holding on", "Seaweeds grip the rock with a root-like disc"],
    ["Between the tides", "Not drying out", "Mussels close until the sea comes back"],
    ["Between the tides", "Not drying out", "Crabs wait under damp weed"],
]
ONE_HEADING = [[topic, "Holding on", detail] for topic, _heading, detail in GOOD]


def found(read_sheets, rows):
    content = read_sheets({"Details": [HEADINGS, *rows]})
    return [(f.code, str(f.severity), str(f.place)) for f in check(content, ())]


def named(heading, detail="Starfish cling with hundreds of tube feet", topic="Between the tides"):
    return [topic, heading, detail]


def test_good_details_are_left(read_sheets) -> None:
    assert found(read_sheets, GOOD) == []


def test_a_text_with_one_heading_only_has_nothing_to_sort(read_sheets) -> None:
    assert found(read_sheets, ONE_HEADING) == [("one-heading", "warning", "Details B2")]


def test_a_text_that_is_still_being_written_is_left(read_sheets) -> None:
    assert found(read_sheets, ONE_HEADING[:3]) == []
    assert found(read_sheets, GOOD[1:3]) == []


def test_a_heading_with_one_detail_is_noted(read_sheets) -> None:
    assert found(read_sheets, [*GOOD, named("Getting food")]) == [
        ("lonely-detail", "note", "Details B6")
    ]


def test_a_text_whose_headings_have_all_one_detail_is_noted_once(read_sheets) -> None:
    rows = [
        named(heading, f"What number {n} of the shore is about")
        for n, heading in enumerate(["Feeding", "Holding on", "Breathing", "Keeping cool"])
    ]
    assert found(read_sheets, rows) == [("lonely-detail", "note", "Details B2")]


@pytest.mark.parametrize(
    "heading", ["Holdin on", "Holding-on", "The holding on", "Hodling on", "Not drying outs"]
)
def test_a_heading_that_is_nearly_another_is_found_once(read_sheets, heading) -> None:
    assert found(read_sheets, [*GOOD, named(heading)]) == [
        ("nearly-same-heading", "warning", "Details B6")
    ]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("Stage 1", "Stage 2"),
        ("Warm water", "Cold water"),
        ("What it eats", "What eats it"),
        ("Desert", "Dessert"),
        ("Plants", "Planets"),
        ("Deposition", "Disposition"),
    ],
)
def test_headings_that_only_look_alike_are_left(read_sheets, one, other) -> None:
    details = ["Limpets clamp down", "Seaweeds grip", "Mussels close", "Crabs wait"]
    rows = [named((one, other)[n % 2], detail) for n, detail in enumerate(details)]
    assert found(read_sheets, rows) == []


def test_the_same_heading_may_stand_in_two_texts_in_two_ways(read_sheets) -> None:
    other = [[f"The {topic}, again", heading, f"{text} too"] for topic, heading, text in GOOD]
    other = [[t, h.replace("Holding", "Holdings"), d] for t, h, d in other]
    codes = [code for code, _s, _p in found(read_sheets, [*GOOD, *other])]
    assert "nearly-same-heading" not in codes


def test_a_detail_without_its_text_is_found_where_others_name_theirs(read_sheets) -> None:
    rows = [*GOOD, named("Holding on", topic=None)]
    assert found(read_sheets, rows) == [("detail-without-topic", "warning", "Details C6")]


def test_details_of_one_text_need_not_name_it(read_sheets) -> None:
    assert found(read_sheets, [[None, heading, text] for _t, heading, text in GOOD]) == []


def test_a_detail_that_names_its_heading_gives_itself_away(read_sheets) -> None:
    rows = [*GOOD, named("Holding on", "Barnacles are holding on with glue")]
    assert found(read_sheets, rows) == [("answer-in-own-prompt", "warning", "Details C6")]
