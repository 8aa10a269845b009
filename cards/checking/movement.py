"""Exercises: how hard they are, and whether everyone can take part."""

from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.content import Content
from cards.exercises import EFFORT_WORDS, EFFORTS, effort_called
from cards.item import folded
from cards.place import Place
from cards.quoting import quoted
from cards.reading.near import near_miss

_WORDS = [word for words in EFFORT_WORDS.values() for word in words.split(", ")]


def unknown_effort(content: Content) -> Iterator[Remark]:
    """Find efforts that are none of the words known; a blank one counts as moderate."""
    for row in content.exercises:
        if row.effort and effort_called(row.effort.text) is None:
            near = near_miss(row.effort.text, _WORDS)
            yield Remark(
                row.effort.place,
                row.effort.text,
                f"{quoted(row.effort.text)} is not an effort; it counts as moderate.",
                f"{f'Did you mean {near}? ' if near else ''}"
                f"Write {EFFORTS[0]}, {EFFORTS[1]} or {EFFORTS[2]}, or clear the cell.",
            )


def no_gentler_option(content: Content) -> Iterator[Remark]:
    """Find exercises without a gentler option; where none has any, that is said once."""
    lacking = [row for row in content.exercises if row.gentler is None]
    mend = (
        "Write one under Gentler option: a way without jumping, and one sitting down, "
        "with a semicolon between."
    )
    if len(lacking) == len(content.exercises) > 1:
        place = Place(lacking[0].name.place.sheet)
        yield Remark(place, "", "No exercise has a gentler option, and everyone needs one.", mend)
        return
    for row in lacking:
        name = row.name.text
        wrong = f"{quoted(name)} has no gentler option, and everyone needs one."
        yield Remark(row.name.place, name, wrong, mend)


def same_exercise(content: Content) -> Iterator[Remark]:
    """Find exercises that are listed before under the same name."""
    first: dict[str, Place] = {}
    for row in content.exercises:
        before = first.setdefault(folded(row.name.text), row.name.place)
        if before != row.name.place:
            yield Remark(
                row.name.place,
                row.name.text,
                f"{quoted(row.name.text)} stands in {before} as well.",
                "Delete one of the two, or name another exercise.",
            )
