"""The study guide and its key, read back from the pages."""

import json
import re

import pdfplumber
import pytest


def record_of(deck):
    return json.loads((deck / "deck.json").read_text(encoding="utf-8"))


def plain(text):
    return "".join(text.split())


def pages_of(path):
    """Return each page's text in the order it was set, so that a broken clue stays together."""
    with pdfplumber.open(path) as pdf:
        return ["".join(char["text"] for char in page.chars) for page in pdf.pages]


def test_each_team_gets_its_own_clues_and_a_bank_with_two_more_words(build):
    deck = build()
    pages = [plain(page) for page in pages_of(deck / "study-guide.pdf")]
    record = record_of(deck)
    owners = {card["item"]: card["team"] for card in record["cards"]}
    assert {part["team"] for part in record["guide"]} == {"Heron", "Otter", "Samphire"}
    for part in record["guide"]:
        assert {owners[blank["item"]] for blank in part["blanks"]} == {part["team"]}
        answers = {blank["answer"] for blank in part["blanks"]}
        assert set(part["bank"]) == answers | set(part["extra_words"])
        assert len(part["extra_words"]) == 2
        (page,) = [page for page in pages if all(plain(b["clue"]) in page for b in part["blanks"])]
        assert plain(f"Study guide · {part['team']}") in page
        assert all(plain(word) in page for word in part["bank"])


def test_the_bank_is_alphabetical_and_says_nothing_of_the_order_of_the_clues(build):
    for part in record_of(build())["guide"]:
        assert part["bank"] == sorted(part["bank"], key=str.casefold)
        answers = [blank["answer"] for blank in part["blanks"]]
        assert answers != sorted(answers, key=str.casefold)


def test_the_order_of_the_clues_is_not_that_of_the_labels(build):
    record = record_of(build())
    labels = {card["item"]: int(card["label"]) for card in record["cards"]}
    orders = [[labels[blank["item"]] for blank in part["blanks"]] for part in record["guide"]]
    assert all(order != sorted(order) for order in orders)


def test_one_guide_for_all_where_every_team_has_every_item(build):
    deck = build("--deal", "copies")
    record = record_of(deck)
    assert {part["team"] for part in record["guide"]} == {None}
    blanks = [blank["item"] for part in record["guide"] for blank in part["blanks"]]
    assert sorted(blanks) == sorted({card["item"] for card in record["cards"]})


def test_no_guide_is_made_where_none_is_asked_for(build):
    deck = build("--guide", "none")
    assert not (deck / "study-guide.pdf").exists()
    assert record_of(deck)["guide"] == []


@pytest.mark.parametrize(
    ("words", "says"),
    [("0", "Each answer is used once"), ("1", "one is left over"), ("3", "three are left over")],
)
def test_the_directions_say_how_many_words_are_left_over(build, words, says):
    deck = build("--extra-words", words)
    page = pages_of(deck / "study-guide.pdf")[0]
    assert plain(says).casefold() in plain(page).casefold()


def test_every_clue_has_a_line_to_write_on_and_stands_whole_on_its_page(build):
    deck = build()
    blanks = [len(part["blanks"]) for part in record_of(deck)["guide"]]
    with pdfplumber.open(deck / "study-guide.pdf") as pdf:
        lines = [
            sum(1 for line in page.lines if line["x1"] - line["x0"] > 0.25 * page.width)
            for page in pdf.pages
        ]
    assert sum(lines) == sum(blanks)


def test_the_key_answers_every_blank_in_the_order_of_the_guide(build):
    deck = build()
    key = plain(" ".join(pages_of(deck / "teacher.pdf")))
    key = key[key.index(plain("Answer key: study guide")) : key.index(plain("Answer key: cards"))]
    for part in record_of(deck)["guide"]:
        place = key.index(plain(part["blanks"][0]["clue"]))
        for blank in part["blanks"]:
            found = key.index(plain(blank["clue"])[:20], place)
            assert found >= place
            place = found
            answer = re.escape(plain(blank["answer"]))
            assert re.search(answer, key[place : place + 400])
