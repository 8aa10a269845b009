"""Every answer behind its own prompt: read from the printed pages, not from the layout.

pdfplumber reads where letters and marks are, pypdfium2 renders what is seen of the ribbons. Papers,
sizes and ways to print meet in pairs: every paper with every size, each of both with every way.
"""

import math
from functools import partial

import numpy as np
import pypdfium2
import pytest
from support.pdfs import POINTS_PER_MM, card_pages
from support.printing import FEW, printed

from decks.commands.production import ContentError

TENTH_OF_A_MM = 0.1 * POINTS_PER_MM
SCALE = 2
PIXEL = 1 / SCALE
COLOURED = 40  # between the strongest and the weakest of a pixel's three colours
ANSWERS = {"".join(prompt.split()): "".join(answer.split()) for prompt, answer, *_ in FEW}

PAPERS = ("letter", "legal", "tabloid", "a3", "a4", "a5", "index-3x5", "index-4x6", "index-5x8")
SIZES = {
    "small": {"card_size": "small"},
    "medium": {"card_size": "medium"},
    "large": {"card_size": "large"},
    "full": {"card_size": "full"},
    "bleeding": {"card_size": "90 x 60 mm", "bleed": "3 mm"},
    "uneven": {"card_size": "55 x 85 mm", "margins": "4, 5, 9, 7 mm"},
}
WAYS = (
    {"sides": "duplex", "flip": "long"},
    {"sides": "duplex", "flip": "short"},
    {"sides": "fold"},
    {"sides": "tent"},
    {"sides": "two-passes", "flip": "long", "comes_out": "face-up"},
    {"sides": "two-passes", "flip": "short", "comes_out": "face-up"},
)
CASES = [
    pytest.param(paper, size, WAYS[(m + n) % len(WAYS)], id=f"{paper}-{size}-{(m + n) % 6}")
    for m, paper in enumerate(PAPERS)
    for n, size in enumerate(SIZES)
]
# What is too large: a card is folded from twice its size.
FOLDED = ("fold", "tent")
TOO_LARGE = {
    "index-3x5": ("small", "medium", "large", "bleeding", "uneven"),
    "index-4x6": ("medium", "large"),
    "index-5x8": ("large",),
}
TOO_LARGE_TO_FOLD = {"a5": ("large",), "index-5x8": ("medium", "bleeding")}


def sideways(point):
    return -point[0], point[1]


def levelly(point):
    return point[0], -point[1]


def mirrored(cell, mirror, at):
    """The rectangle behind a rectangle, by a mirror over the line `at`."""
    left, bottom, right, top = cell
    if mirror is sideways:
        return 2 * at - right, bottom, 2 * at - left, top
    return left, 2 * at - top, right, 2 * at - bottom


def printer_of(page, flip):
    """How a printer turns paper (HP PCL 5 reference 5961-0509, pp. 4-7 and 4-8)."""
    upright = page.width < page.height
    if upright == (flip == "long"):
        return partial(mirrored, mirror=sideways, at=page.width / 2), sideways
    return partial(mirrored, mirror=levelly, at=page.height / 2), levelly


def fold_of(page, cell):
    """At x = f, (x, y) meets (2f - x, y); at y = f, (x, y) meets (x, 2f - y)."""
    left, bottom, right, top = cell
    for fold in page.upright_folds:
        if min(abs(fold - left), abs(fold - right)) < TENTH_OF_A_MM:
            return partial(mirrored, mirror=sideways, at=fold), sideways
    (fold,) = [f for f in page.level_folds if min(abs(f - bottom), abs(f - top)) < TENTH_OF_A_MM]
    return partial(mirrored, mirror=levelly, at=fold), levelly


class Seen:
    """A page as it is read and as it is seen; row 0 of what is seen is the foot of the page."""

    def __init__(self, read, rendered):
        self.read = read
        pixels = np.asarray(rendered.render(scale=SCALE).to_pil()).astype(int)
        self.coloured = np.flipud(pixels.max(axis=2) - pixels.min(axis=2) > COLOURED)

    def coloured_in(self, cell, over):
        """The edges of what is coloured in a cell and what runs over it, in points."""
        left, bottom, right, top = (
            max(0, round((edge + away * over) * SCALE))
            for edge, away in zip(cell, (-1, -1, 1, 1), strict=True)
        )
        rows, columns = np.nonzero(self.coloured[bottom:top, left:right])
        if not len(rows):
            return None
        edges = (
            left + columns.min(),
            bottom + rows.min(),
            left + columns.max() + 1,
            bottom + rows.max() + 1,
        )
        return tuple(edge / SCALE for edge in edges)

    def up_in(self, cell):
        """Which way the largest letters in a cell have their heads."""
        left, bottom, right, top = cell
        sizes = {
            (char["matrix"][2] * char["size"], char["matrix"][3] * char["size"])
            for char in self.read.chars
            if left < char["x0"] < char["x1"] < right and bottom < char["y0"] < char["y1"] < top
        }
        across, up = max(sizes, key=lambda size: math.hypot(*size))
        return round(across / math.hypot(across, up)), round(up / math.hypot(across, up))


