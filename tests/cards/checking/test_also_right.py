"""Columns of other right answers, each cell of which is a list."""

import pytest

from cards.checking import check

HEADINGS = ["Question", "Answer", "Also right"]
PAIRS = [
    ["What ebbs?", "tide"],
    ["What digs?", "lugworm"],
    ["What clings?", "limpet"],
    ["What wades?", "heron"],
    ["What flies?", "tern"],
]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


def rows(*also):
    return [HEADINGS, *([*pair, text] for pair, text in zip(PAIRS, also, strict=False))]


@pytest.mark.parametrize(
    "also",
    [
        ("sea, water", "sandworm, lug", "shellfish, snail", "egret, grey heron", "gull, bird"),
        ("sea/water", "sandworm / lug", "shellfish/snail", "egret / wader", None),
    ],
)
def test_a_column_of_lists_without_semicolons_is_noted_once(read_sheets, also) -> None:
    content = read_sheets({"Questions": rows(*also)})
    assert found(content) == [("also-right-in-one", "note", "Questions C2")]


@pytest.mark.parametrize(
    "also",
    [
        ("sea; water", "sandworm, lug", "shellfish, snail", "egret, heron", "gull, bird"),
        ("sea, water", "sandworm, lug", "shellfish, snail", "egret", "gull"),
        ("sea, water", "sandworm, lug", "shellfish, snail"),
        ("km/h", "m/s", "kg/l", "mg/l", "l/h"),
        ("1,000", "2,500", "1/2", "3/4", "10,000"),
    ],
)
def test_other_columns_are_not(read_sheets, also) -> None:
    assert found(read_sheets({"Questions": rows(*also)})) == []


def test_answers_with_more_said_of_them_are_not(read_sheets) -> None:
    also = [f"{answer}, of the shore" for _question, answer in PAIRS]
    assert found(read_sheets({"Questions": rows(*also)})) == []


def test_names_turned_round_and_answers_that_are_lists_are_not(read_sheets) -> None:
    turned = [
        ["Who sailed first?", "Ada Marsh", "Marsh, Ada"],
        ["Who fished first?", "Bo Tideway", "Tideway, Bo"],
        ["Which two ebb?", "sea, river", "river, brook"],
        ["Which two dig?", "worm, crab", "lugworm, clam"],
    ]
    assert found(read_sheets({"Questions": [HEADINGS, *turned]})) == []
