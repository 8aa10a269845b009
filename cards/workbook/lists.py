"""Help with filling in cells: lists of values, and no flags on texts that look like numbers."""

from collections.abc import Sequence

from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

_LONGEST_HINT = 225
"""How many characters of a message a spreadsheet program shows (ECMA-376, dataValidation)."""

# Without this, spreadsheet programs flag every text such as 8. The library cannot write it.
_NO_FLAGS = (
    b'<ignoredErrors><ignoredError sqref="A1:Z1000" numberStoredAsText="1"/></ignoredErrors>'
)
_AFTER = b"<legacyDrawing"


def offer(
    sheet: Worksheet, column: int, *, rows: tuple[int, int], choices: Sequence[str], hint: str
) -> None:
    """Offer values in a column, from the first to the last of `rows`.

    Another value brings up the hint but can be kept: reading accepts more than any list holds.
    """
    offered = DataValidation("list", formula1=f'"{",".join(choices)}"', allow_blank=True)
    offered.errorStyle, offered.showErrorMessage = "warning", True
    offered.errorTitle, offered.error = "Not in the list", hint[:_LONGEST_HINT]
    letter = get_column_letter(column)
    offered.add(f"{letter}{rows[0]}:{letter}{rows[1]}")
    sheet.add_data_validation(offered)


def without_flags(name: str, part: bytes) -> bytes:
    """Return a part of the file; a sheet that has notes with leave to hold texts like numbers."""
    if name.startswith("xl/worksheets/sheet"):
        return part.replace(_AFTER, _NO_FLAGS + _AFTER, 1)
    return part
