"""Pictures pasted into a workbook: the row in which their corner lies is theirs."""

from io import BytesIO

import pytest
from openpyxl.drawing.image import Image as Pasted
from openpyxl.drawing.spreadsheet_drawing import AnchorMarker, OneCellAnchor, TwoCellAnchor
from openpyxl.drawing.xdr import XDRPositiveSize2D
from PIL import Image
from support.packed import pack
from support.pictures import coded, paste, photograph
from support.workbooks import fill

from cards.checking import check
from cards.reading import read

MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main"
ROWS = [
    ("Seashore, week 3", None),
    ("Prompt", "Answer"),
    ("What is this shell?", "limpet"),
    ("How many tides are there in a day?", "two"),
    ("What is this bird?", "curlew"),
]


@pytest.fixture
def book():
    return fill({"Facts": ROWS})


def reread(book, folder):
    book.save(folder / "Shore.xlsx")
    return read(folder / "Shore.xlsx")


def shown(content):
    return {one.answer: one.image and one.image.width for one in content.items}


def of_width(width):
    return coded(photograph(width, 20))


def test_a_pasted_picture_belongs_to_the_row_of_its_corner(book, tmp_path):
    paste(book, "Facts", of_width(30), "D3")
    paste(book, "Facts", of_width(50), "C5")
    paste(book, "Facts", of_width(70), "A1")  # beside a title: no card's
    content = reread(book, tmp_path)
    assert shown(content) == {"limpet": 30, "two": None, "curlew": 50}
    assert str(content.items[0].picture_place) == "Facts D3"
    assert check(content, ()) == ()


@pytest.mark.parametrize("kind", ["one", "two"])
def test_both_kinds_of_anchors_count(book, tmp_path, kind):
    image = Pasted(BytesIO(of_width(30)))
    start = AnchorMarker(col=3, row=4, colOff=9000, rowOff=9000)
    if kind == "one":
        image.anchor = OneCellAnchor(_from=start, ext=XDRPositiveSize2D(99999, 99999))
    else:
        image.anchor = TwoCellAnchor(_from=start, to=AnchorMarker(col=4, row=9))
    book["Facts"].add_image(image)
    assert shown(reread(book, tmp_path)) == {"limpet": None, "two": None, "curlew": 30}


def test_each_sheet_has_its_own(tmp_path):
    book = fill({"Facts": ROWS, "Week 4 facts": ROWS, "Questions": [("Question", "Answer")]})
    paste(book, "Week 4 facts", of_width(30), "C3")
    paste(book, "Facts", of_width(50), "C4")
    content = reread(book, tmp_path)
    found = [
        (one.prompt_place.sheet, one.answer, one.image.width) for one in content.items if one.image
    ]
    assert found == [("Facts", "two", 50), ("Week 4 facts", "limpet", 30)]


def test_a_name_in_the_cell_goes_before_a_pasted_picture(tmp_path):
    book = fill({"Facts": [("Prompt", "Answer", "Picture"), ("Who?", "crab", "crab.png")]})
    (tmp_path / "crab.png").write_bytes(of_width(90))
    paste(book, "Facts", of_width(30), "D2")
    assert shown(reread(book, tmp_path)) == {"crab": 90}


def test_of_two_in_a_row_the_first_from_the_left_is_taken_and_the_other_told(book, tmp_path):
    paste(book, "Facts", of_width(50), "E3")
    paste(book, "Facts", of_width(30), "D3")
    content = reread(book, tmp_path)
    assert shown(content)["limpet"] == 30
    (finding,) = check(content, ())
    assert (finding.code, str(finding.severity), str(finding.place)) == (
        "pictures-in-one-row",
        "warning",
        "Facts E3",
    )


def rewritten(book, folder, change):
    """Return the content of a workbook after its drawing has been changed as text."""
    import zipfile  # noqa: PLC0415 (for this alone)

    book.save(folder / "before.xlsx")
    with zipfile.ZipFile(folder / "before.xlsx") as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    return read(pack(folder / "Shore.xlsx", change(parts)))


def test_what_was_cut_off_in_the_spreadsheet_is_not_shown(book, tmp_path):
    # a:srcRect in thousandths of a percent (ECMA-376 Part 1, 20.1.8.55)
    paste(book, "Facts", coded(Image.new("RGB", (200, 100))), "C3")

    def crop(parts):
        xml = parts["xl/drawings/drawing1.xml"].decode()
        head, _, tail = xml.partition("<a:stretch")
        cut = f'<a:srcRect xmlns:a="{MAIN}" l="25000" t="10000" r="25000" b="0"/><a:stretch'
        return parts | {"xl/drawings/drawing1.xml": (head + cut + tail).encode()}

    content = rewritten(book, tmp_path, crop)
    image = content.items[0].image
    assert (image.width, image.height) == (100, 90)


def test_a_picture_that_is_only_linked_is_told_and_never_fetched(book, tmp_path):
    paste(book, "Facts", of_width(30), "C3")
    (tmp_path / "secret.png").write_bytes(of_width(99))

    def link(parts):
        name = "xl/drawings/_rels/drawing1.xml.rels"
        ties = parts[name].decode().replace("/xl/media/image1.png", "secret.png")
        return parts | {name: ties.replace("Id=", 'TargetMode="External" Id=').encode()}

    content = rewritten(book, tmp_path, link)
    assert content.items[0].image is None
    (finding,) = check(content, ())
    assert (finding.code, str(finding.place)) == ("picture-unreadable", "Facts C3")


@pytest.mark.parametrize(
    "drawing",
    [
        b"<not closed",
        b'<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]><a>&b;</a>',
        b"<a>" * 3_000_000,
    ],
    ids=["broken", "declared", "huge"],
)
def test_a_hostile_drawing_costs_the_pictures_not_the_cards(book, tmp_path, drawing):
    paste(book, "Facts", of_width(30), "C3")
    content = rewritten(book, tmp_path, lambda parts: parts | {"xl/drawings/drawing1.xml": drawing})
    assert len(content.items) == 3
    (finding,) = check(content, ())
    assert (finding.code, str(finding.place)) == ("pictures-not-read", "Facts")


def test_a_broken_pasted_picture_is_found_at_its_cell(book, tmp_path):
    paste(book, "Facts", of_width(30), "C3")
    content = rewritten(book, tmp_path, lambda parts: parts | {"xl/media/image1.png": b"\x89PNG"})
    (finding,) = check(content, ())
    assert (finding.code, str(finding.place)) == ("picture-of-another-kind", "Facts C3")
    assert finding.wrong.startswith("The picture in this row is")


@pytest.mark.parametrize(
    ("ornament", "code"),
    [
        (photograph(600, 4), "picture-too-narrow"),
        (Image.new("RGB", (60, 40), "white"), "picture-blank"),
    ],
)
def test_a_line_or_white_box_that_is_pasted_is_left_out_and_noted(book, tmp_path, ornament, code):
    paste(book, "Facts", coded(ornament), "D4")
    content = reread(book, tmp_path)
    assert shown(content)["two"] is None
    (found,) = content.findings
    assert (found.code, str(found.severity), str(found.place)) == (code, "note", "Facts D4")
    assert "it is not printed" in found.wrong
