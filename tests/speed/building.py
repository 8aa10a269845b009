"""How long a build takes beside what it cannot do without: prints the table of DEVELOPERS.md.

Run by hand on a machine that has nothing else to do: `python tests/speed/building.py [runs]`.
All are whole processes, run in turn. A ratio is the median of those of the rounds, in which both
ran one soon after the other, so that it says the same on any machine. The bare program of `bare.py`
draws what we draw, already fitted.
"""

# ruff: noqa: T201  (the table is what the script is for)

import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from statistics import median

from invented import write_csv, write_workbook
from processes import PYTHON, Command, Took, fairdeal, said, time_all

HERE = Path(__file__).parent
NUMBERS = (240, 2_400, 10_000)
LONG = 10_000
"""From so many cards on, a command is run half as often."""

LIBRARIES = ("typer", "openpyxl", "xlsxwriter", "numpy", "highspy", "pandas", "PIL", "uharfbuzz")
"""What a build may have imported besides reportlab, which the bare program imports as well."""

SAYS_WHAT_IT_IMPORTED = """
import atexit, sys
atexit.register(lambda: print("\\n", *sys.modules))
sys.argv[1:] = ["build", {!r}]
import decks.commands
decks.commands.main()
"""


def main(runs: int) -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        commands, libraries = _commands(folder)
        took = time_all(commands, lambda name: _times(name, runs))
    print(f"A build imports reportlab, {', '.join(libraries)}.\n")
    print("| measured | seconds | beside | seconds | ratio | at most |\n|---|--:|---|--:|--:|--:|")
    for row in _rows(took):
        print(row)
    print("\n| rows | build, s | ms a row | check, s | peak, MiB |\n|--:|--:|--:|--:|--:|")
    for number in NUMBERS:
        print(_growth(took, number))


def _commands(folder: Path) -> tuple[dict[str, Command], list[str]]:
    """Return the processes to time, by name, and the libraries that a build imports."""
    commands = {"python": [PYTHON, "-c", "pass"], "typer": [PYTHON, "-c", "import typer"]}
    for number in NUMBERS:
        commands |= _at(folder, number)
    libraries = _imported(folder / "240.xlsx", folder)
    commands |= {
        "imports": [PYTHON, "-c", f"import {', '.join(libraries)}"],
        "--help": fairdeal("--help"),
        "start": fairdeal("start", "new.xlsx"),
        "build csv": fairdeal("build", write_csv(folder / "words.csv", 240), "--out", "."),
    }
    return commands, libraries


def _at(folder: Path, number: int) -> dict[str, Command]:
    """Return the processes that are compared at so many cards."""
    book = write_workbook(folder / f"{number}.xlsx", number)
    dealt, things = folder / f"{number}.pickle", folder / f"{number}.json"
    # in a process of its own: what is run later is told to have held what this one holds
    said([PYTHON, str(HERE / "dealt.py"), *map(str, (book, dealt, things))], folder)
    return {
        f"bare {number}": [PYTHON, str(HERE / "bare.py"), str(things), str(folder / "bare.pdf")],
        f"cards {number}": [PYTHON, str(HERE / "card_pages.py"), str(dealt), str(folder)],
        f"build {number}": fairdeal("build", book, "--out", "."),
        f"check {number}": fairdeal("check", book),
    }


def _imported(book: Path, folder: Path) -> list[str]:
    script = SAYS_WHAT_IT_IMPORTED.format(str(book))
    modules = set(said([PYTHON, "-c", script], folder).splitlines()[-1].split())
    return [name for name in LIBRARIES if name in modules]


def _times(name: str, runs: int) -> int:
    number = name.rsplit(maxsplit=1)[-1]
    return max(runs // 2, 1) if number.isdecimal() and int(number) >= LONG else runs


def _rows(took: dict[str, Took]) -> Iterator[str]:
    seconds = {name: each.seconds for name, each in took.items()}
    for number in NUMBERS:
        most = 0.85 if number > NUMBERS[0] else None
        bare = seconds[f"bare {number}"]
        yield _row(f"card pages, {number:,}", seconds[f"cards {number}"], "bare", bare, most)
    parts = zip(seconds["imports"], seconds["python"], seconds["bare 240"], strict=True)
    needed = [imports - python + bare for imports, python, bare in parts]
    build = seconds["build 240"]
    yield _row("build, 240 rows", build, "imports and bare", needed, 1.5)
    yield _row("build from CSV, 240 rows", seconds["build csv"], "build, 240 rows", build, None)
    yield _row("check, 240 rows", seconds["check 240"], "build, 240 rows", build, 0.5)
    yield _row("start", seconds["start"], "build, 240 rows", build, 0.5)
    yield _row("--help", seconds["--help"], "Python with typer", seconds["typer"], None)


def _row(what: str, ours: list[float], beside: str, theirs: list[float], most: float | None) -> str:
    ratio = median(one / other for one, other in zip(ours, theirs, strict=True))
    bound = f"{most:.2f}" if most else ""
    times = f"{median(ours):.2f} | {beside} | {median(theirs):.2f}"
    return f"| {what} | {times} | {ratio:.2f} | {bound} |"


def _growth(took: dict[str, Took], number: int) -> str:
    build, check = took[f"build {number}"], took[f"check {number}"]
    each = 1000 * build.median / number
    peak = build.mebibytes
    return f"| {number:,} | {build.median:.2f} | {each:.2f} | {check.median:.2f} | {peak:.0f} |"


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
