"""Ink stock: the paper tells the team, so each team's leaves come together and bear no colour."""

import re

import pdfplumber
import pypdfium2
import pytest
from support.pdfs import card_pages
from support.shore import fairdeal

TEAMS = {"Heron": "blue", "Otter": "orange", "Samphire": "green"}
SPREAD = 0.1
"""Our ink is a dark blue-grey; between its red, green and blue lies less than this."""


@pytest.fixture(scope="module", params=[(), ("--sides", "fold"), ("--sides", "fronts")])
def deck(build, request):
    return build("--ink", "stock", *request.param)


def colours(page):
    for thing in [*page.chars, *page.rects, *page.curves, *page.lines]:
        for kind, painted in (("non_stroking_color", "fill"), ("stroking_color", "stroke")):
            if thing.get(painted, True) and thing[kind] is not None:
                yield tuple(thing[kind])


def test_nothing_on_a_page_of_cards_has_a_colour(deck):
    with pdfplumber.open(deck / "cards.pdf") as pdf:
        for page in pdf.pages:
            assert not page.images
            assert max(max(colour) - min(colour) for colour in colours(page)) < SPREAD


def test_with_colour_the_same_look_finds_the_ribbons(build):
    with pdfplumber.open(build() / "cards.pdf") as pdf:
        found = max(max(colour) - min(colour) for colour in colours(pdf.pages[0]))
    assert found > 3 * SPREAD


def test_no_ribbon_is_drawn_on_a_card(deck):
    for page in card_pages(deck / "cards.pdf"):
        for left, bottom, right, top in page.cells:
            filled = [
                rect
                for rect in page.rects
                if rect["fill"] and left < rect["x0"] < right and bottom < rect["y0"] < top
            ]
            assert not filled


def test_every_page_holds_one_team_and_names_its_paper(deck):
    order = []
    document = pypdfium2.PdfDocument(deck / "cards.pdf")
    for page in document:
        text = page.get_textpage().get_text_bounded()
        (team,) = [name for name in TEAMS if name in text]
        assert f"Load {TEAMS[team]} paper" in text
        order.append(team)
    document.close()
    assert order == sorted(order, key=list(TEAMS).index)


def test_the_teacher_is_told_which_pages_go_on_which_paper(deck):
    document = pypdfium2.PdfDocument(deck / "cards.pdf")
    teams = [
        next(name for name in TEAMS if name in page.get_textpage().get_text_bounded())
        for page in document
    ]
    document.close()
    document = pypdfium2.PdfDocument(deck / "teacher.pdf")
    text = " ".join(document[0].get_textpage().get_text_bounded().split())
    document.close()
    line = r"Load (\d+) sheets? of (\w+) print pages? (\d+)(?: to (\d+))? (\w+)"
    loads = re.findall(line, text)
    assert [load[4] for load in loads] == list(TEAMS)
    for sheets, paper, first, last, team in loads:
        assert paper == TEAMS[team]
        pages = range(int(first), int(last or first) + 1)
        assert [teams[page - 1] for page in pages] == [team] * len(pages)
        assert len(pages) == teams.count(team)
        assert len(pages) in (int(sheets), 2 * int(sheets))


def test_the_terminal_says_what_to_load(workbook, tmp_path):
    done = fairdeal("build", workbook, "--out", tmp_path, "--ink", "stock")
    assert re.search(
        r"Load +1 of blue \(Heron\), 1 of orange \(Otter\) and 1 of green", done.stdout
    )
