"""The keys agree with the cards and the guides, all read back from what was printed."""

import itertools
import re

import pytest
from support.lesson import TEAMS, WORDS, cards_in, lesson, pieces_of, plain, tops_of

ACTIVITIES = ("review", "collect")
DEALS = ("shares", "copies")
SUPPORTS = ("bank", "hints", "none")
GUIDE_KEY = "Answer key: study guide"
CARD_KEYS = {"review": "Answer key: cards", "collect": "Answer key: word cards"}
YES_OR_NO = ("no", "yes")
WAYS = [
    *(
        (*way, False)
        for way in itertools.product(ACTIVITIES, DEALS, SUPPORTS, YES_OR_NO, YES_OR_NO)
    ),
    *((*way, True) for way in itertools.product(ACTIVITIES, DEALS, ("bank",), ("yes",), ("no",))),
]
"""Activity, deal, support, early finishers, large print, and whether the rows are shuffled."""


def deck_of(way):
    activity, deal, support, early, large, shuffled = way
    return lesson(
        shuffled=shuffled,
        activity=activity,
        deal=deal,
        support=support,
        early_finishers=early,
        large_print=large,
    )


def blanks_in(pieces):
    """Return (team, part, number, clue) for every clue among pieces of a guide or of its key."""
    found = []
    team, part = "everyone", 1
    for before, piece in itertools.pairwise(pieces):
        team = next((name for name in TEAMS if piece.split(" · ")[-1] == name), team)
        if match := re.fullmatch(r"Part (\d+)", piece):
            part = int(match[1])
        if piece in WORDS:
            found.append((team, part, int(before), piece))
    return found


def in_guide(deck, name):
    """Return the blanks of a guide's file; a part may go on over pages, a new team begins at 1."""
    blanks = []
    part_of = {}
    for page in pieces_of(deck / name):
        head = next(piece for piece in page if piece.startswith("Study guide"))
        team = head.split(" · ")[-1]
        for piece in page:
            if match := re.fullmatch(r"Part (\d+)", piece):
                part_of[team] = int(match[1])
            if piece in WORDS:
                number = page[page.index(piece) - 1]
                blanks.append((team, part_of.get(team, 1), int(number), piece))
    return blanks


def chapter(deck, title):
    """Return the pieces of a chapter of the teacher's pages, without what stands at their feet."""
    tops = tops_of(deck / "teacher.pdf")
    start = tops.index(title)
    end = next((n for n in range(start + 1, len(tops)) if _begins(tops[n])), None)
    return [piece for page in pieces_of(deck / "teacher.pdf", start, end) for piece in page]


def _begins(top):
    return top.startswith(("Answer key", "How fair", "Keep it"))


def answers_in(pieces):
    """Return the answer and the card that stand behind each clue of the guide's key."""
    return {
        piece: (pieces[n + 1], pieces[n + 2]) for n, piece in enumerate(pieces) if piece in WORDS
    }


def cards_of(deck):
    """Return {label: what stands in front} for every team's cards, as they are printed."""
    held = {}
    for page in cards_in(deck / "cards.pdf")[::2]:
        for cell in page.cells:
            text = plain(page.text_in(cell))
            for team in TEAMS:
                front, name, label = text.rpartition(plain(team))
                if name and label.isdigit():
                    held.setdefault(team, {})[label] = front
    return held


