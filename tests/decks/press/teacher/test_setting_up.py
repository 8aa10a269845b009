"""Whether there are enough words, against figures worked out by hand.

A trip of 10 m and back takes 25.895 s: 20 m at 2.5 miles an hour, which is 1.1176 m a second
(Youth Compendium of Physical Activities, Butte et al. 2018), and 8 s at its ends. In 20 minutes
that is 46 trips.
"""

import pytest
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.layout.flow import flow
from decks.press.teacher.setting_up import advice, is_enough, reckoning
from decks.press.type.pages import BOTTOM, TOP, column, page_paper
from decks.recipe import Activity, Dealing, GuideFor, Recipe
from decks.team import make_teams


def deck_of(items, *, teams=4, **settings):
    recipe = Recipe(
        "Shore",
        make_teams(TEAMS[:teams], [None] * teams),
        activity=Activity.COLLECT,
        **{"deal": Dealing.SHARES, **settings},
    )
    made = [card(n, n % 3 + 1, answer=f"word {n}") for n in range(items)]
    return make_deck(recipe, made, number=1, seed="s")


def texts_in(frame):
    for thing in frame.things:
        if hasattr(thing, "frame"):
            yield from texts_in(thing.frame)
        elif hasattr(thing, "text"):
            yield thing.text


def rows(deck):
    """The rows of the table by their first words."""
    blocks = reckoning(deck, column(page_paper(deck.recipe.paper)))
    told = [list(texts_in(block.frame)) for block in blocks]
    return {row[0]: row[1:] for row in told if len(row) == 3}


def test_a_table_for_eighteen_words_and_six_students():
    """18 trips are 466.1 s, 7.8 min; with one in four caught 24 trips, 621.5 s, 10.4 min, and 34
    of the 46 trips bring a word. 46 words fill 18 blanks twice, 34 once."""
    told = rows(deck_of(72))
    assert told["Walks there and back in 20 minutes"] == ["46", "46"]
    assert told["Words home by then"] == ["18 of 18", "18 of 18"]
    assert told["The last word is home after"] == ["about 8 minutes", "about 10 minutes"]
    assert told["Each student walks"] == ["3 times", "4 times"]
    assert told["Fills the 18 blanks of the guide"] == ["2 times", "once"]


def test_a_table_for_more_words_than_time():
    """72 copies: 46 home, 34 if one in four is caught; of 72 blanks 63 and 47 in a hundred. Of
    six students each walks 46 / 6, seven or eight times."""
    told = rows(deck_of(72, deal=Dealing.COPIES, guide=GuideFor.CLASS))
    assert told["Words home by then"] == ["46 of 72", "34 of 72"]
    assert told["Each student walks"] == ["7 or 8 times", "7 or 8 times"]
    assert told["Fills the 72 blanks of the guide"] == ["63 % of them", "47 % of them"]


def test_few_words_are_told_with_what_would_last():
    """The share of each of four teams is 18; 46 trips, in fives 45 words; and 20 minutes over 7.8
    are two rounds. A way on which 18 words last is 32.8 m, which few rooms have."""
    assert advice(deck_of(72)) == (
        "18 words a team are too few for 20 minutes: they will be home after about 8 minutes. "
        "Plan 2 "
        "rounds: lay the cards out again when all are home, or give every team the same 45 words: "
        "copies with Deal, 45 with Cards."
    )


def test_a_longer_way_is_advised_where_a_room_has_it():
    """20 words in 20 minutes at 4 m: 15.16 s a trip, home after 5.1 minutes; 60 s a trip are
    (60 - 8) / 2 s each way, 29.06 m."""
    assert "take a longer way: 29 m (95 ft) with Walk" in advice(
        deck_of(20, deal=Dealing.COPIES, walk=4_000)
    )


@pytest.mark.parametrize(
    ("deal", "items", "number"), [(Dealing.COPIES, 72, "45"), (Dealing.SHARES, 288, "180")]
)
def test_many_words_are_told_with_how_many_to_choose(deal, items, number):
    """72 words of 25.895 s are 31.1 minutes, so that 32 would do."""
    said = advice(deck_of(items, deal=deal))
    assert said.startswith("72 words a team are too many for 20 minutes: about 46 will come home.")
    assert f"Choose {number} with Cards, or take 32 minutes with Minutes" in said


def test_advice_is_a_sentence_also_where_no_word_comes_home():
    """200 m and back are 358 s, 24 trips of 366 s 146 minutes, more than a lesson has."""
    said = advice(deck_of(24, deal=Dealing.COPIES, walk=200_000, minutes=1))
    assert said.endswith("about 0 will come home. Let two of a team walk at a time.")


def test_words_that_last_are_right():
    """30 words: 12.9 minutes, with one in four caught 40 trips, 17.3 minutes."""
    made = deck_of(30, deal=Dealing.COPIES)
    assert is_enough(made)
    assert advice(made) == (
        "30 words a team are right for 20 minutes: they will be home after about 13 to 17 minutes."
    )


def test_a_single_word_and_a_single_student_are_told_as_one():
    """One word is home after 25.9 s."""
    alone = deck_of(1, teams=1, students=1)
    assert advice(alone).startswith(
        "1 word is too few for 20 minutes: it will be home after about 1 minute. "
    )
    blocks = reckoning(alone, column(page_paper(alone.recipe.paper)))
    (subtitle,) = (text for text in texts_in(blocks[0].frame) if "student" in text)
    assert subtitle.endswith("1 card and 1 student")


def test_what_is_chosen_as_advised_is_right():
    assert is_enough(deck_of(72, deal=Dealing.COPIES, cards=45))


@pytest.mark.parametrize(
    "settings",
    [
        {},
        {"walk": 200_000, "minutes": 1},
        {"walk": 1_000, "minutes": 90, "students": 1},
        {"guide": GuideFor.NONE},
        {"teams": 12, "students": 60, "deal": Dealing.COPIES},
    ],
)
def test_it_is_one_page_in_every_class(settings):
    made = deck_of(24, **settings)
    paper = page_paper(made.recipe.paper)
    blocks = reckoning(made, column(paper))
    assert len(flow(blocks, x=0, top=paper.height - TOP, bottom=BOTTOM)) == 1


@pytest.mark.parametrize("teams", [1, 4, 12])
def test_the_room_shows_every_team_and_how_far_it_is(teams):
    made = deck_of(24, teams=teams, walk=12_000)
    blocks = reckoning(made, column(page_paper(made.recipe.paper)))
    told = list(texts_in(blocks[-1].frame))
    assert told[1 : 1 + teams] == list(TEAMS[:teams])
    assert told[-1] == "12 m (39 ft), out and home"


def test_what_is_assumed_is_said_with_its_source():
    made = deck_of(72)
    blocks = reckoning(made, column(page_paper(made.recipe.paper)))
    note = " ".join(text for block in blocks for text in texts_in(block.frame))
    for word in ("2.5 miles an hour", "Butte et al. 2018", "our own judgement", "26 seconds"):
        assert word in note
