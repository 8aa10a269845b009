"""How the workbooks that we write look: the tones of the papers, in a spreadsheet's terms."""

import re
from typing import Any

from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.worksheet.header_footer import HeaderFooterItem, _HeaderFooterPart
from openpyxl.worksheet.properties import PageSetupProperties
from openpyxl.worksheet.worksheet import Worksheet

INK, QUIET, LINK = "FF1E2333", "FF5B6172", "FF1F5C99"
HAIRLINE, PANEL, NEEDED = "FFC9CCD6", "FFF1F2F7", "FFDDE1EE"

TEXT = "@"
"""The number format that leaves what is typed as it is: `3/4` stays `3/4`."""

# What XML has no place for.
_NOT_ALLOWED = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")


def font(**changes: Any) -> Font:  # noqa: ANN401 - whatever openpyxl's fonts take
    """Return the workbook's font, with changes."""
    style: dict[str, Any] = {"name": "Calibri", "size": 12, "color": INK}
    return Font(**(style | changes))


def fill(tone: str) -> PatternFill:
    """Return a plain fill of a tone `AARRGGBB`."""
    return PatternFill("solid", fgColor=tone)


def wrapped(**changes: Any) -> Alignment:  # noqa: ANN401 - as in font
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


def letters_on(tone: str) -> str:
    """Return the tone of letters that can be read on a tone `AARRGGBB`: ink, or white."""
    red, green, blue = (_light(int(tone[i : i + 2], 16)) for i in (2, 4, 6))
    luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue
    # Above this, ink stands out more than white does (WCAG 2.2, relative luminance).
    return INK if luminance > 0.21 else "FFFFFFFF"  # noqa: PLR2004


def _light(value: int) -> float:
    """Return the linear light of an sRGB value from 0 to 255 (IEC 61966-2-1)."""
    share = value / 255
    return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4  # noqa: PLR2004


def dress(cell: Any, **style: Any) -> None:  # noqa: ANN401 - openpyxl's cells have no common type
    """Style a cell as what is typed into it: text, from the top, in the workbook's font."""
    plain = {"font": font(), "alignment": wrapped(), "number_format": TEXT}
    for name, value in (plain | style).items():
        setattr(cell, name, value)


def writable(text: str) -> str:
    """Return a text with a sign in place of each character that the file cannot hold."""
    return _NOT_ALLOWED.sub("\N{REPLACEMENT CHARACTER}", text)


def write(
    sheet: Worksheet,
    at: tuple[int, int],
    text: str,
    **style: Any,  # noqa: ANN401 - any of a cell's styles
) -> Any:  # noqa: ANN401 - openpyxl's cells have no common type
    """Write a text into the cell at (row, column) and return it; text is never a formula."""
    cell: Any = sheet.cell(*at)
    cell.value = writable(text)
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
