"""Records that are damaged, foreign, hostile or absurd: a line that says what to do, no traceback.

What a record may be is any JSON at all: either a deck comes of it or `DamagedRecordError`.
"""

import copy
import json
import os
from contextlib import suppress
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from support.pictures import coded, disc
from support.records import deck_of, put_down, read_with_pictures
from support.shore import fairdeal

from decks.history import earlier_decks
from decks.recipe import Activity, Recipe
from decks.record import DamagedRecordError
from decks.team import make_teams

TEAMS = make_teams(["Heron", "Otter"], [None] * 2)
JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner),
    max_leaves=12,
)


def good(folder: Path, activity: Activity = Activity.REVIEW) -> dict:
    put_down(deck_of(Recipe("Saltmarsh", TEAMS, activity=activity)), folder)
    return json.loads((folder / "deck.json").read_text(encoding="utf-8"))


@pytest.fixture(scope="module", params=["review", "rounds", "stations", "organizer"])
def deck(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp(request.param)
    return folder, good(folder, Activity(request.param))


def laid(folder: Path, record: object) -> Path:
    (folder / "deck.json").write_text(json.dumps(record), encoding="utf-8")
    return folder


def refusal(folder: Path) -> str:
    with pytest.raises(DamagedRecordError) as refused:
        read_with_pictures(folder)
    line = str(refused.value)
    assert "\n" not in line
    assert line.startswith(str(folder))
    assert refused.value.mend.endswith(".")
    return line


def read_or_refused(folder: Path) -> None:
    with suppress(DamagedRecordError):
        read_with_pictures(folder)


@given(JSON)
@settings(deadline=None)
def test_any_json_is_no_deck(record):
    with TemporaryDirectory() as folder:
        refusal(laid(Path(folder), record))


@given(st.binary(max_size=200))
@settings(deadline=None)
def test_any_bytes_are_no_deck(data):
    with TemporaryDirectory() as folder:
        (Path(folder) / "deck.json").write_bytes(data)
        refusal(Path(folder))


def places(value, path=()):
    """Yield the path to every value inside a record."""
    yield path
    if isinstance(value, dict | list):
        for key, each in value.items() if isinstance(value, dict) else enumerate(value):
            yield from places(each, (*path, key))


def changed(record, path, value, *, drop):
    """Return a record with one value replaced or left out."""
    record = copy.deepcopy(record)
    *way, last = path
    inner = record
    for key in way:
        inner = inner[key]
    if drop:
        del inner[last]
    else:
        inner[last] = value
    return record


@given(data=st.data())
@settings(deadline=None, max_examples=150)
def test_any_change_of_a_good_record_is_read_or_refused(deck, data):
    folder, record = deck
    paths = [path for path in places(record) if path]
    path = data.draw(st.sampled_from(paths))
    value = data.draw(JSON | st.sampled_from(["../../etc/passwd", -1, 0, 1e308, 10**400, "\ud800"]))
    read_or_refused(laid(folder, changed(record, path, value, drop=data.draw(st.booleans()))))


@given(start=st.floats(0, 1))
@settings(deadline=None, max_examples=60)
def test_a_record_that_is_cut_off_is_refused(deck, start):
    folder, record = deck
    text = json.dumps(record)
    (folder / "deck.json").write_text(text[: int(start * (len(text) - 1))], encoding="utf-8")
    assert "is damaged" in refusal(folder)


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (("recipe", "card_size"), {"width": 0.001, "height": 0.001}),
        (("recipe", "margins"), {"top": -900, "right": 5, "bottom": 5, "left": 5}),
        (("recipe", "bleed"), 1e9),
        (("recipe", "read_from"), 0),
        (("recipe", "shift"), {"right": 400, "up": 0, "skew": 0}),
        (("recipe", "sides"), "triplex"),
        (("recipe", "language"), "es_MX"),
        (("recipe", "language"), "en) /OpenAction (x"),
        (("recipe", "language"), None),
        (("owners", 0, "colour"), "red"),
        (("owners", 0, "texture"), "../slant"),
        (("owners", 1, "name"), "Heron"),
        (("owners",), []),
        (("cards", 0, "label"), "../1"),
        (("cards", 0, "label"), "2"),
        (("cards", 0, "team"), "Curlew"),
        (("cards", 0, "level"), 4),
        (("cards", 0, "prompt"), "another clue"),
        (("cards", 0, "prompt"), "\ud800"),
        (("cards", 0, "prompt_spans"), [[3, 2, "bold"]]),
        (("cards", 0, "prompt_spans"), [[0, 900, "bold"]]),
        (("cards", 0, "picture"), "../pictures/0123456789abcdef.png"),
        (("cards", 0, "picture"), "pictures/../../0123456789abcdef.png"),
        (("cards", 0, "picture"), "/etc/passwd"),
        (("cards", 0, "picture"), "pictures/0123456789abcdef.png\n"),
        (("guide", 0, "blanks", 0, "item"), "0" * 12),
        (("number",), True),
        (("number",), 10**50),
    ],
)
def test_what_no_deck_can_have_is_refused(tmp_path, path, value):
    record = good(tmp_path)
    assert "deck.json is damaged" in refusal(
        laid(tmp_path, changed(record, path, value, drop=False))
    )