@pytest.mark.parametrize("way", WAYS, ids=str)
def test_one_key_serves_every_version_of_the_guide_and_agrees_with_the_cards(way):
    activity, deal, support, early, _large, shuffled = way
    deck = deck_of(way)
    pieces = chapter(deck, GUIDE_KEY)
    key = blanks_in(pieces)
    assert in_guide(deck, "study-guide.pdf") == key
    assert sorted(clue for _team, _part, _number, clue in key) == sorted(WORDS)
    assert {team for team, *_ in key} == (set(TEAMS) if deal == "shares" else {"everyone"})
    assert (deck / "study-guide-more.pdf").exists() == (early == "yes" and support != "none")
    if (deck / "study-guide-more.pdf").exists():
        assert in_guide(deck, "study-guide-more.pdf") == key
    # the blanks of a guide are the same whatever it offers, so that one key serves a mixed class
    plainest = deck_of((activity, deal, "none", "no", "no", shuffled))
    assert blanks_in(chapter(plainest, GUIDE_KEY)) == key
    answers = answers_in(pieces)
    cards = cards_of(deck)
    for team, _part, _number, clue in key:
        answer, label = answers[clue]
        assert answer == WORDS[clue]
        asked = answer if activity == "collect" else clue
        for holder in [team] if team in TEAMS else TEAMS:
            assert cards[holder][label].endswith(plain(asked))


@pytest.mark.parametrize("deal", DEALS)
@pytest.mark.parametrize("activity", ACTIVITIES)
def test_the_key_to_the_cards_has_every_card(activity, deal):
    deck = lesson(activity=activity, deal=deal)
    pieces = chapter(deck, CARD_KEYS[activity])
    told = {}
    for n, piece in enumerate(pieces):
        if piece in WORDS:
            # label, word, clue where words are gathered; else label, clue, answer
            word, label = (n - 1, n - 2) if activity == "collect" else (n + 1, n - 1)
            assert pieces[word] == WORDS[piece]
            told[pieces[label]] = piece
    cards = cards_of(deck)
    held = {label: front for team in TEAMS for label, front in cards[team].items()}
    assert told.keys() == held.keys()
    for label, clue in told.items():
        asked = WORDS[clue] if activity == "collect" else clue
        assert held[label].endswith(plain(asked))


def banks_in(deck, name):
    """Return for each part of a guide the words of its bank, once for all pages it is on.

    A bank ends where the number of a clue begins; an entry of two lines is two pieces.
    """
    banks = []
    for page in pieces_of(deck / name):
        for n, piece in enumerate(page):
            if piece in {"Word bank", "Bank of answers"}:
                end = next(m for m in range(n, len(page)) if page[m + 1] in WORDS)
                text = plain("".join(page[n + 1 : end]))
                bank = [answer for answer in WORDS.values() if plain(answer) in text]
                assert len(text) == sum(len(plain(answer)) for answer in bank)
                if not banks or banks[-1] != bank:
                    banks.append(bank)
    return banks


@pytest.mark.parametrize("large", ["no", "yes"])
@pytest.mark.parametrize("deal", DEALS)
@pytest.mark.parametrize("activity", ACTIVITIES)
def test_what_the_key_says_of_extra_words_and_guessing_is_true_of_both_banks(activity, deal, large):
    deck = deck_of((activity, deal, "bank", "yes", large, False))
    key = chapter(deck, GUIDE_KEY)
    told = plain(" ".join(key))
    parts = {}
    for team, part, _number, clue in blanks_in(key):
        parts.setdefault((team, part), []).append(WORDS[clue])
    for name, version in (("study-guide.pdf", "first"), ("study-guide-more.pdf", "second")):
        banks = banks_in(deck, name)
        assert len(banks) == len(parts)
        for answers, bank in zip(parts.values(), banks, strict=True):
            assert set(answers) < set(bank)
            extra = set(bank) - set(answers)
            assert len(extra) == 2 if version == "first" else len(extra) >= max(6, len(answers))
            # k blanks, n words, each used once: k/n are right on average (Montmort 1708, k = n)
            mean = len(answers) / len(bank)
            says = rf"{version}version\.extrawords,rightfornoblank:([^.]*)\."
            guess = rf"guessingaloneearns{mean:.1f}of{len(answers)}onaverage"
            notes = [match for match in re.finditer(says, told) if _lists(match[1], extra)]
            assert any(re.search(guess, told[match.end() : match.end() + 150]) for match in notes)


def _lists(told, extra):
    return sorted(told.split(",")) == sorted(map(plain, extra))
