"""Whatever stands in a workbook, and whatever was chosen: a whole deck, or a clear line."""

import json
import tempfile
from collections import Counter
from pathlib import Path

import pypdfium2
from hypothesis import HealthCheck, given, settings
from support.any_workbook import choices, save, workbooks
from support.records import read_with_pictures
from support.shore import fairdeal

from cards.finding import FairdealError, UnusableFileError
from decks.commands.inspection import inspect
from decks.commands.options import ONLY_NEXT
from decks.recipe import Sides
from decks.settings import UsageError

PATIENT = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)
AN_ANSWER = {0, 1, 2, 3}
ABOUT_THE_DECK = ("The title", "Card size", "--")


@given(sheets=workbooks(), chosen=choices())
@settings(deadline=None, max_examples=30, suppress_health_check=PATIENT)
def test_what_is_found_stands_at_a_cell_that_is_there(sheets, chosen):
    with tempfile.TemporaryDirectory() as folder:
        path = save(Path(folder, "Shore.xlsx"), sheets)
        try:
            findings = inspect(path, chosen).findings
        except (UnusableFileError, UsageError) as refused:
            assert_one_line(refused)
            return
    for finding in findings:
        place = finding.place
        assert finding.wrong
        assert finding.mend
        if place.sheet in sheets:
            assert place.row <= len(sheets[place.sheet])
            assert place.column <= max(map(len, sheets[place.sheet])) + 1
        else:
            assert place.sheet.startswith(ABOUT_THE_DECK), place


@given(sheets=workbooks(), chosen=choices())
@settings(deadline=None, max_examples=10, suppress_health_check=PATIENT)
def test_any_workbook_and_choices_make_a_whole_deck_or_say_why_not(sheets, chosen):
    options = [f"--{key.replace('_', '-')}={value}" for key, value in as_given(chosen).items()]
    with tempfile.TemporaryDirectory() as folder:
        path = save(Path(folder, "Shore.xlsx"), sheets)
        before = path.read_bytes()
        done = fairdeal("build", path, "--skip-errors", *options)
        assert done.returncode in AN_ANSWER
        assert path.read_bytes() == before
        made = Path(folder, "Shore decks", "01")
        assert made.exists() is (done.returncode == 0), done.stdout + done.stderr
        if not made.exists():
            assert done.stderr.strip()
            assert [one.name for one in Path(folder).iterdir()] == ["Shore.xlsx"]
            return
        assert_whole(made)
        other = Path(folder, "elsewhere")
        again = fairdeal("build", path, "--skip-errors", *options, "--out", other)
        assert again.returncode == 0, again.stderr
        assert files_of(other / "Shore decks" / "01") == files_of(made)


def as_given(chosen: dict[str, str]) -> dict[str, str]:
    """Return the choices as a build's options are called; a command line has no NUL."""
    return {
        "size" if key == "card_size" else key: value.replace("\0", "")
        for key, value in chosen.items()
        if key not in ONLY_NEXT
    }


def assert_one_line(refused: FairdealError) -> None:
    assert str(refused).strip()
    assert "\n" not in str(refused)


def assert_whole(made: Path) -> None:
    """Check a deck's folder: every owner has each of its cards once, every page is there."""
    deck = read_with_pictures(made)
    record = json.loads((made / "deck.json").read_bytes())
    for hand in deck.hands:
        rows = Counter(card.item.prompt_place for card in hand)
        assert max(rows.values(), default=1) == 1
    labels = [(number, card.label) for number, hand in enumerate(deck.hands) for card in hand]
    assert len(set(labels)) == len(labels)
    pages = {path.name: len(pypdfium2.PdfDocument(path)) for path in made.glob("*.pdf")}
    assert set(record["papers"]) == set(pages)
    assert all(pages.values())
    faces = 2 if deck.recipe.sides is Sides.DUPLEX else 1
    fronts = pages.get("cards.pdf", pages.get("cards-fronts.pdf"))
    assert fronts == record["leaves"] * faces


def files_of(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
