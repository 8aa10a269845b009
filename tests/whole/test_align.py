"""A printer that is off is measured with its test page, and its backs then land behind fronts.

The printer, the eye and the measuring are the tests' own; all that Fairdeal does goes through its
command line and its PDFs.
"""

import json
import math
from pathlib import Path

import pdfplumber
import pikepdf
import pypdfium2
import pytest
from support.printer import Error, apart, behind, printed, read_test_page
from support.shore import fairdeal

OFF = Error(right=-1.3, up=0.9)
ASKEW = Error(right=2.1, up=-1.4, turn=math.degrees(0.8 / 150))
ENOUGH = 0.15
FEW = ("--cards", "8", "--teams", "Heron, Otter")


@pytest.fixture(scope="module")
def settings(tmp_path_factory):
    """Return a function that measures a printer and returns the settings folder that knows it."""
    known: dict[tuple, Path] = {}

    def measured(error: Error, paper: str, flip: str) -> Path:
        if (error, paper, flip) not in known:
            folder = tmp_path_factory.mktemp("settings")
            known[error, paper, flip] = folder
            measure(folder, error, paper, flip)
        return known[error, paper, flip]

    return measured


def align(folder, *words):
    done = fairdeal("align", *words, FAIRDEAL_SETTINGS=str(folder))
    assert done.returncode == 0, done.stderr
    return done.stdout


def measure(folder, error, paper, flip):
    test_file = folder / "align.pdf"
    align(folder, "--out", test_file, "--paper", paper, "--flip", flip)
    with pdfplumber.open(printed(test_file, folder / "off.pdf", error, flip)) as pdf:
        for turned in (False, True):
            front, back = pdf.pages[2 * turned : 2 * turned + 2]
            read = read_test_page(front, back, flip)
            assert set(read) == {"right", "up", "foot"}
            words = [f"--{name}={number}" for name, number in read.items()]
            words += ["--turned"] * turned + ["--flip", flip]
            align(folder, "--set", "Staff room", *words)


def built(workbook, out, folder, *options):
    done = fairdeal(
        "build",
        workbook,
        "--out",
        out,
        *FEW,
        *options,
        FAIRDEAL_SETTINGS=str(folder),
        PYTHONPATH=".",
    )
    assert done.returncode == 0, done.stderr
    assert "warning" not in done.stdout
    return out / "Shore decks" / "01" / "cards.pdf"


def ribbons(page):
    """Return the four corners of each ribbon, in points from the lower left."""
    shapes = [*page.rects, *page.curves]
    return [
        [(x, page.height - top) for x, top in shape["pts"][:4]]
        for shape in shapes
        if shape["fill"] and len(shape["pts"]) in (4, 5) and _is_ribbon(shape["pts"])
    ]


def _is_ribbon(points):
    sides = sorted(apart(points[n], points[n + 1]) for n in range(2))
    return 4.4 < sides[0] < 4.6 and sides[1] > 40


def gaps(file, flip):
    """Return how far, in mm, the corners of each ribbon lie from those on the other side."""
    found = []
    with pdfplumber.open(file) as pdf:
        for front, back in zip(pdf.pages[::2], pdf.pages[1::2], strict=True):
            there = ribbons(back)
            here = ribbons(front)
            assert len(here) == len(there)
            corners = [corner for ribbon in there for corner in ribbon]
            for ribbon in here:
                for corner in ribbon:
                    through = behind(front.width, front.height, flip, *corner)
                    found.append(min(apart(through, other) for other in corners))
    return found


@pytest.mark.parametrize("sheet", [("small", "letter"), ("medium", "a4")])
@pytest.mark.parametrize(
    "flips", [("long", "long"), ("long", "short"), ("short", "long"), ("short", "short")]
)
def test_backs_meet_their_fronts(workbook, settings, tmp_path, sheet, flips):
    """Measured on one flip edge and printed on the same or the other."""
    (size, paper), (measured_on, flip) = sheet, flips
    folder = settings(ASKEW, paper, measured_on)
    options = ("--paper", paper, "--size", size, "--flip", flip, "--printer", "staff room")
    cards = built(workbook, tmp_path, folder, *options)
    on_paper = gaps(printed(cards, tmp_path / "printed.pdf", ASKEW, flip), flip)
    assert len(on_paper) == 8 * 4
    assert max(on_paper) < ENOUGH


