"""The printers that are kept, and what follows from what was read."""

import json
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from cards.finding import UnusableFileError
from cards.writing import holding
from cards.writing.holding import held
from decks.lengths import Shift
from decks.printers import (
    Printer,
    Reading,
    find,
    forget,
    near_names,
    read_printers,
    remember,
    settings_folder,
    shift_for,
)
from decks.printers.keeping import HOLD
from decks.recipe import Flip

ROOT = Path(__file__).parents[2]
READING = Reading(1.2, -0.8, 0.4, Flip.LONG)
OTHER = Reading(-2, 0, 0, Flip.SHORT)
FILE = "printers.json"


def test_nothing_is_kept_at_first(tmp_path):
    assert read_printers(tmp_path / "none") == ()
    assert not (tmp_path / "none").exists()


def test_what_is_kept_is_read_again(tmp_path):
    folder = tmp_path / "made" / "on the way"
    remember(folder, "Staff room", READING, turned=False)
    remember(folder, "Büro", OTHER, turned=True)
    remember(folder, "STAFF  ROOM", OTHER, turned=True)
    assert read_printers(folder) == (
        Printer("Büro", None, OTHER),
        Printer("STAFF  ROOM", READING, OTHER),
    )


def test_a_second_reading_takes_the_place_of_the_first(tmp_path):
    remember(tmp_path, "Staff room", OTHER, turned=False)
    remember(tmp_path, "Staff room", READING, turned=False)
    assert read_printers(tmp_path) == (Printer("Staff room", READING),)


def test_only_the_one_that_is_named_is_forgotten(tmp_path):
    for name in ("Library", "Staff room"):
        remember(tmp_path, name, READING, turned=False)
    assert forget(tmp_path, "staff ROOM") == Printer("Staff room", READING)
    assert forget(tmp_path, "Staff room") is None
    assert read_printers(tmp_path) == (Printer("Library", READING),)


def kept(**changes):
    upright = {"right": 1, "up": 2, "skew": 0, "flip": "long"}
    printer = {"name": "Library", "upright": upright | changes, "turned": None}
    return json.dumps({"format": 1, "printers": [printer]})


def test_the_file_that_damage_is_done_to_would_have_been_read(tmp_path):
    (tmp_path / FILE).write_text(kept(), "utf-8")
    assert read_printers(tmp_path) == (Printer("Library", Reading(1, 2, 0, Flip.LONG)),)


DAMAGED = {
    "empty": "",
    "cut off": kept()[:40],
    "not what we write": "[1, 2]",
    "nothing": "null",
    "a text for a number": kept(right="1.2"),
    "true for a number": kept(up=True),
    "no number": kept(up=float("nan")),
    "beyond the scales": kept(right=8.5),
    "too much skew": kept(skew=-3.5),
    "a foot beyond the scales": kept(right=7, skew=-2),
    "no such edge": kept(flip="wide"),
    "no list": '{"format": 1, "printers": 3}',
    "no name": kept().replace('"Library"', '" "'),
    "a name over two lines": kept().replace('"Library"', r'"Lib\nrary"'),
    "a name with half a letter": kept().replace('"Library"', r'"Library \ud800"'),
    "no format": kept().replace('"format": 1', '"format": "1"'),
    "twice the same": kept().replace('"printers": [', '"printers": [' + kept()[28:-2] + ", "),
    "nested without end": "[" * 100_000,
}


@pytest.mark.parametrize("text", DAMAGED.values(), ids=DAMAGED)
def test_a_damaged_file_is_named_and_left_alone(tmp_path, text):
    path = tmp_path / FILE
    path.write_text(text, "utf-8")
    for use in (
        lambda: read_printers(tmp_path),
        lambda: remember(tmp_path, "Staff room", READING, turned=False),
        lambda: forget(tmp_path, "Library"),
    ):
        with pytest.raises(UnusableFileError, match="is damaged and was left as it is") as told:
            use()
        assert str(path) in str(told.value)
    assert path.read_text("utf-8") == text
    assert [one.name for one in tmp_path.iterdir()] == [FILE]


def test_bytes_that_are_no_text_are_damage(tmp_path):
    (tmp_path / FILE).write_bytes(b"\xff\xfe{")
    with pytest.raises(UnusableFileError, match="is damaged"):
        read_printers(tmp_path)


def test_a_file_of_a_newer_fairdeal_is_left_alone(tmp_path):
    text = kept().replace('"format": 1', '"format": 2')
    (tmp_path / FILE).write_text(text, "utf-8")
    with pytest.raises(UnusableFileError, match="newer Fairdeal"):
        remember(tmp_path, "Staff room", READING, turned=False)
    assert (tmp_path / FILE).read_text("utf-8") == text


def test_a_folder_that_cannot_be_made_is_named(tmp_path):
    in_the_way = tmp_path / "settings"
    in_the_way.write_text("a file", "utf-8")
    with pytest.raises(UnusableFileError, match=r"could not be kept in .*FAIRDEAL_SETTINGS"):
        remember(in_the_way / "deeper", "Staff room", READING, turned=False)


