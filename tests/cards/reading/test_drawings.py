"""SVG drawings: what is kept of them reaches nothing outside, and they cannot grow for ever."""

import base64
import re
from contextlib import suppress
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image
from support.pictures import SHELL, SVG, coded, photograph

from cards.finding import UnusablePictureError
from cards.reading.pictures.looking import picture_in
from cards.reading.pictures.svg_parts import safe_style

OUTSIDE = "http://example.org/x"


def kept(inside):
    return picture_in(SVG.format(inside).encode()).data.decode()


@pytest.mark.parametrize(
    "inside",
    [
        f'<script href="{OUTSIDE}">alert("{OUTSIDE}")</script>',
        f'<rect width="9" height="9" onload="go(\'{OUTSIDE}\')"/>',
        f"<style>@import '{OUTSIDE}'; rect {{fill: red}}</style>",
        f"<style>@im/**/port url({OUTSIDE});</style>",
        f"<style>rect {{fill: url({OUTSIDE})}}</style>",
        f"<style>rect {{fill: u\\rl('{OUTSIDE}')}}</style>",
        f"<style>rect {{fill: u&#114;l({OUTSIDE})}}</style>",
        f"<style><![CDATA[@font-face {{src: url({OUTSIDE})}}]]></style>",
        f'<rect width="9" height="9" style="fill:url( {OUTSIDE}#a )"/>',
        f'<rect width="9" height="9" fill="url({OUTSIDE}#a)"/>',
        f'<use xlink:href="{OUTSIDE}#a"/>',
        f'<use href="{OUTSIDE}#a"/>',
        f'<a href="{OUTSIDE}"><rect width="9" height="9"/></a>',
        f"<switch><foreignObject><i>{OUTSIDE}</i></foreignObject></switch>",
        f'<filter id="f"><feImage href="{OUTSIDE}"/></filter><g filter="url(#f)"/>',
        f'<animate href="{OUTSIDE}" attributeName="x"/>',
        f'<metadata about="{OUTSIDE}"/>',
        f"<!-- {OUTSIDE} --><?xml-stylesheet href='{OUTSIDE}'?>",
        f'<g xml:base="{OUTSIDE}/" xmlns:e="{OUTSIDE}" e:href="{OUTSIDE}"/>',
    ],
)
def test_nothing_that_leads_outside_is_kept(inside):
    assert "example.org" not in kept(f'<circle r="9"/>{inside}')


@pytest.mark.parametrize(
    "link",
    [
        OUTSIDE,
        "file:///etc/hostname",
        "/etc/hostname",
        "secret.png",
        "data:image/svg+xml,%3Csvg/%3E",
    ],
)
def test_a_drawing_that_shows_another_file_is_refused(link):
    with pytest.raises(UnusablePictureError, match="another file"):
        kept(f'<image width="9" height="9" xlink:href="{link}"/>')


def test_a_picture_inside_a_drawing_is_kept_without_its_camera_s_words():
    inner = coded(photograph(20, 10), "JPEG", comment=b"Samphire Creek")
    link = f"data:image/jpeg;base64,{base64.b64encode(inner).decode()}"
    found = re.search(r"base64,([^\"]+)", kept(f'<image width="9" height="9" href="{link}"/>'))
    assert found
    assert b"Samphire" not in base64.b64decode(found[1])


@pytest.mark.parametrize("size", [(20, 10), (1, 256)])
def test_white_and_narrow_pictures_may_be_parts_of_a_drawing(size):
    white = base64.b64encode(coded(Image.new("RGB", size, "white"))).decode()
    layer = f'<image width="40" height="20" href="data:image/png;base64,{white}"/>'
    assert "image/png" in kept(f'{layer}<rect width="9" height="9" fill="#c00000"/>')


def test_shapes_paints_and_letters_are_kept():
    inside = (
        '<defs><linearGradient id="g"><stop offset="1" stop-color="#123456"/></linearGradient>'
        '<g id="s"><path d="M0 0L9 9" stroke="red"/></g></defs><use xlink:href="#s"/>'
        '<rect width="4" height="4" fill="url(#g)" style="stroke:url(#g);opacity:.5"/>'
        "<style>.a{fill:url('#g')}</style><text x='1' class='a'>whelk</text>"
    )
    root = ET.fromstring(kept(inside))  # noqa: S314 (it is our own)
    names = [one.tag.rpartition("}")[2] for one in root.iter()]
    assert names == [
        *("svg", "defs", "linearGradient", "stop", "g", "path", "use", "rect", "style", "text")
    ]
    assert kept(inside).count("url(") == 3


