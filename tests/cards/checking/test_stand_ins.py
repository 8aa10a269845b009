"""Texts that stand for others to come, and content with one answer throughout."""

import pytest

from cards.checking import check

FACTS = ["Prompt", "Answer"]
ROWS = [["What holds a ship?", "anchor"], ["What steers it?", "rudder"], ["Who cooks?", "the cook"]]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


@pytest.mark.parametrize("text", ["TBD", "tba", "N/A", "???", "????", "xxxx", "XXXX"])
def test_a_text_that_holds_the_place_of_an_answer_is_warned_of(read_sheets, text) -> None:
    content = read_sheets({"Facts": [FACTS, *ROWS, ["Who sails?", text]]})
    assert found(content) == [("stand-in", "warning", "Facts B5")]


@pytest.mark.parametrize("text", ["TBD", "tbd"])
def test_a_text_that_holds_the_place_of_a_prompt_is_warned_of(read_sheets, text) -> None:
    content = read_sheets({"Facts": [FACTS, *ROWS, [text, "sailor"]]})
    assert found(content) == [("stand-in", "warning", "Facts A5")]


@pytest.mark.parametrize(
    "row", [["???", "an operator"], ["XXXX", "forty on old clocks"], ["N/A", "sans objet"]]
)
def test_a_prompt_may_be_what_is_to_be_explained(read_sheets, row) -> None:
    assert found(read_sheets({"Facts": [FACTS, *ROWS, row]})) == []


@pytest.mark.parametrize(
    "text", ["XXX", "xxx", "?", "??", "none", "todo", "…", "NA", "TBC", "x", "-", "unknown"]
)
def test_what_may_well_be_asked_for_is_left(read_sheets, text) -> None:
    assert found(read_sheets({"Facts": [FACTS, *ROWS, ["What is wanted?", text]]})) == []


@pytest.mark.parametrize(
    "row",
    [
        ["to be announced", "TBA"],
        ["N/A", "not applicable"],
        ["What is “to be done” for short?", "tbd"],
    ],
)
def test_an_abbreviation_beside_its_words_is_left(read_sheets, row) -> None:
    assert found(read_sheets({"Facts": [FACTS, *ROWS, row]})) == []


@pytest.mark.parametrize("answer", ["the limpet", "true", "4"])
def test_one_answer_throughout_is_warned_of_once(read_sheets, answer) -> None:
    rows = [[f"What is at place {place}?", answer] for place in ("one", "two", "six", "ten", "nil")]
    content = read_sheets({"Facts": [FACTS, *rows]})
    assert found(content) == [("one-answer", "warning", "Facts B2")]


def test_few_rows_or_one_other_answer_are_left(read_sheets) -> None:
    rows = [[f"Is a {name} an animal?", "yes"] for name in ("crab", "tern", "seal", "cod", "whelk")]
    assert found(read_sheets({"Facts": [FACTS, *rows[:4]]})) == []
    assert found(read_sheets({"Facts": [FACTS, *rows, ["Is dulse an animal?", "no"]]})) == []


def test_sheets_that_sort_things_may_have_one_answer_each(read_sheets) -> None:
    animals = [[name, "animal"] for name in ("crab", "tern", "seal", "cod", "whelk")]
    plants = [[name, "plant"] for name in ("thrift", "dulse", "laver", "sea kale", "eelgrass")]
    assert found(read_sheets({"A": [FACTS, *animals], "B": [FACTS, *plants]})) == []
