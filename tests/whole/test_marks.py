"""`fairdeal marks`, as a user runs it: build, fill in, look."""

import io
import json

import pdfplumber
import pytest
from openpyxl import load_workbook
from support.shore import ITEMS, fairdeal
from support.workbooks import fill

HEADED = 5


@pytest.fixture
def shelf(tmp_path):
    path = tmp_path / "Shore.xlsx"
    facts = [("Prompt", "Answer", "Topic", "Level"), *ITEMS]
    fill({"Facts": facts, "Teams": [["Team"], ["Heron"], ["Otter"]]}).save(path)
    return tmp_path / "Shore decks"


def build(shelf, *options):
    done = fairdeal("build", shelf.parent / "Shore.xlsx", "--deal", "copies", *options)
    assert done.returncode == 0, done.stderr
    return max(shelf.iterdir())


def fill_in(folder, *, papers=0, tally=(), change=None):
    """Type marks: in paper n of so many, the first n blanks are wrong."""
    book = load_workbook(folder / "marks.xlsx")
    for row, (tries, right) in enumerate(tally, start=HEADED + 1):
        book["Tally"].cell(row, 3).value, book["Tally"].cell(row, 4).value = tries, right
    for paper in range(papers):
        for column in range(3, book["Study guides"].max_column + 1):
            mark = int(column - 3 >= paper)
            book["Study guides"].cell(HEADED + 2 + paper, column).value = mark
    if change:
        change(book)
    book.save(folder / "marks.xlsx")


def lines(done, head):
    return [line[8:] for line in done.stdout.splitlines() if line.startswith(f"{head} ")]


def test_every_deck_comes_with_a_workbook_for_its_marks(shelf):
    folder = build(shelf)
    first = (folder / "marks.xlsx").read_bytes()
    assert load_workbook(io.BytesIO(first)).sheetnames == ["Tally", "Study guides"]
    assert (build(shelf, "--seed", "again") / "marks.xlsx").read_bytes() != first


def test_points_alone_do_not_tell_what_was_right_and_that_is_said(shelf):
    folder = build(shelf, "--activity", "rounds")

    def score(book):
        book["Score"].cell(6, 4).value = 2

    fill_in(folder, change=score)
    done = fairdeal("marks", folder)
    assert "No marks are filled in yet." in done.stdout
    assert "Tally" in lines(done, "Next")[0]


def test_a_workbook_left_blank_is_no_fault_and_makes_no_pages(shelf):
    folder = build(shelf)
    done = fairdeal("marks", folder)
    assert (done.returncode, done.stderr) == (0, "")
    assert "No marks are filled in yet." in done.stdout
    assert "marks.xlsx" in lines(done, "Next")[0]
    assert not list(folder.glob("what-it-shows*"))


def test_words_come_first_and_the_pages_stand_beside_the_deck(shelf):
    folder = build(shelf)
    fill_in(folder, papers=12, tally=[(5, 5), (4, 0)])
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    done = fairdeal("marks", folder)
    assert (done.returncode, done.stderr) == (0, "")
    first, *_, pages, last = done.stdout.splitlines()
    assert first == "Shore · deck 1: what the marks show."
    assert pages.startswith("Pages ")
    assert last.startswith("Next    fairdeal next")
    assert any("KR-20" in line for line in lines(done, "Shows"))
    assert any(line.startswith("Nobody who was asked missed ") for line in lines(done, "Shows"))
    with pdfplumber.open(folder / "what-it-shows.pdf") as pdf:
        text = pdf.pages[0].extract_text().replace("\n", " ")
    assert lines(done, "Shows")[0] in text
    assert before == {name: (folder / name).read_bytes() for name in before}


def test_the_pages_name_every_item_with_its_figures(shelf):
    folder = build(shelf)
    fill_in(folder, papers=12)
    document = json.loads(fairdeal("marks", folder, "--json").stdout)
    with pdfplumber.open(folder / "what-it-shows.pdf") as pdf:
        text = " ".join(page.extract_text() for page in pdf.pages)
    assert len(document["items"]) == len(ITEMS)
    for one in document["items"]:
        assert f"{one['right']} of {one['tries']}" in text
        change = f"{100 * one['expected_before']:.0f} % → {100 * one['expected_after']:.0f} %"
        # once in the picture and once in the table
        assert text.count(change) >= 2


def test_the_same_marks_find_their_pages_again_and_others_get_a_new_number(shelf):
    folder = build(shelf)
    fill_in(folder, papers=3)
    fairdeal("marks", folder)
    fairdeal("marks", folder / "deck.json")
    assert [path.name for path in folder.glob("what*")] == ["what-it-shows.pdf"]
    first = (folder / "what-it-shows.pdf").read_bytes()
    fill_in(folder, papers=12)
    done = fairdeal("marks", folder)
    assert lines(done, "Pages")[0].endswith("what-it-shows-2.pdf")
    assert (folder / "what-it-shows.pdf").read_bytes() == first


def test_what_is_wrong_is_told_with_its_cell_and_the_rest_is_used(shelf):
    folder = build(shelf)

    def change(book):
        book["Tally"]["D6"] = 9
        book["Study guides"]["C7"] = 2

    fill_in(folder, papers=3, tally=[(5, 5), (4, 0)], change=change)
    done = fairdeal("marks", folder)
    assert done.returncode == 0
    assert "Tally D6: Card 1 was right more often than it was tried" in done.stdout
    assert "Study guides C7: “2” is no mark" in done.stdout
    document = json.loads(fairdeal("marks", folder, "--json").stdout)
    # three papers of 22 blanks less one, and four tries
    assert document["tries"] == 3 * 22 - 1 + 4
    assert [(one["sheet"], one["cell"]) for one in document["findings"]] == [
        ("Study guides", "C7"),
        ("Tally", "D6"),
    ]


