"""A workbook with something for every activity, and its decks, each built once."""

import json
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

import pdfplumber

from decks.commands.production import make
from support.shore import ITEMS
from support.workbooks import fill

TEAMS = ("Heron", "Otter", "Samphire", "Curlew")
DETAILS = [
    ("Tides", heading, f"{heading}: detail {n} of a plain sentence")
    for heading in ("What pulls the sea", "How often", "Who lives by it")
    for n in range(1, 5)
]
ACTIVITIES = ("review", "collect", "rounds", "stations", "organizer")
TITLE_SIZE = 20


@cache
def _workbook() -> Path:
    path = Path(mkdtemp()) / "Shore.xlsx"
    sheets = {
        "Facts": [("Prompt", "Answer", "Topic", "Level"), *ITEMS],
        "Details": [("Topic", "Heading", "Detail"), *DETAILS],
        "Teams": [("Team",), *((name,) for name in TEAMS)],
    }
    fill(sheets).save(path)
    return path


@cache
def _built(**options: str) -> tuple[Path, tuple[str, ...]]:
    folder = Path(mkdtemp(dir=_workbook().parent))
    told = make(_workbook(), options, out=folder, skip_errors=False)
    return folder / "Shore decks" / "01", tuple(told)


def lesson(**options: str) -> Path:
    """Return the folder of the deck with these settings, by their keys."""
    return _built(**options)[0]


def told(**options: str) -> tuple[str, ...]:
    """Return what the terminal says of that deck."""
    return _built(**options)[1]


def record_of(deck: Path) -> dict:
    """Return what deck.json says."""
    return json.loads((deck / "deck.json").read_text(encoding="utf-8"))


@cache
def teacher(deck: Path) -> tuple[tuple[str, str], ...]:
    """Return the title of each of the teacher's pages, empty where none begins, and its text."""
    with pdfplumber.open(deck / "teacher.pdf") as pdf:
        return tuple((_title(page), " ".join(page.extract_text().split())) for page in pdf.pages)


def _title(page) -> str:
    large = page.filter(lambda thing: abs(thing.get("size", 0) - TITLE_SIZE) < 0.1)
    return large.extract_text().strip()


def page_called(deck: Path, title: str) -> str:
    """Return the text of the one page with this title."""
    (text,) = [text for heading, text in teacher(deck) if heading == title]
    return text