@pytest.mark.parametrize("before", ['<?xml version="1.0" encoding="UTF-8"?>\n', "\ufeff", ""])
def test_what_drawing_programs_write_before_a_drawing_is_no_matter(before):
    doctype = (
        '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" '
        '"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
    )
    assert picture_in((before + doctype + SHELL).encode()).width == 1000


@pytest.mark.parametrize(
    "inside",
    [
        "",
        '<rect x="500" y="500" width="5" height="5"/>',
        '<rect width="9" height="9" fill="none"/>',
        '<rect width="9" height="9" fill="white"/>',
        '<g display="none"><rect width="9" height="9"/></g>',
        '<defs><rect width="9" height="9"/></defs>',
        "<image/>",
    ],
)
def test_a_drawing_that_shows_nothing_on_white_paper_is_refused(inside):
    with pytest.raises(UnusablePictureError):
        kept(inside)


@pytest.mark.parametrize(
    "inside",
    [
        '<path d="M0 9h40" stroke="black" stroke-width=".2"/>',
        '<rect width="40" height="20" fill="#fafafa"/>',
        '<rect x="39" y="19" width="9" height="9" fill="yellow"/>',
        '<text x="1" y="9">whelk</text>',
    ],
)
def test_a_drawing_that_shows_little_is_kept(inside):
    assert kept(inside)


def test_a_blank_drawing_of_an_earlier_deck_is_read():
    data = SVG.format("").encode()
    assert picture_in(data, may_be_blank=True).width == 1000


PAGE = (
    '<foreignObject width="9" height="9">'
    '<p xmlns="http://www.w3.org/1999/xhtml"><b>{}</b></p></foreignObject>'
)


def test_text_that_only_browsers_show_is_refused():
    with pytest.raises(UnusablePictureError, match="web browsers"):
        kept(f'<rect width="9" height="9"/><g>{PAGE.format("valve")}</g>')


def test_text_that_has_something_in_its_stead_is_no_matter():
    # SVG 1.1, 5.8.2: of a switch, the first child that can be shown is shown
    instead = f'<switch>{PAGE.format("valve")}<text y="9">valve</text></switch>'
    for inside in (instead, PAGE.format(" "), "<metadata>valve</metadata>"):
        assert kept(f'<rect width="9" height="9"/>{inside}')


def test_an_entity_is_refused():
    text = '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/hostname">]>' + SVG.format("&x;")
    with pytest.raises(UnusablePictureError, match="declarations"):
        picture_in(text.encode())


def doubling(levels):
    groups = ['<g id="g0"><rect width="1" height="1"/></g>']
    for n in range(1, levels):
        uses = f'<use href="#g{n - 1}"/>' * 10
        groups.append(f'<g id="g{n}">{uses}</g>')
    return "".join(groups)


@pytest.mark.parametrize(
    "inside",
    [
        doubling(9),
        '<g id="a"><use href="#a"/></g>',
        '<pattern id="a"><rect fill="url(#a)"/></pattern>',
        "<g>" * 5000 + "</g>" * 5000,
        "<g/>" * 40_000,
    ],
    ids=["doubling", "endless", "endless pattern", "deep", "many"],
)
def test_a_drawing_that_would_be_drawn_for_ever_is_refused(inside):
    with pytest.raises(UnusablePictureError):
        kept(inside)


@pytest.mark.parametrize("size", ["", 'width="9" height="1000"', 'width="1e9" height="1e9"'])
def test_a_drawing_without_a_size_that_a_page_can_have_is_refused(size):
    text = f'<svg xmlns="http://www.w3.org/2000/svg" {size}><rect width="1" height="1"/></svg>'
    with pytest.raises(UnusablePictureError):
        picture_in(text.encode())


@given(st.text(alphabet="url(#)'\"@import;:/*\\ ht.p{}", max_size=60))
def test_no_style_fetches_anything(text):
    safe = safe_style(text)
    assert not re.search(r"@import", safe, re.IGNORECASE)
    assert all(re.match(r"\s*['\"]?\s*#", rest) for rest in re.split(r"(?i)url\(", safe)[1:])


@pytest.mark.parametrize(
    "text",
    [
        SVG.format(f'<rect width="9" height="9" fill="url({" " * 400_000}#a)"/>'),
        SVG.format(f'<rect width="9" height="9" fill="{"url(#" * 200_000}"/>'),
        SVG.format('<rect width="9" height="9"/>') + "<!DOCTYPE " * 200_000,
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{"1" * 400_000}x" height="9"/>',
    ],
    ids=["blanks", "names", "types", "digits"],
)
def test_text_that_begins_again_and_again_is_looked_through_once(text):
    # by the square of its length each would take an hour
    with suppress(UnusablePictureError):
        picture_in(text.encode())
