"""The command that makes the test page and keeps what was read on it."""

import os

import pytest
from typer.testing import CliRunner

from cards.finding import UnusableFileError
from decks.commands.app import app
from decks.printers import Printer, Reading, read_printers
from decks.recipe import Flip
from decks.settings import UsageError


@pytest.fixture
def align(monkeypatch, tmp_path):
    """Return a function that runs the command and returns what it tells."""
    monkeypatch.setenv("FAIRDEAL_SETTINGS", str(tmp_path / "settings"))
    monkeypatch.chdir(tmp_path)

    def run(*words):
        done = CliRunner().invoke(app, ["align", *map(str, words)])
        if done.exception:
            raise done.exception
        return done.output

    return run


def kept(tmp_path):
    return read_printers(tmp_path / "settings")


def test_numbers_are_kept_as_they_were_read(align, tmp_path):
    told = align("--set", " Staff  room ", "--right", "1.2", "--up", "-0.8")
    assert kept(tmp_path) == (Printer("Staff room", upright=Reading(1.2, -0.8, 0, Flip.LONG)),)
    assert 'Build with --printer "Staff room"' in told
    assert "leaf 2" in told


@pytest.mark.parametrize("minus", ["-", "−", "–"])
def test_numbers_may_have_commas_any_minus_a_plus_and_their_unit(align, tmp_path, minus):
    align("--set", "Library", "--right", "+1,25 mm", "--up", f"{minus}0,8")
    assert kept(tmp_path)[0].upright == Reading(1.25, -0.8, 0, Flip.LONG)


def test_what_was_read_at_the_foot_is_turned_into_skew(align, tmp_path):
    words = ("--turned", "--flip", "short", "--right", "1.2", "--up", "0")
    align("--set", "Library", *words, "--foot", "0.8")
    assert kept(tmp_path)[0].turned == Reading(1.2, 0, 0.4, Flip.SHORT)
    align("--set", "Library", *words, "--skew", "-0.4")
    assert kept(tmp_path)[0].turned == Reading(1.2, 0, -0.4, Flip.SHORT)


def test_printers_are_listed_as_they_were_typed(align):
    assert "No printer is kept yet" in align("--list")
    align("--set", "Library", "--right", "1", "--up", "-2.5", "--foot", "1.6")
    align("--set", "Attic", "--right", "0", "--up", "-0", "--turned", "--flip", "short")
    assert align("--list").splitlines() == [
        "Attic: pages higher than wide, not measured.",
        "Attic: pages wider than high, right 0, up 0 mm, flipped on the short edge.",
        "Library: pages higher than wide, right 1, up -2.5, foot 1.6 mm, flipped on the long edge.",
        "Library: pages wider than high, not measured.",
    ]


def test_a_printer_is_forgotten_by_its_name(align, tmp_path):
    align("--set", "Library", "--right", "1", "--up", "1")
    assert align("--forget", "library") == "Forgot  Library\n"
    assert kept(tmp_path) == ()


NUMBERS = ("--right", "1", "--up", "1")

REFUSED = {
    "an unknown name": (("--forget", "Libary"), "Did you mean “Library”"),
    "no near name": (("--forget", "Gym"), "See which are: fairdeal align --list"),
    "one number": (("--set", "Gym", "--right", "1"), "both numbers"),
    "no name": (NUMBERS, "goes with a printer’s name"),
    "only turned": (("--turned",), "--turned goes with a printer’s name"),
    "an empty name": (("--set", " ", *NUMBERS), "a short text"),
    "a long name": (("--set", "x" * 61, *NUMBERS), "a short text"),
    "a name with a code in it": (("--set", "a\x1b[1m", *NUMBERS), "a short text"),
    "a word": (("--set", "Gym", "--right", "far", "--up", "1"), "--right far: this is a number"),
    "not a number": (("--set", "Gym", "--right", "nan", "--up", "1"), "this is a number"),
    "too far right": (("--set", "Gym", "--right", "8.1", "--up", "1"), "--right 8.1: the scales"),
    "too far down": (("--set", "Gym", "--right", "8", "--up", "-9"), "--up -9: the scales end at"),
    "too much skew": (("--set", "Gym", *NUMBERS, "--skew", "3.1"), "differ by 3.1 mm"),
    "a far foot": (("--set", "Gym", *NUMBERS, "--foot", "-2.5"), "differ by 3.5 mm"),
    "foot and skew": (("--set", "Gym", *NUMBERS, "--skew", "0", "--foot", "1"), "say the same"),
    "two things at once": (("--list", "--forget", "Library"), "three different things"),
    "no such paper": (("--paper", "b4"), "--paper b4: this can be letter"),
    "another ending": (("--out", "test"), "ends in .pdf. Name it test.pdf."),
    "no such edge": (("--flip", "top"), "--flip top: this can be long or short"),
}


@pytest.mark.parametrize(("words", "told"), REFUSED.values(), ids=REFUSED)
def test_what_cannot_be_is_refused_and_nothing_changes(align, tmp_path, words, told):
    align("--set", "Library", *NUMBERS)
    before = (tmp_path / "settings" / "printers.json").read_bytes()
    with pytest.raises(UsageError, match=told):
        align(*words)
    assert (tmp_path / "settings" / "printers.json").read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == ["settings"]


def test_numbers_may_begin_with_their_point(align, tmp_path):
    align("--set", "Library", "--right", ".5", "--up", "-,25")
    assert kept(tmp_path)[0].upright == Reading(0.5, -0.25, 0, Flip.LONG)


def test_the_test_page_may_go_into_a_folder(align, tmp_path):
    (tmp_path / "papers").mkdir()
    assert f"Made    papers{os.sep}align.pdf" in align("--out", "papers")
    assert (tmp_path / "papers" / "align.pdf").is_file()


def test_of_a_name_that_is_too_long_it_says_so(align, tmp_path):
    with pytest.raises(UnusableFileError, match="the name is too long"):
        align("--out", f"{'a' * 300}.pdf")
    assert not list(tmp_path.iterdir())


def test_the_limits_themselves_are_kept(align, tmp_path):
    align("--set", "Library", "--right", "8", "--up", "-8", "--foot", "5")
    assert kept(tmp_path)[0].upright == Reading(8, -8, 3, Flip.LONG)


def test_the_test_page_is_made_once_and_never_over_another_file(align, tmp_path):
    assert "Made    align.pdf" in align()
    first = (tmp_path / "align.pdf").read_bytes()
    assert "Made    align.pdf" in align()
    with pytest.raises(UnusableFileError, match=r"align\.pdf is there already"):
        align("--paper", "a4")
    assert (tmp_path / "align.pdf").read_bytes() == first
    align("--paper", "a4", "--out", "other.pdf")
    assert (tmp_path / "other.pdf").read_bytes() != first
