import shutil
from pathlib import Path

import pytest

from cards.finding import UnusableFileError
from decks.shelf import NumberTakenError, next_number, put, shelf_of


def test_the_shelf_stands_beside_the_workbook_or_where_it_is_told_to(tmp_path, monkeypatch):
    workbook = tmp_path / "Shore.week.xlsx"
    assert shelf_of(workbook) == tmp_path / "Shore.week decks"
    assert shelf_of(workbook, tmp_path / "out") == tmp_path / "out" / "Shore.week decks"
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.setenv("USERPROFILE", str(tmp_path))
    # no shell has made a path of a tilde in quotes
    assert shelf_of(workbook, Path("~/school")) == tmp_path / "school" / "Shore.week decks"


def test_the_next_number_is_above_all_that_are_there(tmp_path):
    assert next_number(tmp_path / "nothing") == 1
    for name in ("01", "7", "notes", ".09-unfinished"):
        (tmp_path / name).mkdir()
    assert next_number(tmp_path) == 8


@pytest.mark.parametrize(
    ("names", "number"),
    [
        (["٣"], 4),
        (["007"], 8),
        (["1e5", "-2", "0x10", "2.5", "²", " 4"], 1),
        (["20260112", "99999999999999999999"], 1),
        (["9999"], 10000),
        (["9999", "10000"], 10001),
    ],
)
def test_a_name_that_only_looks_like_a_number_of_a_deck_is_not_one(tmp_path, names, number):
    for name in names:
        (tmp_path / name).mkdir()
    assert next_number(tmp_path) == number
    assert put(tmp_path, number, {"a": b"1"}).name == f"{number:02}"


def test_a_file_and_a_link_that_leads_nowhere_have_numbers_too(tmp_path):
    (tmp_path / "02").write_text("notes", encoding="utf-8")
    (tmp_path / "05").symlink_to(tmp_path / "none")
    assert next_number(tmp_path) == 6


def test_a_number_that_a_deck_has_in_a_folder_of_another_name_is_not_given_again(tmp_path):
    (tmp_path / "02").mkdir()
    assert next_number(tmp_path, after=4) == 5
    assert next_number(tmp_path, after=1) == 3


def test_a_deck_appears_whole(tmp_path):
    place = put(tmp_path / "decks", 3, {"a": b"1", "b": b"2"})
    assert place.name == "03"
    assert {file.name: file.read_bytes() for file in place.iterdir()} == {"a": b"1", "b": b"2"}
    assert [entry.name for entry in place.parent.iterdir()] == ["03"]


def test_a_deck_that_cannot_be_written_whole_leaves_nothing_behind(tmp_path):
    with pytest.raises(UnusableFileError):
        put(tmp_path / "decks", 1, {"good": b"1", "no/such/folder": b"2"})
    assert list(tmp_path.iterdir()) == []


def test_the_folders_above_the_shelf_go_too_where_it_could_not_be_filled(tmp_path):
    with pytest.raises(UnusableFileError):
        put(tmp_path / "a" / "b" / "decks", 1, {"no/such/folder": b"2"})
    assert list(tmp_path.iterdir()) == []


def test_an_interrupted_deck_leaves_nothing_behind(tmp_path):
    class Files(dict):
        def items(self):
            yield "a", b"1"
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        put(tmp_path / "decks", 1, Files())
    assert list(tmp_path.iterdir()) == []


def test_a_file_in_the_way_is_named_with_what_to_do(tmp_path):
    (tmp_path / "decks").write_text("", encoding="utf-8")
    for call in (lambda: next_number(tmp_path / "decks"), lambda: put(tmp_path / "decks", 1, {})):
        with pytest.raises(UnusableFileError, match="Move it, or choose another folder"):
            call()


def test_a_number_that_has_been_taken_is_refused_and_the_deck_there_is_whole(tmp_path):
    place = put(tmp_path, 1, {"a": b"1"})
    with pytest.raises(NumberTakenError):
        put(tmp_path, 1, {"a": b"2"})
    assert (place / "a").read_bytes() == b"1"
    assert [entry.name for entry in tmp_path.iterdir()] == ["01"]


@pytest.mark.parametrize("way", ["link to nothing", "link to a file", "the workbook's folder"])
def test_what_is_no_folder_gets_a_line_and_stays_as_it_is(tmp_path, way):
    shelf = tmp_path / "decks"
    if way == "the workbook's folder":
        (tmp_path / "file").write_bytes(b"1")
        shelf = tmp_path / "file" / "decks"
    else:
        if way == "link to a file":
            (tmp_path / "file").write_bytes(b"1")
        shelf.symlink_to(tmp_path / "file")
    before = sorted(tmp_path.iterdir())
    with pytest.raises(UnusableFileError, match="Move it, or choose another folder"):
        put(shelf, 1, {"a": b"1"})
    assert sorted(tmp_path.iterdir()) == before


def test_a_shelf_may_be_a_link_to_a_folder(tmp_path):
    (tmp_path / "elsewhere").mkdir()
    (tmp_path / "decks").symlink_to(tmp_path / "elsewhere")
    put(tmp_path / "decks", next_number(tmp_path / "decks"), {"a": b"1"})
    assert (tmp_path / "elsewhere" / "01" / "a").read_bytes() == b"1"


def test_a_folder_that_goes_meanwhile_is_missed_in_plain_words(tmp_path):
    class Files(dict):
        def items(self):
            yield "a", b"1"
            shutil.rmtree(tmp_path / "decks")
            yield "b", b"2"

    with pytest.raises(UnusableFileError, match="the folder has gone"):
        put(tmp_path / "decks", 1, Files())
    assert list(tmp_path.iterdir()) == []


def test_a_name_that_is_too_long_says_so(tmp_path):
    with pytest.raises(UnusableFileError, match=r"too long\. Take a shorter name"):
        put(tmp_path / ("long" * 70), 1, {"a": b"1"})
    assert list(tmp_path.iterdir()) == []


def test_a_deck_that_another_program_is_reading_is_told_to_be_closed(tmp_path, monkeypatch):
    def refuse(*_paths) -> None:
        error = PermissionError(13, "The process cannot access the file", "01")
        error.winerror = 32
        raise error

    monkeypatch.setattr(Path, "rename", refuse)
    monkeypatch.setattr("cards.writing.aside._PAUSE", 0)
    with pytest.raises(UnusableFileError, match="Close it in other programs"):
        put(tmp_path / "decks", 1, {"a": b"1"})
    assert list(tmp_path.iterdir()) == []
