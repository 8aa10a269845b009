"""The foot of a page of running type."""

import pytest

from decks.layout.flow import Block
from decks.layout.frame import Frame, Text
from decks.layout.paper import PAPERS
from decks.press.type.pages import MARGIN, pages
from decks.press.type.setting import NOTE, Style, width_of
from decks.recipe import PaperName

PAPER = PAPERS[PaperName.LETTER]
TITLE = "Everything that we learned about the saltmarsh, the tides and the birds in the autumn term"
TEAM = "The Great Crested Terns of the Northern Estuary"
LARGE = Style(18)


def feet(foot, style):
    (page,) = pages([Block(Frame(10, 10, ()))], PAPER, foot=foot, style=style)
    return [thing for thing in page.things if isinstance(thing, Text)]


def test_a_foot_that_has_room_is_not_shortened():
    said, number = feet(("Shore", "deck 1", "Heron"), NOTE)
    assert (said.text, number.text) == ("Shore · deck 1 · Heron", "page 1 of 1")


def test_what_is_long_is_shortened_and_not_what_stands_last():
    title, *rest = feet((TITLE, "deck 1", "Heron", "second version"), NOTE)[0].text.split(" · ")
    assert rest == ["deck 1", "Heron", "second version"]
    assert title.endswith("…")
    cut = title.removesuffix("…")
    assert TITLE.startswith((f"{cut} ", f"{cut}, "))


@pytest.mark.parametrize("style", [NOTE, LARGE], ids=["usual", "large print"])
@pytest.mark.parametrize("title", ["Shore", TITLE])
@pytest.mark.parametrize("team", ["Heron", TEAM])
def test_the_deck_is_told_and_nothing_runs_into_the_number(title, team, style):
    said, number = feet((title, "deck 12", team, "second version"), style)
    assert "deck 12" in said.text
    assert MARGIN + width_of(said.text, style) <= number.x - style.size / 2
    if style is NOTE:
        assert said.text.endswith("second version")
