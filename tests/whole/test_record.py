"""The record tells all that was printed, and the same choices give the same bytes."""

import hashlib
import json
import re

import pikepdf
import pytest
from support.shore import ITEMS, fairdeal

FILES = ("cards.pdf", "study-guide.pdf", "teacher.pdf", "deck.json")


def record_of(deck):
    return json.loads((deck / "deck.json").read_text(encoding="utf-8"))


def test_nothing_is_lost_and_nothing_doubled(build):
    cards = record_of(build())["cards"]
    assert sorted((c["prompt"], c["answer"], c["topic"]) for c in cards) == sorted(
        (prompt, answer, topic) for prompt, answer, topic, _level in ITEMS
    )
    assert sorted(int(c["label"]) for c in cards) == list(range(1, len(ITEMS) + 1))


def test_copies_give_every_team_every_item_under_the_same_label(build):
    cards = record_of(build("--deal", "copies"))["cards"]
    by_team = {}
    for card in cards:
        by_team.setdefault(card["team"], {})[card["label"]] = card["item"]
    hands = list(by_team.values())
    assert len(hands) == 3
    assert all(hand == hands[0] for hand in hands)
    assert len(hands[0]) == len(ITEMS)


def test_as_many_items_are_chosen_as_were_asked_for_with_the_mix(build):
    record = record_of(build("--cards", "10", "--mix", "50/30/20"))
    levels = [card["level"] for card in record["cards"]]
    assert [levels.count(level) for level in (1, 2, 3)] == [5, 3, 2]  # 50, 30, 20 % of 10
    assert record["choosing"]["goals"]["level"] == {"reached": 0, "bound": 0}
    assert record["recipe"]["cards"] == 10


def test_what_the_content_lacks_for_a_mix_is_told(workbook, tmp_path):
    done = fairdeal("build", workbook, "--out", tmp_path, "--cards", "12", "--mix", "0/0/1")
    assert done.returncode == 0, done.stderr
    # 22 items, levels in turn by threes: 6 of them are hard, and 12 were asked for
    assert sum(map(int, re.findall(r"(\d+) more hard item", done.stdout))) == 6


def test_the_digests_are_those_of_the_papers(build):
    deck = build()
    for name, digest in record_of(deck)["papers"].items():
        assert hashlib.sha256((deck / name).read_bytes()).hexdigest() == digest


@pytest.mark.parametrize("sides", ["duplex", "fold", "tent", "fronts", "two-passes"])
def test_the_record_knows_every_paper_and_counts_the_leaves(build, sides):
    deck = build("--sides", sides)
    record = record_of(deck)
    assert set(record["papers"]) == {path.name for path in deck.glob("*.pdf")}
    cards = "cards-backs.pdf" if sides == "two-passes" else "cards.pdf"
    with pikepdf.open(deck / cards) as pdf:
        assert record["leaves"] == len(pdf.pages) / (2 if sides == "duplex" else 1)


def test_the_record_names_no_folder(build, workbook):
    text = (build() / "deck.json").read_text(encoding="utf-8")
    assert workbook.name in text
    assert str(workbook.parent) not in text


@pytest.mark.parametrize("hash_seed", ["0", "1", "4711"])
def test_the_same_choices_give_the_same_bytes_on_any_run(build, workbook, tmp_path, hash_seed):
    first = build()
    done = fairdeal("build", workbook, "--out", tmp_path, PYTHONHASHSEED=hash_seed, TZ="Asia/Tokyo")
    assert done.returncode == 0, done.stderr
    again = tmp_path / "Shore decks" / "01"
    for name in FILES:
        assert (again / name).read_bytes() == (first / name).read_bytes()


def test_another_seed_gives_another_deck(build):
    one, two = (record_of(build("--seed", seed)) for seed in ("low", "high"))
    assert one["seed"] == "low"
    assert [c["item"] for c in one["cards"]] != [c["item"] for c in two["cards"]]
