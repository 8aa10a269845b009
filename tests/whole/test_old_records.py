"""Decks that were made before are still of use: a sample of every format, and of every activity.

The samples are fixed data: the record, the pictures and the filled-in marks of a tiny workbook, as
they were written when their format was the newest. A sample is never made again: a Fairdeal of
today that cannot read one has broken the deck of a teacher.
"""

import json
import shutil
from pathlib import Path

import openpyxl
import pypdfium2
import pytest
from support.shore import fairdeal
from support.workbooks import fill

from decks.history import earlier_decks
from decks.recipe import Activity
from decks.record import FORMAT, read_record, with_pictures
from decks.record.earlier import FORMATS

SAMPLES = Path(__file__).parents[1] / "decks" / "record" / "samples"
EACH = sorted(path.parent.relative_to(SAMPLES).as_posix() for path in SAMPLES.rglob("deck.json"))


@pytest.fixture(params=EACH)
def deck(request, tmp_path):
    """A sample on a shelf of its own."""
    return shutil.copytree(SAMPLES / request.param, tmp_path / "Saltmarsh decks" / "01")


def told_by(deck):
    return json.loads((deck / "deck.json").read_text(encoding="utf-8"))


def test_there_is_a_sample_of_every_format_and_activity():
    assert max(FORMATS) == FORMAT
    assert set(EACH) >= {f"format-{number}/{kind}" for number in FORMATS for kind in Activity}


def test_its_cards_and_the_blanks_of_its_guides_are_read(deck):
    told, read = told_by(deck), read_record(deck)
    cards = [
        (card.label, read.owners[card.owner].name, card.item.prompt, card.item.answer)
        for card in read.cards
    ]
    assert cards == [
        (card["label"], card["team"], card["prompt"], card["answer"]) for card in told["cards"]
    ]
    blanks = [
        (guide.team, item.key)
        for guide in read.guides
        for part in guide.parts
        for item in part.blanks
    ]
    assert blanks == [
        (part["team"], blank["item"]) for part in told["guide"] for blank in part["blanks"]
    ]


def test_its_pictures_are_those_that_were_printed(deck):
    files = {card["picture"] for card in told_by(deck)["cards"]} - {None}
    cards = with_pictures(read_record(deck).cards, deck)
    shown = {card.item.image.data for card in cards if card.item.image}
    assert shown == {(deck / file).read_bytes() for file in files}


def test_it_counts_as_an_earlier_deck(deck):
    history = earlier_decks(deck.parent)
    assert history.findings == ()
    assert {card["item"] for card in told_by(deck)["cards"]} <= history.keys


def test_its_cards_are_printed_again(deck):
    done = fairdeal("reprint", deck, "--all")
    assert (done.returncode, done.stderr) == (0, "")
    pages = pypdfium2.PdfDocument(deck / "reprint-1.pdf")
    text = "".join("".join(page.get_textpage().get_text_range().split()) for page in pages)
    for card in told_by(deck)["cards"]:
        for one in (card["answer"], card["team"] + card["label"]):
            assert "".join(one.split()) in text


def test_its_marks_are_read(deck):
    tally = openpyxl.load_workbook(deck / "marks.xlsx")["Tally"]
    rows = [row[-3:-1] for row in tally.iter_rows(values_only=True) if isinstance(row[-2], int)]
    tries, right = map(sum, zip(*rows, strict=True))
    done = fairdeal("marks", deck, "--json")
    assert (done.returncode, done.stderr) == (0, "")
    shown = json.loads(done.stdout)
    assert (shown["tries"], shown["right"], shown["findings"]) == (tries, right, [])
    assert right < tries


UNREAD = ("title", "seed", "made_from", "lesson", "guide_more", "choosing", "fairness", "left_out")


def test_damage_where_nothing_is_asked_for_spoils_no_sound_card(deck):
    def used(name):
        assert fairdeal("reprint", deck, "--all", "--out", deck / name).returncode == 0
        shown = json.loads(fairdeal("marks", deck, "--json").stdout)
        return (deck / name).read_bytes(), {**shown, "pages": None}

    sound, record = used("sound.pdf"), told_by(deck)
    for name in UNREAD:
        record[name] = [{"damaged": -1e300}]
    for part in record["guide"]:
        part["bank"] = part["guess_all"] = None
    del record["papers"], record["leaves"], record["chance_to_win"]
    (deck / "deck.json").write_text(json.dumps(record), encoding="utf-8")
    assert used("damaged.pdf") == sound


def test_the_next_deck_is_made_of_what_was_missed(tmp_path):
    deck = shutil.copytree(SAMPLES / "format-1" / "review", tmp_path / "Saltmarsh decks" / "01")
    words = [(card["answer"], card["prompt"], card["topic"]) for card in told_by(deck)["cards"]]
    book = tmp_path / "Saltmarsh.xlsx"
    teams = [["Team"], ["Heron"], ["Otter"]]
    sheets = {"Vocabulary": [("Word", "Meaning", "Topic"), *words], "Teams": teams}
    fill(sheets).save(book)
    done = fairdeal("next", book)
    assert (done.returncode, done.stderr) == (0, "")
    made = {card["item"] for card in told_by(deck.with_name("02"))["cards"]}
    tally = openpyxl.load_workbook(deck / "marks.xlsx")["Tally"].iter_rows(values_only=True)
    missed = {str(row[0]) for row in tally if row[-3] == 6 and row[-2] == 0}
    assert missed
    known = {card["label"]: card["item"] for card in told_by(deck)["cards"]}
    assert {known[label] for label in missed} <= made
