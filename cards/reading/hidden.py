"""What is hidden in a workbook, or absent, is left out, and that is said."""

from collections.abc import Iterator, Sequence

from cards.finding import Finding, Severity
from cards.place import Place


def hidden_sheet_note(sheet: str) -> Finding:
    """Say that a hidden sheet is left out."""
    return Finding(
        "hidden-sheet",
        Severity.NOTE,
        Place(sheet),
        "",
        "This sheet is hidden and was left out.",
        "To use it, show the sheet and save the workbook.",
    )


def absent_sheet_warning(sheet: str) -> Finding:
    """Say that a workbook lists a sheet and does not hold it under the name that it gives."""
    return Finding(
        "absent-sheet",
        Severity.WARNING,
        Place(sheet),
        "",
        "The file lists this sheet, but does not hold it where it says.",
        "If you see the sheet in your spreadsheet program, save the workbook there once more.",
    )


def pictures_left_out_note(sheet: str) -> Finding:
    """Say that the pictures that lie on a sheet are not read."""
    return Finding(
        "pictures-left-out",
        Severity.NOTE,
        Place(sheet),
        "",
        "There are pictures or charts on this sheet, and from an .ods file these are not read.",
        "For pictures on cards, write the names of their files in a column headed Picture, "
        "or save the workbook as .xlsx.",
    )


def hidden_rows_note(sheet: str, rows: Sequence[int]) -> Finding:
    """Say that the hidden rows of a sheet, in rising order and at least one, are left out."""
    one = len(rows) == 1
    return Finding(
        "hidden-rows",
        Severity.NOTE,
        Place(sheet, rows[0]),
        "",
        f"{'Row' if one else 'Rows'} {', '.join(_runs(rows))} "
        f"{'is hidden and was' if one else 'are hidden and were'} left out.",
        f"To use {'it, show the row' if one else 'them, show the rows'} or clear the filter, "
        "and save the workbook.",
    )


def _runs(numbers: Sequence[int]) -> Iterator[str]:
    """Write numbers as `2`, `4 to 7`."""
    start = numbers[0]
    for number, following in zip(numbers, [*numbers[1:], -1], strict=True):
        if following != number + 1:
            yield str(start) if start == number else f"{start} to {number}"
            start = following
