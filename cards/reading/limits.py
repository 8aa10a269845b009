"""How much is read: far more than a class needs, far less than a computer would choke on."""

from cards.content import Cell
from cards.finding import UnusableFileError

MIB = 1 << 20
MOST_FILE_BYTES = 200 * MIB
MOST_TEXT_BYTES = 30 * MIB
# Of a packed file, what the parts with content unpack to, formats of blank cells included.
MOST_UNPACKED_BYTES = 300 * MIB
# The same without the blank cells.
MOST_KEPT_BYTES = 48 * MIB
MOST_ROWS = 12_000
# No spreadsheet program has cells beyond these.
LAST_ROW = 1_048_576
LAST_COLUMN = 16_384
MOST_CELLS = 120_000
MOST_CHARACTERS = 3_000_000


def too_many_rows(name: str) -> UnusableFileError:
    """Say that a file has too many rows."""
    return UnusableFileError(
        f"{name} has more than {MOST_ROWS:,} rows with content. "
        "Part it into several files, and name one of them."
    )


def too_many_cells(name: str) -> UnusableFileError:
    """Say that a file has too many cells."""
    return UnusableFileError(
        f"{name} has more than {MOST_CELLS:,} cells with content. "
        "Delete the columns that make no cards, or part it into several files."
    )


def too_long(cell: Cell) -> UnusableFileError:
    """Say that a cell has more text than a spreadsheet program lets it hold."""
    return UnusableFileError(
        f"{cell.place} has {len(cell.text):,} characters, which is more than a cell can hold. "
        "Shorten its text, and save the file."
    )


def too_large(name: str) -> UnusableFileError:
    """Say that a file is too large, packed or unpacked."""
    return UnusableFileError(
        f"{name} is far larger than its content can need. "
        "Copy the rows that make cards into a new workbook, and use that."
    )
