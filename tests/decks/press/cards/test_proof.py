"""The proof: what cannot be printed and what does not fit is found at its cell."""

import pytest
from support.items import item

from cards.content import Cell, Content, ExerciseRow, SettingRow
from cards.place import Place
from decks.layout.grid import make_grid
from decks.press.cards.proof import proofread, proofread_exercises, proofread_names
from decks.recipe import Activity, CardSize, Choices, Flip, PaperName, Recipe, Sides
from decks.team import make_teams


def recipe(size=CardSize.SMALL, **choices):
    teams = make_teams(["Heron", "Otter"], [None, None])
    return Recipe(**({"title": "Shore", "teams": teams, "card_size": size} | choices))


def findings(an_item, size=CardSize.SMALL):
    grid = make_grid(PaperName.LETTER, size, Sides.DUPLEX, Flip.LONG)
    return proofread([an_item], recipe(size), grid)


@pytest.mark.parametrize(
    "text",
    [
        "high tide",
        "À é ñ ő ș ğ Ł ß œ",
        "Ελληνικά και Кириллица",
        "Tiếng Việt",
        "½ × ÷ − ± ≤ ≥ ≠ √ π ° ‰ € £ → H₂O m²",
        "two\nlines",
        "no\N{NO-BREAK SPACE}break",
    ],
)
def test_what_prints_is_passed_in_silence(text):
    assert findings(item(text, text)) == ()


@pytest.mark.parametrize(
    ("text", "named"), [("a ☃", "snowman"), ("bell \a", "U+0007"), ("潮", "cjk")]
)
def test_a_character_that_cannot_be_printed_is_named_at_its_cell(text, named):
    (finding,) = findings(item("What is this?", text))
    assert (finding.code, finding.place.cell) == ("cannot-be-printed", "A2")
    assert named in finding.wrong


# common practice: Vietnamese, polytonic Greek and pointed Hebrew have up to three marks on a letter
@pytest.mark.parametrize("text", ["Tiếng Việt", "ᾧ", "בְּרֵאשִׁית", "ệ̣"])
def test_letters_with_the_marks_that_languages_give_them_are_passed(text):
    assert findings(item(text, text)) == ()


def test_more_marks_than_a_line_has_room_for_are_found():
    (finding,) = findings(item("What is this?", "a" + "\u0301" * 5))
    assert (finding.code, finding.place.cell) == ("piled-marks", "A2")


def test_exercises_are_proofread_where_a_lesson_has_them():
    cells = [
        Cell(text, Place("Exercises", 2, n)) for n, text in enumerate(("hop", "10 ☃", "潮"), 1)
    ]
    content = Content("Shore", (), (), (), (), "", exercises=(ExerciseRow(*cells),))
    found = proofread_exercises(recipe(activity=Activity.ROUNDS), content)
    assert [(f.code, f.place.cell) for f in found] == [
        ("cannot-be-printed", "B2"),
        ("cannot-be-printed", "C2"),
    ]
    assert proofread_exercises(recipe(activity=Activity.REVIEW), content) == ()


def test_a_long_text_is_found_with_the_number_of_words_that_would_fit():
    text = "word " * 150
    (finding,) = findings(item(text.strip(), "answer"))
    assert (finding.code, finding.place.cell) == ("does-not-fit", "B2")
    assert "of its 150 words would fit" in finding.mend
    fitting = int(finding.mend.split("first ")[1].split()[0])
    assert findings(item(("word " * fitting).strip(), "answer")) == ()
    assert findings(item(("word " * (fitting + 1)).strip(), "answer")) != ()


def test_what_does_not_fit_a_small_card_may_fit_a_large_one():
    text = ("word " * 150).strip()
    assert findings(item(text, "answer"), CardSize.LARGE) == ()


def test_a_word_wider_than_the_card_is_found():
    (finding,) = findings(item("prompt", "m" * 60))
    assert finding.code == "does-not-fit"
    assert "wider than the card" in finding.mend


def test_too_many_line_breaks_are_named_as_such():
    (finding,) = findings(
        item("one\ntwo\nthree\nfour\nfive\nsix\nseven\neight\nnine\nten\n" * 2, "a")
    )
    assert "fewer line breaks" in finding.mend


def test_choices_are_not_taken_for_line_breaks_of_the_teacher():
    asked = item("Which of these?", "sand", wrong=tuple(f"stone {n}" for n in range(12)))
    shown = recipe(choices=Choices.SHOWN)
    grid = make_grid(PaperName.LETTER, CardSize.SMALL, Sides.DUPLEX, Flip.LONG)
    (finding,) = proofread([asked], shown, grid)
    assert finding.mend == ("Write the question and its choices shorter or choose a larger card.")


def test_the_wide_word_is_named_wherever_it_stands():
    (finding,) = findings(item(f"short {'m' * 60}", "answer"))
    assert f"“{'m' * 60}” is wider than the card" in finding.mend


def test_a_letter_in_a_topic_is_said_to_be_in_the_topic():
    (finding,) = findings(item(topic="Tides ☃"))
    assert "for the topic “Tides ☃”" in finding.wrong


def test_the_title_and_the_teams_are_proofread_too():
    empty = Content("Unit 3", (), (), (), ())
    teams = make_teams(["Heron", "Otter ☃"], [None, None])
    (finding,) = proofread_names(recipe(teams=teams), empty)
    assert finding.found == "Otter ☃"
    assert str(finding.place) == "--teams"


def test_a_name_among_others_on_the_deck_sheet_is_found_there():
    row = SettingRow(
        Cell("Teams", Place("Deck", 2, 1)), Cell("Heron, Otter ☃", Place("Deck", 2, 2))
    )
    teams = make_teams(["Heron", "Otter ☃"], [None, None])
    (finding,) = proofread_names(recipe(teams=teams), Content("Unit 3", (), (), (row,), ()))
    assert str(finding.place) == "Deck B2"


def test_a_title_that_is_the_name_of_the_file_says_so():
    (finding,) = proofread_names(recipe(title="Shore ☃"), Content("Shore ☃", (), (), (), ()))
    assert "the file’s name" in finding.mend
    (finding,) = proofread_names(recipe(title="Shore ☃"), Content("Unit 3", (), (), (), ()))
    assert "the file’s name" not in finding.mend
