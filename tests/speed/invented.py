"""Content made up for measuring: a workbook of as many rows as asked for, the same each time."""

import random
from pathlib import Path

from msgspec import Struct

STARTS = "b bl br d dr f fl g gl h k l m n p pl r s sk sl st t tr v w"
MIDDLES = "a e i o u ai ea oo ou"
ENDS = "b ck d g l ll m n nd ng p r rn s st t x"
COMMON = (
    "the a small large old wide slow quick near far cold warm bright plain "
    "part kind place shape colour piece edge side end form group layer line "
    "that which with from under over between after before holds moves keeps turns"
)
TOPICS = 12


class Row(Struct, frozen=True):
    """A word with its meaning."""

    word: str
    meaning: str
    topic: str
    level: str


def rows(number: int) -> list[Row]:
    """Return rows with words and meanings that are all different."""
    rng = random.Random("invented")
    words: dict[str, None] = {}
    while len(words) < number:
        words[_word(rng)] = None
    return [
        Row(
            word,
            f"{' '.join(rng.choices(COMMON.split(), k=rng.randint(4, 9)))} {_word(rng)}",
            f"Topic {rng.randrange(TOPICS) + 1}",
            rng.choice(("easy", "medium", "hard")),
        )
        for word in words
    ]


def write_workbook(file: Path, number: int) -> Path:
    """Write a workbook with a Vocabulary sheet of so many rows."""
    from openpyxl import Workbook  # noqa: PLC0415 (a script that only writes text needs none)

    book = Workbook()
    sheet = book.active
    sheet.title = "Vocabulary"
    sheet.append(["Word", "Meaning", "Topic", "Level"])
    for row in rows(number):
        sheet.append([row.word, row.meaning, row.topic, row.level])
    book.save(file)
    return file


def write_csv(file: Path, number: int) -> Path:
    """Write the same rows as comma-separated text."""
    lines = ["Word,Meaning,Topic,Level"]
    lines += [f"{row.word},{row.meaning},{row.topic},{row.level}" for row in rows(number)]
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return file


def _word(rng: random.Random) -> str:
    return "".join(
        "".join(rng.choice(part.split()) for part in (STARTS, MIDDLES, ENDS))
        for _ in range(rng.randint(2, 3))
    )
