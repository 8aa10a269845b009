import pytest

from cards.finding import UnreadableFileError
from decks.shelf import NumberTakenError, next_number, put, shelf_of


def test_the_shelf_stands_beside_the_workbook_or_where_it_is_told_to(tmp_path):
    workbook = tmp_path / "Shore.week.xlsx"
    assert shelf_of(workbook) == tmp_path / "Shore.week decks"
    assert shelf_of(workbook, tmp_path / "out") == tmp_path / "out" / "Shore.week decks"


def test_the_next_number_is_above_all_that_are_there(tmp_path):
    assert next_number(tmp_path / "nothing") == 1
    for name in ("01", "7", "notes", ".09-unfinished"):
        (tmp_path / name).mkdir()
    assert next_number(tmp_path) == 8


def test_a_deck_appears_whole(tmp_path):
    place = put(tmp_path / "decks", 3, {"a": b"1", "b": b"2"})
    assert place.name == "03"
    assert {file.name: file.read_bytes() for file in place.iterdir()} == {"a": b"1", "b": b"2"}
    assert [entry.name for entry in place.parent.iterdir()] == ["03"]


def test_a_deck_that_cannot_be_written_whole_leaves_nothing_behind(tmp_path):
    with pytest.raises(UnreadableFileError):
        put(tmp_path / "decks", 1, {"good": b"1", "no/such/folder": b"2"})
    assert list(tmp_path.iterdir()) == []


def test_the_folders_above_the_shelf_go_too_where_it_could_not_be_filled(tmp_path):
    with pytest.raises(UnreadableFileError):
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
        with pytest.raises(UnreadableFileError, match="Move it, or choose another folder"):
            call()


def test_a_number_that_has_been_taken_is_refused_and_the_deck_there_is_whole(tmp_path):
    place = put(tmp_path, 1, {"a": b"1"})
    with pytest.raises(NumberTakenError):
        put(tmp_path, 1, {"a": b"2"})
    assert (place / "a").read_bytes() == b"1"
    assert [entry.name for entry in tmp_path.iterdir()] == ["01"]
