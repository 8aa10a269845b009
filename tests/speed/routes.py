"""Our card pages beside general-purpose ways to make the same pages: a table, and a picture.

Run by hand on a machine that has nothing else to do: `python tests/speed/routes.py [picture.svg]`.
The same invented cards, eight a page, fronts and backs. A way that is not installed is left out:
WeasyPrint (HTML to PDF) and Typst (a compiled typesetter, which fits the text as we do) come from
PyPI, LibreOffice from its own installer. All are whole processes: of three runs the median, of long
ones one run.
"""

# ruff: noqa: T201  (the table is what the script is for)

import shutil
import sys
import tempfile
from importlib.util import find_spec
from pathlib import Path

from documents import as_flat_text_document, as_html, as_paragraphs, as_typst
from invented import rows, write_workbook
from processes import PYTHON, Command, said, time_all
from routes_picture import picture

HERE = Path(__file__).parent
NUMBERS = (24, 240, 1_000, 2_400)
LONG = 1_000
"""From so many cards on, each way is run once."""

OURS = "Fairdeal, fitted to the card"


def main(out: Path | None) -> None:
    """Measure, print, and draw the picture where a file for it was named."""
    with tempfile.TemporaryDirectory() as made:
        commands = {
            (name, number): command
            for number in NUMBERS
            for name, command in _ways(Path(made), number).items()
        }
        took = time_all(commands, lambda key: 3 if key[1] < LONG else 1)
    seconds = {key: each.median for key, each in took.items()}
    names = list(dict.fromkeys(name for name, _ in seconds))
    print(f"| cards | {' | '.join(names)} |\n|--:|{'--:|' * len(names)}")
    for number in NUMBERS:
        figures = " | ".join(f"{seconds[name, number]:.2f}" for name in names)
        print(f"| {number:,} | {figures} |")
    if out:
        out.write_text(picture(seconds, OURS), encoding="utf-8")


def _ways(folder: Path, number: int) -> dict[str, Command]:
    """Return the process of each way that is installed."""
    book = write_workbook(folder / f"{number}.xlsx", number)
    dealt, things = folder / f"{number}.pickle", folder / f"{number}.json"
    said([PYTHON, str(HERE / "dealt.py"), *map(str, (book, dealt, things))], folder)
    cards = rows(number)
    out = folder / f"{number}.pdf"
    ways = {
        OURS: [PYTHON, str(HERE / "card_pages.py"), str(dealt), str(folder)],
        "reportlab, lines given": [PYTHON, str(HERE / "bare.py"), str(things), str(out)],
        "reportlab, paragraphs tried": [
            *(PYTHON, str(HERE / "documents.py")),
            *(str(_written(folder / f"{number}.txt", as_paragraphs(cards))), str(out)),
        ],
    }
    if find_spec("typst"):
        source = _written(folder / f"{number}.typ", as_typst(cards))
        script = f"import typst; typst.compile({str(source)!r}, output={str(out)!r})"
        ways["a compiled typesetter, fitted"] = [PYTHON, "-c", script]
    if office := shutil.which("soffice"):
        source = _written(folder / f"{number}.fodt", as_flat_text_document(cards))
        profile = f"-env:UserInstallation=file://{folder}/profile"
        convert = [office, profile, "--headless", "--convert-to", "pdf", "--outdir", str(folder)]
        ways["an office suite, one size"] = [*convert, str(source)]
    if find_spec("weasyprint"):
        source = _written(folder / f"{number}.html", as_html(cards))
        script = f"import weasyprint as w; w.HTML({str(source)!r}).write_pdf({str(out)!r})"
        ways["HTML to PDF, one size"] = [PYTHON, "-c", script]
    return ways


def _written(file: Path, text: str) -> Path:
    file.write_text(text, encoding="utf-8")
    return file


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else None)
