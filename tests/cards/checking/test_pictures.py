"""Pictures that are named in a row: beside the file, or a finding at their cell."""

import os

import pytest
from support.workbooks import fill

from cards.checking import check
from cards.reading import read
from cards.reading.pictures.beside import is_beside


def findings(folder, name):
    book = fill({"Facts": [("Prompt", "Answer", "Picture"), ("What digs?", "lugworm", name)]})
    book.save(folder / "shore.xlsx")
    found = check(read(folder / "shore.xlsx"), ["Heron"])
    return [one for one in found if one.code == "picture-missing"]


def test_a_picture_beside_the_file_or_in_a_folder_there_is_passed_in_silence(tmp_path):
    (tmp_path / "pictures").mkdir()
    for name in ("lugworm.png", "pictures/worm cast.JPG"):
        (tmp_path / name).write_bytes(b"")
        assert findings(tmp_path, name) == []


def test_a_picture_that_is_not_there_is_found_at_its_cell_with_the_near_miss(tmp_path):
    (tmp_path / "lugworm.png").write_bytes(b"")
    (finding,) = findings(tmp_path, "lugwrom.png")
    assert (finding.severity, finding.place.cell) == ("error", "C2")
    assert "Did you mean lugworm.png?" in finding.mend


def test_a_name_with_another_ending_is_what_was_meant_however_many_are_missing(tmp_path):
    rows = [("Prompt", "Answer", "Picture")]
    for n in range(60):
        (tmp_path / f"IMG_{n:04}.JPG").write_bytes(b"")
        rows.append((f"What is number {n}?", f"answer {n}", f"img_{n:04}.png"))
    fill({"Facts": rows}).save(tmp_path / "shore.xlsx")
    found = [f for f in check(read(tmp_path / "shore.xlsx"), ()) if f.code == "picture-missing"]
    assert len(found) == 60
    assert all(f"Did you mean {f.found.upper().replace('PNG', 'JPG')}?" in f.mend for f in found)


@pytest.mark.parametrize(
    "name",
    [
        "../secret.png",
        "pictures/../../secret.png",
        "..\\secret.png",
        "C:\\secret.png",
        "C:secret.png",
        "\\\\server\\share\\secret.png",
        "https://example.org/secret.png",
        "file:///secret.png",
        "NUL",
        "nul\0.png",
        "x" * 5000,
    ],
)
def test_a_name_that_leads_elsewhere_is_never_followed(tmp_path, name):
    folder = tmp_path / "unit"
    folder.mkdir()
    (tmp_path / "secret.png").write_bytes(b"")
    assert not is_beside(name, folder)
    assert not is_beside(str(tmp_path / "secret.png"), folder)


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="no links here")
def test_a_link_out_of_the_folder_is_not_followed_either(tmp_path):
    folder = tmp_path / "unit"
    folder.mkdir()
    (tmp_path / "secret.png").write_bytes(b"")
    (folder / "link.png").symlink_to(tmp_path / "secret.png")
    assert not is_beside("link.png", folder)


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="no links here")
def test_what_is_no_picture_beside_the_workbook_is_not_offered_for_one(tmp_path):
    folder = tmp_path / "unit"
    (folder / "shell.png").mkdir(parents=True)
    (tmp_path / "secret.png").write_bytes(b"")
    (folder / "worm.png").symlink_to(tmp_path / "secret.png")
    for name in ("shell.png", "worm.png"):
        (finding,) = findings(folder, name)
        assert "Did you mean" not in finding.mend


# Unicode Standard Annex 15: the two forms are one text
def test_a_name_is_found_however_its_accents_are_written(tmp_path):
    (tmp_path / "mare\u0301e.png").write_bytes(b"x")
    assert is_beside("mar\u00e9e.png", tmp_path)
    assert not is_beside("maree.png", tmp_path)