@pytest.mark.parametrize(
    "text", ["[" * 200_000, '{"a":' * 100_000, "1" * 100_000, "NaN", "[1e999]"]
)
def test_absurd_json_is_refused(tmp_path, text):
    (tmp_path / "deck.json").write_text(text, encoding="utf-8")
    refusal(tmp_path)


def test_a_record_far_too_large_is_not_opened(tmp_path):
    with (tmp_path / "deck.json").open("wb") as file:
        file.truncate(10 << 30)  # sparse: ten gibibytes that are not there
    assert "far larger than it can be" in refusal(tmp_path)


def test_a_pipe_in_place_of_a_record_is_not_waited_for(tmp_path):
    os.mkfifo(tmp_path / "deck.json")
    assert "is missing" in refusal(tmp_path)


def test_a_folder_in_place_of_a_record_is_told(tmp_path):
    (tmp_path / "deck.json").mkdir()
    assert "Name the folder of a deck" in refusal(tmp_path)


def pictured(folder: Path) -> Path:
    """Put a deck down and return one of its pictures."""
    good(folder)
    return min((folder / "pictures").glob("*.png"))


def test_a_picture_that_is_gone_is_named(tmp_path):
    picture = pictured(tmp_path)
    picture.unlink()
    assert f"{picture} is missing" in refusal(tmp_path)


def test_a_picture_that_is_gone_spoils_only_the_cards_that_show_it(tmp_path):
    record = good(tmp_path)
    for picture in (tmp_path / "pictures").iterdir():
        picture.unlink()
    shown = {card["label"]: card["picture"] for card in record["cards"]}
    assert set(map(bool, shown.values())) == {True, False}
    for label, picture in shown.items():
        done = fairdeal("reprint", tmp_path, "--cards", label)
        assert done.returncode == (3 if picture else 0), done.stderr


@pytest.mark.parametrize("data", [b"", b"PNG", coded(disc(61))])
def test_another_picture_of_the_same_name_is_named(tmp_path, data):
    picture = pictured(tmp_path)
    picture.write_bytes(data)
    assert str(picture) in refusal(tmp_path)


def test_a_picture_with_another_size_in_the_record_is_refused(tmp_path):
    record = good(tmp_path)
    for told in record["pictures"].values():
        told["width"] += 1
    assert "is not the picture that was printed" in refusal(laid(tmp_path, record))


COMMANDS = (
    ("--all",),
    ("--cards", "1", "--sides", "fold"),
)


@pytest.mark.parametrize("words", COMMANDS)
def test_the_command_ends_in_one_line_and_leaves_a_damaged_deck_as_it_is(tmp_path, words):
    laid(tmp_path, {"format": 1, "recipe": {}, "cards": [{}]})
    done = fairdeal("reprint", tmp_path, *words)
    assert (done.returncode, done.stdout) == (3, "")
    assert done.stderr.startswith(f"fairdeal: {tmp_path}")
    assert done.stderr.count("\n") == 1
    assert [entry.name for entry in tmp_path.iterdir()] == ["deck.json"]


@pytest.mark.parametrize(
    "change",
    [
        {"prompt": "an endless clue " * 400},
        {"prompt": "a letter \U000e0001 that no typeface has"},
        {"topic": "\x1b[31mred"},
    ],
)
def test_what_cannot_be_printed_is_told_and_not_drawn(tmp_path, change):
    deck = deck_of(Recipe("Saltmarsh", TEAMS), 6)
    record = json.loads(put_down(deck, tmp_path))
    item = deck.cards[0].item
    # changed by someone who knows how keys are made
    key = replace(item, **change).key
    record["cards"][0] |= change | {"item": key}
    for blank in (blank for part in record["guide"] for blank in part["blanks"]):
        blank["item"] = key if blank["item"] == item.key else blank["item"]
    laid(tmp_path, record)
    done = fairdeal("reprint", tmp_path, "--all")
    assert done.returncode == 3
    assert "has been changed: " in done.stderr
    assert "\x1b" not in done.stderr
    assert not list(tmp_path.glob("*.pdf"))


def test_damage_in_one_deck_does_not_hide_the_others(tmp_path):
    for number in ("01", "02", "03"):
        good(tmp_path / number)
    (tmp_path / "02" / "deck.json").write_text("[" * 100_000, encoding="utf-8")
    found = earlier_decks(tmp_path)
    assert [one.folder.name for one in found.decks] == ["01"]
    assert {finding.place.sheet[-2:] for finding in found.findings} == {"02", "03"}
