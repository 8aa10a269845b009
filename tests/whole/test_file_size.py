"""Files small enough to be sent by mail and printed from a stick."""

import csv

import pikepdf
import pytest
from support.shore import fairdeal

ROWS = 240
MOST = 400_000
"""Bytes for 240 cards without pictures: our own aim."""


@pytest.fixture(scope="module")
def deck(tmp_path_factory):
    folder = tmp_path_factory.mktemp("large")
    path = folder / "Shore.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        rows = csv.writer(file)
        rows.writerow(["Prompt", "Answer", "Topic", "Level"])
        for n in range(ROWS):
            pool, step = f"pool {n // 16 + 1}", f"step {n % 16 + 1}"
            prompt = f"Which animal sits on {step} of the rock stairs beside {pool}?"
            rows.writerow([prompt, f"animal {n + 1:03}", f"Pool {n // 40 + 1}", n % 3 + 1])
    done = fairdeal("build", path, "--out", folder)
    assert done.returncode == 0, done.stderr
    return folder / "Shore decks" / "01"


def test_a_deck_of_240_cards_makes_small_files(deck):
    assert all(pdf.stat().st_size < MOST for pdf in deck.glob("*.pdf"))


def test_the_small_files_hold_all_their_pages_and_are_sound(deck):
    with pikepdf.open(deck / "cards.pdf") as pdf:
        assert len(pdf.pages) == 2 * ROWS // 8
        assert pdf.check_pdf_syntax() == []
