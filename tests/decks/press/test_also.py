"""Other right answers stay apart from one another and from the answer."""

import pytest
from support.items import item

from decks.press.also import also_told


@pytest.mark.parametrize(
    ("answer", "others", "told"),
    [
        ("tide", (), ""),
        ("tide", ("the tide",), "also: the tide"),
        ("reçu", ("le reçu", "le ticket"), "also: le reçu, le ticket"),
        ("cher, chère", ("cher", "chère"), "also: cher; chère"),
        ("ebb", ("red, white and blue", "tricolour"), "also: red, white and blue; tricolour"),
    ],
)
def test_semicolons_part_answers_of_which_one_has_a_comma(answer, others, told):
    assert also_told(item(answer=answer, also_right=others)) == told


def test_the_call_sheet_says_right_as_well():
    assert also_told(item(also_right=("worm",)), "also right") == "also right: worm"
