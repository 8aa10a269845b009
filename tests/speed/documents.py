"""The invented cards as documents for general-purpose programs: fronts, then their backs.

As a program it sets one of them with reportlab's own paragraphs, at the first size that fits:
`python documents.py cards.txt out.pdf`.
"""

import sys
from collections.abc import Iterator, Sequence
from html import escape
from pathlib import Path
from typing import Any

from invented import Row

A_PAGE = 8
SIZES = (48, 40, 34, 28, 24, 20, 17, 14, 12)
WIDTH, HEIGHT = 90, 60
"""Millimetres of what is to be read on a card."""


def sides(cards: Sequence[Row]) -> Iterator[list[tuple[str, str]]]:
    """Yield what each page shows: meanings, behind them their words; and each card's small line."""
    for page in _by(cards, A_PAGE):
        yield [(card.meaning, f"{card.topic} · {card.level} · Heron") for card in page]
        yield [(card.word, f"{card.topic} · {card.level} · Heron") for card in page]


def _by(things: Sequence[Any], number: int) -> Iterator[Sequence[Any]]:
    return (things[start : start + number] for start in range(0, len(things), number))


def as_html(cards: Sequence[Row]) -> str:
    """Return a page of HTML for each side."""
    pages = [f"<section>{''.join(map(_html_card, page))}</section>" for page in sides(cards)]
    style = (
        "@page { size: A4; margin: 10mm } section { break-after: page; display: grid;"
        " grid-template-columns: 1fr 1fr; grid-auto-rows: 66mm } div { height: 60mm;"
        " overflow: hidden; box-sizing: border-box; border-left: 4mm solid #36c;"
        " padding: 8mm; font: 20pt sans-serif; text-align: center }"
    )
    return f"<!doctype html><style>{style}</style>{''.join(pages)}"


def _html_card(card: tuple[str, str]) -> str:
    text, small = card
    return f"<div><b>{escape(text)}</b><small>{escape(small)}</small></div>"


def as_flat_text_document(cards: Sequence[Row]) -> str:
    """Return a flat OpenDocument text: a table for each side."""
    spaces = " ".join(
        f'xmlns:{name}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
        for name in ("office", "table", "text", "style")
    )
    form = "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"
    styles = (
        '<office:automatic-styles><style:style style:name="R" style:family="table-row">'
        '<style:table-row-properties style:row-height="6cm"/></style:style>'
        '<style:style style:name="P" style:family="paragraph"><style:paragraph-properties '
        'fo:text-align="center"/><style:text-properties fo:font-size="20pt"/></style:style>'
        "</office:automatic-styles>"
    )
    tables = "".join(_table(number, page) for number, page in enumerate(sides(cards)))
    return (
        f'<?xml version="1.0"?><office:document {spaces} xmlns:fo="{form}" office:version="1.3" '
        f'office:mimetype="application/vnd.oasis.opendocument.text">{styles}'
        f"<office:body><office:text>{tables}</office:text></office:body></office:document>"
    )


def _table(number: int, page: Sequence[tuple[str, str]]) -> str:
    cells = [
        f'<table:table-cell><text:p text:style-name="P">{escape(text)}</text:p>'
        f"<text:p>{escape(small)}</text:p></table:table-cell>"
        for text, small in page
    ]
    rows = "".join(
        f'<table:table-row table:style-name="R">{"".join(pair)}</table:table-row>'
        for pair in _by(cells, 2)
    )
    columns = '<table:table-column table:number-columns-repeated="2"/>'
    return f'<table:table table:name="T{number}">{columns}{rows}</table:table><text:p/>'


def as_typst(cards: Sequence[Row]) -> str:
    """Return a document that fits each text to its card by measuring it."""
    sizes = ", ".join(f"{size}pt" for size in SIZES)
    head = f"""#set page(paper: "a4", margin: 10mm)
#let fitted(words, small) = context {{
  let set-at(size) = block(width: {WIDTH}mm, align(center, text(size: size, words)))
  for size in ({sizes}) {{
    if measure(set-at(size)).height <= {HEIGHT}mm {{
      return block(width: {WIDTH}mm, height: 66mm, stroke: (left: 4mm + blue),
        [#set-at(size) #text(size: 9pt, small)])
    }}
  }}
}}
"""
    pages = [
        f"#grid(columns: 2, {', '.join(f'fitted([{text}], [{small}])' for text, small in page)})"
        for page in sides(cards)
    ]
    return head + "\n#pagebreak()\n".join(pages)


def as_paragraphs(cards: Sequence[Row]) -> str:
    """Return the cards of all pages, one a line, with a tab between; a blank line ends a page."""
    return "\n\n".join("\n".join(map("\t".join, page)) for page in sides(cards))


def draw_paragraphs(texts: Path, out: Path) -> None:
    """Set each text with reportlab's paragraphs, at the first size that fits its card."""
    from reportlab.lib.styles import ParagraphStyle  # noqa: PLC0415 (only as a program)
    from reportlab.lib.units import mm  # noqa: PLC0415
    from reportlab.pdfgen.canvas import Canvas  # noqa: PLC0415
    from reportlab.platypus import Paragraph  # noqa: PLC0415

    styles = [ParagraphStyle(f"{s}", fontSize=s, leading=1.2 * s, alignment=1) for s in SIZES]
    canvas = Canvas(str(out))
    for page in texts.read_text(encoding="utf-8").split("\n\n"):
        for place, line in enumerate(page.splitlines()):
            text, small = line.split("\t")
            x, y = 10 * mm + place % 2 * 95 * mm, 220 * mm - place // 2 * 66 * mm
            canvas.rect(x, y, 4 * mm, 60 * mm, stroke=0, fill=1)
            for style in styles:
                paragraph = Paragraph(escape(text), style)
                if paragraph.wrap(WIDTH * mm, HEIGHT * mm)[1] <= HEIGHT * mm:
                    paragraph.drawOn(canvas, x, y)
                    break
            note = Paragraph(escape(small), styles[-1])
            note.wrap(WIDTH * mm, HEIGHT * mm)
            note.drawOn(canvas, x, y)
        canvas.showPage()
    canvas.save()


if __name__ == "__main__":
    draw_paragraphs(Path(sys.argv[1]), Path(sys.argv[2]))
