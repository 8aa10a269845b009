"""Each rule: one defect gives one finding in its cell, and good content gives none."""

from collections.abc import Callable

import pytest

from cards.checking import check, sound_items
from cards.checking.rules import rules
from cards.content import Content
from cards.finding import Severity

TEAMS = ("Heron", "Otter", "Samphire", "Curlew")
GOOD = {
    "Vocabulary": [
        ["Word", "Meaning", "Topic", "Level", "Also right", "Team"],
        ["limpet", "a shellfish that clamps itself to rock", "Animals", "easy", None, "Heron"],
        ["samphire", "a fleshy plant of the saltmarsh", "Plants", 2, "glasswort", "otter"],
        ["spring tide", "the highest of high tides", "Tides", "H", None, None],
    ],
    "Facts": [
        ["Prompt", "Answer", "Level"],
        ["High tides in a day", "2", None],
        ["Arms of a common starfish", "5", "1"],
        ["Legs of a shore crab", 10, 3],
    ],
    "Questions": [
        ["Question", "Answer", "Wrong answers"],
        ["What pulls the tides?", "the moon", "the wind; the fish"],
    ],
    "Details": [
        ["Topic", "Heading", "Detail"],
        ["Shore", "Upper shore", "Splashed at spring tides only"],
        ["Shore", "Lower shore", "Under water most of the day"],
    ],
    "Teams": [["Team", "Colour"], ["Heron", "blue"], ["Otter", "orange"]],
    "Deck": [["Setting", "Value"], ["Title", "Shore week"], ["Cards", None]],
    "Exercises": [
        ["Exercise", "How many", "Gentler option", "Effort"],
        ["star jumps", 10, "step from side to side; sitting: arms only", "strong"],
        ["arm circles", "8 each way", "smaller circles; sitting: the same", None],
    ],
}
ReadSheets = Callable[..., Content]


def found(content: Content) -> list[tuple[str, str, str]]:
    findings = check(content, TEAMS)
    return [(finding.code, str(finding.severity), str(finding.place)) for finding in findings]


def test_good_content_gives_no_finding(read_sheets: ReadSheets) -> None:
    content = read_sheets(GOOD)
    assert check(content, TEAMS) == ()
    assert len(content.items) == 9
    assert sound_items(content, ()) == content.items


DEFECTS = [
    ("Facts", [None, "6"], "no-prompt", "Facts A5"),
    ("Facts", ["Legs of a crab", None], "no-answer", "Facts B5"),
    ("Facts", [" ", "6"], "no-prompt", "Facts A5"),
    ("Facts", ["Legs of a crab", "\u00a0"], "no-answer", "Facts B5"),
    ("Facts", ["Legs of a crab", "____ ____"], "no-answer", "Facts B5"),
    ("Vocabulary", ["whelk", None], "no-prompt", "Vocabulary B5"),
    ("Vocabulary", [None, "a snail"], "no-answer", "Vocabulary A5"),
    ("Questions", [None, "the moon"], "no-prompt", "Questions A3"),
    ("Details", ["Shore", None, "Dry all day"], "no-answer", "Details B4"),
    ("Facts", ["high tides  IN a day", "2"], "same-item", "Facts A5"),
    ("Facts", ["Sides of a dice", "6", "esay"], "unknown-level", "Facts C5"),
    ("Facts", ["Sides of a dice", "6", 4], "unknown-level", "Facts C5"),
    ("Facts", ["High tides in a day", "3"], "same-prompt-other-answer", "Facts A5"),
    (
        "Vocabulary",
        ["glasswrack", "A fleshy plant of the saltmarsh"],
        "same-prompt-other-answer",
        "Vocabulary B5",
    ),
    (
        "Vocabulary",
        ["whelk", "a snail of the sea", None, None, None, "Hern"],
        "unknown-team",
        "Vocabulary F5",
    ),
]


@pytest.mark.parametrize(("sheet", "row", "code", "place"), DEFECTS)
def test_one_defect_gives_one_finding_in_its_cell(
    read_sheets: ReadSheets, sheet: str, row: list[object], code: str, place: str
) -> None:
    content = read_sheets(GOOD | {sheet: [*GOOD[sheet], row]})
    severity = "warning" if code == "same-item" else "error"
    assert found(content) == [(code, severity, place)]


def test_every_rule_has_a_code_of_its_own() -> None:
    codes = [rule.code for rule in rules()]
    assert len(set(codes)) == len(codes)


