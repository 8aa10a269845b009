"""Pictures named in a cell: what is read, what is left out of it, and what cannot be used."""

from io import BytesIO

import pytest
from PIL import Image
from support.pictures import SHELL, coded, disc, photograph
from support.workbooks import fill

from cards.checking import check
from cards.digest import digest_of
from cards.picture import PictureKind
from cards.reading import read
from cards.reading.pictures.looking import picture_in


@pytest.fixture
def unit(tmp_path):
    """Return a function that reads a workbook whose rows name pictures of these bytes."""

    def make(*named):
        rows = [("Prompt", "Answer", "Picture")]
        for n, (name, data) in enumerate(named):
            if data is not None:
                (tmp_path / name).write_bytes(data)
            rows.append((f"What is shown here, {n}?", f"thing {n}", name))
        fill({"Facts": rows}).save(tmp_path / "Shore.xlsx")
        return read(tmp_path / "Shore.xlsx")

    return make


def pixels(picture):
    return Image.open(BytesIO(picture.data))


def codes(content):
    return [(one.code, one.severity, str(one.place)) for one in check(content, ())]


def test_a_picture_beside_the_file_comes_with_its_item_and_nothing_is_found(unit):
    content = unit(
        ("a.png", coded(photograph(60, 40))),
        ("b.jpg", coded(photograph(50, 70), "JPEG")),
        ("c.svg", SHELL.encode()),
    )
    kinds = [(one.image.kind, one.image.width, one.image.height) for one in content.items]
    assert kinds[:2] == [(PictureKind.PNG, 60, 40), (PictureKind.JPEG, 50, 70)]
    assert kinds[2][0] is PictureKind.SVG
    assert kinds[2][1] == 2 * kinds[2][2]  # 40 by 20 mm
    assert [one.picture for one in content.items] == ["a.png", "b.jpg", "c.svg"]
    assert codes(content) == []


def test_what_a_file_is_decides_not_what_it_is_called(unit):
    content = unit(("really.png", coded(photograph(50, 70), "JPEG")))
    assert content.items[0].image.kind is PictureKind.JPEG
    assert codes(content) == []


def test_a_csv_names_pictures_too(tmp_path):
    (tmp_path / "crab.png").write_bytes(coded(photograph(9, 9)))
    (tmp_path / "Shore.csv").write_text("Prompt,Answer,Picture\nWho?,crab,crab.png\n")
    assert read(tmp_path / "Shore.csv").items[0].image.width == 9


def test_the_digest_of_the_content_changes_with_the_picture_and_only_then(unit):
    one = digest_of(unit(("a.png", coded(photograph(60, 40)))))
    assert digest_of(unit(("a.png", coded(photograph(60, 40))))) == one
    assert digest_of(unit(("a.png", coded(photograph(60, 41))))) != one


def test_one_prompt_with_several_pictures_is_several_prompts(tmp_path):
    rows = [("Prompt", "Answer", "Picture")]
    for n, answer in enumerate(("crab", "limpet", "whelk")):
        (tmp_path / f"{n}.png").write_bytes(coded(photograph(20 + n, 20)))
        rows.append(("What is this animal of the shore?", answer, f"{n}.png"))
    fill({"Facts": rows}).save(tmp_path / "Shore.xlsx")
    content = read(tmp_path / "Shore.xlsx")
    assert codes(content) == []
    assert len({one.key for one in content.items}) == 3


def test_one_prompt_with_one_picture_and_two_answers_is_found(tmp_path):
    (tmp_path / "a.png").write_bytes(coded(photograph(20, 20)))
    rows = [("Prompt", "Answer", "Picture"), ("Who?", "crab", "a.png"), ("Who?", "whelk", "a.png")]
    fill({"Facts": rows}).save(tmp_path / "Shore.xlsx")
    found = {code for code, _severity, _place in codes(read(tmp_path / "Shore.xlsx"))}
    assert "same-prompt-other-answer" in found


# What stands in a file beside the picture

WHERE = b"Samphire Creek"


