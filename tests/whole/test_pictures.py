"""From pictures beside and in a workbook to printed pages, measured with two readers."""

import json
from io import BytesIO

import pdfplumber
import pikepdf
import pypdfium2
import pytest
from PIL import Image
from support.pictures import SHELL, coded, disc, paste, photograph
from support.shore import fairdeal
from support.workbooks import fill

GPS = b"Samphire Creek"
NAMES = ("photo.jpg", "disc.png", "shell.svg", "grey.png")
CLEAR = (0, 0, 200, 255)


@pytest.fixture(scope="session")
def pictured(tmp_path_factory):
    """A workbook with a photograph, a disc on nothing, a drawing, greys, and a pasted picture."""
    folder = tmp_path_factory.mktemp("pictured")
    tags = Image.Exif()
    tags[0x010E] = GPS.decode()
    (folder / "photo.jpg").write_bytes(coded(photograph(2000, 1500), "JPEG", exif=tags))
    (folder / "disc.png").write_bytes(coded(disc(900, CLEAR)))
    (folder / "shell.svg").write_text(SHELL)
    (folder / "grey.png").write_bytes(coded(photograph(1800, 600).convert("L")))
    rows = [("Prompt", "Answer", "Picture")]
    rows += [("What is shown here?", f"thing {n}", name) for n, name in enumerate(NAMES)]
    rows += [("Seen again, and told in many more words?", "photo again", "photo.jpg")]
    rows += [("What was pasted here?", "pasted", None), ("No picture?", "none", None)]
    book = fill({"Facts": rows})
    paste(book, "Facts", coded(photograph(640, 640)), "E7")
    book.save(folder / "Shore.xlsx")
    return folder / "Shore.xlsx"


@pytest.fixture(scope="session")
def printed(pictured, tmp_path_factory):
    built = {}

    def once(*options):
        if options not in built:
            out = tmp_path_factory.mktemp("pictures")
            done = fairdeal("build", pictured, "--teams", "2", "--out", out, *options)
            assert done.returncode == 0, done.stderr
            built[options] = out / "Shore decks" / "01"
        return built[options]

    return once


def images(paper):
    with pdfplumber.open(paper) as pdf:
        return [(page, image) for page in pdf.pages for image in page.images]


SIZES = [("--size", size) for size in ("small", "medium", "large", "full")]


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_every_picture_is_printed_once_a_card_in_proportion_and_inside_its_page(printed, size):
    found = images(printed(*size) / "cards.pdf")
    assert len(found) == 6
    for page, image in found:
        wide, high = image["x1"] - image["x0"], image["bottom"] - image["top"]
        pixels = image["srcsize"]
        assert wide / high == pytest.approx(pixels[0] / pixels[1], rel=0.01)
        assert 0 < image["x0"] < image["x1"] < page.width
        assert 0 < image["top"] < image["bottom"] < page.height


def finest(paper):
    """Return the dots an inch of each picture where it is largest, by whether it is the drawing."""
    dots = {True: {}, False: {}}
    for _page, image in images(paper):
        wide, high = image["srcsize"]
        here = wide / (image["x1"] - image["x0"]) * 72
        of = dots[round(wide / high, 1) == 2]  # 40 by 20 mm
        of[wide, high] = min(here, of.get((wide, high), here))
    return list(dots[True].values()), list(dots[False].values())


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_pixels_are_as_fine_as_paper_shows_and_no_finer(printed, size):
    drawn, dots = finest(printed(*size) / "cards.pdf")
    assert drawn == pytest.approx([450], rel=0.01)
    assert len(dots) >= 3  # two that are square may be of one size
    assert all(75 <= one <= 301 for one in dots)


def embedded(paper):
    with pikepdf.open(paper) as pdf:
        return [
            dict(one.items())
            for one in pdf.objects
            if isinstance(one, pikepdf.Stream) and one.get("/Subtype") == "/Image"
        ]


def test_one_picture_on_two_cards_is_embedded_once(printed):
    found = embedded(printed() / "cards.pdf")
    masks = [one for one in found if "/SMask" in one]
    # photo, disc, shell, grey, pasted; and a mask for the disc, the shell is opaque
    assert len(found) == 6
    assert len(masks) == 1


def test_photographs_stay_photographs_and_greys_grey(printed):
    found = embedded(printed() / "cards.pdf")
    assert sum("/DCTDecode" in repr(one["/Filter"]) for one in found) == 1
    assert sum(one["/ColorSpace"] == "/DeviceGray" for one in found) == 2  # with the mask


def test_paper_shows_through_where_a_picture_is_clear(printed):
    paper = printed() / "cards.pdf"
    (page, image), *_ = [
        (page, image) for page, image in images(paper) if image["stream"].get("SMask") is not None
    ]
    shot = pypdfium2.PdfDocument(paper)[page.page_number - 1].render(scale=4).to_pil()

    def colour(across, down):
        x = image["x0"] + across * (image["x1"] - image["x0"])
        y = image["top"] + down * (image["bottom"] - image["top"])
        return shot.convert("RGB").getpixel((round(4 * x), round(4 * y)))

    assert colour(0.03, 0.03) == (255, 255, 255)
    assert colour(0.5, 0.5) == CLEAR[:3]


def test_in_grey_ink_pictures_are_grey(printed):
    assert {
        str(one["/ColorSpace"]) for one in embedded(printed("--ink", "grey") / "cards.pdf")
    } == {"/DeviceGray"}


def test_the_study_guide_shows_the_pictures_small_and_the_keys_none(printed):
    deck = printed()
    small = images(deck / "study-guide.pdf")
    assert len(small) == 6
    assert all(image["bottom"] - image["top"] <= 24.1 * 72 / 25.4 for _, image in small)
    assert images(deck / "teacher.pdf") == []


def test_nothing_of_where_a_picture_was_taken_reaches_any_file(printed, pictured):
    assert GPS in (pictured.parent / "photo.jpg").read_bytes()
    files = [file for file in printed().rglob("*") if file.is_file()]
    assert len(files) == 10
    assert not [file.name for file in files if GPS in file.read_bytes()]


def test_the_record_names_the_files_of_its_pictures_and_no_place_of_the_machine(printed, pictured):
    deck = printed()
    text = (deck / "deck.json").read_text()
    named = {card["answer"]: card["picture"] for card in json.loads(text)["cards"]}
    assert named["none"] is None
    assert named["thing 0"] == named["photo again"]
    kept = {file.relative_to(deck).as_posix() for file in (deck / "pictures").iterdir()}
    assert kept == set(named.values()) - {None}
    assert str(pictured.parent) not in text
    assert Image.open(BytesIO((deck / named["pasted"]).read_bytes())).size == (640, 640)


def test_the_same_pictures_give_the_same_bytes(pictured, printed, tmp_path):
    done = fairdeal(
        "build", pictured, "--teams", "2", "--out", tmp_path, PYTHONHASHSEED="7", TZ="Asia/Tokyo"
    )
    assert done.returncode == 0, done.stderr
    again = tmp_path / "Shore decks" / "01"
    files = [file.relative_to(again) for file in again.rglob("*") if file.is_file()]
    assert len(files) == 10
    for file in files:
        assert (again / file).read_bytes() == (printed() / file).read_bytes(), file


def test_the_papers_with_pictures_are_sound(printed):
    for paper in ("cards.pdf", "study-guide.pdf"):
        with pikepdf.open(printed() / paper) as pdf:
            assert pdf.check_pdf_syntax() == []
