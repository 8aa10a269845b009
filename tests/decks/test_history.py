"""Earlier decks beside the workbook, and which of them an item was in."""

import json
import os
import shutil
import sys

import pytest
from msgspec.structs import replace
from strategies import card
from support.records import put_down

from cards.finding import Severity, UnusableFileError
from cards.place import Place
from decks.activities import make_deck
from decks.history import earlier_decks
from decks.recipe import Dealing, Recipe
from decks.team import make_teams

RECIPE = Recipe("Saltmarsh week", make_teams(["Heron", "Otter"], [None] * 2))
LUGWORM = card(1, answer="lugworm")


def shelve(shelf, number, items, *, name="", **choices):
    deck = make_deck(replace(RECIPE, **choices), items, number=number, seed=f"seed {number}")
    put_down(deck, shelf / (name or f"{number:02}"))
    return deck


def test_without_a_shelf_there_are_no_earlier_decks(tmp_path):
    history = earlier_decks(tmp_path / "Saltmarsh decks")
    assert (history.decks, history.findings, history.keys) == ((), (), frozenset())


def test_decks_come_in_the_order_of_their_numbers(tmp_path):
    for number in (10, 2, 1):
        shelve(tmp_path, number, [LUGWORM, card(number + 1)])
    history = earlier_decks(tmp_path)
    assert [deck.number for deck in history.decks] == [1, 2, 10]
    assert [deck.folder.name for deck in history.decks] == ["01", "02", "10"]
    assert history.findings == ()


def test_the_items_of_all_decks_are_known(tmp_path):
    shelve(tmp_path, 1, [LUGWORM, card(2), card(3)])
    shelve(tmp_path, 2, [card(2), card(4)])
    shelve(tmp_path, 3, [LUGWORM, card(4)], deal=Dealing.COPIES)
    known = {item.key for item in (LUGWORM, card(2), card(3), card(4))}
    assert earlier_decks(tmp_path).keys == known


@pytest.mark.parametrize(
    "change",
    [
        {"prompt_place": Place("Facts", 90, 4), "answer_place": Place("Facts", 90, 5)},
        {"topic": "Zones", "level": 3, "also_right": ("lug",)},
        {"prompt": "  CLUE   1 ", "answer": "Lugworm"},
    ],
    ids=["moved", "edited elsewhere", "written in another way"],
)
def test_a_row_keeps_its_history_as_long_as_prompt_and_answer_are_the_same(tmp_path, change):
    shelve(tmp_path, 1, [LUGWORM, card(2)])
    assert replace(LUGWORM, **change).key in earlier_decks(tmp_path).keys


@pytest.mark.parametrize("change", [{"prompt": "clue 1 b"}, {"answer": "ragworm"}])
def test_another_prompt_or_answer_is_another_item(tmp_path, change):
    shelve(tmp_path, 1, [LUGWORM, card(2)])
    assert replace(LUGWORM, **change).key not in earlier_decks(tmp_path).keys


def test_what_cannot_be_read_is_named_and_does_not_stop_the_rest(tmp_path):
    shelf = tmp_path / "Saltmarsh decks"
    for number in (1, 4):
        shelve(shelf, number, [LUGWORM, card(2)])
    damaged = shelf / "02" / "deck.json"
    damaged.parent.mkdir()
    damaged.write_text('{"format": 1, "recipe"', encoding="utf-8")
    (shelf / "03").mkdir()
    foreign = shelf / "mine" / "deck.json"
    foreign.parent.mkdir()
    foreign.write_text('{"cards": ["ace"]}', encoding="utf-8")
    history = earlier_decks(shelf)
    assert [deck.number for deck in history.decks] == [1, 4]
    assert [(one.place.sheet, one.severity, one.code) for one in history.findings] == [
        (f"Saltmarsh decks/{name}", Severity.WARNING, "deck-not-read")
        for name in ("02", "03", "mine")
    ]
    assert [one.wrong.partition(": ")[2] for one in history.findings] == [
        "deck.json is damaged at line 1 and was left as it is.",
        "deck.json is missing.",
        "deck.json is not the record of a deck.",
    ]
    assert damaged.read_text(encoding="utf-8") == '{"format": 1, "recipe"'


def test_other_files_and_folders_beside_the_decks_are_not_spoken_of(tmp_path):
    shelve(tmp_path, 1, [LUGWORM, card(2)])
    (tmp_path / "photographs").mkdir()
    (tmp_path / "05").write_text("a file", encoding="utf-8")
    shelve(tmp_path, 9, [card(3), card(4)], name=".09-unfinished")
    history = earlier_decks(tmp_path)
    assert ([deck.number for deck in history.decks], history.findings) == ([1], ())


def test_a_deck_counts_under_whatever_name_but_only_once(tmp_path):
    shelve(tmp_path, 2, [LUGWORM, card(2)], name="02 Monday")
    shelve(tmp_path, 1, [LUGWORM, card(3)])
    shutil.copytree(tmp_path / "01", tmp_path / "01 copy")
    history = earlier_decks(tmp_path)
    assert [deck.folder.name for deck in history.decks] == ["01", "02 Monday"]
    assert [(one.code, one.place.sheet.rpartition("/")[2]) for one in history.findings] == [
        ("deck-twice", "01 copy")
    ]


def test_lost_pictures_do_not_lose_the_history(tmp_path):
    record = shelve(tmp_path, 1, [LUGWORM, card(2)])
    path = tmp_path / "01" / "deck.json"
    told = json.loads(path.read_text(encoding="utf-8"))
    assert told["cards"]
    assert earlier_decks(tmp_path).keys == {one.item.key for one in record.cards}


@pytest.mark.skipif(
    sys.platform == "win32" or os.geteuid() == 0, reason="nothing is kept from this user"
)
def test_a_shelf_that_may_not_be_looked_into_is_named(tmp_path):
    tmp_path.chmod(0)
    try:
        with pytest.raises(UnusableFileError, match="could not be looked at"):
            earlier_decks(tmp_path)
    finally:
        tmp_path.chmod(0o700)


def test_a_folder_that_is_called_by_its_date_is_no_damaged_deck(tmp_path):
    shelve(tmp_path, 1, [LUGWORM])
    (tmp_path / "20260105").mkdir()
    assert earlier_decks(tmp_path).findings == ()
