"""Records of an earlier day are read; those of a later one are named."""

import json
from pathlib import Path

import pytest

from decks.record import DamagedRecordError, read_record

EARLIER = Path(__file__).with_name("format_1.json")
"""A record as it was written before it told its lesson, places and pictures."""


@pytest.fixture
def earlier(tmp_path):
    (tmp_path / "deck.json").write_bytes(EARLIER.read_bytes())
    return tmp_path


def test_an_earlier_record_is_read(earlier):
    told = json.loads(EARLIER.read_text(encoding="utf-8"))
    assert not {"lesson", "pictures", "guide_more"} & told.keys()
    deck = read_record(earlier)
    assert [(card.label, deck.owners[card.owner].name, card.item.key) for card in deck.cards] == [
        (card["label"], card["team"], card["item"]) for card in told["cards"]
    ]
    assert len(deck.cards) == 6
    assert [guide.team for guide in deck.guides] == ["Heron", "Otter"]


def test_a_record_without_a_choice_added_later_has_its_default(earlier):
    record = json.loads(EARLIER.read_text(encoding="utf-8"))
    del record["recipe"]["points"], record["recipe"]["walk"]
    (earlier / "deck.json").write_text(json.dumps(record), encoding="utf-8")
    recipe = read_record(earlier).recipe
    assert (recipe.points.first, recipe.walk) == (1, 10_000)


@pytest.mark.parametrize("number", [2, 1_000])
def test_a_record_of_a_newer_form_is_named_as_such(earlier, number):
    record = json.loads(EARLIER.read_text(encoding="utf-8")) | {"format": number}
    (earlier / "deck.json").write_text(json.dumps(record), encoding="utf-8")
    with pytest.raises(DamagedRecordError, match=r"newer Fairdeal.*Bring this one up to date"):
        read_record(earlier)