def seen_pages(path):
    document = pypdfium2.PdfDocument(path)
    pages = [Seen(read, document[n]) for n, read in enumerate(card_pages(path))]
    document.close()
    return pages


def leaves_of(deck):
    """Pairs of what carries fronts and what carries their backs: one page twice where folded."""
    if (deck / "cards-fronts.pdf").exists():
        pair = (seen_pages(deck / f"cards-{side}.pdf") for side in ("fronts", "backs"))
        return list(zip(*pair, strict=True))
    pages = seen_pages(deck / "cards.pdf")
    if any(page.read.upright_folds or page.read.level_folds for page in pages):
        return [(page, page) for page in pages]
    return list(zip(pages[::2], pages[1::2], strict=True))


def prompt_in(text):
    found = [prompt for prompt in ANSWERS if prompt in text]
    return found[0] if found else None


def answer_in(text):
    return max((answer for answer in ANSWERS.values() if answer in text), key=len)


@pytest.mark.parametrize(("paper", "size", "way"), CASES)
def test_every_answer_lies_behind_its_prompt(paper, size, way):
    # a little less than runs over, so that nothing of the neighbours is seen
    over = 3 * POINTS_PER_MM - 1 if "bleed" in SIZES[size] else 0
    folded = way["sides"] in FOLDED
    if size in TOO_LARGE.get(paper, ()) or (folded and size in TOO_LARGE_TO_FOLD.get(paper, ())):
        with pytest.raises(ContentError, match="does not fit on"):
            printed(paper=paper, **SIZES[size], **way)
        return
    deck = printed(paper=paper, **SIZES[size], **way)
    met = set()
    for front, back in leaves_of(deck):
        assert (front.read.width, front.read.height) == (back.read.width, back.read.height)
        for cell in front.read.cells:
            prompt = prompt_in(front.read.text_in(cell))
            if front is back:
                behind, mirror = fold_of(front.read, cell)
            else:
                behind, mirror = printer_of(front.read, way["flip"])
            place = behind(cell)
            if prompt is None:
                if front is not back:
                    assert back.coloured_in(place, 0) is None
                continue
            met.add(prompt)
            assert answer_in(back.read.text_in(place)) == ANSWERS[prompt]
            # as the card is turned like a page, or stands as a tent, both sides read upright
            assert mirror(back.up_in(place)) == front.up_in(cell)
            ribbon = front.coloured_in(cell, over)
            turned = back.coloured_in(place, over)
            assert turned == pytest.approx(behind(ribbon), abs=2 * PIXEL)
    assert met == set(ANSWERS)


@pytest.mark.parametrize("size", ["small", "large", "full"])
def test_a_tent_has_its_fold_above_the_heads_of_both_sides(size):
    met = set()
    for page, _page in leaves_of(printed(sides="tent", **SIZES[size])):
        for cell in page.read.cells:
            if prompt := prompt_in(page.read.text_in(cell)):
                met.add(prompt)
                behind, _mirror = fold_of(page.read, cell)
                place = behind(cell)
                assert page.up_in(cell) == (0, 1)
                assert page.up_in(place) == (0, -1)
                assert place[1] == pytest.approx(cell[3], abs=TENTH_OF_A_MM)
    assert met == set(ANSWERS)


def test_fronts_alone_have_no_backs_and_no_corner_mark():
    pages = seen_pages(printed(sides="fronts", card_size="small") / "cards.pdf")
    (page,) = pages
    prompts = {prompt_in(page.read.text_in(cell)) for cell in page.read.cells} - {None}
    assert prompts == set(ANSWERS)
    assert not any(
        answer in "".join(map(page.read.text_in, page.read.cells)) for answer in ANSWERS.values()
    )


@pytest.mark.parametrize("size", ["small", "medium", "large"])
def test_piles_are_one_team_each_in_the_order_of_their_labels(build, size):
    """Cut and stack: leaf on leaf, every slot is one pile."""
    deck = build("--size", size)
    fronts = card_pages(deck / "cards.pdf")[::2]
    stacks: dict[str, list] = {}
    for page in fronts:
        header = "".join(char["text"] for char in page.chars if char["y0"] > page.height - 40)
        name = header.split("stack ")[1].split(" ")[0] if "stack " in header else "1"
        stacks.setdefault(name, []).append(page)
    for pages in stacks.values():
        for slot in range(len(pages[0].cells)):
            texts = [page.text_in(page.cells[slot]) for page in pages]
            teams = {
                team for text in texts for team in ("Heron", "Otter", "Samphire") if team in text
            }
            labels = [
                int(text.split("Heron")[-1].split("Otter")[-1].split("Samphire")[-1])
                for text in texts
                if text
            ]
            assert len(teams) <= 1
            assert labels == list(range(labels[0], labels[0] + len(labels))) if labels else True
