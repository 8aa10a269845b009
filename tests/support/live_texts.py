"""Files full of texts that spreadsheet programs run, follow or change where they are not marked."""

from openpyxl import load_workbook

from support.workbooks import fill

LIVE = (
    "=1+1",
    "+1+1",
    "-1+1",
    "@SUM(1)",
    '=HYPERLINK("http://127.0.0.1:9/","y")',
    "=cmd|' /C calc'!A0",
    "=DDE(1)",
    "http://127.0.0.1:9/a",
    "mailto:a@x.invalid",
    "file:///etc/hostname",
    "[1]Other!A1",
    "'=1+1",
)
ESCAPES = ("_x000D_ stays", "_x0041_ stays", "a _x005F_ stays")


def text_cells(sheets):
    """Return a workbook in which every text is a text, whatever it begins with."""
    book = fill(sheets)
    for sheet in book.worksheets:
        for cell in (cell for row in sheet.iter_rows() for cell in row if cell.value is not None):
            cell.data_type = "s"
    return book


def save_workbook(path):
    rows = [
        [
            f"{LIVE[n % 12]} is clue {n}",
            f"{LIVE[n % 12]} a{n}",
            ("=Tides", "+Zones", "@Life")[n % 3],
            ("easy", "medium", "hard")[n // 3 % 3],
            f"{LIVE[n % 12]} or {n}; =b{n}",
        ]
        for n in range(24)
    ]
    headings = ("=What pulls", "@How often", "-Who lives")
    sheets = {
        "=Facts": [["Prompt", "Answer", "Topic", "Level", "Also right"], *rows],
        "@Details": [
            ["Topic", "Heading", "Detail"],
            *(["+Tides", head, f"{LIVE[n]}: {head} {n}"] for head in headings for n in range(4)),
        ],
        "Teams": [["Team"], ["=1+1"], ["+Otter"], ["@SUM(A1)"]],
        "Deck": [["Setting", "Value"], ["Title", '=HYPERLINK("http://127.0.0.1:9/")']],
    }
    text_cells(sheets).save(path)
    return path


def save_faulty(path):
    """A workbook with something to mark in rows of such texts."""
    rows = [
        [f"{live} clue", "" if n % 2 else f"{live} a", f"{live} t"] for n, live in enumerate(LIVE)
    ]
    rows += rows[:1]
    text_cells({"=1+1 ’s": [["Prompt", "Answer", "Topic"], *rows]}).save(path)
    return path


def save_escapes(path):
    """A text file, in which nothing is an escape; its last row is to be marked."""
    rows = [f"{text} {n},{text} a{n}" for n in range(4) for text in ESCAPES]
    path.write_text("\n".join(["Prompt,Answer", *rows, "No answer,"]), encoding="utf-8")
    return path


def fill_in(folder, into):
    """Return a copy of a deck's marks workbook in which a tally is filled in."""
    book = load_workbook(folder / "marks.xlsx")
    tries = next(cell.column for cell in book["Tally"][5] if cell.value == "Tries")
    for row in range(6, 18):
        book["Tally"].cell(row, tries).value, book["Tally"].cell(row, tries + 1).value = 9, row % 9
    book.save(into / "filled.xlsx")
    return into / "filled.xlsx"
