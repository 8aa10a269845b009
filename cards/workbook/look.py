"""How the workbooks that we write look: the tones of the papers, in a spreadsheet's terms."""

from typing import Any

from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.worksheet.header_footer import HeaderFooterItem, _HeaderFooterPart
from openpyxl.worksheet.properties import PageSetupProperties
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook.texts import TEXT, escaped, writable
from cards.workbook.tones import HAIRLINE, INK


def font(**changes: Any) -> Font:  # noqa: ANN401 (whatever openpyxl's fonts take)
    """Return the workbook's font, with changes."""
    style: dict[str, Any] = {"name": "Calibri", "size": 12, "color": INK}
    return Font(**(style | changes))


def fill(tone: str) -> PatternFill:
    """Return a plain fill of a tone `AARRGGBB`."""
    return PatternFill("solid", fgColor=tone)


def wrapped(**changes: Any) -> Alignment:  # noqa: ANN401 (as in font)
    """Return the alignment of what is read: from the top, lines broken, a little air."""
    style: dict[str, Any] = {
        "wrap_text": True,
        "vertical": "top",
        "horizontal": "left",
        "indent": 1,
    }
    return Alignment(**(style | changes))


def on_one_line() -> Alignment:
    """Return the alignment of a title, which may run on over the cells beside it."""
    return Alignment(vertical="center", horizontal="left", indent=1)


def hairline() -> Border:
    """Return a thin line below."""
    return Border(bottom=Side("thin", color=HAIRLINE))


def dress(cell: Any, **style: Any) -> None:  # noqa: ANN401 (openpyxl's cells have no common type)
    """Style a cell as what is typed into it: text, from the top, in the workbook's font."""
    plain = {"font": font(), "alignment": wrapped(), "number_format": TEXT}
    for name, value in (plain | style).items():
        setattr(cell, name, value)


def write(
    sheet: Worksheet,
    at: tuple[int, int],
    text: str,
    **style: Any,  # noqa: ANN401 (any of a cell's styles)
) -> Any:  # noqa: ANN401 (openpyxl's cells have no common type)
    """Write a text into the cell at (row, column) and return it; text is never a formula."""
    cell: Any = sheet.cell(*at)
    cell.value = escaped(writable(text))
    cell.data_type = "s"
    dress(cell, **style)
    return cell


def keep_in_sight(sheet: Worksheet, *, row: int) -> None:
    """Keep the rows down to `row` on the screen, and that row on top of every printed page."""
    sheet.freeze_panes = f"A{row + 1}"
    sheet.print_title_rows = f"{row}:{row}"


def print_wide(sheet: Worksheet) -> None:
    """Print a sheet as wide as the paper, with its name and page at the foot."""
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)
    sheet.HeaderFooter.oddFooter = HeaderFooterItem(
        left=_HeaderFooterPart("&A"), right=_HeaderFooterPart("&P / &N")
    )
