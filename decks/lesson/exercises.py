"""Short exercises between questions: which one when, and how long they take in all."""

import random
import re
from collections.abc import Sequence
from enum import IntEnum

from msgspec import Struct

from cards.content import Cell, ExerciseRow
from cards.exercises import EFFORTS, EXERCISES, effort_called
from cards.item import folded


class Effort(IntEnum):
    """How hard an exercise is, by its rank only: no figures are shown to students."""

    GENTLE = 1
    MODERATE = 2
    STRONG = 3


class Exercise(Struct, frozen=True):
    """An exercise with its count, and its gentler and seated options in one text."""

    name: str
    how_many: str
    gentler: str
    effort: Effort


SECONDS_A_COUNT = 2.0
SECONDS_UNTOLD = 20.0
"""Our own judgement: two seconds for each count, and twenty where no count is given."""

ANYONE = ("smaller and slower", "sitting: whatever can move")
"""The options of an exercise that names none."""

WAVE = (Effort.GENTLE, Effort.MODERATE, Effort.STRONG, Effort.MODERATE)


def standard() -> tuple[Exercise, ...]:
    """Return our own list, for a workbook that has none."""
    return tuple(
        Exercise(name, how_many, gentler, Effort(EFFORTS.index(effort) + 1))
        for name, how_many, gentler, effort in EXERCISES
    )


def exercises_of(rows: Sequence[ExerciseRow]) -> tuple[Exercise, ...]:
    """Return the exercises of a sheet.

    An effort that is blank or not known counts as moderate.
    """
    return tuple(
        Exercise(row.name.text, _text(row.how_many), _text(row.gentler), _effort(row.effort))
        for row in rows
    )


def _text(cell: Cell | None) -> str:
    return cell.text if cell else ""


def _effort(cell: Cell | None) -> Effort:
    rank = effort_called(_text(cell))
    return Effort(rank) if rank else Effort.MODERATE


def ways(exercise: Exercise) -> tuple[str, ...]:
    """Return the gentler and the seated options one by one; everyone has one in any case."""
    written = (part.strip() for part in exercise.gentler.split(";"))
    return tuple(part for part in written if part) or ANYONE


def seconds_of(exercise: Exercise) -> float:
    """Return about how long an exercise takes, in seconds, from its count or time."""
    found = re.search(
        r"([0-9]{1,4}(?:[.,][0-9]{1,2})?)\s*(s\b|sec|min)?", exercise.how_many.casefold()
    )
    if not found:
        return SECONDS_UNTOLD
    number, unit = float(found[1].replace(",", ".")), found[2]
    sides = 2 if re.search(r"\beach\b", exercise.how_many.casefold()) else 1
    if unit:
        return number * sides * (60.0 if unit == "min" else 1.0)
    return number * sides * SECONDS_A_COUNT


def order_exercises(
    exercises: Sequence[Exercise], count: int, generator: random.Random
) -> list[Exercise]:
    """Return one exercise for each of `count` questions.

    Effort rises and eases as in a wave, no exercise comes twice running where there are two (nor
    the same with another count), and all of one effort are used before any comes again.
    """
    ordered: list[Exercise] = []
    used = dict.fromkeys(exercises, 0)
    luck = {exercise: generator.random() for exercise in exercises}
    names = {exercise: folded(exercise.name) for exercise in exercises}
    for n in range(count):
        wanted = WAVE[n % len(WAVE)]
        fresh = [e for e in used if not ordered or names[e] != names[ordered[-1]]] or list(used)
        chosen = min(fresh, key=lambda e: (abs(e.effort - wanted), used[e], luck[e]))
        used[chosen] += 1
        ordered.append(chosen)
    return ordered
