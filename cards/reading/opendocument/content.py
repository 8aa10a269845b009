"""The content of an OpenDocument spreadsheet, read element by element."""

from collections.abc import Mapping

from cards.reading.limits import MOST_CELLS, too_large, too_many_cells
from cards.reading.opendocument.cell import OpenCell
from cards.reading.opendocument.names import DRAWN, name
from cards.reading.opendocument.sheet import OpenSheet
from cards.style import TextStyle

_MOST_ELEMENTS = 1_000_000
_MOST_BLANKS = 1_000
_TABLE, _ROW = name("table:table"), name("table:table-row")
_CELL, _COVERED = name("table:table-cell"), name("table:covered-table-cell")
_COLUMN, _HEADER_ROWS = name("table:table-column"), name("table:table-header-rows")
_PARAGRAPHS = frozenset({name("text:p"), name("text:h")})
_TEXT_SPAN = name("text:span")
_STYLE = name("style:style")
_KEPT = {name("text:s"): " ", name("text:tab"): "\t", name("text:line-break"): "\n"}
# What people or programs note beside the cells: remarks, earlier versions, rules.
_ASIDE = frozenset(
    map(
        name,
        (
            "office:annotation",
            "office:forms",
            "table:shapes",
            "table:tracked-changes",
            "table:content-validations",
            "table:dde-links",
            "text:note",
            "text:ruby-text",
        ),
    )
)
_REPEATED_COLUMNS = name("table:number-columns-repeated")
_REPEATED_ROWS = name("table:number-rows-repeated")
_ROWS_SPANNED = name("table:number-rows-spanned")
_VISIBILITY, _DISPLAY = name("table:visibility"), name("table:display")
_STRUCK = name("style:text-line-through-style")
_IMAGE = name("draw:image")
_SHEET_NAME, _TABLE_STYLE = name("table:name"), name("table:style-name")
# Where a program keeps what it has read from other files.
_CACHED = "'file:"


