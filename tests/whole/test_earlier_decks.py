"""A build beside earlier decks."""

import shutil

from support.shore import fairdeal
from support.workbooks import fill


def test_a_build_says_what_was_in_earlier_decks_and_names_one_that_is_damaged(workbook, tmp_path):
    file = tmp_path / "Shore.xlsx"
    shutil.copy(workbook, file)
    first = fairdeal("build", file, "--cards", "10")
    assert "earlier decks" not in first.stdout
    second = fairdeal("build", file)
    assert "10 of 22 items were in earlier decks" in second.stdout
    foreign = tmp_path / "Shore decks" / "03"
    foreign.mkdir()
    (foreign / "deck.json").write_text("[]")
    third = fairdeal("build", file)
    assert third.returncode == 0, third.stderr
    assert "warning Shore decks/03" in third.stdout
    assert (foreign / "deck.json").read_text() == "[]"
    assert (tmp_path / "Shore decks" / "04" / "cards.pdf").exists()


def test_nothing_is_said_of_earlier_decks_that_had_none_of_the_items(tmp_path):
    file = tmp_path / "Shore.xlsx"
    for word in ("crab", "whelk"):
        rows = [
            ("Prompt", "Answer"),
            *((f"Which {word} is it? {n}", f"{word} {n}") for n in "abcd"),
        ]
        fill({"Facts": rows}).save(file)
        told = fairdeal("build", file).stdout
    assert "deck 2" in told
    assert "earlier decks" not in told