@pytest.mark.parametrize("error", [OFF, ASKEW])
@pytest.mark.parametrize("size", ["small", "medium"])
def test_without_a_printer_they_do_not(workbook, tmp_path, error, size):
    cards = built(workbook, tmp_path, tmp_path, "--size", size)
    assert max(gaps(cards, "long")) < 0.01
    assert min(gaps(printed(cards, tmp_path / "printed.pdf", error, "long"), "long")) > 1


@pytest.mark.parametrize("size", ["small", "medium"])
def test_two_passes_by_hand_meet_where_the_test_page_was_sent_through_by_hand(
    workbook, settings, tmp_path, size
):
    """Every page is sent upright then, so that leaf 1 says all."""
    options = ("--size", size, "--sides", "two-passes", "--printer", "Staff room")
    folder = built(workbook, tmp_path, settings(OFF, "letter", "long"), *options).parent
    leaves = tmp_path / "leaves.pdf"
    with (
        pikepdf.open(folder / "cards-fronts.pdf") as fronts,
        pikepdf.open(folder / "cards-backs.pdf") as backs,
        pikepdf.new() as pdf,
    ):
        for front, back in zip(fronts.pages, reversed(backs.pages), strict=True):
            pdf.pages.extend([front, back])
        pdf.save(leaves)
    assert max(gaps(printed(leaves, tmp_path / "printed.pdf", OFF, "long"), "long")) < ENOUGH


def ink_box(page, *, mirrored):
    """Return the edges of all coloured ink on a page in mm, as seen from the front."""
    image = page.render(scale=300 / 72).to_pil().convert("HSV")
    coloured = image.getchannel("S").point(lambda value: 255 * (value > 110))
    if mirrored:
        coloured = coloured.transpose(0)
    return [edge * 25.4 / 300 for edge in coloured.getbbox()]


def test_another_reader_sees_it_in_the_ink(workbook, settings, tmp_path):
    folder = settings(ASKEW, "a4", "long")
    cards = built(workbook, tmp_path, folder, "--paper", "a4", "--printer", "Staff room")
    with pypdfium2.PdfDocument(printed(cards, tmp_path / "printed.pdf", ASKEW, "long")) as pdf:
        front, back = (ink_box(pdf[n], mirrored=n == 1) for n in (0, 1))
    assert back == pytest.approx(front, abs=0.3)
    with pypdfium2.PdfDocument(cards) as pdf:
        before = ink_box(pdf[1], mirrored=True)
    assert max(abs(a - b) for a, b in zip(front, before, strict=True)) > 1


def test_fronts_stay_and_small_print_stays(workbook, settings, tmp_path):
    """Only backs are moved, and of them neither the lines at the head nor the check rule."""
    folder = settings(OFF, "letter", "long")
    moved = built(workbook, tmp_path / "moved", folder, "--seed", "1", "--printer", "Staff room")
    plain = built(workbook, tmp_path / "plain", folder, "--seed", "1")
    with pdfplumber.open(moved) as one, pdfplumber.open(plain) as other:
        for n, (page, still) in enumerate(zip(one.pages, other.pages, strict=True)):
            same = [char["matrix"] for char in page.chars] == [c["matrix"] for c in still.chars]
            assert same is (n % 2 == 0)
            for edge in ((0, 0, page.width, 30), (0, page.height - 27, page.width, page.height)):
                kept, before = page.crop(edge), still.crop(edge)
                small = [(c["text"], c["x0"], c["y0"]) for c in kept.chars]
                assert small == [(c["text"], c["x0"], c["y0"]) for c in before.chars]
                assert small


def test_folded_cards_need_no_printer_to_be_known(workbook, tmp_path):
    built(workbook, tmp_path, tmp_path, "--sides", "fold", "--printer", "Nobody’s")


def test_an_unknown_printer_stops_a_build_and_names_the_near_one(workbook, settings, tmp_path):
    done = fairdeal(
        *("build", workbook, "--out", tmp_path, "--printer", "staf room"),
        FAIRDEAL_SETTINGS=str(settings(OFF, "letter", "long")),
    )
    assert done.returncode == 1
    assert "--printer: No printer called “staf room” is kept." in done.stderr
    assert "Staff room" in done.stderr
    assert list(tmp_path.iterdir()) == []


def test_two_measurements_are_kept_in_one_file(settings):
    kept = json.loads((settings(OFF, "letter", "short") / "printers.json").read_text("utf-8"))
    (printer,) = kept["printers"]
    # a flip on the short edge turns the image half round: what the rollers lay left lies right
    assert printer["upright"] == {"right": -1.3, "up": 0.9, "skew": 0, "flip": "short"}
