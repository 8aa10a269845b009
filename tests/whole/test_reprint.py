"""A lost card printed again is the card that was lost: read and seen on both pages.

pdfplumber reads letters and rectangles, pypdfium2 shows what is seen, each from the corner of the
card's own cell; neither knows how the page was made.
"""

import json
import re
import shutil

import numpy as np
import pypdfium2
import pytest
from support.pdfs import card_pages
from support.shore import fairdeal
from support.teacher_file import ACTIVITIES, lesson

from cards.reading.file import read

SCALE = 4
NEAR = 0.02  # points: half the last digit in which a PDF tells a place, and a little more
SHADE = 24  # of 255: how an edge may differ that lies a thousandth of a point farther on


@pytest.fixture
def deck(build, tmp_path):
    """Return a function that copies a built deck, so that what is put into it stays here."""

    def copied(*options):
        return shutil.copytree(build(*options), tmp_path / "01")

    return copied


def cards_of(folder):
    return json.loads((folder / "deck.json").read_text(encoding="utf-8"))["cards"]


def reprint(folder, *words, **environment):
    done = fairdeal("reprint", folder, *words, **environment)
    assert done.returncode == 0, done.stderr
    return done.stdout


class Sight:
    """The cells of a file of cards, each as it is read and as it is seen."""

    def __init__(self, *paths):
        self.cells = {}
        for path in paths:
            pdf = pypdfium2.PdfDocument(path)
            for number, page in enumerate(card_pages(path)):
                for cell in page.cells:
                    text = page.text_in(cell)
                    if text:
                        self.cells[text] = (page, cell, pdf, number)

    def drawn(self, text):
        """Letters and rectangles of a cell, from its lower left corner."""
        page, (left, bottom, right, top), *_ = self.cells[text]
        inside = [
            (kind, *signs, thing["x0"] - left, thing["y0"] - bottom, thing["x1"] - left)
            for kind, things in (("letter", page.chars), ("rectangle", page.rects))
            for thing in things
            if left < (thing["x0"] + thing["x1"]) / 2 < right
            and bottom < (thing["y0"] + thing["y1"]) / 2 < top
            for signs in [
                (thing["text"], thing["fontname"].rpartition("+")[2], thing["size"])
                if kind == "letter"
                else (str(thing["non_stroking_color"]), "", thing["y1"] - thing["y0"])
            ]
        ]
        return [one[:3] for one in inside], np.array([one[3:] for one in inside])

    def seen(self, text):
        """What is seen of a cell, without its outermost pixels, which marks may touch."""
        _, cell, pdf, number = self.cells[text]
        page = pdf[number]
        page.set_mediabox(*cell)
        page.set_cropbox(*cell)
        pixels = page.render(scale=SCALE).to_numpy().astype(int)
        return pixels[2:-2, 2:-2]

    def turned(self, text):
        page, cell, *_ = self.cells[text]
        return page.directions_in(cell)


def squeezed(text):
    return "".join(text.split())


def sides_of(card, sight):
    """The cells of both sides of a card: its prompt, its answer, each with label and team."""
    end = squeezed(card["team"] + card["label"])
    wanted = {squeezed(card["topic"] + card[side]) + end for side in ("prompt", "answer")}
    return wanted & sight.cells.keys()


def assert_same(card, first, again):
    sides = sides_of(card, first)
    assert sides
    assert sides == sides_of(card, again)
    for side in sides:
        if first.turned(side) == again.turned(side):
            one, other = first.drawn(side), again.drawn(side)
            assert one[0] == other[0]
            assert np.abs(one[1] - other[1]).max() < NEAR
        seen, seen_again = first.seen(side), again.seen(side)
        if first.turned(side) != again.turned(side):
            seen_again = np.rot90(seen_again, 2)
        size = np.minimum(seen.shape, seen_again.shape)
        assert np.abs(np.subtract(seen.shape, seen_again.shape)).max() <= 1
        difference = np.abs(seen[: size[0], : size[1]] - seen_again[: size[0], : size[1]])
        assert (difference > SHADE).mean() < 0.002, side
        assert (seen < 128).any()


WAYS = {
    "as it was": (),
    "another paper": ("--paper", "a4"),
    "a smaller paper": ("--paper", "a5"),
    "the other flip": ("--flip", "short"),
    "folded": ("--sides", "fold"),
    "fronts only": ("--sides", "fronts"),
    "two passes": ("--sides", "two-passes"),
}