def exif(**tags):
    found = Image.Exif()
    found[0x010E] = WHERE.decode()
    found.get_ifd(0x8825)[1] = "N"
    for tag, value in tags.items():
        found[int(tag.removeprefix("tag"))] = value
    return found


@pytest.mark.parametrize(
    "data",
    [
        coded(photograph(60, 40), "JPEG", exif=exif(), comment=WHERE, quality=90),
        coded(photograph(60, 40), "JPEG", exif=exif(), progressive=True) + WHERE,
        coded(photograph(60, 40), "PNG", exif=exif()),
    ],
    ids=["jpeg", "progressive", "png"],
)
def test_nothing_is_kept_of_what_a_camera_wrote_beside_the_picture(unit, data):
    assert WHERE in data
    (item,) = unit(("a.png", data)).items
    assert WHERE not in item.image.data
    assert b"Exif" not in item.image.data
    assert b"eXIf" not in item.image.data
    before, after = Image.open(BytesIO(data)), pixels(item.image)
    assert before.tobytes() == after.tobytes()  # not a pixel was coded anew


def test_a_camera_held_on_its_side_gives_an_upright_picture(unit):
    # orientation 6: the first row of pixels is the right edge (Exif 2.32, table 4)
    image = Image.new("RGB", (80, 40), "white")
    image.paste("black", (0, 0, 80, 10))
    (item,) = unit(("a.jpg", coded(image, "JPEG", exif=exif(tag274=6), quality=95))).items
    assert (item.image.width, item.image.height) == (40, 80)
    upright = pixels(item.image).convert("L")
    assert upright.getpixel((36, 40)) < 40
    assert upright.getpixel((4, 40)) > 215


# Kinds of pixels


def test_inks_become_lights(unit):
    image = Image.new("CMYK", (30, 20), (0, 255, 255, 0))
    (item,) = unit(("a.jpg", coded(image, "JPEG", quality=95))).items
    red, green, blue = pixels(item.image).getpixel((15, 10))
    assert red > 240
    assert max(green, blue) < 15


def test_sixteen_bits_of_grey_become_eight(unit):
    image = Image.new("I;16", (3, 1))
    for x, value in enumerate((0, 32896, 65535)):  # 32896 = 128 * 257
        image.putpixel((x, 0), value)
    (item,) = unit(("a.png", coded(image))).items
    assert [pixels(item.image).convert("L").getpixel((x, 0)) for x in range(3)] == [0, 128, 255]


def test_a_palette_may_let_the_paper_through(unit):
    palette = disc(40).quantize(8)
    clear = coded(palette, transparency=palette.getpixel((0, 0)))
    (item, plain) = unit(("a.png", clear), ("b.png", coded(photograph(9, 9).quantize(8)))).items
    assert item.image.alpha
    assert not plain.image.alpha


def test_an_alpha_channel_that_hides_nothing_is_none(unit):
    (item, seen) = unit(
        ("a.png", coded(photograph(9, 9).convert("RGBA"))), ("b.png", coded(disc(9)))
    ).items
    assert (item.image.alpha, seen.image.alpha) == (False, True)


def test_a_picture_far_larger_than_a_card_is_scaled_down(unit):
    (item,) = unit(("a.jpg", coded(photograph(6400, 3200), "JPEG"))).items
    assert (item.image.width, item.image.height) == (3000, 1500)


# What cannot be used

GOOD = coded(photograph(200, 150))
JPEG = coded(photograph(200, 150), "JPEG")


