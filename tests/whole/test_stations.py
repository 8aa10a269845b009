"""A lesson at bases, from the workbook to the printed cards and the teacher's pages."""

import re

import pytest
from support.lesson import WORDS, cards_in, lesson, pieces_of, plain, without_foot
from support.workbooks import fill

from decks.commands.production import make


def deck(**options):
    return lesson(activity="stations", rounds="3", **options)


def fronts(folder):
    """Return the pages of fronts, each as its cards by their place: set, base and clue."""
    pages = cards_in(folder / "cards.pdf")[::2]
    return [
        {place: read for place, cell in enumerate(page.cells) if (read := card(page.text_in(cell)))}
        for page in pages
    ]


def card(text):
    """Return the number of the set, the label, and the clue of a side, or None where it is empty.

    The label follows the name of the set, so that of 25 cards in three sets it has one figure.
    """
    clue = next((clue for clue in WORDS if plain(clue) in plain(text)), None)
    found = re.search(r"set(\d)(\d)$", plain(without_foot(text)))
    return (int(found[1]), int(found[2]), clue) if found else None


def test_every_question_is_on_one_card_and_the_label_is_its_base():
    cards = [one for page in fronts(deck()) for one in page.values()]
    assert sorted(clue for _set, _base, clue in cards) == sorted(WORDS)
    for number, most in ((1, 9), (2, 8), (3, 8)):
        bases = sorted(base for one, base, _clue in cards if one == number)
        assert bases == list(range(1, most + 1))


@pytest.mark.parametrize("size", ["small", "large", "full"])
def test_every_place_of_the_leaves_gives_a_pile_in_the_order_of_sets_and_bases(size):
    pages = fronts(deck(card_size=size))
    piles = {}
    for page in pages:
        for place, (number, base, _clue) in page.items():
            piles.setdefault(place, []).append((number, base))
    assert sum(map(len, piles.values())) == len(WORDS)
    for pile in piles.values():
        assert pile == sorted(pile)


def test_the_set_list_answers_every_card_at_its_base():
    folder = deck()
    pages = pieces_of(folder / "teacher.pdf")
    told = plain(" ".join(piece for page in pages for piece in page))
    told = told[told.index(plain("Answer key: the sets")) :]
    starts = [told.index(f"set{n}{most}cards") for n, most in ((1, 9), (2, 8), (3, 8))]
    ends = [*starts[1:], len(told)]
    for page in fronts(folder):
        for number, base, clue in page.values():
            part = told[starts[number - 1] : ends[number - 1]]
            assert plain(f"{base}{clue}") in part
            assert plain(WORDS[clue]) in part[part.index(plain(clue)) :]


def test_no_base_has_the_same_topic_in_neighbouring_sets_where_topics_are_even(tmp_path):
    topics = ("Tides", "Life", "Land")
    rows = [(f"Question {n} of the shore", f"answer{n}", topics[n % 3]) for n in range(24)]
    fill({"Facts": [("Prompt", "Answer", "Topic"), *rows]}).save(tmp_path / "Shore.xlsx")
    make(
        tmp_path / "Shore.xlsx",
        {"activity": "stations", "rounds": "3"},
        out=None,
        skip_errors=False,
    )
    pages = cards_in(tmp_path / "Shore decks" / "01" / "cards.pdf")[::2]
    told = [plain(page.text_in(cell)) for page in pages for cell in page.cells]
    at = {}
    for text in filter(None, told):
        found = re.match(
            rf"({'|'.join(map(plain, topics))})question\d+oftheshoreset(\d)(\d)$", text
        )
        at[int(found[2]), int(found[3])] = found[1]
    assert len(at) == 24
    for base in range(1, 9):
        assert at[1, base] != at[2, base] != at[3, base]


def test_a_tent_has_its_question_and_its_answer_upright_on_its_two_sides():
    """On the flat leaf one half stands on its head, so that the folded tent reads on both sides."""
    pages = cards_in(deck(sides="tent", card_size="large") / "cards.pdf")
    asked, answered = set(), set()
    for page in pages:
        for cell in page.cells:
            text = plain(page.text_in(cell))
            clue = next((clue for clue in WORDS if plain(clue) in text), None)
            word = next((w for w in WORDS.values() if plain(w) in text and not clue), None)
            if clue or word:
                (way,) = page.directions_in(cell)
                (asked if clue else answered).add(way)
    assert asked
    assert asked | answered == {1, -1}
    assert not asked & answered