@pytest.mark.parametrize("way", WAYS)
def test_a_card_printed_again_is_the_same_drawing(deck, way):
    folder = deck()
    reprint(folder, "--cards", "3, 9 20-22", *WAYS[way])
    first = Sight(folder / "cards.pdf")
    again = Sight(*sorted(folder.glob("reprint-1*.pdf")))
    wanted = [card for card in cards_of(folder) if card["label"] in ["3", "9", "20", "21", "22"]]
    assert len(again.cells) == len(wanted) * (1 if way == "fronts only" else 2)
    for card in wanted:
        if way == "fronts only":
            (side,) = sides_of(card, again)
            assert first.drawn(side)[0] == again.drawn(side)[0]
        else:
            assert_same(card, first, again)


@pytest.mark.parametrize("ink", ["grey", "stock"])
def test_the_ink_is_that_of_the_deck(deck, ink):
    folder = deck("--ink", ink)
    told = reprint(folder, "--cards", "1,2,22")
    first, again = Sight(folder / "cards.pdf"), Sight(folder / "reprint-1.pdf")
    for card in cards_of(folder):
        if card["label"] in ("1", "2", "22"):
            assert_same(card, first, again)
    leaves = 2 if ink == "stock" else 1  # 1 and 2 are of one team, 22 of another
    assert len(card_pages(folder / "reprint-1.pdf")) == 2 * leaves
    assert ("Load    1 of " in told) is (ink == "stock")


@pytest.mark.parametrize("activity", ACTIVITIES)
def test_cards_of_every_activity_are_printed_again(activity, tmp_path):
    folder = shutil.copytree(lesson(activity=activity), tmp_path / "01")
    owner = cards_of(folder)[0]["team"]
    told = reprint(folder, "--cards", "1,2", "--team", owner)
    comma = "," if owner[-1].isdecimal() else ""
    assert f"2 cards again, on 1 leaf: {owner}{comma} 1–2." in told or "on 2 leaves" in told
    first, again = Sight(folder / "cards.pdf"), Sight(folder / "reprint-1.pdf")
    printed = [text for text in again.cells if text != owner]
    assert len(printed) >= 2
    for text in printed:
        assert first.drawn(text)[0] == again.drawn(text)[0]
        assert np.abs(first.drawn(text)[1] - again.drawn(text)[1]).max() < NEAR


def test_the_leaves_are_as_few_as_hold_the_cards(deck):
    folder = deck()
    for count, leaves in ((1, 1), (8, 1), (9, 2), (22, 3)):  # eight small cards on Letter
        told = reprint(folder, "--cards", f"1-{count}")
        number = re.search(r"reprint-\d+\.pdf", told)[0]
        assert f"on {leaves} lea" in told
        assert len(card_pages(folder / number)) == 2 * leaves


def test_it_works_when_the_workbook_is_gone_and_the_folder_has_moved(workbook, tmp_path):
    own = tmp_path / "Shore.xlsx"
    shutil.copy(workbook, own)
    assert fairdeal("build", own).returncode == 0
    own.unlink()
    folder = (tmp_path / "Shore decks" / "01").rename(tmp_path / "elsewhere")
    assert not read_is_possible(own)
    reprint(folder / "deck.json", "--cards", "5")
    assert (folder / "reprint-1.pdf").is_file()


def read_is_possible(path):
    try:
        read(path)
    except Exception:  # noqa: BLE001 (whatever it is, the workbook cannot be read)
        return False
    return True


def test_the_decks_own_files_are_never_touched_and_no_reprint_goes_over_another(deck):
    folder = deck()
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    for _ in range(2):
        reprint(folder, "--cards", "1")
    reprint(folder, "--all", "--sides", "two-passes")
    reprint(folder, "--team", "heron")
    assert {path: path.read_bytes() for path in before} == before
    assert {path.name for path in folder.glob("*") if path not in before} >= {
        *("reprint-1.pdf", "reprint-2.pdf", "reprint-4.pdf"),
        *("reprint-3-fronts.pdf", "reprint-3-backs.pdf"),
    }


def test_the_same_cards_give_the_same_bytes_on_any_run(deck):
    folder = deck()
    for seed in ("0", "4711"):
        reprint(folder, "--cards", "22,4", PYTHONHASHSEED=seed, TZ="Asia/Tokyo")
    first, again = (folder / f"reprint-{n}.pdf" for n in (1, 2))
    assert first.read_bytes() == again.read_bytes()


