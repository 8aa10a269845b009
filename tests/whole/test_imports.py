"""What must stay cheap is protected by what a run loads, not by its seconds."""

import json
import subprocess
import sys
from importlib.util import find_spec

import pytest
from support.workbooks import fill

WORDS = [["Word", "Meaning"], *([f"word{n}", f"the meaning of number {n}"] for n in range(8))]
SOLVER = ("highspy", "numpy")
FONTS = "uharfbuzz"
NUMBERS = "cards.checking.sums.plain"
SHAPES_AND_PICTURES = ("decks.press.script.shaping", "decks.press.script.faces", "resvg_py")
LATER_THAN_CHECKING = ("decks.dealing", "decks.choosing", "decks.bank", "decks.press.handouts")

RUN = """
import json, sys
from decks.commands import main
try:
    main()
except SystemExit as end:
    assert not end.code, end.code
print(json.dumps(sorted(sys.modules)))
"""


@pytest.fixture
def loaded_by(tmp_path):
    """Return what the command loads, run in a folder with the same words in two files."""
    fill({"Vocabulary": WORDS}).save(tmp_path / "w.xlsx")
    # one prompt has two lines
    lines = "\n".join(",".join(row) for row in [*WORDS, ["ebb", '"the tide\ngoes out"']])
    (tmp_path / "w.csv").write_text(f"{lines}\n", encoding="utf-8")

    def run(*arguments):
        command = [sys.executable, "-c", RUN, *arguments]
        done = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, check=True)
        return set(json.loads(done.stdout.splitlines()[-1]))

    return run


def test_help_loads_no_library_but_that_of_the_command_line(loaded_by):
    heavy = {"reportlab", "openpyxl", "xlsxwriter", "pandas", "PIL", "platformdirs"}
    ours = {"cards.reading", "cards.checking", "decks.printers", "decks.press", "decks.layout"}
    for arguments in (["--help"], ["build", "--help"], ["align", "--help"]):
        assert not loaded_by(*arguments) & {*heavy, FONTS, *SOLVER, *SHAPES_AND_PICTURES, *ours}


def test_a_blank_workbook_needs_no_page(loaded_by):
    not_needed = {"reportlab", "xlsxwriter", "pandas", "decks.press", "decks.dealing"}
    loaded = loaded_by("start", "blank.xlsx")
    assert "openpyxl" in loaded
    assert not loaded & {*not_needed, *SOLVER}


@pytest.mark.parametrize(("file", "also"), [("w.csv", {"openpyxl"}), ("w.xlsx", set())])
def test_checking_loads_nothing_that_deals_draws_or_writes(loaded_by, file, also):
    not_needed = {"reportlab", "xlsxwriter", "pandas", "PIL", *SOLVER, *SHAPES_AND_PICTURES}
    loaded = loaded_by("check", file)
    assert "cards.checking.rules" in loaded
    assert not loaded & {*not_needed, *LATER_THAN_CHECKING, *also}


@pytest.mark.parametrize(("file", "also"), [("w.csv", {"openpyxl"}), ("w.xlsx", set())])
def test_a_build_loads_the_library_of_its_own_kind_of_file_and_no_solver_for_copies(
    loaded_by, file, also
):
    loaded = loaded_by("build", file, "--deal", "copies")
    assert "xlsxwriter" in loaded
    assert not loaded & {"pandas", NUMBERS, *SOLVER, *SHAPES_AND_PICTURES, *also}


@pytest.mark.parametrize("name", [FONTS, NUMBERS, *SOLVER, *SHAPES_AND_PICTURES])
def test_what_is_watched_for_is_there_to_be_loaded(name):
    assert find_spec(name)
