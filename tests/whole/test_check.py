"""`fairdeal check`, as a user runs it."""

import io
import json

import pytest
from openpyxl import load_workbook
from openpyxl.drawing.image import Image
from support.pictures import coded, photograph
from support.shore import fairdeal
from support.workbooks import fill

HEADINGS = ["Prompt", "Answer", "Topic", "Level"]
GOOD = [
    HEADINGS,
    ["Mussels are tied to rock by their …", "threads", "Life", "easy"],
    ["At low water a limpet goes back to its …", "scar", "Life", "medium"],
    ["Twice a day, on most shores, the sea …", "rises", "Life", "hard"],
]
TEAMS = [["Team"], ["Heron"], ["Otter"], ["Curlew"]]
FIELDS = {"code", "severity", "sheet", "cell", "row", "column", "found", "wrong", "mend"}


@pytest.fixture
def make(tmp_path):
    def make(*rows, name="Shore.xlsx", **sheets):
        path = tmp_path / name
        fill({"Facts": [*GOOD, *rows], "Teams": TEAMS, **sheets}).save(path)
        return path

    return make


def test_good_content_has_nothing_to_mend(make):
    done = fairdeal("check", make())
    assert done.returncode == 0
    assert done.stdout == "Nothing to mend in Shore.xlsx: 3 items, ready to build.\n"


def test_findings_come_errors_first_with_their_cells_and_a_closing_line(make):
    path = make(["What glows in the waves?", None, "Life", "easy"], Notes=[["a walk"]])
    done = fairdeal("check", path)
    first, *_, last = done.stdout.splitlines()
    assert done.returncode == 1
    assert first.startswith("error   Facts B5: There is no answer")
    assert last.startswith("1 error, ")
    assert last.endswith(" in Shore.xlsx: mend the error, then build.")


def test_many_alike_are_counted_after_the_first_five(make):
    path = make(*([f"What is number {n} on the list?", None, "Life", "easy"] for n in range(42)))
    lines = fairdeal("check", path).stdout.splitlines()
    told = [line for line in lines if "There is no answer" in line]
    assert len(told) == 5
    assert lines[lines.index(told[-1]) + 1] == "        … and 37 more like this in column B"
    assert "42 errors" in lines[-1]


def test_six_alike_are_all_told(make):
    path = make(*([f"What is number {n} on the list?", None, "Life", "easy"] for n in range(6)))
    done = fairdeal("check", path)
    assert done.stdout.count("There is no answer") == 6
    assert "more like this" not in done.stdout


def test_a_build_that_stops_tells_them_the_same_way(make):
    path = make(*([f"What is number {n} on the list?", None, "Life", "easy"] for n in range(42)))
    assert "… and 37 more like this in column B" in fairdeal("build", path).stderr


def test_json_is_one_document_with_every_field_of_every_finding(make):
    path = make(*([f"What is number {n} on the list?", None, "Life", "easy"] for n in range(42)))
    done = fairdeal("check", path, "--json")
    told = json.loads(done.stdout)
    assert (done.returncode, done.stderr) == (1, "")
    assert told["counts"]["error"] == 42
    assert (told["file"], told["ready"], told["marked"]) == ("Shore.xlsx", False, None)
    assert all(set(finding) == FIELDS for finding in told["findings"])
    first = told["findings"][0]
    assert (first["sheet"], first["cell"], first["row"], first["column"]) == ("Facts", "B5", 5, 2)


def test_json_of_good_content_is_ready_and_has_no_findings(make):
    told = json.loads(fairdeal("check", make(), "--json").stdout)
    assert (told["ready"], told["items"], told["findings"]) == (True, 3, [])
    assert told["counts"] == {"error": 0, "warning": 0, "note": 0}


def test_options_change_what_is_found(make):
    long = " ".join(["the sea goes out over mud and sand"] * 12)
    path = make([f"What is it called when {long}?", "ebb", "Life", "easy"])
    assert "does-not-fit" in fairdeal("check", path, "--json").stdout
    assert "does-not-fit" not in fairdeal("check", path, "--json", "--size", "large").stdout


@pytest.mark.parametrize("call", [["--size", "huge"], ["--no-such"], ["--paper", "papyrus"]])
def test_a_wrong_call_is_status_2(make, call):
    done = fairdeal("check", make(), *call)
    assert done.returncode == 2
    assert call[0] in done.stderr


