"""What each step of a build takes for a card, from 240 rows to 10,000: prints a table.

Run by hand: `python tests/speed/growth.py [rows ...]`. Milliseconds of processor time for a row,
so that a machine with other things to do says nearly the same; what counts is that they do not
grow from one number of rows to the next. Besides words with meanings, as a teacher has them, there
are shapes that make some steps work hardest. Every shape is built in a process of its own.
`--steps` leaves out the whole build, which takes minutes.
"""

# ruff: noqa: T201  (the table is what the script is for)

import csv
import os
import random
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

from invented import Row, rows
from msgspec import Struct, field
from processes import PYTHON, ROOT, fairdeal

ROWS = (240, 2_400, 10_000)
WORDS = ("Word", "Meaning", "Topic", "Level")
TEAMS = ("Ash", "Birch", "Cedar", "Dogwood")
STEPS = ("read", "check", "proof", "make", "record")

STEP_BY_STEP = """
import sys, time
from pathlib import Path
from cards.digest import digest_of
from cards.checking import check, sound_items
from cards.reading import read
from decks.activities import make_deck
from decks.commands.room import grid_for
from decks.lesson.exercises import exercises_of
from decks.press.cards.proof import proofread
from decks.record import Colophon, write
from decks.settings import resolve

def step(work, *given, **named):
    began = time.process_time()
    done = work(*given, **named)
    print(time.process_time() - began)
    return done

file, options = Path(sys.argv[1]), dict(one.split("=", 1) for one in sys.argv[2:])
content = step(read, file)
recipe, _ = resolve(content, options)
grid, _ = grid_for(recipe, content, options)
found = step(check, content, [team.name for team in recipe.teams])
items = sound_items(content, found)
found += step(proofread, items, recipe, grid)
items = sound_items(content, found)
exercises = exercises_of(content.exercises)
deck = step(make_deck, recipe, items, number=1, seed="growth", exercises=exercises)
step(write, deck, Colophon(file.name, digest_of(content), (), {}, 1))
"""

Cells = tuple[object, ...]


class Shape(Struct, frozen=True):
    """Rows of one sort, and the settings of their deck."""

    heads: tuple[str, ...] = WORDS
    cells: Callable[[Row, int], Cells] = lambda row, _: (row.word, *_rest(row))
    settings: dict[str, object] = field(default_factory=dict)


def _rest(row: Row) -> Cells:
    return row.meaning, row.topic, row.level


def _drawn(number: int, among: int) -> int:
    """Return a number below `among` that has nothing to do with its neighbours'."""
    return random.Random(number).randrange(among)


SHAPES = {
    "words": Shape(),
    "12 teams": Shape(settings={"teams": 12}),
    "one topic": Shape(cells=lambda row, _: (row.word, row.meaning, "Tides", "easy")),
    "200 topics": Shape(
        cells=lambda row, n: (row.word, row.meaning, f"Topic {_drawn(n, 200)}", row.level)
    ),
    "all pinned": Shape(
        (*WORDS, "Team"),
        lambda row, n: (row.word, *_rest(row), TEAMS[_drawn(n, len(TEAMS))]),
        {"teams": ", ".join(TEAMS)},
    ),
    "one word": Shape(cells=lambda row, _: ("harbour", *_rest(row))),
    "one meaning": Shape(cells=lambda row, _: (row.word, "where ships lie", *_rest(row)[1:])),
    "also right": Shape(
        (*WORDS, "Also right"),
        lambda row, n: (row.word if n % 2 else "quay", *_rest(row), "quay" if n % 2 else ""),
    ),
    "wrong answers": Shape(
        ("Question", "Answer", *(f"Wrong {n}" for n in (1, 2, 3)), *WORDS[2:]),
        lambda row, _: (
            f"Which word says {row.meaning}?",
            row.word,
            *(f"{row.word}{end}" for end in ("le", "ish", "ment")),
            *_rest(row)[1:],
        ),
    ),
    "details": Shape(
        ("Heading", "Detail", "Topic"),
        lambda row, n: (f"Heading {n % 7}", row.meaning, f"Text {n // 60}"),
        {"activity": "organizer"},
    ),
    "stories": Shape(
        ("Heading", "Detail"), lambda row, _: (row.word, row.meaning), {"activity": "organizer"}
    ),
    **{name: Shape(settings={"activity": name}) for name in ("collect", "rounds", "stations")},
}


def write(file: Path, shape: Shape, number: int) -> Path:
    """Write so many rows of a shape."""
    with file.open("w", encoding="utf-8", newline="") as out:
        table = csv.writer(out)
        table.writerow(shape.heads)
        table.writerows(shape.cells(row, n) for n, row in enumerate(rows(number)))
    return file


def steps(file: Path, shape: Shape) -> list[float]:
    """Return the seconds of processor time of each step."""
    options = [f"{name}={value}" for name, value in shape.settings.items()]
    command = [PYTHON, "-c", STEP_BY_STEP, str(file), *options]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    return list(map(float, done.stdout.split()))


def build(file: Path, shape: Shape) -> tuple[float, float]:
    """Return the seconds of processor time of a whole build, and its most memory in MiB."""
    options = [f"--{name}={value}" for name, value in shape.settings.items()]
    with tempfile.TemporaryDirectory() as folder:
        out = fairdeal("build", file, "--skip-errors", "--out", folder, *options)
        nowhere = subprocess.DEVNULL
        started = subprocess.Popen(out, cwd=ROOT, stdout=nowhere, stderr=nowhere)
        _, status, usage = os.wait4(started.pid, 0)
        started.returncode = os.waitstatus_to_exitcode(status)
    seconds = usage.ru_utime + usage.ru_stime
    return seconds if not status else float("nan"), usage.ru_maxrss / 1024


def main(numbers: list[int], *, whole: bool) -> None:
    """Measure and print."""
    heads = [*STEPS, "all five", *(["build", "peak, MiB"] if whole else [])]
    print("| shape | rows |", " | ".join(heads), "|\n|---|" + "--:|" * (len(heads) + 1))
    for name, shape in SHAPES.items():
        for number in numbers:
            with tempfile.TemporaryDirectory() as folder:
                file = write(Path(folder) / "cards.csv", shape, number)
                took = steps(file, shape)
                seconds, peak = build(file, shape) if whole else (0.0, 0.0)
            each = [*took, sum(took), *([seconds] if whole else [])]
            row = [f"{1000 * one / number:.3f}" for one in each]
            print(f"| {name} | {number} |", " | ".join([*row, *([f"{peak:.0f}"] * whole)]), "|")


if __name__ == "__main__":
    given = [int(one) for one in sys.argv[1:] if one.isdigit()]
    main(given or list(ROWS), whole="--steps" not in sys.argv)