class ContentReader:
    """Takes the events of a parser, and leaves the sheets in `sheets`; `file` is the file's name.

    Raises `UnusableFileError` if there is far too much to read.
    """

    def __init__(self, file: str) -> None:
        self.sheets: list[OpenSheet] = []
        self._file = file
        self._elements = 0
        self._aside = 0
        self._style = ""
        self._hidden_styles: set[str] = set()
        self._text_styles: dict[str, TextStyle] = {}
        self._struck_styles: set[str] = set()
        self._sheet: OpenSheet | None = None
        self._row: Mapping[str, str] = {}
        self._in_header_rows = False
        self._cell: OpenCell | None = None
        self._paragraph = False
        self._spans: list[TextStyle | None] = []

    def start(self, tag: str, attributes: Mapping[str, str]) -> None:
        """Take the start of an element."""
        self._elements += 1
        if self._elements > _MOST_ELEMENTS:
            raise too_large(self._file)
        nested = tag == _TABLE and self._sheet is not None
        if tag == _IMAGE and self._sheet:
            self._sheet.has_pictures = True
        if self._aside or nested or tag in _ASIDE or tag.startswith(DRAWN):
            self._aside += 1
        elif self._cell:
            self._start_in_cell(self._cell, tag, attributes)
        elif self._sheet:
            self._start_in_sheet(self._sheet, tag, attributes)
        else:
            self._start_outside(tag, attributes)

    def end(self, tag: str) -> None:
        """Take the end of an element."""
        if self._aside:
            self._aside -= 1
        elif self._cell:
            self._end_in_cell(self._cell, tag)
        elif self._sheet:
            self._end_in_sheet(self._sheet, tag)

    def characters(self, text: str) -> None:
        """Take characters."""
        if self._cell and self._paragraph and not self._aside:
            self._cell.add(text, self._text_style)

    @property
    def _text_style(self) -> TextStyle | None:
        return self._spans[-1] if self._spans else None

    def _start_outside(self, tag: str, attributes: Mapping[str, str]) -> None:
        if tag == _STYLE:
            self._style = attributes.get(name("style:name"), "")
        elif tag == name("style:table-properties") and attributes.get(_DISPLAY) == "false":
            self._hidden_styles.add(self._style)
        elif tag == name("style:text-properties"):
            style = _text_style_of(attributes)
            if style:
                self._text_styles[self._style] = style
            if attributes.get(_STRUCK, "none") != "none":
                self._struck_styles.add(self._style)
        elif tag == _TABLE:
            hidden = attributes.get(_TABLE_STYLE) in self._hidden_styles
            self._sheet = OpenSheet(self._file, attributes.get(_SHEET_NAME, ""), hidden)

    def _start_in_sheet(self, sheet: OpenSheet, tag: str, attributes: Mapping[str, str]) -> None:
        if tag == _COLUMN:
            sheet.add_columns(_count(attributes, _REPEATED_COLUMNS), hidden=_is_hidden(attributes))
        elif tag == _HEADER_ROWS:
            self._in_header_rows = True
        elif tag == _ROW:
            self._row = attributes
            sheet.begin_row()
        elif tag in {_CELL, _COVERED}:
            self._cell = OpenCell(attributes)
            self._cell.struck = attributes.get(_TABLE_STYLE) in self._struck_styles

    def _start_in_cell(self, cell: OpenCell, tag: str, attributes: Mapping[str, str]) -> None:
        if tag in _PARAGRAPHS:
            cell.begin_paragraph()
            self._paragraph = True
        elif tag == _TEXT_SPAN:
            style = attributes.get(name("text:style-name"), "")
            self._spans.append(self._text_styles.get(style) or self._text_style)
            cell.struck = cell.struck or style in self._struck_styles
        elif tag in _KEPT:
            count = min(_count(attributes, name("text:c")), _MOST_BLANKS)
            cell.add_kept(_KEPT[tag] * count, self._text_style)

    def _end_in_cell(self, cell: OpenCell, tag: str) -> None:
        if tag in _PARAGRAPHS:
            self._paragraph = False
        elif tag == _TEXT_SPAN:
            self._spans.pop()
        elif tag in {_CELL, _COVERED}:
            self._end_cell(cell, covered=tag == _COVERED)

    def _end_cell(self, cell: OpenCell, *, covered: bool) -> None:
        self._cell = None
        count = _count(cell.attributes, _REPEATED_COLUMNS)
        if self._sheet and covered:
            self._sheet.skip_cells(count)
        elif self._sheet:
            self._sheet.add_cells(cell, count, rows=_count(cell.attributes, _ROWS_SPANNED))

    def _end_in_sheet(self, sheet: OpenSheet, tag: str) -> None:
        if tag == _ROW:
            count = _count(self._row, _REPEATED_ROWS)
            hidden = _is_hidden(self._row)
            sheet.end_rows(count, hidden=hidden, heading=self._in_header_rows)
        elif tag == _HEADER_ROWS:
            self._in_header_rows = False
        elif tag == _TABLE:
            self._sheet = None
            if not sheet.title.startswith(_CACHED):
                self.sheets.append(sheet)
            if sum(one.cells for one in self.sheets) > MOST_CELLS:
                raise too_many_cells(self._file)


def _text_style_of(attributes: Mapping[str, str]) -> TextStyle | None:
    position = attributes.get(name("style:text-position"), "0% 100%").partition(" ")[0]
    if position != "0%":
        lowered = position == "sub" or position.startswith("-")
        return TextStyle.LOWERED if lowered else TextStyle.RAISED
    return TextStyle.BOLD if attributes.get(name("fo:font-weight")) == "bold" else None


def _is_hidden(attributes: Mapping[str, str]) -> bool:
    return attributes.get(_VISIBILITY, "visible") != "visible"


def _count(attributes: Mapping[str, str], which: str) -> int:
    """Return how often something is repeated: once, unless it is said."""
    said = attributes.get(which, "1")
    return (
        max(int(said), 1)
        if said.isascii() and said.isdigit() and len(said) < len("10000000")
        else 1
    )
