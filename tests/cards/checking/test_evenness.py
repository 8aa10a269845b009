"""Levels, topics, lengths and reading grades of whole sheets."""

import subprocess
import sys
from pathlib import Path

import pytest

from cards.checking import check

NAMES = (
    *("limpet", "whelk", "cockle", "mussel", "barnacle", "winkle", "razor shell"),
    *("prawn", "goby", "blenny", "dulse", "laver"),
)
HEADINGS = ["Prompt", "Answer", "Topic", "Level"]


def rows(topics=("Shells",), levels=("easy", "hard")):
    return [
        [f"Drawing {i} on the wall chart", name, topics[i % len(topics)], levels[i % len(levels)]]
        for i, name in enumerate(NAMES)
    ]


def found(content):
    return [(f.code, str(f.severity), str(f.place)) for f in check(content, ())]


@pytest.mark.parametrize("level", ["easy", "medium", "hard"])
def test_one_level_in_every_row_is_noted(read_sheets, level) -> None:
    content = read_sheets({"Facts": [HEADINGS, *rows(levels=(level,))]})
    assert found(content) == [("same-level", "note", "Facts D2")]


@pytest.mark.parametrize("levels", [("easy", "hard"), (None,)])
def test_several_levels_and_none_are_left(read_sheets, levels) -> None:
    assert found(read_sheets({"Facts": [HEADINGS, *rows(levels=levels)]})) == []


def test_a_topic_with_one_row_is_noted_and_at_most_three_are(read_sheets) -> None:
    some = rows()
    for number in (1, 5, 7, 9):
        some[number][2] = f"Topic {number}"
    assert found(read_sheets({"Facts": [HEADINGS, *some]})) == [
        ("lonely-topic", "note", f"Facts C{row}") for row in (3, 7, 9)
    ]


def test_topics_are_left_where_there_are_few_rows(read_sheets) -> None:
    assert found(read_sheets({"Facts": [HEADINGS, *rows(topics=NAMES)[:7]]})) == []


def test_topics_that_may_stand_for_the_rows_below_them_are_noted(read_sheets) -> None:
    some = rows(topics=(None,))
    some[0][2], some[5][2] = "Shells", "Weeds"
    content = read_sheets({"Facts": [HEADINGS, *some]})
    assert found(content) == [("topic-once", "note", "Facts C3")]
    (finding,) = check(content, ())
    assert finding.wrong == "Of 12 rows only 2 have a topic."


@pytest.mark.parametrize(
    "topics",
    [
        {},
        {1: "Shells"},
        {0: "Shells", 4: "Shells"},
        {0: "Shells", 1: "Weeds", 2: "Crabs", 3: "Birds", 4: "Tides", 5: "Fish", 6: "Salt"},
    ],
)
def test_topics_that_stand_for_their_own_rows_are_left(read_sheets, topics) -> None:
    some = rows(topics=(None,))
    for number, topic in topics.items():
        some[number][2] = topic
    assert found(read_sheets({"Facts": [HEADINGS, *some]})) == []


def test_wrong_answers_that_are_lists_themselves_are_left(read_sheets) -> None:
    questions = [
        ["Question", "Answer", "Wrong answers"],
        ["Which colours has a puffin’s bill?", "red, blue, yellow", "red, green, white"],
        ["How many herring lie in a cran?", "1,200", "1,000,000"],
        ["Where do terns winter?", "far south", "at home, in the far north, or where they were"],
        ["What eats mussels?", "starfish", "terns, auks"],
        ["What eats sand eels?", "puffins", "cod, ling, hake; terns"],
    ]
    assert found(read_sheets({"Questions": questions})) == []


PROMPT = "The organism that continually filters microscopic plankton out of the water"


def test_a_reading_grade_that_is_asked_for_is_the_limit(read_sheets) -> None:
    facts = [HEADINGS, [PROMPT, "mussel"], ["The big old bird that sits on the red post", "tern"]]
    content = read_sheets({"Facts": facts})
    assert found(content) == []
    (finding,) = check(content, (), reading_grade=4)
    assert (finding.code, str(finding.place)) == ("hard-to-read", "Facts A2")
    assert "harder than grade 4, which is asked for" in finding.wrong


def test_plain_prompts_are_graded_without_the_long_list_of_syllables() -> None:
    root = Path(__file__).parents[3]
    code = (
        "import sys; from pathlib import Path; from cards.checking import check; "
        "from cards.reading import read; "
        "check(read(Path('sample_content') / 'Saltmarsh week.xlsx'), ()); "
        "print('cards.checking.grades' in sys.modules, 'pysyllables' in sys.modules)"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=root, check=True, capture_output=True, text=True
    )
    assert done.stdout.split() == ["True", "False"]


def test_a_reading_grade_is_not_given_to_other_languages(read_sheets) -> None:
    german = "Überschwemmungsgefährdete Küstenlandschaften heißen in der Biologie meist auch"
    facts = [HEADINGS, [german, "Watt"]]
    assert check(read_sheets({"Facts": facts}), (), reading_grade=4) == ()
