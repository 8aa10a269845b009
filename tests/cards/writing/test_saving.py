"""New files: whole or not at all, never over another."""

from pathlib import Path

import pytest

from cards.finding import UnusableFileError
from cards.writing.saving import marked_paths, save_first, save_new


def test_a_file_that_is_there_is_left_as_it_is(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.write_bytes(b"mine")
    with pytest.raises(UnusableFileError, match="is there already"):
        save_new(path, b"yours")
    assert path.read_bytes() == b"mine"


def test_a_link_that_leads_nowhere_counts_as_there(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.symlink_to(tmp_path / "elsewhere.xlsx")
    with pytest.raises(UnusableFileError, match="is there already"):
        save_new(path, b"x")
    assert not (tmp_path / "elsewhere.xlsx").exists()


def test_no_folder_is_made(tmp_path):
    with pytest.raises(UnusableFileError, match="There is no folder"):
        save_new(tmp_path / "week" / "Shore.xlsx", b"x")
    assert list(tmp_path.iterdir()) == []


def test_a_name_that_cannot_be_leaves_nothing_behind(tmp_path):
    with pytest.raises(UnusableFileError, match="could not be written"):
        save_new(tmp_path / f"{'shore' * 60}.xlsx", b"x")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("name", "taken", "expected"),
    [
        ("Shore.xlsx", [], "Shore marked.xlsx"),
        ("Shore.csv", [], "Shore marked.xlsx"),
        ("Shore.xlsx", ["Shore marked.xlsx"], "Shore marked 2.xlsx"),
        ("Shore.xlsx", ["Shore marked.xlsx", "Shore marked 2.xlsx"], "Shore marked 3.xlsx"),
        ("Shore marked.xlsx", ["Shore marked.xlsx"], "Shore marked 2.xlsx"),
        ("Shore marked 2.xlsx", ["Shore marked 2.xlsx"], "Shore marked.xlsx"),
        ("Unmarked.xlsx", [], "Unmarked marked.xlsx"),
    ],
)
def test_a_marked_copy_takes_the_next_free_name(tmp_path: Path, name, taken, expected):
    for other in taken:
        (tmp_path / other).touch()
    assert save_first(marked_paths(tmp_path / name), b"x") == tmp_path / expected
    assert all((tmp_path / other).read_bytes() == b"" for other in taken)