def test_writing_that_fails_leaves_what_was_there(tmp_path):
    remember(tmp_path, "Library", READING, turned=False)
    before = (tmp_path / FILE).read_bytes()
    # no text that can be written holds half a pair of surrogates
    with pytest.raises(UnicodeEncodeError):
        remember(tmp_path, "\ud800", READING, turned=False)
    assert (tmp_path / FILE).read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == [FILE]


def test_a_folder_in_the_place_of_the_file_is_told_and_nothing_left_behind(tmp_path):
    (tmp_path / FILE).mkdir()
    with pytest.raises(UnusableFileError, match=r"printers\.json could not be read"):
        remember(tmp_path, "Library", READING, turned=False)
    assert [one.name for one in tmp_path.iterdir()] == [FILE]


def test_the_file_is_whole_whenever_it_is_read(tmp_path):
    remember(tmp_path, "Library", READING, turned=False)

    def write_or_read(n):
        if n % 2:
            return len(read_printers(tmp_path))
        remember(tmp_path, "Library", Reading(n / 100, 0, 0, Flip.LONG), turned=False)
        return 1

    with ThreadPoolExecutor(4) as pool:
        assert set(pool.map(write_or_read, range(60))) == {1}
    assert [one.name for one in tmp_path.iterdir()] == [FILE]


KEEPER = """
import sys
from pathlib import Path
from decks.printers import Reading, remember
from decks.recipe import Flip
folder, number = Path(sys.argv[1]), sys.argv[2]
print("ready", flush=True)
sys.stdin.readline()
for n in range(12):
    remember(folder, f"Room {number} {n}", Reading(1, 0, 0, Flip.LONG), turned=False)
"""


def test_of_what_several_keep_at_the_same_time_nothing_is_lost(tmp_path):
    processes = [
        subprocess.Popen(
            [sys.executable, "-c", KEEPER, tmp_path, str(number)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            encoding="utf-8",
            cwd=ROOT,
        )
        for number in range(3)
    ]
    for process in processes:
        assert process.stdout.readline() == "ready\n"
    for process in processes:
        process.stdin.write("go\n")
        process.stdin.flush()
    assert [process.communicate(timeout=60)[0] for process in processes] == [""] * 3
    names = {printer.name for printer in read_printers(tmp_path)}
    assert names == {f"Room {number} {n}" for number in range(3) for n in range(12)}
    assert [one.name for one in tmp_path.iterdir()] == [FILE]


def test_who_waits_in_vain_is_told_so_and_nothing_is_changed(tmp_path, monkeypatch):
    remember(tmp_path, "Library", READING, turned=False)
    before = (tmp_path / FILE).read_bytes()
    monkeypatch.setattr(holding, "_TRIES", 3)
    with held(tmp_path / HOLD):
        for use in (
            lambda: remember(tmp_path, "Staff room", READING, turned=False),
            lambda: forget(tmp_path, "Library"),
        ):
            with pytest.raises(UnusableFileError, match="Another fairdeal align is writing"):
                use()
    assert (tmp_path / FILE).read_bytes() == before
    assert forget(tmp_path, "Library")


def test_the_environment_names_the_folder(monkeypatch, tmp_path):
    monkeypatch.setenv("FAIRDEAL_SETTINGS", str(tmp_path))
    assert settings_folder() == tmp_path
    monkeypatch.delenv("FAIRDEAL_SETTINGS")
    assert settings_folder().name == "Fairdeal"


def test_names_are_compared_as_those_on_cards():
    printers = [Printer("Staff room"), Printer("Bu\u0308ro")]
    assert find(printers, "staff  ROOM") is printers[0]
    assert find(printers, "BÜRO") is printers[1]
    assert find(printers, "Staff") is None
    assert near_names(printers, "staf room") == ["Staff room"]
    assert near_names(printers, "Gym") == []


def test_what_was_read_is_what_backs_are_moved_by():
    straight = Printer("Library", upright=Reading(1.2, -0.8, 0, Flip.LONG))
    assert shift_for(straight, flip=Flip.LONG, turned=False) == Shift(1.2, -0.8, 0)


def test_the_middle_of_the_page_lies_between_head_and_foot():
    # 1.2 at the head and 0.8 at the foot are 1.0 in the middle
    askew = Printer("Library", upright=READING)
    assert shift_for(askew, flip=Flip.LONG, turned=False) == Shift(1.0, -0.8, 0.4)


def test_the_other_flip_turns_the_shift_half_round_and_keeps_the_skew():
    askew = Printer("Library", upright=READING)
    assert shift_for(askew, flip=Flip.SHORT, turned=False) == Shift(-1.0, 0.8, 0.4)


def test_pages_that_were_not_measured_have_no_shift():
    assert shift_for(Printer("Library", upright=READING), flip=Flip.LONG, turned=True) is None
    assert shift_for(Printer("Library", turned=READING), flip=Flip.LONG, turned=False) is None


LENGTHS = st.floats(-8, 8)


@given(right=LENGTHS, up=LENGTHS, skew=st.floats(-3, 3), flip=st.sampled_from(Flip))
def test_any_reading_is_kept_as_it_is(tmp_path_factory, right, up, skew, flip):
    assume(abs(right - skew) <= 8)
    folder = tmp_path_factory.mktemp("settings")
    reading = Reading(right, up, skew, flip)
    remember(folder, "Library", reading, turned=True)
    assert read_printers(folder) == (Printer("Library", turned=reading),)
