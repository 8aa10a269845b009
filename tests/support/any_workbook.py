"""Hypothesis strategies for workbooks and settings that somebody might have, or nobody."""

import datetime as dt
import re
from pathlib import Path

from hypothesis import strategies as st

from decks.settings import SETTINGS, Setting
from support.hostile_texts import LONE_SURROGATES, SHORT
from support.workbooks import fill

WORDS = st.sampled_from(
    (
        *("limpet", "kelp", "tide pool", "ebb", "neap tide", "3/4", "H2O"),
        *("été", "κῦμα", "прилив", "1,5 m", "water’s edge"),
    )
)
MEANINGS = st.builds(
    "what {} is, told in plain words, number {}".format, WORDS, st.integers(1, 400)
)
HOSTILE = st.sampled_from((*SHORT, *LONE_SURROGATES))
RANDOM = st.text(max_size=12)
NO_TEXTS = st.one_of(
    st.none(),
    st.integers(-5, 10**6),
    st.floats(allow_nan=False, width=32),
    st.booleans(),
    st.dates(dt.date(1900, 3, 1), dt.date(2100, 1, 1)),
    st.sampled_from(["#N/A", "#DIV/0!", "=1/0", "=A1", "=SUM("]),
)
ODD = st.one_of(HOSTILE, RANDOM, NO_TEXTS)
HEADINGS = (
    *("Word", "Meaning", "Prompt", "Answer", "Question", "Topic", "Heading", "Detail"),
    *("Level", "Team", "Picture", "Also right", "Wrong answers", "Notes"),
    *("", "Wrd", "word", "Answer", "<b>Answer</b>", "7"),
)
SHEETS = ("Vocabulary", "Facts", "Questions", "Details", "Sheet1", "Old <stuff>")

_ILLEGAL = re.compile("[\0-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")


def coded(text: str) -> str:
    """Return a text as a workbook can hold it (ECMA-376 Part 1, 22.9.2.19)."""
    return _ILLEGAL.sub(lambda found: f"_x{ord(found[0]):04X}_", text)


def save(path: Path, sheets: dict[str, list[list[object]]]) -> Path:
    """Write a workbook in which texts are texts, whatever they begin with."""
    rows = {
        name: [[coded(one) if isinstance(one, str) else one for one in row] for row in sheet]
        for name, sheet in sheets.items()
    }
    book = fill(rows)
    for sheet in book:
        for cell in (cell for row in sheet.iter_rows() for cell in row):
            if isinstance(cell.value, str) and cell.value not in {"=1/0", "=A1", "=SUM("}:
                cell.data_type = "e" if cell.value.startswith(("#N/A", "#DIV")) else "s"
    book.save(path)
    return path


def mostly(usual: st.SearchStrategy, odd: st.SearchStrategy = ODD) -> st.SearchStrategy:
    """Draw what is usual nine times out of ten."""
    return st.integers(0, 9).flatmap(lambda n: odd if n == 0 else usual)


def column(heading: str) -> st.SearchStrategy:
    """Draw what may stand in a cell under a heading."""
    usual = {
        "Word": WORDS,
        "Answer": WORDS,
        "Heading": st.sampled_from(["Holding on", "Getting food", "Keeping cool"]),
        "Topic": st.sampled_from(["Tides", "Zones", "", "Shore life"]),
        "Level": st.sampled_from(["easy", "2", "hard", 1, "", "so so"]),
        "Team": st.sampled_from(["", "", "", "Heron", "Nobody"]),
        "Picture": st.sampled_from(["", "", "", "crab.png", "../crab.png"]),
        "Also right": st.sampled_from(["", "other", "one; two", "limpet"]),
        "Wrong answers": st.sampled_from(["", "no; never", "kelp", "10–20; 15–30; 40"]),
    }
    return mostly(usual.get(heading, MEANINGS))


