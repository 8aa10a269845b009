"""More than a hundred mistakes planted in good content: each is found in its cell, and no other."""

import csv
from collections import Counter
from pathlib import Path

import openpyxl
import pytest

from cards.checking import check
from cards.checking.rules import rules

HERE = Path(__file__).parent
TEAMS = ("Heron", "Otter", "Samphire", "Curlew")
SAMPLE = HERE.parents[2] / "sample_content" / "Saltmarsh week.xlsx"
HEADINGS = {
    "Vocabulary": ["Word", "Meaning", "Also right", "Topic", "Team"],
    "Facts": ["Prompt", "Answer", "Also right", "Team"],
    "Questions": ["Question", "Answer", "Wrong answers", "Also right"],
    "Exercises": ["Exercise", "How many", "Gentler option", "Effort"],
}
# banks in which one word can stand out, each a sheet of its own
BANKS = {
    "Numbers": [
        ["jib", "A sail before the mast"],
        ["keel", "The spine of a ship"],
        ["helm", "What one steers by"],
        ["oar", "A pole with a blade"],
        ["hull", "The body of a ship"],
    ],
    "Plurals": [
        ["bladder wrack", "Brown, with bubbles to pop"],
        ["sea lettuce", "Green and thin as paper"],
        ["oarweed", "A brown hand with many fingers"],
        ["dulse", "Reddish, and eaten as a snack"],
        ["laver", "Boiled to a black mush for bread"],
    ],
    "Capitals": [
        ["yawl", "Two masts, the small one right aft"],
        ["cutter", "One mast and two foresails"],
        ["dinghy", "Small enough to row ashore"],
        ["lugger", "Fished with four-cornered sails"],
        ["coble", "Launched from open beaches bow first"],
    ],
}
PLANTED = [
    row
    for row in csv.reader((HERE / "planted.csv").read_text("utf-8").splitlines(), delimiter="|")
    if not row[0].startswith("#")
]


ONE_OF_EACH = list({row[0]: row for row in PLANTED}.values())
# their defect is that of a whole sheet: see test_evenness.py, test_pictures.py, test_details.py
OF_SHEETS = {"same-level", "lonely-topic", "topic-once", "picture-missing"}
OF_SHEETS |= {"one-answer", "also-right-in-one"}  # see test_stand_ins.py, test_also_right.py
OF_SHEETS |= {"one-heading", "lonely-detail", "nearly-same-heading", "detail-without-topic"}


@pytest.fixture(scope="module")
def sheets() -> dict[str, list[list[object]]]:
    """The sample's rows under the headings above, without its topics, and the banks."""
    book = openpyxl.load_workbook(SAMPLE)
    good = {name: [heads, *_under(heads, book[name])] for name, heads in HEADINGS.items()}
    return good | {name: [["Word", "Meaning"], *bank] for name, bank in BANKS.items()}


def _under(heads: list[str], sheet) -> list[list[object]]:
    first, *rows = sheet.iter_rows(values_only=True)
    wanted = [first.index(head) if head in first and head != "Topic" else None for head in heads]
    return [[None if at is None else row[at] for at in wanted] for row in rows]


def _with(sheets, planted):
    """Return the sheets with rows planted at their ends, and the codes and cells to be found."""
    full = {name: list(rows) for name, rows in sheets.items()}
    expected = []
    for code, column, sheet, *cells in planted:
        full[sheet].append([cell or None for cell in cells])
        expected.append((code, f"{sheet} {column}{len(full[sheet])}"))
    return full, expected


def _found(content):
    return [(finding.code, str(finding.place)) for finding in check(content, TEAMS)]


def test_without_the_mistakes_nothing_is_found(read_sheets, sheets) -> None:
    assert check(read_sheets(sheets), TEAMS) == ()


def test_a_hundred_mistakes_are_each_found_in_their_cell_and_nothing_else(
    read_sheets, sheets
) -> None:
    full, expected = _with(sheets, PLANTED)
    found = Counter(_found(read_sheets(full)))
    assert len(PLANTED) > 100
    assert sorted((Counter(expected) - found).elements()) == []
    assert sorted((found - Counter(expected)).elements()) == []


@pytest.mark.parametrize("planted", ONE_OF_EACH, ids=lambda planted: planted[0])
def test_one_mistake_gives_one_finding_in_its_cell(read_sheets, sheets, planted) -> None:
    full, expected = _with(sheets, [planted])
    assert _found(read_sheets(full)) == expected


def test_every_rule_has_a_mistake_here() -> None:
    assert {rule.code for rule in rules()} == {row[0] for row in PLANTED} | OF_SHEETS


def test_every_rule_says_where_it_comes_from() -> None:
    assert all(rule.source for rule in rules())
