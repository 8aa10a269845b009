"""A deck comes back from its record alone, and prints as it did."""

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from msgspec.structs import replace
from support.records import CRAB, deck_of, put_down, read_with_pictures, recipes, rows

from decks.activities import make_deck
from decks.layout.grid import make_grid
from decks.layout.stacking import plan
from decks.press.cards.pages import card_pages
from decks.press.pdf import make_pdf
from decks.recipe import Activity, CardSize, Dealing, Flip, Ink, PaperName, Recipe, Sides
from decks.record import read_record
from decks.team import make_teams

TEAMS = make_teams(["Heron", "Otter", "Samphire"], [None] * 3)
PLAIN = Recipe("Saltmarsh week", TEAMS)


def came_back(deck):
    with TemporaryDirectory() as folder:
        put_down(deck, Path(folder))
        return read_with_pictures(Path(folder))


@given(recipes())
@settings(deadline=None, max_examples=30)
def test_the_recipe_comes_back_with_all_its_values(recipe):
    read = came_back(deck_of(recipe)).recipe
    assert read == replace(recipe, seed="low")
    assert type(read.card_size) is type(recipe.card_size)


def bare(item):
    """An item as far as it is read."""
    places = dict.fromkeys(["topic_place", "level_place", "picture_place", "team_place"])
    lists = dict.fromkeys(["also_right", "also_right_places", "wrong_places"], ())
    return replace(item, team=None, picture="", **places, **lists)


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize("deal", Dealing)
def test_cards_owners_and_the_blanks_of_guides_come_back(activity, deal):
    deck = deck_of(replace(PLAIN, activity=activity, deal=deal, early_finishers=True))
    read = came_back(deck)
    assert (read.owners, read.number) == (deck.owners, 2)
    assert [[replace(card, item=bare(card.item)) for card in hand] for hand in deck.hands] == [
        list(hand) for hand in read.hands
    ]
    assert asked(read) == [
        (team, [tuple(map(bare, blanks)) for blanks in parts]) for team, parts in asked(deck)
    ]


def asked(deck):
    """Return the blanks of each guide, part by part."""
    return [(guide.team, [part.blanks for part in guide.parts]) for guide in deck.guides]


def test_pictures_come_back_with_their_bytes_or_only_their_digests(tmp_path):
    put_down(deck_of(PLAIN), tmp_path)
    opened = read_with_pictures(tmp_path)
    assert CRAB.data in {card.item.image.data for card in opened.cards if card.item.image}
    (tmp_path / "pictures").rename(tmp_path / "gone")
    told = read_record(tmp_path)
    assert [card.item for card in told.cards] == [without_bytes(card.item) for card in opened.cards]


def without_bytes(item):
    return replace(item, image=item.image and replace(item.image, data=b""))


def test_a_record_can_be_named_itself(tmp_path):
    put_down(deck_of(PLAIN), tmp_path)
    assert read_record(tmp_path / "deck.json") == read_record(tmp_path)


def printed(deck):
    recipe = deck.recipe
    grid = make_grid(recipe.paper, recipe.card_size, recipe.sides, recipe.flip)
    hands = [len(hand) for hand in deck.hands]
    stacks = plan(hands, len(grid.slots), apart=recipe.ink is Ink.STOCK)
    pages = card_pages(deck, grid, stacks)
    return make_pdf(pages, title=deck.name, owners=deck.owners, ink=recipe.ink)


@pytest.mark.parametrize("sides", Sides)
@pytest.mark.parametrize("ink", Ink)
def test_a_rebuilt_deck_prints_the_same_bytes(sides, ink):
    items = [item for item in rows(14) if item.kind != "detail"][:3]
    for size in CardSize:
        recipe = replace(PLAIN, paper=PaperName.A4, sides=sides, ink=ink, card_size=size)
        deck = make_deck(replace(recipe, flip=Flip.SHORT), items, number=1, seed="low")
        assert printed(came_back(deck)) == printed(deck)


@pytest.mark.parametrize("activity", Activity)
def test_a_rebuilt_deck_of_every_activity_prints_the_same_bytes(activity):
    deck = deck_of(replace(PLAIN, activity=activity))
    assert printed(came_back(deck)) == printed(deck)


def test_shares_that_marks_have_moved_come_back_and_no_others():
    deck = deck_of(PLAIN)
    moved = {deck.cards[0].item.key: 0.4375}
    assert came_back(replace(deck, shares=moved)).shares == moved
