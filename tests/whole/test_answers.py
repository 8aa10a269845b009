"""Cards without backs: their answers as a list, in the order of the cards."""

import json
import re

import pypdfium2
import pytest
from support.pdfs import card_pages
from support.shore import ITEMS, fairdeal

ANSWERS = {"".join(prompt.split()): "".join(answer.split()) for prompt, answer, *_ in ITEMS}
NAMES = r"(?:Heron|Otter|Samphire)"


def listed(deck):
    """The list as it is read aloud: each label with the answer behind it, in print order."""
    document = pypdfium2.PdfDocument(deck / "answers.pdf")
    text = " ".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    found = re.findall(r"(\d+)\s+(several words in answer \d+|word\d+)", text)
    return [(int(label), "".join(answer.split())) for label, answer in found]


def on_cards(deck):
    """The label of every card with the answer to its prompt."""
    for page in card_pages(deck / "cards.pdf"):
        for cell in page.cells:
            text = page.text_in(cell)
            if text:
                (prompt,) = [prompt for prompt in ANSWERS if prompt in text]
                yield int(re.search(NAMES + r"(\d+)", text)[1]), ANSWERS[prompt]


def test_the_list_has_every_cards_answer_by_its_label(build):
    deck = build("--sides", "fronts")
    assert sorted(listed(deck)) == sorted(on_cards(deck))


def test_the_list_is_told_team_by_team(build):
    record = json.loads((build("--sides", "fronts") / "deck.json").read_text(encoding="utf-8"))
    document = pypdfium2.PdfDocument(build("--sides", "fronts") / "answers.pdf")
    text = "".join("".join(page.get_textpage().get_text_bounded().split()) for page in document)
    document.close()
    places = [text.index(name) for name in ("Heron", "Otter", "Samphire")]
    assert places == sorted(places)
    for start, end, team in zip(
        places, [*places[1:], len(text)], ("Heron", "Otter", "Samphire"), strict=True
    ):
        own = [card for card in record["cards"] if card["team"] == team]
        said = text[start:end]
        assert all("".join(card["answer"].split()) in said for card in own)


def test_no_card_gives_its_answer_away(build):
    for page in card_pages(build("--sides", "fronts") / "cards.pdf"):
        text = "".join(page.text_in(cell) for cell in page.cells)
        assert "word" not in text


def test_where_every_team_has_the_same_cards_the_list_is_given_once(build):
    deck = build("--sides", "fronts", "--deal", "copies")
    assert [label for label, _answer in sorted(listed(deck))] == list(range(1, len(ITEMS) + 1))


@pytest.mark.parametrize("sides", ["duplex", "fold", "two-passes"])
def test_cards_with_backs_need_no_list(build, sides):
    assert not (build("--sides", sides) / "answers.pdf").exists()


def test_the_terminal_names_the_list(workbook, tmp_path):
    done = fairdeal("build", workbook, "--out", tmp_path, "--sides", "fronts")
    assert "answers.pdf: the answers in the order of the cards." in done.stdout
