"""Files that lie, given to the command: one clear line or findings, soon, and nothing else done."""

from pathlib import Path

import pytest
from support.hostile import ALL
from support.watched import CAN_BE_WATCHED, MOST_BYTES, MOST_SECONDS, Run, watched

pytestmark = pytest.mark.skipif(not CAN_BE_WATCHED, reason="memory is measured in another way here")

CONTENT_ERRORS, UNREADABLE = 1, 3
OUR_DRAWING = "drawing_apart.py"
SAYS = {
    "locked.xlsx": "locked with a password",
    "locked-content.ods": "locked with a password",
    "compound.xlsx": "an older kind of workbook under a new name",
    "empty.xlsx": "is empty",
    "workbook.xls": "save it as .xlsx",
    "workbook.csv": "does not hold readable text",
    "page.xlsx": "damaged or not a workbook",
    "laughs-0.xlsx": "declarations",
    "outside.ods": "declarations",
    "overlapping.xlsx": "damaged",
    "repeated.ods": "more than 12,000 rows",
    "many-wide.ods": "more than 120,000 cells",
    "many-sheets.ods": "more than 12,000 rows",
    "many-sheets.xlsx": "more than 120,000 cells",
    "merged.xlsx": "far larger than its content can need",
    "wide.csv": "far larger than its content can need",
    "place-3.xlsx": "far larger than its content can need",
    "long-line.csv": "a line of more than",
    "only-quote.csv": "never closed",
    "calls.xlsx": "This cell holds a formula",
    "paths.csv": "There is no picture “../../etc/passwd”",
    "bomb-png.xlsx": "more than 40 million pixels",
    "uses-svg.xlsx": "far too many parts",
    "outside-svg.xlsx": "shows another file",
    "endless-height-svg.xlsx": "damaged or cut off",
    "giant-pattern-svg.xlsx": "damaged or cut off",
    "masks-svg.xlsx": "takes too long to draw",
    "inside-another-svg.xlsx": "damaged or cut off",
}
BUILT = (
    *("calls.xlsx", "deep-folders.xlsx", "doubled.xlsx", "junk-before.xlsx", "macros.xlsm"),
    *("no-title.xlsx", "odd-names.xlsx", "place-0.xlsx", "spread.xlsx", "fetching-svg.xlsx"),
    *("links.ods", "values.ods", "commands.csv", "paths.csv", "surrogate.csv", "all-right.csv"),
)


@pytest.fixture(scope="module")
def folder(tmp_path_factory) -> Path:
    folder = tmp_path_factory.mktemp("hostile")
    for name, data in ALL.items():
        (folder / name).write_bytes(data)
    return folder


@pytest.fixture(scope="module")
def checked(folder, tmp_path_factory) -> dict[str, Run]:
    settings = tmp_path_factory.mktemp("settings")
    runs = watched((["check", folder / name] for name in ALL), settings)
    return dict(zip(ALL, runs, strict=True))


@pytest.fixture(scope="module")
def built(folder, tmp_path_factory) -> dict[str, Run]:
    settings = tmp_path_factory.mktemp("settings")
    runs = watched((["build", folder / name, "--skip-errors"] for name in BUILT), settings)
    return dict(zip(BUILT, runs, strict=True))


@pytest.mark.parametrize("name", ALL)
def test_a_hostile_file_gets_findings_or_one_clear_line(checked, name):
    run = checked[name]
    assert run.status in {0, CONTENT_ERRORS, UNREADABLE}, run.warned
    assert "Traceback" not in run.told + run.warned
    assert run.lines
    if run.status == UNREADABLE:
        [line] = run.lines
        assert line.startswith(f"fairdeal: {name} ")


@pytest.mark.parametrize("name", SAYS)
def test_what_a_hostile_file_gets_is_said_plainly(checked, name):
    assert SAYS[name] in checked[name].told + checked[name].warned


@pytest.mark.parametrize("runs", ["checked", "built"])
def test_no_hostile_file_takes_long_or_much_memory(request, runs):
    for name, run in request.getfixturevalue(runs).items():
        assert run.seconds < MOST_SECONDS, name
        assert run.peak < MOST_BYTES, name


def test_a_check_opens_the_file_and_nothing_else(checked, folder):
    for name, run in checked.items():
        assert {path for path, _ in run.opened} <= {str(folder / name)}, name
        assert {mode for _, mode in run.opened} <= {"r", "rb"}, name


@pytest.mark.parametrize("runs", ["checked", "built"])
def test_no_hostile_file_reaches_a_network_or_starts_a_program(request, runs):
    for name, run in request.getfixturevalue(runs).items():
        started = [what for event, what in run.events if event.startswith("subprocess.")]
        assert all(OUR_DRAWING in what for what in started), name
        assert not [event for event, _ in run.events if event.startswith(("socket.", "urllib."))]


def test_decks_of_hostile_files_are_written_in_their_folders_only(built, folder):
    decks = [folder / f"{Path(name).stem} decks" for name in BUILT]
    for name, run in built.items():
        assert run.status in {0, CONTENT_ERRORS}, run.lines
        own = (str(folder / name), f"{folder / Path(name).stem} decks")
        assert all(path.startswith(own) for path, _ in run.opened), (name, run.opened)
    assert {path for path in folder.iterdir() if path.is_dir()} <= set(decks)
    assert {path.name for path in folder.iterdir() if path.is_file()} == set(ALL)
    assert all((folder / name).read_bytes() == data for name, data in ALL.items())
