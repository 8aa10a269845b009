"""A sheet as the teacher sees it: the cells that are not blank, each with its address."""

import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from enum import Enum, auto
from itertools import islice

from msgspec import Struct, field

from cards.content import Cell
from cards.indents import outdented, without_tabs
from cards.place import Place
from cards.reading.pictures.pasted import Pasted
from cards.style import Spans

# All white space is found below the letters of Hiragana; the last one here is a byte order mark.
_BLANKS = "".join(filter(str.isspace, map(chr, range(0x3041)))) + "\ufeff"
_LONG = 200
# No language needs more on one letter (Unicode Standard Annex 15, Stream-Safe Text Format).
_MOST_MARKS = 30
_MOST_HEADINGS = 500
_SEEN = str.maketrans(
    {
        "\t": " ",
        "\v": "\n",
        "\u2028": "\n",
        "\u2029": "\n",
        "\u2007": "\u00a0",
        "\u2009": "\u00a0",
        "\u202f": "\u00a0",
        "\u2011": "-",
    }
    | dict.fromkeys("\u00ad\u200b\u200e\u200f\u2060\ufeff\u202a\u202b\u202c\u202d\u202e", "")
    | dict.fromkeys("\u2066\u2067\u2068\u2069", "")
)


class Doubt(Enum):
    """What may be amiss with a cell as it comes from the file."""

    NO_VALUE = auto()
    ERROR_VALUE = auto()
    NO_TEXT = auto()
    ERROR_TEXT = auto()
    TOO_NARROW = auto()
    DATE = auto()
    CHANGED = auto()
    HIDDEN = auto()
    TORN = auto()
    GUESSED = auto()
    SHIFTED = auto()
    STRUCK = auto()
    MERGED = auto()


UNREADABLE = frozenset({Doubt.NO_VALUE, Doubt.ERROR_VALUE, Doubt.NO_TEXT, Doubt.TOO_NARROW})
"""What leaves a cell without a text that its teacher meant."""


class Row(Struct, frozen=True):
    """A row that is not blank: its number, from 1, and its cells by column, from 1."""

    number: int
    cells: Mapping[int, Cell]

    def text(self, column: int | None) -> str:
        """Return the text in a column; blank where there is no such column or cell."""
        cell = self.cells.get(column or 0)
        return cell.text if cell else ""

    def heading_cells(self) -> Mapping[int, Cell]:
        """Return the cells that can be headings: nobody heads more columns than are looked at."""
        return dict(islice(self.cells.items(), _MOST_HEADINGS))

    def spans(self, column: int) -> Spans:
        """Return what is bold, raised or lowered in a column."""
        cell = self.cells.get(column)
        return cell.spans if cell else ()


class Table(Struct, frozen=True):
    """The rows of a sheet that are not blank.

    `name` is the sheet's name in places; `title` is the name that may say what the sheet is for
    (a file of its own has a file name, whose ending says nothing). `delimited` is true where
    delimiters part the fields, so that one field too many means something. `set_apart` is the
    number of the row that looks like headings by its format (bold, frozen, or with a filter).
    `pictures` are those pasted into its cells, left to right in each row.
    """

    name: str
    title: str
    rows: tuple[Row, ...]
    doubts: Mapping[Place, Doubt] = field(default_factory=dict)
    delimited: bool = False
    hidden_columns: frozenset[int] = frozenset()
    set_apart: int | None = None
    pictures: tuple[Pasted, ...] = ()


def rows_of(cells: Iterable[Cell]) -> tuple[Row, ...]:
    """Gather cells into rows, top to bottom; blank cells are left out."""
    rows: dict[int, dict[int, Cell]] = {}
    for cell in cells:
        if cell.text:
            rows.setdefault(cell.place.row, {})[cell.place.column] = cell
    return tuple(Row(number, dict(sorted(rows[number].items()))) for number in sorted(rows))


def clean(text: str) -> str:
    """Return a cell's text as `composed` does, without blank ends.

    Lines below the first are moved to the left with it.
    """
    whole = composed(text)
    bare = whole.strip(_BLANKS)
    before = whole[: whole.find(bare)]
    return outdented(bare, len(before.rpartition("\n")[2])) if before else bare


def composed(text: str) -> str:
    """Return a text composed (NFC), with plain line breaks and nothing that cannot be seen.

    Tabs become blanks, narrow non-breaking blanks the common one. Joiners stay: some scripts need
    them.
    """
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if "\t" in text:
        text = without_tabs(text)
    text = text.translate(_SEEN)
    if not text.isascii() and len(text) > _LONG:
        text = "".join(_without_piles(text))
    return unicodedata.normalize("NFC", text)


def _without_piles(text: str) -> Iterator[str]:
    """Leave out the marks that no letter bears: to sort them takes the square of their number."""
    marks = 0
    for character in text:
        marks = marks + 1 if unicodedata.combining(character) else 0
        if marks <= _MOST_MARKS:
            yield character
