"""Faces: where things stand on a card, before any PDF."""

import pytest
from support.items import item

from cards.style import Span, TextStyle
from decks.card import Card
from decks.layout.frame import Ribbon, Text
from decks.layout.units import in_mm, mm
from decks.press.cards.faces import face
from decks.press.cards.shape import Shape
from decks.recipe import Choices, Recipe
from decks.team import make_teams

RECIPE = Recipe(title="Shore", teams=make_teams(["Heron", "Otter"], [None, None]))
WIDTH, HEIGHT = mm(97), mm(63)


def sides(prompt="What digs?", answer="lugworm", topic="Life"):
    card = Card("12", 1, item(prompt, answer, topic=topic))
    return [
        face(card, RECIPE.teams[card.owner], Shape(WIDTH, HEIGHT, back=back))
        for back in (False, True)
    ]


def ribbon(frame):
    (found,) = [thing for thing in frame.things if isinstance(thing, Ribbon)]
    return found


def texts(frame):
    return [thing for thing in frame.things if isinstance(thing, Text)]


def test_the_ribbon_stands_on_the_same_physical_edge_front_and_back():
    front, back = map(ribbon, sides())
    assert in_mm(front.x) == pytest.approx(5)
    assert WIDTH - (back.x + back.width) == pytest.approx(front.x)
    assert front.team == back.team == 1


def test_both_sides_say_topic_team_and_label_and_only_the_back_the_answer():
    front, back = ({text.text for text in texts(frame)} for frame in sides())
    assert front == {"Life", "What digs?", "Otter", "12"}
    assert back == {"Life", "lugworm", "Otter", "12"}


def test_the_answer_is_strong_and_the_prompt_is_not():
    front, back = sides()
    assert [text.strong for text in texts(front) if text.text == "What digs?"] == [False]
    assert [text.strong for text in texts(back) if text.text == "lugworm"] == [True]


def test_the_level_is_not_told():
    for frame in sides():
        assert not {"medium", "2"} & {text.text for text in texts(frame)}


def test_up_to_three_lines_are_centred_and_more_are_flush_left():
    def starts(prompt):
        front, _ = sides(prompt)
        size = max(text.size for text in texts(front))
        return [round(text.x, 3) for text in texts(front) if text.size == size]

    short = starts("What digs?\nA worm")
    assert len(set(short)) == 2
    long = starts("one\ntwo and more\nthree\nfour and even more")
    assert len(long) == 4
    assert len(set(long)) == 1
    program = starts("while it rains:\n    wait\ngo out")
    assert len(program) == 3
    assert len(set(program)) == 1


def test_the_letters_of_two_choices_stand_under_one_another_and_the_answer_is_centred():
    card = Card("1", 0, item("The moon is a star.", "False", wrong=("True",)))
    front, back = (
        face(
            card,
            RECIPE.teams[0],
            Shape(WIDTH, HEIGHT, back=back, choices=Choices.SHOWN),
        )
        for back in (False, True)
    )
    size = max(text.size for text in texts(front))
    read = [text for text in texts(front) if text.size == size]
    assert [text.text for text in read][1:] == ["A.\u00a0False", "B.\u00a0True"]
    assert len({round(text.x, 3) for text in read}) == 1
    assert "A.\u00a0False" in [text.text for text in texts(back)]


def test_a_text_that_does_not_fit_is_not_drawn_silently():
    with pytest.raises(ValueError, match="word"):
        sides(prompt="word " * 300)


def test_raised_lowered_and_bold_letters_of_the_cell_are_set_so():
    spans = (Span(1, 2, TextStyle.LOWERED), Span(4, 8, TextStyle.BOLD))
    card = Card("1", 0, item("H2O boil", "steam", prompt_spans=spans))
    front = face(card, RECIPE.teams[card.owner], Shape(WIDTH, HEIGHT, back=False))
    letters = {text.text.strip(): text for text in texts(front)}
    assert letters["2"].size < letters["H"].size
    assert letters["2"].y < letters["H"].y
    assert letters["2"].x > letters["H"].x
    assert letters["boil"].strong
    assert not letters["H"].strong
