"""How a deck is kept: what is told of its own files, cards and teams."""

import re

import pytest
from strategies import TEAMS, card
from support.flown import flown, things

from cards.item import Kind
from decks.activities import make_deck
from decks.layout.frame import Text
from decks.press.teacher.keeping import keeping
from decks.recipe import Activity, Dealing, Recipe, Sides
from decks.team import make_teams


def deck_of(activity=Activity.REVIEW, count=12, *, teams=3, names=TEAMS, **settings):
    kind = Kind.DETAIL if activity is Activity.ORGANIZER else Kind.VOCABULARY
    recipe = Recipe(
        "Shore", make_teams(names[:teams], [None] * teams), activity=activity, **settings
    )
    items = [card(n, n % 3 + 1, kind=kind) for n in range(count)]
    return make_deck(recipe, items, number=1, seed="s")


def said(deck):
    pages = flown(deck, lambda width: keeping(deck, width))
    return " ".join(text.text for page in pages for text, _x, _y in things(page, Text))


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize("deal", Dealing)
@pytest.mark.parametrize("count", [1, 2, 12])
def test_the_cards_that_are_named_are_of_this_deck_and_of_one_pile(activity, deal, count):
    deck = deck_of(activity, count, deal=deal)
    (found,) = re.findall(r'\(--cards ([0-9,]+)(?: --team "([^"]+)")?\)', said(deck))
    labels, team = found[0].split(","), found[1]
    for label in labels:
        owners = [deck.owners[card.owner].name for card in deck.cards if card.label == label]
        assert owners == [owners[0]] if not team else team in owners
    assert bool(team) == (len({card.label for card in deck.cards}) < len(deck.cards))


@pytest.mark.parametrize("sign", ['"', "$", "`", "\\", "!"])
def test_no_command_is_printed_that_a_shell_would_read_otherwise(sign):
    awkward, other = [f"The {sign}best{sign} {bird}s" for bird in TEAMS[:2]]
    copies = {"deal": Dealing.COPIES, "teams": 2}
    assert '(--cards 1,12 --team "Dunlin")' in said(deck_of(names=[awkward, "Dunlin"], **copies))
    assert "(--cards 1,12)" in said(deck_of(names=[awkward, other], **copies))
    assert '(--cards 1,12 --team "D’Arcy & 1 > 0")' in said(
        deck_of(names=["D’Arcy & 1 > 0", awkward], **copies)
    )


@pytest.mark.parametrize("activity", [Activity.REVIEW, Activity.STATIONS, Activity.ROUNDS])
def test_a_single_pile_is_kept_as_one(activity):
    several, one = {"teams": 3, "rounds": 3}, {"teams": 1, "rounds": 1}
    for each in ("Count each pile after", "A band or an envelope for each ", "all of them in one"):
        assert each in said(deck_of(activity, **several))
        assert each not in said(deck_of(activity, **one))
    assert "A band or an envelope for the cards, numbers in order; in one box with" in said(
        deck_of(activity, **one)
    )


def test_a_card_that_is_written_again_has_a_back_only_where_the_others_have_one():
    assert "write front, back and number" in said(deck_of())
    assert "write front and number" in said(deck_of(sides=Sides.FRONTS))
