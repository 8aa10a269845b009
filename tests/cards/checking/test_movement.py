"""The Exercises sheet: efforts that are known, a gentler option for everyone, no repeats."""

import pytest

from cards.checking import check
from cards.finding import Severity

FACTS = [("Prompt", "Answer"), ("A limpet holds on with one strong …", "foot")]
HEADS = ("Exercise", "How many", "Gentler option", "Effort")
GENTLER = "smaller steps; sitting: heels only"


def found(read_sheets, *rows, heads=HEADS):
    content = read_sheets({"Facts": FACTS, "Exercises": [heads, *rows]})
    return check(content, ("Heron", "Otter"))


@pytest.mark.parametrize(
    "effort",
    ["gentle", "Moderate", " STRONG ", "light", "medium", "vigorous", "easy", "hard", 1, 3.0, None],
)
def test_an_effort_in_any_of_the_usual_words_or_none_is_passed_in_silence(read_sheets, effort):
    assert found(read_sheets, ("Wade", "12 steps", GENTLER, effort)) == ()


@pytest.mark.parametrize(
    ("effort", "near"),
    [("strnog", "strong"), ("moderat", "moderate"), ("vigorus", "vigorous"), ("qqq", None)],
)
def test_an_unknown_effort_is_found_at_its_cell_with_the_near_miss(read_sheets, effort, near):
    (finding,) = found(read_sheets, ("Wade", "12 steps", GENTLER, effort))
    assert (finding.code, finding.severity) == ("unknown-effort", Severity.WARNING)
    assert (str(finding.place), finding.found) == ("Exercises D2", effort)
    assert finding.mend.startswith(f"Did you mean {near}?" if near else "Write gentle")
    assert "counts as moderate" in finding.wrong


def test_an_exercise_without_a_gentler_option_is_found_by_its_name(read_sheets):
    rows = [("Wade", "12 steps", GENTLER, None), ("Leap", "6 leaps", None, "strong")]
    (finding,) = found(read_sheets, *rows)
    assert (finding.code, str(finding.place)) == ("no-gentler-option", "Exercises A3")
    assert finding.wrong == "“Leap” has no gentler option, and everyone needs one."


def test_where_no_exercise_has_a_gentler_option_the_sheet_is_told_once(read_sheets):
    rows = [(name, "6 times") for name in ("Wade", "Leap", "Dig", "Preen")]
    (finding,) = found(read_sheets, *rows, heads=HEADS[:2])
    assert (finding.code, str(finding.place)) == ("no-gentler-option", "Exercises")


def test_an_exercise_that_is_listed_twice_is_found_whatever_its_case(read_sheets):
    rows = [("Wade on", "12 steps", GENTLER, None), ("wade  ON", "6 steps", GENTLER, None)]
    (finding,) = found(read_sheets, *rows)
    assert (finding.code, str(finding.place)) == ("same-exercise", "Exercises A3")
    assert "Exercises A2" in finding.wrong


def test_a_row_with_a_finding_stays_in_the_lesson(read_sheets):
    content = read_sheets(
        {"Facts": FACTS, "Exercises": [HEADS, ("Leap", "6 leaps", None, "strnog")]}
    )
    findings = check(content, ("Heron", "Otter"))
    assert {finding.severity for finding in findings} == {Severity.WARNING}
    assert [row.name.text for row in content.exercises] == ["Leap"]