def test_a_message_names_the_first_cell_and_both_answers(read_sheets: ReadSheets) -> None:
    content = read_sheets(
        {"Facts": [["Prompt", "Answer"], ["Tides a day", "2"], ["tides a day", "4"]]}
    )
    [finding] = check(content, TEAMS)
    assert str(finding) == (
        "Facts A3: The same prompt stands in Facts A2, but there the answer is “2”, and here it is "
        "“4”. Change one of the two, or name the other under Also right if both are right."
    )


def test_every_later_row_is_told_of(read_sheets: ReadSheets) -> None:
    rows = [["Prompt", "Answer"], ["Tides a day", "2"], ["Tides a day", "4"], ["Tides a day", "2"]]
    content = read_sheets({"Facts": rows})
    assert found(content) == [
        ("same-prompt-other-answer", "error", "Facts A3"),
        ("same-item", "warning", "Facts A4"),
    ]


def test_repeats_are_found_across_sheets(read_sheets: ReadSheets) -> None:
    facts = [["Prompt", "Answer"], ["What pulls the tides?", "the wind"]]
    questions = [["Question", "Answer"], ["What pulls the tides?", "the moon"]]
    content = read_sheets({"Facts": facts, "Questions": questions})
    assert found(content) == [("same-prompt-other-answer", "error", "Questions A2")]


@pytest.mark.parametrize("also", [("glasswort", None), (None, "samphire"), ("x; Glasswort", None)])
def test_two_answers_that_are_both_right_are_no_error(
    read_sheets: ReadSheets, also: tuple[str | None, str | None]
) -> None:
    rows = [
        ["Word", "Meaning", "Also right"],
        ["samphire", "a fleshy plant", also[0]],
        ["glasswort", "a fleshy plant", also[1]],
    ]
    assert found(read_sheets({"Vocabulary": rows})) == []


def test_prompts_without_answers_are_not_called_repeats(read_sheets: ReadSheets) -> None:
    rows = [["Prompt", "Answer"], ["Tides a day", "2"], ["Tides a day", None]]
    assert found(read_sheets({"Facts": rows})) == [("no-answer", "error", "Facts B3")]


def test_a_near_miss_is_suggested_for_levels_and_teams(read_sheets: ReadSheets) -> None:
    rows = [["Prompt", "Answer", "Level", "Team"], ["Tides a day", "2", "hrad", "Samfire"]]
    mends = {finding.code: finding.mend for finding in check(read_sheets({"Facts": rows}), TEAMS)}
    assert mends["unknown-level"].startswith("Did you mean hard?")
    assert mends["unknown-team"].startswith("Did you mean Samphire?")


def test_nothing_is_suggested_that_is_not_near(read_sheets: ReadSheets) -> None:
    rows = [["Prompt", "Answer", "Level", "Team"], ["Tides a day", "2", "17", "Zzz"]]
    mends = [finding.mend for finding in check(read_sheets({"Facts": rows}), TEAMS)]
    assert not any("Did you mean" in mend for mend in mends)


def test_a_long_answer_is_cut_short_in_messages(read_sheets: ReadSheets) -> None:
    rows = [["Prompt", "Answer"], ["Why?", "tide " * 40], ["Why?", "line\nbreak"]]
    [finding] = check(read_sheets({"Facts": rows}), TEAMS)
    assert "\n" not in str(finding)
    assert len(str(finding)) < 300


def test_errors_come_first_then_places_in_order(read_sheets: ReadSheets) -> None:
    rows = [
        ["Prompt", "Answer", "Levle"],
        ["Tides a day", None, None],
        ["Legs of a crab", "10", "?"],
        [None, "5", None],
    ]
    assert found(read_sheets({"Facts": rows})) == [
        ("no-answer", "error", "Facts B2"),
        ("unknown-level", "error", "Facts C3"),
        ("no-prompt", "error", "Facts A4"),
        ("misspelt-heading", "warning", "Facts C1"),
    ]


def test_sound_items_are_those_without_an_error_in_their_row(read_sheets: ReadSheets) -> None:
    rows = [
        ["Prompt", "Answer", "Level", "Team"],
        ["Tides a day", "2", None, None],
        ["Legs of a crab", None, None, None],
        ["Arms of a starfish", "5", "?", None],
        ["Shells of a mussel", "2", None, "Nobody"],
        ["Legs of a shrimp", "10", "3", "curlew"],
    ]
    content = read_sheets({"Facts": rows, "Questions": [["Question", "Answer"], ["Why?", "salt"]]})
    findings = check(content, TEAMS)
    assert {finding.severity for finding in findings} == {Severity.ERROR}
    sound = sound_items(content, findings)
    assert [item.prompt for item in sound] == ["Tides a day", "Legs of a shrimp", "Why?"]
