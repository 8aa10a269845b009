"""A deck comes back from its record alone, and prints as it did."""

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from msgspec.structs import replace
from support.records import COLOPHON, CRAB, deck_of, put_down, recipes, rows

from decks.activities import make_deck
from decks.layout.grid import make_grid
from decks.layout.stacking import plan
from decks.lesson import Bases, Called, Telling
from decks.press.cards.pages import card_pages
from decks.press.pdf import make_pdf
from decks.recipe import Activity, CardSize, Dealing, Flip, Ink, PaperName, Recipe, Sides
from decks.record import read_record, write
from decks.team import make_teams

TEAMS = make_teams(["Heron", "Otter", "Samphire"], [None] * 3)
PLAIN = Recipe("Saltmarsh week", TEAMS)


def came_back(deck):
    with TemporaryDirectory() as folder:
        text = put_down(deck, Path(folder))
        return read_record(Path(folder)), text


@given(recipes())
@settings(deadline=None, max_examples=40)
def test_a_record_that_is_read_and_written_again_is_the_same_text(recipe):
    read, text = came_back(deck_of(recipe))
    assert write(read.deck, read.colophon) == text


@given(recipes())
@settings(deadline=None, max_examples=30)
def test_the_recipe_comes_back_with_all_its_values(recipe):
    read, _ = came_back(deck_of(recipe))
    assert read.deck.recipe == replace(recipe, seed="low")
    assert type(read.deck.recipe.card_size) is type(recipe.card_size)


def bare(item):
    """An item as far as a record holds it."""
    nothing = {"topic_place": None, "level_place": None, "picture": "", "picture_place": None}
    return replace(item, also_right_places=(), wrong_places=(), team_place=None, **nothing)


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize("deal", Dealing)
def test_cards_owners_guides_and_lesson_come_back(activity, deal):
    deck = deck_of(replace(PLAIN, activity=activity, deal=deal, early_finishers=True))
    read = came_back(deck)[0].deck
    assert (read.owners, read.number, read.seed) == (deck.owners, 2, "low")
    assert [[replace(card, item=bare(card.item)) for card in hand] for hand in deck.hands] == [
        list(hand) for hand in read.hands
    ]
    assert (read.deal is None) is (deck.deal is None)
    assert read.lesson == deck.lesson
    assert [(guide.team, guide.parts, guide.second) for guide in read.guides] == [
        (guide.team, rounded(guide.parts), rounded(guide.second)) for guide in deck.guides
    ]


def rounded(parts):
    """Parts as a record tells them: to six places."""
    return tuple(replace(part, guess_mean=round(part.guess_mean, 6)) for part in parts)


def test_the_kinds_of_lesson_are_told_apart():
    kinds = {Activity.ROUNDS: Called, Activity.STATIONS: Bases, Activity.ORGANIZER: Telling}
    for activity, kind in kinds.items():
        read, _ = came_back(deck_of(replace(PLAIN, activity=activity)))
        assert isinstance(read.deck.lesson, kind)


def test_how_fair_a_deal_was_comes_back_with_its_proof():
    deck = deck_of(PLAIN)
    read = came_back(deck)[0].deck
    assert read.deal.goals == deck.deal.goals
    assert read.deal.chances == pytest.approx(deck.deal.chances, abs=1e-9)
    assert any(goal.counts for goal in read.deal.goals)


def test_what_else_a_record_tells_comes_back():
    read, _ = came_back(deck_of(PLAIN, number=7))
    assert read.colophon == COLOPHON
    assert (read.number, read.deck.seed, read.colophon.made_from) == (
        7,
        "low",
        "Saltmarsh week.xlsx",
    )
    assert read.colophon.left_out == (("Facts B7", "There is no answer."),)
    assert read.colophon.papers == COLOPHON.papers


def test_pictures_come_back_with_their_bytes_or_only_their_digests(tmp_path):
    put_down(deck_of(PLAIN), tmp_path)
    opened = read_record(tmp_path).deck
    assert CRAB.data in {card.item.image.data for card in opened.cards if card.item.image}
    (tmp_path / "pictures").rename(tmp_path / "gone")
    told = read_record(tmp_path, pictures=False).deck
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
        assert printed(came_back(deck)[0].deck) == printed(deck)


@pytest.mark.parametrize("activity", Activity)
def test_a_rebuilt_deck_of_every_activity_prints_the_same_bytes(activity):
    deck = deck_of(replace(PLAIN, activity=activity))
    assert printed(came_back(deck)[0].deck) == printed(deck)


def test_shares_that_marks_have_moved_come_back_and_no_others():
    deck = deck_of(PLAIN)
    moved = {deck.cards[0].item.key: 0.4375}
    read, text = came_back(replace(deck, shares=moved))
    assert read.deck.shares == moved
    assert write(read.deck, read.colophon) == text


def test_every_team_and_every_card_has_a_line_of_its_own(tmp_path):
    deck = deck_of(PLAIN)
    put_down(deck, tmp_path)
    lines = (tmp_path / "deck.json").read_text(encoding="utf-8").splitlines()
    assert len([line for line in lines if line.startswith('  {"name": ')]) == 2 * len(deck.owners)
    assert len([line for line in lines if line.startswith('  {"label": ')]) == len(deck.cards)