def test_where_nothing_can_be_used_the_status_says_so(shelf):
    folder = build(shelf)
    fill_in(folder, tally=[(5, 7)])
    done = fairdeal("marks", folder)
    assert done.returncode == 1
    assert "Mend what is named above" in done.stdout


def test_json_is_one_document_with_every_figure(shelf):
    folder = build(shelf)
    fill_in(folder, papers=12)
    done = fairdeal("marks", folder, "--json", "--strength", "20")
    told = json.loads(done.stdout)
    assert (done.returncode, told["strength"], told["deck"]["number"]) == (0, 20, 1)
    assert told["guides"][0]["whole_papers"] == 12
    assert 0 <= told["guides"][0]["kr20"] <= 1
    for one in told["items"]:
        low, high = one["expected_interval"]
        assert low < one["expected_after"] < high
        assert one["interval"][0] <= one["share"] <= one["interval"][1]


def test_earlier_decks_on_the_shelf_say_what_was_expected(shelf):
    first = build(shelf)
    fill_in(first, papers=12)
    known = {
        one["item"]: one for one in json.loads(fairdeal("marks", first, "--json").stdout)["items"]
    }
    second = build(shelf)
    fill_in(second, papers=12)
    for one in json.loads(fairdeal("marks", second, "--json").stdout)["items"]:
        assert one["expected_before"] == pytest.approx(known[one["item"]]["expected_after"])
    again = json.loads(fairdeal("marks", first, "--json").stdout)["items"]
    assert again == list(known.values())  # a later deck says nothing of an earlier one


def test_marks_may_be_in_another_file(shelf, tmp_path):
    folder = build(shelf)
    fill_in(folder, papers=3)
    elsewhere = tmp_path / "typed at home.xlsx"
    (folder / "marks.xlsx").rename(elsewhere)
    assert fairdeal("marks", folder).returncode == 3
    assert "66 answers" in fairdeal("marks", folder, "--marks", elsewhere).stdout


@pytest.mark.parametrize(
    "call", [["--strength", "0"], ["--strength", "nan"], ["--strength", "many"], ["--no-such"]]
)
def test_a_wrong_call_is_status_2(tmp_path, call):
    assert fairdeal("marks", tmp_path, *call).returncode == 2


def test_a_folder_that_is_no_decks_is_status_3_and_one_line(tmp_path):
    done = fairdeal("marks", tmp_path)
    assert (done.returncode, done.stdout) == (3, "")
    assert len(done.stderr.splitlines()) == 1


@pytest.mark.parametrize("activity", ["rounds", "stations", "organizer", "collect"])
def test_every_activity_can_be_tallied(tmp_path, activity):
    path = tmp_path / "Shore.xlsx"
    details = [("Tides", f"Heading {n % 3}", f"Detail {n} of the sea") for n in range(12)]
    fill(
        {
            "Facts": [("Prompt", "Answer", "Topic", "Level"), *ITEMS],
            "Details": [("Topic", "Heading", "Detail"), *details],
        }
    ).save(path)
    assert fairdeal("build", path, "--activity", activity).returncode == 0
    folder = tmp_path / "Shore decks" / "01"
    book = load_workbook(folder / "marks.xlsx")
    heads = [cell.value for cell in book["Tally"][HEADED]]
    for row in range(HEADED + 1, book["Tally"].max_row + 1):
        for name, value in (("Tries", 4), ("Right", 3)):
            book["Tally"].cell(row, heads.index(name) + 1).value = value
    rows = book["Tally"].max_row - HEADED
    book.save(folder / "marks.xlsx")
    done = fairdeal("marks", folder)
    assert (done.returncode, done.stderr) == (0, "")
    assert f"{3 * rows} of {4 * rows} answers were right: 75 %." in done.stdout
    assert (folder / "what-it-shows.pdf").exists()


def test_a_deck_can_be_named_by_a_file_in_its_folder(shelf):
    folder = build(shelf)
    by_folder = fairdeal("marks", folder).stdout
    for name in ("deck.json", "marks.xlsx", "cards.pdf"):
        done = fairdeal("marks", folder / name)
        assert (done.returncode, done.stdout) == (0, by_folder)


def test_marks_are_read_from_the_file_that_is_named(shelf):
    folder = build(shelf)
    other = folder / "Period 2.xlsx"
    book = load_workbook(folder / "marks.xlsx")
    heads = [cell.value for cell in book["Tally"][HEADED]]
    for name, value in (("Tries", 4), ("Right", 3)):
        book["Tally"].cell(HEADED + 1, heads.index(name) + 1).value = value
    book.save(other)
    assert "3 of 4 answers were right" in fairdeal("marks", other).stdout
    assert "No marks are filled in yet" in fairdeal("marks", folder).stdout


def test_a_folder_that_is_not_there_is_no_deck_though_it_would_be_in_one(shelf):
    folder = build(shelf)
    for command in (("marks",), ("reprint", "--all")):
        done = fairdeal(command[0], folder / "02", *command[1:])
        assert done.returncode == 3
        assert "02/deck.json is missing" in done.stderr.replace("\\", "/")
