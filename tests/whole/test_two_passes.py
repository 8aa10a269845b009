"""Both sides by hand: what is printed and what the teacher is told, done by a model of a printer.

The pages are read from the files and the doing from the teacher's page and the printed arrow.
"""

import re

import pikepdf
import pypdfium2
import pytest
from support.hand_fed import FOOT, HEAD, Printer, Sheet, turned_over
from support.pdfs import card_pages
from support.shore import ITEMS

ANSWERS = {"".join(prompt.split()): "".join(answer.split()) for prompt, answer, *_ in ITEMS}
TURN_OVER = "turn the whole pile over"
AS_IT_LIES = "Do not turn it over"
ARROW = "edge goes in first"


def words_of(path):
    document = pypdfium2.PdfDocument(path)
    texts = [" ".join(page.get_textpage().get_text_bounded().split()) for page in document]
    document.close()
    return texts


def is_turned(deck):
    """Whether the teacher is told to turn the pile over between the passes."""
    page = words_of(deck / "teacher.pdf")[0]
    assert (TURN_OVER in page) != (AS_IT_LIES in page)
    return TURN_OVER in page


def first_in(page):
    """The edge of a front that its arrow's words stand at: they are told to go in first."""
    text = "".join(char["text"] for char in page.chars)
    assert ARROW.replace(" ", "") in text.replace(" ", "")
    at = text.index("edge goes")
    return HEAD if page.chars[at]["y0"] > page.height / 2 else FOOT


def runs_of(deck, pages):
    """The page numbers that are printed at one go: told as `print pages 1 to 3`, else all."""
    told = re.findall(r"print pages? (\d+)(?: to (\d+))?", words_of(deck / "teacher.pdf")[0])
    return [(int(first), int(last or first)) for first, last in told] or [(1, pages)]


def printed(deck, printer):
    """Print the deck as told; return its leaves with the pages on their two faces."""
    fronts, backs = (card_pages(deck / f"cards-{side}.pdf") for side in ("fronts", "backs"))
    assert len(fronts) == len(backs)
    leaves = []
    for first, last in runs_of(deck, len(fronts)):
        pile = printer.print_on([Sheet() for _ in range(first, last + 1)], fronts[first - 1 : last])
        if is_turned(deck):
            pile = turned_over(pile)
        leading = first_in(fronts[first - 1])
        leaves += printer.print_on(pile, backs[first - 1 : last], leading=leading)
    return leaves


def behind(page, cell, *, heads_meet):
    """Heads on one edge: the leaf is turned like a page of a book; else over its head."""
    left, bottom, right, top = cell
    if heads_meet:
        return page.width - right, bottom, page.width - left, top
    return left, page.height - top, right, page.height - bottom


def met_prompts(leaves):
    """Check every card of every leaf; return the prompts that were found."""
    met = []
    for leaf in leaves:
        (front,), (back,) = sorted(leaf.printed, key=lambda face: "back·pass2" in header(face[0]))
        heads_meet = set(leaf.led_by) == {HEAD}
        for cell in front.cells:
            text = front.text_in(cell)
            answer = back.text_in(behind(front, cell, heads_meet=heads_meet))
            if not text:
                assert not answer
                continue
            (prompt,) = [prompt for prompt in ANSWERS if prompt in text]
            met.append(prompt)
            assert max((a for a in ANSWERS.values() if a in answer), key=len) == ANSWERS[prompt]
    return met


def header(page):
    return "".join(char["text"] for char in page.chars if "".join(char["text"].split()))


@pytest.mark.parametrize("comes_out", ["face-down", "face-up"])
@pytest.mark.parametrize("flip", ["long", "short"])
@pytest.mark.parametrize(
    "wanted", [("small", "22", 3), ("small", "16", 2), ("medium", "22", 6), ("small", "8", 1)]
)
def test_every_back_lands_on_its_own_front(build, comes_out, flip, wanted):
    size, cards, leaves = wanted
    deck = build(
        *("--sides", "two-passes", "--comes-out", comes_out, "--flip", flip),
        *("--size", size, "--cards", cards, "--teams", "1"),
    )
    pile = printed(deck, Printer(comes_out_face_up=comes_out == "face-up"))
    assert len(pile) == leaves
    met = met_prompts(pile)
    assert len(set(met)) == len(met) == int(cards)


@pytest.mark.parametrize("comes_out", ["face-down", "face-up"])
def test_every_back_lands_on_its_own_front_colour_by_colour(build, comes_out):
    deck = build(
        "--sides", "two-passes", "--comes-out", comes_out, "--ink", "stock", "--size", "large"
    )
    assert len(runs_of(deck, 0)) == 3
    met = met_prompts(printed(deck, Printer(comes_out_face_up=comes_out == "face-up")))
    assert sorted(met) == sorted(ANSWERS)


@pytest.mark.parametrize("face_up", [False, True])
def test_a_tray_that_prints_the_underside_does_right_with_the_other_setting(build, face_up):
    """The teacher's page says so of the trial with one sheet."""
    other = "face-down" if face_up else "face-up"
    deck = build("--sides", "two-passes", "--comes-out", other)
    printer = Printer(comes_out_face_up=face_up, prints_the_upper_face=False)
    assert sorted(met_prompts(printed(deck, printer))) == sorted(ANSWERS)


@pytest.mark.parametrize("comes_out", ["face-down", "face-up"])
def test_the_wrong_setting_would_be_seen(build, comes_out):
    """The model can fail: what is told for one printer spoils the leaves of the other."""
    deck = build("--sides", "two-passes", "--comes-out", comes_out)
    leaves = printed(deck, Printer(comes_out_face_up=comes_out != "face-up"))
    assert all(sorted(map(len, leaf.printed)) == [0, 2] for leaf in leaves)


@pytest.mark.parametrize("comes_out", ["face-down", "face-up"])
def test_the_trial_with_one_sheet_names_the_back_of_the_first_front(build, comes_out):
    deck = build("--sides", "two-passes", "--comes-out", comes_out)
    page = words_of(deck / "teacher.pdf")[0]
    number = int(re.search(r"then page (\d+) of cards-backs.pdf", page)[1])
    back = words_of(deck / "cards-backs.pdf")[number - 1]
    assert re.search(r"leaf 1(/| of )3", back)


@pytest.mark.parametrize("comes_out", ["face-down", "face-up"])
def test_the_finished_pile_lies_as_it_is_told(build, comes_out):
    deck = build("--sides", "two-passes", "--comes-out", comes_out)
    pile = printed(deck, Printer(comes_out_face_up=comes_out == "face-up"))
    if "Turn the finished pile over" in words_of(deck / "teacher.pdf")[0]:
        pile = turned_over(pile)
    upper = [header(sheet.printed[sheet.up][0]) for sheet in pile]
    assert [re.search(r"leaf(\d)", words)[1] for words in upper] == ["1", "2", "3"]
    assert all("front" in words for words in upper)


def test_both_files_ask_for_one_side(build):
    """ISO 32000-1, Table 150."""
    deck = build("--sides", "two-passes")
    for name in ("cards-fronts.pdf", "cards-backs.pdf"):
        with pikepdf.open(deck / name) as pdf:
            assert pdf.Root.ViewerPreferences.Duplex == "/Simplex"
    assert not (deck / "cards.pdf").exists()
