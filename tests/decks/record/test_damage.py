"""What is wrong with a record is told by its file and field; what is merely more is passed over.

The bounds are those of hostile files: `tests/abuse/test_records.py` has those that are absurd.
"""

import copy
import json
from pathlib import Path

import pytest

from decks.record import DamagedRecordError, read_record

SAMPLES = Path(__file__).with_name("samples") / "format-1"


def sample(activity="review"):
    return json.loads((SAMPLES / activity / "deck.json").read_text(encoding="utf-8"))


def read_as(folder, text):
    (folder / "deck.json").write_text(text, encoding="utf-8")
    return read_record(folder)


def refusal(folder, text):
    with pytest.raises(DamagedRecordError) as refused:
        read_as(folder, text)
    line = str(refused.value)
    assert line.startswith(f"{folder / 'deck.json'} is ")
    assert "\n" not in line
    return refused.value.wrong


def inner(record, path):
    for key in path:
        record = record[key]
    return record


FIELDS = {
    ("number",): "“number”",
    ("teams",): "“teams”",
    ("guide",): "“guide”",
    ("teams", 1, "texture"): "“teams” 2 “texture”",
    ("recipe", "title"): "“recipe” “title”",
    ("cards", 0, "label"): "“cards” 1 “label”",
    ("cards", 11, "level"): "“cards” 12 “level”",
    ("cards", 2, "prompt"): "“cards” 3 “prompt”",
    ("guide", 1, "blanks"): "“guide” 2 “blanks”",
    ("guide", 1, "team"): "“guide” 2 “team”",
}


@pytest.mark.parametrize("path", FIELDS, ids=FIELDS.get)
@pytest.mark.parametrize("lacking", [True, False])
def test_a_field_that_is_lacking_or_cannot_be_is_named(tmp_path, path, lacking):
    record = sample()
    *way, last = path
    inner(record, way)[last] = {"a": "\x1b[31m"}
    if lacking:
        del inner(record, way)[last]
    wrong = refusal(tmp_path, json.dumps(record))
    assert wrong == f"is damaged at {FIELDS[path]} and was left as it is"


@pytest.mark.parametrize(
    ("activity", "path", "value", "where"),
    [
        ("review", ("recipe", "bleed"), 1e300, "“recipe” “bleed”"),
        ("review", ("recipe", "margins", "top"), "wide", "“recipe” “margins” “top”"),
        ("review", ("cards", 4, "prompt_spans"), [[0, 1, "huge"]], "“cards” 5 “prompt_spans”"),
        ("review", ("cards", 4, "picture"), "../../etc/passwd", "“cards” 5 “picture”"),
        ("review", ("cards", 4, "team"), "../Curlew", "“cards” 5 “team”"),
        ("review", ("cards", 4, "answer"), "edited by hand", "“cards” 5 “item”"),
        ("review", ("guide", 0, "blanks", 0, "item"), "0" * 12, "“guide” 1 “blanks”"),
        ("rounds", ("cards", 2, "wrong"), [7], "“cards” 3 “wrong”"),
        ("organizer", ("cards", 0, "expected_share"), 1.5, "“cards” 1 “expected_share”"),
    ],
)
def test_a_value_that_cannot_be_is_named_wherever_it_stands(tmp_path, activity, path, value, where):
    record = sample(activity)
    inner(record, path[:-1])[path[-1]] = value
    assert refusal(tmp_path, json.dumps(record)) == f"is damaged at {where} and was left as it is"


UNREAD = [
    ("title",),
    ("seed",),
    ("made_from",),
    ("lesson",),
    ("guide_more",),
    ("choosing",),
    ("fairness",),
    ("chance_to_win",),
    ("left_out",),
    ("papers",),
    ("leaves",),
    ("guide", 0, "bank"),
    ("guide", 0, "guess_mean"),
    ("cards", 0, "also_right"),
    ("cards", 0, "pinned_to"),
]


@pytest.mark.parametrize("path", UNREAD, ids=lambda path: path[-1])
def test_damage_where_nothing_is_asked_for_is_passed_over(tmp_path, path):
    record = sample()
    sound = read_as(tmp_path, json.dumps(record))
    inner(record, path[:-1])[path[-1]] = [{"": -1e300}]
    assert read_as(tmp_path, json.dumps(record)) == sound
    del inner(record, path[:-1])[path[-1]]
    assert read_as(tmp_path, json.dumps(record)) == sound


def test_text_that_is_no_json_is_told_by_its_line(tmp_path):
    text = json.dumps(sample(), indent=1).replace('"seed": "sample",', '"seed": "sample"', 1)
    number = text.splitlines().index(' "seed": "sample"') + 2  # where the comma is missed
    assert refusal(tmp_path, text) == f"is damaged at line {number} and was left as it is"


def test_a_name_that_stands_twice_is_damage(tmp_path):
    text = json.dumps(sample())
    twice = text.replace('"number": 1,', '"number": 1, "number": 2,', 1)
    assert twice != text
    assert refusal(tmp_path, twice).startswith("is damaged")


@pytest.mark.parametrize("many", ["[],", "0,", '{"a":0},'])
def test_more_values_than_a_deck_has_are_not_read(tmp_path, many):
    text = f'{{"format": 1, "recipe": {{}}, "cards": [], "more": [{many * 2_000_000}0]}}'
    assert refusal(tmp_path, text) == "is far larger than it can be"


def test_what_a_record_has_besides_is_passed_over(tmp_path):
    record = sample()
    more = copy.deepcopy(record)
    for path in ((), ("recipe",), ("recipe", "shift"), ("cards", 3), ("teams", 0), ("guide", 0)):
        inner(more, path)["of a later day"] = {"any": ["thing", None, 1.5]}
    assert read_as(tmp_path, json.dumps(more)) == read_as(tmp_path, json.dumps(record))


def test_a_mark_that_an_editor_puts_before_a_text_does_no_harm(tmp_path):
    text = json.dumps(sample())
    assert read_as(tmp_path, "\ufeff" + text) == read_as(tmp_path, text)
