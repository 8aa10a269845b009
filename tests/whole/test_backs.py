"""Every answer behind its own prompt: read from the printed pages, not from the layout."""

import pytest
from support.pdfs import POINTS_PER_MM, card_pages
from support.shore import ITEMS

TENTH_OF_A_MM = 0.1 * POINTS_PER_MM
ANSWERS = {"".join(prompt.split()): "".join(answer.split()) for prompt, answer, *_ in ITEMS}

# How a printer turns paper (HP PCL 5 reference 5961-0509, pp. 4-7 and 4-8), and whether a back
# has to stand on its head to read upright when the card is turned like a page.
SIDEWAYS = {("portrait", "long"), ("landscape", "short")}


def prompt_in(text: str) -> str:
    (found,) = [prompt for prompt in ANSWERS if prompt in text]
    return found


def answer_in(text: str) -> str:
    found = [answer for answer in ANSWERS.values() if answer in text]
    return max(found, key=len)


def behind(page, cell, flip):
    left, bottom, right, top = cell
    shape = "landscape" if page.width > page.height else "portrait"
    if (shape, flip) in SIDEWAYS:
        return page.width - right, bottom, page.width - left, top
    return left, page.height - top, right, page.height - bottom


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("size", ["small", "medium", "large"])
@pytest.mark.parametrize("flip", ["long", "short"])
def test_both_sides(build, paper, size, flip):
    deck = build("--paper", paper, "--size", size, "--flip", flip)
    pages = card_pages(deck / "cards.pdf")
    met = set()
    for front, back in zip(pages[::2], pages[1::2], strict=True):
        shape = "landscape" if front.width > front.height else "portrait"
        upright = 1 if (shape, flip) in SIDEWAYS else -1
        for cell in front.cells:
            text = front.text_in(cell)
            place = behind(front, cell, flip)
            assert min(abs(place[0] - x) for x in back.upright_cuts) < TENTH_OF_A_MM
            assert min(abs(place[1] - y) for y in back.level_cuts) < TENTH_OF_A_MM
            if not text:
                assert not back.text_in(place)
                continue
            prompt = prompt_in(text)
            met.add(prompt)
            assert answer_in(back.text_in(place)) == ANSWERS[prompt]
            assert front.directions_in(cell) == {1}
            assert back.directions_in(place) == {upright}
            turned = behind(front, front.ribbon_in(cell), flip)
            assert back.ribbon_in(place) == pytest.approx(turned, abs=TENTH_OF_A_MM)
    assert met == set(ANSWERS)


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(("size", "beside"), [("small", True), ("medium", True), ("large", False)])
def test_folded(build, paper, size, beside):
    """At x = f, (x, y) meets (2f - x, y); at y = f, (x, y) meets (x, 2f - y)."""
    deck = build("--paper", paper, "--size", size, "--sides", "fold")
    met = set()
    for page in card_pages(deck / "cards.pdf"):
        if beside:
            _edge, line, _other = page.upright_cuts
        else:
            _edge, line, _other = page.level_cuts
        fronts = [c for c in page.cells if (c[2] <= line + 0.01 if beside else c[1] >= line - 0.01)]
        for left, bottom, right, top in fronts:
            cell = (left, bottom, right, top)
            if beside:
                place = (2 * line - right, bottom, 2 * line - left, top)
            else:
                place = (left, 2 * line - top, right, 2 * line - bottom)
            text = page.text_in(cell)
            if not text:
                assert not page.text_in(place)
                continue
            prompt = prompt_in(text)
            met.add(prompt)
            assert answer_in(page.text_in(place)) == ANSWERS[prompt]
            assert page.directions_in(cell) == {1}
            assert page.directions_in(place) == {1 if beside else -1}
    assert met == set(ANSWERS)


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
