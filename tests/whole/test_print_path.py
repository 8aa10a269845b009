"""The cards through the filter that a CUPS print server scales pages with."""

import os
import subprocess
from pathlib import Path

import pdfplumber
import pytest

FILTER = Path("/usr/lib/cups/filter/pdftopdf")

PRINTER = """*PPD-Adobe: "4.3"
*FormatVersion: "4.3"
*PCFileName: "QUARTER.PPD"
*Product: "(A printer with white edges)"
*Manufacturer: "None"
*ModelName: "White edges"
*NickName: "White edges"
*cupsFilter: "application/vnd.cups-pdf 0 -"
*OpenUI *PageSize: PickOne
*DefaultPageSize: Letter
*PageSize Letter: ""
*PageSize A4: ""
*CloseUI: *PageSize
*DefaultImageableArea: Letter
*ImageableArea Letter: "18 18 594 774"
*ImageableArea A4: "12 12 583 830"
*DefaultPaperDimension: Letter
*PaperDimension Letter: "612 792"
*PaperDimension A4: "595 842"
"""
"""A printer that leaves a quarter of an inch white on Letter, and 12 points (4.23 mm) on A4."""

pytestmark = pytest.mark.skipif(not FILTER.exists(), reason="CUPS is not installed here")


def printed(pdf, options, folder):
    driver = folder / "printer.ppd"
    driver.write_text(PRINTER)
    done = subprocess.run(
        [FILTER, "1", "teacher", "cards", "1", options, pdf],
        env=os.environ | {"PPD": str(driver), "CONTENT_TYPE": "application/pdf"},
        capture_output=True,
        check=True,
    )
    path = folder / "printed.pdf"
    path.write_bytes(done.stdout)
    return path


def check_rule(pdf):
    """Return the length in millimetres of the longest level line on each page."""
    with pdfplumber.open(pdf) as document:
        return [
            max(
                abs(line["x1"] - line["x0"]) for line in page.lines if line["top"] == line["bottom"]
            )
            * 25.4
            / 72
            for page in document.pages
        ]


def test_at_actual_size_the_check_rule_measures_100_mm_after_printing(build, tmp_path):
    cards = build() / "cards.pdf"
    lengths = check_rule(printed(cards, "media=Letter print-scaling=none", tmp_path))
    assert lengths == pytest.approx([100] * len(lengths), abs=0.05)


# Scales of fit-to-page, derived from the papers' sizes: Letter less 6.35 mm at each edge .9412,
# Letter onto whole A4 .9727 (595.28 / 612), less 4.23 mm at each edge (595.28 - 24) / 612 = .9335
@pytest.mark.parametrize(("media", "scale"), [("Letter", 0.9412), ("A4", 0.9335)])
def test_the_check_rule_shows_it_when_the_printer_fits_pages_to_its_paper(
    build, tmp_path, media, scale
):
    cards = build() / "cards.pdf"
    lengths = check_rule(printed(cards, f"media={media} fit-to-page", tmp_path))
    assert lengths == pytest.approx([100 * scale] * len(lengths), abs=0.1)
    assert all(not 99 <= length <= 101 for length in lengths)