@pytest.mark.parametrize(
    ("name", "data", "code", "said"),
    [
        ("a.png", GOOD[: len(GOOD) // 2], "picture-broken", "cut off"),
        ("a.jpg", JPEG[: len(JPEG) // 2], "picture-broken", "cut off"),
        ("a.png", b"", "picture-broken", "cut off"),
        ("a.png", GOOD[:20] + b"\xff" * 8 + GOOD[28:], "picture-broken", "cut off"),
        ("a.gif", coded(photograph(9, 9), "GIF"), "picture-of-another-kind", "is a GIF"),
        ("a.png", coded(photograph(9, 9), "WEBP"), "picture-of-another-kind", "is a WebP"),
        ("a.tif", coded(photograph(9, 9), "TIFF"), "picture-of-another-kind", "is a TIFF"),
        ("a.bmp", coded(photograph(9, 9), "BMP"), "picture-of-another-kind", "is a BMP"),
        ("a.png", b"%PDF-1.7", "picture-of-another-kind", "is a PDF"),
        ("a.jpg", b"\0\0\0\x18ftypheic", "picture-of-another-kind", "as phones take them"),
        ("a.png", b"just words", "picture-of-another-kind", "no PNG, JPEG or SVG"),
        ("a.png", b"\0" * 20_000_001, "picture-too-large", "more than 20 MB"),
    ],
)
def test_a_picture_that_cannot_be_used_is_an_error_at_its_cell(unit, name, data, code, said):
    content = unit((name, data))
    assert content.items[0].image is None
    (finding,) = check(content, ())
    assert (finding.code, finding.severity, str(finding.place)) == (code, "error", "Facts C2")
    assert finding.wrong.startswith(f"The picture “{name}” ")
    assert said in finding.wrong
    assert finding.mend


def test_a_missing_picture_is_found_once(unit):
    content = unit(("a.png", None))
    assert codes(content) == [("picture-missing", "error", "Facts C2")]


def test_one_file_in_many_rows_is_one_picture(unit):
    data = coded(photograph(60, 40))
    content = unit(("a.png", data), ("a.png", data), ("b.png", data))
    assert len({one.image for one in content.items}) == 1


def test_devices_are_no_files_whatever_their_ending(unit):
    found = unit(("aux.png", None), ("COM1", None))
    assert [code for code, _severity, _place in codes(found)] == ["picture-missing"] * 2


# What would print as nothing


def white(*, dot=None, mode="RGB", size=(90, 60)):
    image = Image.new(mode, size, "white")
    if dot:
        image.putpixel((41, 23), dot)
    return image


def stroke(colour):
    """Return a stroke of a colour on nothing."""
    image = Image.new("RGBA", (90, 60), (0, 0, 0, 0))
    image.paste(colour, (10, 10, 80, 20))
    return image


@pytest.mark.parametrize(
    "data",
    [
        coded(white()),
        coded(white(), "JPEG"),
        coded(white(mode="L")),
        coded(white().quantize(2)),
        coded(stroke((0, 0, 0, 0))),
        coded(stroke((255, 255, 255, 255))),
    ],
    ids=["white", "jpeg", "grey", "palette", "transparent", "white on nothing"],
)
def test_a_picture_that_shows_nothing_on_paper_is_an_error(unit, data):
    assert codes(unit(("a.png", data))) == [("picture-blank", "error", "Facts C2")]
    assert picture_in(data, may_be_blank=True).width == 90  # that of an earlier deck


@pytest.mark.parametrize(
    "data",
    [
        coded(white(dot=(0, 0, 0))),
        coded(white(dot=(255, 255, 200))),
        coded(stroke((200, 200, 200, 255))),
        coded(Image.new("RGB", (9, 9), "ivory")),
        coded(Image.new("RGB", (9, 9), "black")),
        coded(Image.new("1", (9, 9), 0)),
    ],
    ids=["a dot", "a yellow dot", "a stroke", "ivory", "black", "one bit"],
)
def test_a_picture_with_little_on_it_is_printed(unit, data):
    assert codes(unit(("a.png", data))) == []


@pytest.mark.parametrize("size", [(1, 900), (900, 1), (2, 101)])
def test_a_picture_a_hair_wide_is_an_error(unit, size):
    content = unit(("a.png", coded(photograph(*size))))
    assert codes(content) == [("picture-too-narrow", "error", "Facts C2")]


@pytest.mark.parametrize("size", [(2, 100), (1, 1), (600, 20)])
def test_a_long_picture_is_printed(unit, size):
    assert codes(unit(("a.png", coded(photograph(*size))))) == []