def test_a_file_that_cannot_be_read_is_status_3_and_one_line(tmp_path):
    done = fairdeal("check", tmp_path / "missing.xlsx", "--json")
    assert (done.returncode, done.stdout) == (3, "")
    assert len(done.stderr.splitlines()) == 1


def test_nothing_is_written_without_mark(make, tmp_path):
    path = make(["What glows in the waves?", None, "Life", "easy"])
    before = path.read_bytes()
    fairdeal("check", path)
    fairdeal("check", path, "--json")
    assert [file.name for file in tmp_path.iterdir()] == ["Shore.xlsx"]
    assert path.read_bytes() == before


def test_nothing_is_marked_where_there_is_nothing_to_mend(make, tmp_path):
    assert "nothing to mark" in fairdeal("check", make(), "--mark").stdout
    assert [file.name for file in tmp_path.iterdir()] == ["Shore.xlsx"]


def test_mark_writes_a_copy_beside_the_file_and_never_over_another(make, tmp_path):
    path = make(["What glows in the waves?", None, "Life", "easy"])
    before = path.read_bytes()
    done = fairdeal("check", path, "--mark")
    assert done.returncode == 1
    assert "Shore marked.xlsx" in done.stdout
    told = json.loads(fairdeal("check", path, "--mark", "--json").stdout)
    assert told["marked"] == str(tmp_path / "Shore marked 2.xlsx")
    assert path.read_bytes() == before
    first, second = (tmp_path / name for name in ("Shore marked.xlsx", "Shore marked 2.xlsx"))
    assert first.read_bytes() == second.read_bytes()
    assert sorted(tmp_path.iterdir()) == [second, first, path]


def test_a_marked_copy_is_found_at_fault_alike_and_after_mending_only_for_what_is_left(make):
    path = make(
        ["What glows in the waves?", None, "Life", "easy"],
        ["What drifts with the current?", "plankton", "Life", "esay"],
    )
    before = json.loads(fairdeal("check", path, "--mark", "--json").stdout)["findings"]
    copy = path.with_name("Shore marked.xlsx")
    assert json.loads(fairdeal("check", copy, "--json").stdout)["findings"] == before
    book = load_workbook(copy)
    book["Facts"]["B5"] = "sea sparkle"
    book.save(copy)
    left = json.loads(fairdeal("check", copy, "--json").stdout)["findings"]
    assert left == [finding for finding in before if finding["cell"] != "B5"]


def test_a_mended_marked_copy_builds(make):
    path = make(["What glows in the waves?", None, "Life", "easy"])
    fairdeal("check", path, "--mark")
    copy = path.with_name("Shore marked.xlsx")
    book = load_workbook(copy)
    book["Facts"]["B5"] = "sea sparkle"
    book.save(copy)
    done = fairdeal("build", copy)
    assert done.returncode == 0, done.stderr
    assert "4 cards" in done.stdout


def test_a_text_file_is_marked_as_a_workbook(tmp_path):
    path = tmp_path / "Shore.csv"
    path.write_text("Prompt,Answer\nOne half,1/2\nWhat glows?,\n", encoding="utf-8")
    assert fairdeal("check", path, "--mark").returncode == 1
    sheet = load_workbook(tmp_path / "Shore marked.xlsx")["Shore"]
    assert sheet["B2"].value == "1/2"
    assert sheet["B3"].comment.text.startswith("Error: There is no answer")


def test_a_marked_copy_keeps_the_pictures_of_the_sheets(make):
    path = make(["What glows in the waves?", None, "Life", "easy"])
    book = load_workbook(path)
    book["Facts"].add_image(Image(io.BytesIO(coded(photograph(30, 20)))), "F2")
    book.save(path)
    fairdeal("check", path, "--mark")
    kept = load_workbook(path.with_name("Shore marked.xlsx"))["Facts"]
    assert [(picture.width, picture.height) for picture in kept._images] == [(30, 20)]  # noqa: SLF001


def test_json_is_printed_even_where_no_marked_copy_can_be_made(make):
    path = make(["Kelp holds on with its …", ""])
    book = load_workbook(path)
    book.create_chartsheet("Drawn")  # without a chart the library cannot read it again
    book.save(path)
    done = fairdeal("check", path, "--mark", "--json")
    assert (done.returncode, len(done.stderr.splitlines())) == (3, 1)
    assert "cannot be copied with marks" in done.stderr
    told = json.loads(done.stdout)
    assert told["marked"] is None
    assert told["findings"] == json.loads(fairdeal("check", path, "--json").stdout)["findings"]