def test_a_file_can_be_named_and_is_not_written_over(deck, tmp_path):
    folder, out = deck(), tmp_path / "lost.pdf"
    reprint(folder, "--cards", "1", "--out", out)
    before = out.read_bytes()
    again = fairdeal("reprint", folder, "--cards", "2", "--out", out)
    assert again.returncode == 3
    assert "is there already" in again.stderr
    assert out.read_bytes() == before
    assert not list(folder.glob("reprint*"))


def test_a_name_that_no_file_can_have_is_told_in_one_line(deck, tmp_path):
    done = fairdeal("reprint", deck(), "--cards", "1", "--out", tmp_path / f"{'a' * 300}.pdf")
    assert done.returncode == 3
    assert len(done.stderr.splitlines()) == 1
    assert "the name is too long" in done.stderr


def test_a_name_has_the_ending_of_what_is_in_the_file(deck, tmp_path):
    done = fairdeal("reprint", deck(), "--cards", "1", "--out", tmp_path / "lost.docx")
    assert done.returncode == 2
    assert "Name it lost.pdf." in done.stderr
    assert not list(tmp_path.glob("lost*"))


def test_of_two_files_none_is_left_where_one_cannot_be_written(deck, tmp_path):
    folder = deck()
    (tmp_path / "lost-backs.pdf").write_text("in the way", encoding="utf-8")
    words = ("--all", "--sides", "two-passes", "--out", tmp_path / "lost.pdf")
    assert fairdeal("reprint", folder, *words).returncode == 3
    assert not (tmp_path / "lost-fronts.pdf").exists()


def test_a_label_that_several_piles_have_is_printed_for_all_with_a_note(deck):
    folder = deck("--deal", "copies")
    told = reprint(folder, "--cards", "7")
    assert "3 cards again" in told
    assert 'Note    Card 7 is in several piles. For one of them only: --team "Heron".' in told
    told = reprint(folder, "--cards", "7", "--team", "Otter", "--team", "Samphire")
    assert "2 cards again, on 1 leaf: Otter 7; Samphire 7." in told
    assert "Note" not in told


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ((), "Say which cards are to be printed again"),
        (("--cards", "99"), "--cards 99: there is no such card here. There are Heron 1–"),
        (("--cards", "1", "--team", "Otter"), "That card is in the pile of Heron."),
        (("--cards", "20-30"), "--cards 30: there is no such card here."),
        (("--cards", " , "), "as 7,12 or 7-12"),
        (("--team", "Curlew"), "It has those of Heron, Otter and Samphire."),
        (("--cards", "1", "--all"), "give one of them"),
        (("--all", "--paper", "papyrus"), "--paper papyrus: this can be letter"),
        (("--all", "--paper", "index-3x5"), "does not fit on 3 × 5 in card"),
        (("--all", "--printer", "Attic"), "No printer called “Attic” is kept."),
    ],
)
def test_what_cannot_be_is_said_with_what_there_is(deck, words, said):
    folder = deck()
    done = fairdeal("reprint", folder, *words, FAIRDEAL_SETTINGS=str(folder / "none"))
    assert (done.returncode, done.stdout) == (2, "")
    assert said in done.stderr
    assert not list(folder.glob("reprint*"))


def test_a_card_that_fills_its_paper_is_printed_on_that_paper_only(deck):
    folder = deck("--paper", "index-4x6")
    reprint(folder, "--cards", "1")
    done = fairdeal("reprint", folder, "--cards", "1", "--paper", "letter")
    assert done.returncode == 2
    assert "It fits on index-4x6: choose it with --paper." in done.stderr


def test_what_has_no_back_is_printed_again_however_long_its_answer_is(tmp_path):
    rows = ["Question,Answer", f"Which words?,{'word ' * 400}", "What digs?,lugworm"]
    (tmp_path / "long.csv").write_text("\n".join(rows), encoding="utf-8")
    built = fairdeal("build", tmp_path / "long.csv", "--teams", "2", "--sides", "fronts")
    assert built.returncode == 0, built.stderr
    done = fairdeal("reprint", tmp_path / "long decks" / "01", "--all")
    assert done.returncode == 0, done.stderr
