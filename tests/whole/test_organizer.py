"""Organisers, from the workbook to the sheets of the groups and the teacher's key."""

import re

import openpyxl
import pytest
from support.lesson import HEADINGS, TEAMS, cards_in, lesson, pieces_of, plain
from support.workbooks import fill

from decks.commands.production import make

DETAILS = [detail for told in HEADINGS.values() for detail in told]


def labels_in(folder):
    """Return each group's labels by detail, as they are printed on the fronts of the cards."""
    labels = {team: {} for team in TEAMS}
    for page in cards_in(folder / "cards.pdf")[::2]:
        for text in (plain(page.text_in(cell)) for cell in page.cells):
            detail = next((one for one in DETAILS if plain(one) in text), None)
            found = re.search(rf"({'|'.join(map(plain, TEAMS))})(\d+)$", text)
            if detail:
                team = next(team for team in TEAMS if plain(team) == found[1])
                labels[team][detail] = found[2]
    return labels


@pytest.mark.parametrize("deal", ["copies", "shares"])
def test_the_key_agrees_with_the_cards_of_every_group(deal):
    folder = lesson(activity="organizer", deal=deal)
    pages = pieces_of(folder / "teacher.pdf")
    told = plain(" ".join(piece for page in pages for piece in page))
    told = told[told.rindex(plain("Key to the details")) :]
    for labels in labels_in(folder).values():
        assert sorted(labels) == sorted(DETAILS)
        for detail, label in labels.items():
            assert plain(f"{label}{detail}") in told
    starts = [told.index(plain(f"{heading} cards")) for heading in HEADINGS]
    for heading, start, end in zip(HEADINGS, starts, [*starts[1:], len(told)], strict=True):
        assert all(plain(detail) in told[start:end] for detail in HEADINGS[heading])


def test_groups_with_the_one_text_have_one_tally_and_one_list_of_answers():
    folder = lesson(activity="organizer", deal="shares", sides="fronts")
    listed = plain(" ".join(piece for page in pieces_of(folder / "answers.pdf") for piece in page))
    assert plain("the same for every team") in listed
    assert not [team for team in TEAMS if plain(team) in listed]
    assert sum(listed.count(plain(heading)) for heading in HEADINGS) == len(DETAILS)
    tally = openpyxl.load_workbook(folder / "marks.xlsx")["Tally"]
    told = [cell.value for row in tally.iter_rows() for cell in row if cell.value in DETAILS]
    assert sorted(told) == sorted(DETAILS)


@pytest.mark.parametrize("support", ["bank", "hints", "none"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_the_sheets_come_with_the_deck_and_name_no_student(support, paper):
    folder = lesson(activity="organizer", support=support, paper=paper)
    for name, what in (("planning-sheet", "Planning sheet"), ("comparison", "Comparison sheet")):
        pages = ["".join(page) for page in pieces_of(folder / f"{name}.pdf")]
        assert all(what in page for page in pages)
        assert all("Group" in page and "Name" not in page for page in pages)


@pytest.mark.parametrize("activity", ["review", "collect", "rounds", "stations"])
def test_no_other_activity_has_these_sheets(activity):
    folder = lesson(activity=activity)
    assert not (folder / "planning-sheet.pdf").exists()
    assert not (folder / "comparison.pdf").exists()


def test_thirty_details_under_one_heading_and_a_very_long_one_are_printed_whole(tmp_path):
    long = " ".join(["the weed that the storm has torn off the rocks and thrown ashore"] * 3)
    rows = [("Strandline", "Weed", f"Detail number {n} tells of bladders") for n in range(29)]
    rows += [("Strandline", "Weed", long), ("Strandline", "Shells", "Cockles lie in ridges")]
    rows += [(None, "Birds", "Turnstones tip pebbles over")]
    book = tmp_path / "Shore.xlsx"
    fill({"Details": [("Topic", "Heading", "Detail"), *rows]}).save(book)
    options = {"activity": "organizer", "teams": "2", "deal": "copies", "card_size": "large"}
    make(book, options, out=None, skip_errors=False)
    folder = tmp_path / "Shore decks" / "01"
    key = plain(" ".join("".join(page) for page in pieces_of(folder / "teacher.pdf")))
    assert all(plain(detail) in key for _topic, _heading, detail in rows)
    assert "atextwithoutaname" in key
    cards = [plain(page.text_in(c)) for page in cards_in(folder / "cards.pdf") for c in page.cells]
    assert sum(plain(long) in text for text in cards) == 2
