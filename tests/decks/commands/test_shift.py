"""What is said of a printer before a deck is built for it."""

import pytest
from support.workbooks import fill

from decks.commands.inspection import inspect
from decks.lengths import NO_SHIFT, Shift
from decks.printers import Reading, remember
from decks.recipe import Flip

ROWS = [("Prompt", "Answer"), ("What digs?", "lugworm"), ("What clings?", "limpet")]
READING = Reading(1, -2, 0, Flip.LONG)


@pytest.fixture
def seen(monkeypatch, tmp_path):
    """Return a function that inspects a small deck with options, one printer being known."""
    folder = tmp_path / "settings"
    monkeypatch.setenv("FAIRDEAL_SETTINGS", str(folder))
    remember(folder, "Staff room", READING, turned=False)

    def found(deck=(), **options):
        path = tmp_path / "shore.xlsx"
        fill({"Facts": ROWS, "Deck": [("Setting", "Value"), *deck]}).save(path)
        inspection = inspect(path, {"teams": "2", **options})
        codes = [(one.code, str(one.place)) for one in inspection.findings]
        return inspection.recipe.shift, codes

    return found


def test_a_known_printer_gives_the_recipe_its_shift(seen):
    assert seen(printer="staff room") == (Shift(1, -2), [])
    assert seen(printer="staff room", flip="short") == (Shift(-1, 2), [])


def test_without_a_printer_nothing_is_moved_and_nothing_is_read(seen, tmp_path):
    (tmp_path / "settings" / "printers.json").write_text("damaged", "utf-8")
    assert seen() == (NO_SHIFT, [])
    assert seen(printer="Staff room", sides="fold") == (NO_SHIFT, [])


def test_the_deck_sheet_may_name_the_printer(seen):
    assert seen([("Printer", "Staff room")]) == (Shift(1, -2), [])
    assert seen([("Printer", "Gym")]) == (NO_SHIFT, [("unknown-printer", "Deck B2")])


def test_where_the_deck_sheet_names_two_printers_the_last_one_is_meant(seen):
    rows = [("Printer", "Office"), ("Printer", "Gym")]
    _, findings = seen(rows)
    assert ("unknown-printer", "Deck B3") in findings
    assert seen([("Printer", "Gym")], printer="Staff room") == (Shift(1, -2), [])


def test_an_unknown_printer_is_an_error_where_it_was_named(seen):
    assert seen(printer="Gym") == (NO_SHIFT, [("unknown-printer", "--printer")])


@pytest.mark.parametrize("sides", ["fold", "tent", "fronts"])
def test_backs_that_are_not_on_the_other_side_need_no_printer(seen, sides):
    assert seen(printer="Gym", sides=sides) == (NO_SHIFT, [])


def test_pages_that_were_not_measured_are_a_warning(seen):
    found = seen(printer="Staff room", card_size="medium")
    assert found == (NO_SHIFT, [("pages-not-measured", "--printer")])


def test_a_card_that_fills_its_paper_is_not_moved(seen):
    found = seen(printer="Staff room", card_size="full")
    assert found == (NO_SHIFT, [("whole-card-not-moved", "--printer")])


def test_two_passes_take_the_upright_leaf_for_every_page(seen):
    note = [("measured-by-hand", "--printer")]
    assert seen(printer="Staff room", sides="two-passes") == (Shift(1, -2), note)
    # turned to the left, up on the paper (-2) is right on the page, and right (1) is down
    turned = seen(printer="Staff room", sides="two-passes", card_size="medium")
    assert turned == (Shift(-2, -1), note)


def test_two_passes_take_nothing_from_the_other_flip(seen):
    found = seen(printer="Staff room", sides="two-passes", flip="short")
    assert found == (NO_SHIFT, [("pages-not-measured", "--printer")])
