"""No card, guide or label gives an answer away: a text search over what is printed on each side."""

import itertools

import pytest
from support.lesson import HEADINGS, TEAMS, WORDS, cards_in, lesson, pieces_of, plain

ASKED = ("review", "collect", "rounds", "stations")
SUPPORTS = ("bank", "hints", "none")
DEALS = ("shares", "copies")
ANSWERS = [answer for answer in WORDS.values() if not answer.isdigit()]
DETAILS = [detail for told in HEADINGS.values() for detail in told]


def product(*choices):
    return list(itertools.product(*choices))


def cells(deck, *, back):
    """Return the text of every card's side, the empty ones left out."""
    pages = cards_in(deck / "cards.pdf")[back::2]
    return [text for page in pages for cell in page.cells if (text := page.text_in(cell))]


def held(texts, text):
    """Return which of the texts stand in a text."""
    return {one for one in texts if plain(one) in plain(text)}


def guides(deck):
    return [
        "".join(page)
        for name in ("study-guide.pdf", "study-guide-more.pdf")
        if (deck / name).exists()
        for page in pieces_of(deck / name)
    ]


def test_the_search_finds_an_answer_where_there_is_one():
    assert held(ANSWERS, "1 A pool · Rock Pool · Heron") == {"rock pool"}
    assert not held(ANSWERS, "".join([*WORDS, *DETAILS, *TEAMS]))


@pytest.mark.parametrize(("activity", "deal"), product(("review", "rounds", "stations"), DEALS))
def test_a_front_asks_and_only_its_back_answers(activity, deal):
    deck = lesson(activity=activity, deal=deal)
    fronts, backs = cells(deck, back=False), cells(deck, back=True)
    assert len(fronts) == len(backs) >= len(WORDS)
    for text in fronts:
        assert len(held(WORDS, text)) == 1
        assert not held(ANSWERS, text)
    for text in backs:
        assert not held(WORDS, text)


@pytest.mark.parametrize("deal", DEALS)
@pytest.mark.parametrize("sides", ["duplex", "fronts"])
def test_a_word_card_gives_no_clue_and_its_back_only_the_team(deal, sides):
    deck = lesson(activity="collect", deal=deal, sides=sides)
    if sides == "fronts":
        pages = cards_in(deck / "cards.pdf")
        fronts = [t for page in pages for cell in page.cells if (t := page.text_in(cell))]
        assert not (deck / "answers.pdf").exists()
    else:
        fronts = cells(deck, back=False)
        assert set(cells(deck, back=True)) == set(TEAMS)
    assert len(fronts) >= len(ANSWERS)
    for text in fronts:
        assert not held(WORDS, text)
        assert len(held(ANSWERS, text)) == 1 or "spare" in text or "25" in text


@pytest.mark.parametrize("deal", DEALS)
def test_a_detail_in_front_does_not_name_its_heading(deal):
    deck = lesson(activity="organizer", deal=deal)
    for text in cells(deck, back=False):
        assert len(held(DETAILS, text)) == 1
        assert not held(HEADINGS, text)
    assert {tuple(held(HEADINGS, text)) for text in cells(deck, back=True)} == {
        (heading,) for heading in HEADINGS
    }


@pytest.mark.parametrize(
    ("activity", "support", "deal"), product(("review", "collect"), ("hints", "none"), DEALS)
)
def test_a_guide_without_a_bank_names_no_answer(activity, support, deal):
    deck = lesson(activity=activity, support=support, deal=deal, early_finishers="yes")
    pages = guides(deck)
    asked = [clue for page in pages for clue in held(WORDS, page)]
    assert set(asked) == set(WORDS)
    for page in pages:
        assert not held(ANSWERS, page)


@pytest.mark.parametrize(("activity", "deal"), product(("review", "collect"), DEALS))
def test_a_bank_names_the_answers_once_and_in_an_order_of_its_own(activity, deal):
    deck = lesson(activity=activity, support="bank", deal=deal)
    for page in pieces_of(deck / "study-guide.pdf"):
        asked = [piece for piece in page if piece in WORDS]
        named = [piece for piece in page if piece in ANSWERS]
        assert len(named) == len(set(named))
        answers = [WORDS[clue] for clue in asked]
        assert [word for word in named if word in answers] != answers


@pytest.mark.parametrize(("activity", "deal"), product(("rounds", "stations", "organizer"), DEALS))
@pytest.mark.parametrize("support", SUPPORTS)
def test_no_guide_comes_with_what_has_none(activity, deal, support):
    deck = lesson(activity=activity, deal=deal, support=support)
    assert not list(deck.glob("study-guide*"))


@pytest.mark.parametrize("deal", DEALS)
@pytest.mark.parametrize("support", SUPPORTS)
def test_a_planning_sheet_holds_no_detail_and_headings_only_as_a_bank(deal, support):
    deck = lesson(activity="organizer", deal=deal, support=support)
    paths = list(deck.glob("planning*.pdf"))
    assert paths
    for path in paths:
        for page in pieces_of(path):
            assert not held(DETAILS, "".join(page))
            assert support == "bank" or not held(HEADINGS, "".join(page))


@pytest.mark.parametrize(("activity", "deal"), product(("review", "collect"), DEALS))
def test_the_labels_say_nothing_of_the_answers(activity, deal):
    """In the order of the labels neither words nor clues nor the blanks of the guide are sorted."""
    deck = lesson(activity=activity, deal=deal, support="none")
    blanks = [piece for page in pieces_of(deck / "study-guide.pdf") for piece in page]
    place = {clue: n for n, clue in enumerate(blanks) if clue in WORDS}
    clue_of = {plain(answer): clue for clue, answer in WORDS.items()}
    shown = clue_of if activity == "collect" else {plain(clue): clue for clue in WORDS}
    for team in TEAMS:
        labelled = {}
        for text in cells(deck, back=False):
            name, _, label = plain(text).rpartition(plain(team))
            if label.isdigit():
                (clue,) = [shown[one] for one in shown if name.endswith(one)]
                labelled[int(label)] = clue
        clues = [labelled[label] for label in sorted(labelled)]
        assert len(clues) >= len(WORDS) // len(TEAMS)
        assert clues != sorted(clues)
        assert clues != sorted(clues, key=WORDS.get)
        assert clues != sorted(clues, key=place.get)
