"""Decks for every activity, and their pages read back piece by piece."""

import hashlib
import re
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

import pdfplumber
import pypdfium2

from decks.commands.production import make
from support.pdfs import CardPage, card_pages
from support.workbooks import fill

TEAMS = ("Heron", "Otter", "Samphire")
WORDS = {
    "A shell with two halves": "bivalve",
    "Where a river meets the sea": "estuary",
    "Tiny drifting life": "plankton",
    "It clamps to bare stone": "limpet",
    "It kicks food into its mouth": "barnacle",
    "It digs in sand and has ribs": "cockle",
    "A fence that holds sand back": "groyne",
    "Soft ground bared twice a day": "mudflat",
    "The sea at half moon": "neap tide",
    "The sea at full moon": "spring tide",
    "It stays full on the beach": "rock pool",
    "Brown plant cast ashore": "wrack",
    "A small wader in big flocks": "dunlin",
    "A wader that tips pebbles over": "turnstone",
    "It leaves coiled casts": "lugworm",
    "It jumps when weed is lifted": "sandhopper",
    "A plant like green candles": "glasswort",
    "A meadow under the sea": "eelgrass",
    "A plant that bears salt": "halophyte",
    "How salty water is": "salinity",
    "Water that runs up a beach": "swash",
    "Sand that moves along a coast": "longshore drift",
    "A wave that runs up a river": "tidal bore",
    "Beach of round pebbles": "shingle",
    "Hours in a lunar day, nearly": "25",
}
"""Clues that fit one line, with their answers: none stands in a clue, a name or another answer."""

HEADINGS = {
    "Plants": ("They cling with a holdfast", "They are covered twice a day"),
    "Animals": ("They close up at low water", "They hide under weed"),
    "Weather": ("Waves tear at every ledge", "The sun dries the upper rocks"),
}
TOPICS = ("Life", "Water", "Land")
LEVELS = ("easy", "medium", "hard")


@cache
def _workbook(*, shuffled: bool) -> Path:
    rows = [
        [answer, clue, TOPICS[n % 3], LEVELS[n // 3 % 3]]
        for n, (clue, answer) in enumerate(WORDS.items())
    ]
    details = [["Shore", head, detail] for head, told in HEADINGS.items() for detail in told]
    if shuffled:
        rows = rows[::-2] + rows[-2::-2]
    book = fill(
        {
            "Vocabulary": [["Word", "Meaning", "Topic", "Level"], *rows],
            "Details": [["Topic", "Heading", "Detail"], *details],
        }
    )
    path = Path(mkdtemp()) / "Shore.xlsx"
    book.save(path)
    return path


@cache
def lesson(*, shuffled: bool = False, **options: str) -> Path:
    """Return the folder of the deck with these settings, by their keys, built once."""
    path = _workbook(shuffled=shuffled)
    folder = Path(mkdtemp(dir=path.parent))
    make(
        path, {"teams": ", ".join(TEAMS), "seed": "shore", **options}, out=folder, skip_errors=False
    )
    return folder / "Shore decks" / "01"


def pieces_of(path: Path, first: int = 0, end: int | None = None) -> list[tuple[str, ...]]:
    """Return the pages' pieces of text, each page's in the order they were set.

    A piece is what follows without a gap on one line: a cell of a table, a clue, a word.
    """
    return list(_pieces_in(path, first, end))


@cache
def _pieces_in(path: Path, first: int, end: int | None) -> tuple[tuple[str, ...], ...]:
    with pdfplumber.open(path) as pdf:
        return tuple(tuple(_pieces(page.chars)) for page in pdf.pages[first:end])


def tops_of(path: Path) -> list[str]:
    """Return the first line of every page."""
    document = pypdfium2.PdfDocument(path)
    tops = [page.get_textpage().get_text_bounded().splitlines()[0] for page in document]
    document.close()
    return tops


def cards_in(path: Path) -> list[CardPage]:
    """Return the pages of a file of cards, read once for all files with the same bytes."""
    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    if digest not in _read:
        _read[digest] = card_pages(path)
    return _read[digest]


_read: dict[str, list[CardPage]] = {}


def _pieces(chars):
    piece, last = "", None
    for char in chars:
        if last and not _goes_on(last, char):
            yield piece.strip()
            piece = ""
        piece += char["text"]
        last = char
    yield piece.strip()


def _goes_on(last, char):
    level = abs(last["matrix"][5] - char["matrix"][5]) < 0.1
    return level and abs(char["x0"] - last["x1"]) < 1


def without_foot(text: str) -> str:
    """Return the text of a full page's card without the foot of the page, which stands after it."""
    return re.sub(r"\s*(?:100|50)\s*mm.*$", "", text, flags=re.DOTALL)


def plain(text: str) -> str:
    """Return a text as it is searched for: no spaces, no capitals."""
    return re.sub(r"\s", "", text).casefold()