@st.composite
def content_sheets(draw) -> list[list[object]]:
    """Draw the rows of a sheet: often a good heading row, sometimes any, or none."""
    pair = draw(st.sampled_from([("Word", "Meaning"), ("Prompt", "Answer"), ("Heading", "Detail")]))
    others = st.lists(st.sampled_from(HEADINGS), max_size=5)
    headings = draw(st.permutations([*pair, *draw(others)]))
    rows: list[list[object]] = [
        draw(st.one_of(st.just([]), st.tuples(*map(column, headings)).map(list)))
        for _ in range(draw(st.integers(0, 9)))
    ]
    top = draw(mostly(st.just(list(headings)), st.lists(ODD, max_size=4)))
    before: list[list[object]] = draw(mostly(st.just([]), st.lists(st.lists(ODD, max_size=3))))
    return [*before, top, *rows]


TEXTS = mostly(st.sampled_from(["Shore", "Week 3 & 4", "Ébb"]), HOSTILE | RANDOM)
_LENGTHS = st.builds("{} mm".format, st.integers(0, 40))
BY_KEY: dict[str, st.SearchStrategy] = {
    "title": TEXTS,
    "printer": TEXTS,
    "seed": TEXTS,
    "language": st.sampled_from(["Spanish", "Cymraeg", "עברית", "zh-hans", "es-MX", "sgn-BR"]),
    "teams": st.integers(1, 12).map(str)
    | st.lists(TEXTS, min_size=1, max_size=13, unique=True).map(", ".join),
    "cards": st.integers(1, 30).map(str) | st.just("all"),
    "mix": st.builds("{}/{}/{}".format, *[st.integers(1, 100)] * 2, st.integers(0, 100)),
    "margins": _LENGTHS | st.lists(_LENGTHS, min_size=4, max_size=4).map(", ".join),
    "card_size": st.sampled_from(["small", "medium", "large", "full"])
    | st.builds("{} x {} mm".format, st.integers(25, 300), st.integers(25, 300)),
    "bleed": st.sampled_from(["0", "1 mm", "3 mm", "5 mm", "1/8 in"]),
    "read_from": st.builds("{} cm".format, st.integers(20, 1000)),
    "points": st.builds("{}, {}, {}".format, *[st.integers(0, 9)] * 3),
    "walk": st.builds("{} m".format, st.integers(1, 200)),
    "students": st.integers(1, 60).map(str),
    "minutes": st.integers(1, 90).map(str),
    "target": st.integers(0, 100).map(str),
    "seen_before": st.builds("{} %".format, st.integers(0, 100)),
    "floor": st.integers(0, 100).map(str),
}
"""Values that a setting without a list of choices says it can be."""


def said(setting: Setting) -> st.SearchStrategy[str]:
    """Draw a value that a setting says it can be."""
    return BY_KEY[setting.key] if setting.key in BY_KEY else st.sampled_from(setting.choices)


def choices(odd: st.SearchStrategy = HOSTILE | RANDOM) -> st.SearchStrategy[dict[str, str]]:
    """Draw values for some of the settings, by key; a few of them are odd."""
    one = st.sampled_from(SETTINGS).flatmap(
        lambda setting: st.tuples(st.just(setting), mostly(said(setting), odd))
    )
    return st.lists(one, max_size=7).map(
        lambda chosen: {setting.key: value for setting, value in chosen}
    )


@st.composite
def workbooks(draw) -> dict[str, list[list[object]]]:
    """Draw the sheets of a workbook: content, and perhaps teams, exercises and settings."""
    names = draw(st.lists(st.sampled_from(SHEETS), min_size=1, max_size=3, unique=True))
    sheets = {name: draw(content_sheets()) for name in names}
    team = st.tuples(mostly(st.sampled_from(["Heron", "Otter", "Kelp"])), mostly(st.just("blue")))
    exercise = st.tuples(*[mostly(st.sampled_from(["March", "8 times", "strong"]))] * 4)
    parts = {
        "Teams": ([["Team", "Colour"]], st.lists(team.map(list), max_size=4)),
        "Exercises": (
            [["Exercise", "How many", "Gentler option", "Effort"]],
            st.lists(exercise.map(list), max_size=3),
        ),
        "Deck": ([["Setting", "Value"]], choices(ODD).map(_deck_rows)),
    }
    for name, (head, rows) in parts.items():
        if draw(st.booleans()):
            sheets[name] = [*head, *draw(rows)]
    return sheets


def _deck_rows(chosen: dict[str, object]) -> list[list[object]]:
    names = {setting.key: setting.name for setting in SETTINGS}
    return [[names[key], value] for key, value in chosen.items()]
