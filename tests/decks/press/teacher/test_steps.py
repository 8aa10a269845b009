"""The steps for the teacher, as words before any page."""

import re

import pytest
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.layout.grid import make_grid
from decks.layout.stacking import plan
from decks.lengths import Shift
from decks.press.runs import runs_of
from decks.press.teacher.steps import steps_of
from decks.recipe import Activity, CardSize, ComesOut, Flip, Ink, PaperName, Recipe, Sides
from decks.team import make_teams

ITEMS = [card(n, n % 3 + 1, answer=f"{n} tide") for n in range(25)]


def made(*, teams=3, size=CardSize.SMALL, bleed=0.0, paper=PaperName.LETTER, **settings):
    recipe = Recipe(
        title="Shore",
        teams=make_teams(TEAMS[:teams], [None] * teams),
        paper=paper,
        card_size=size,
        bleed=bleed,
        **settings,
    )
    deck = make_deck(recipe, ITEMS, number=1, seed="s")
    grid = make_grid(paper, size, recipe.sides, recipe.flip, bleed=bleed)
    hands = [len(hand) for hand in deck.hands]
    return deck, grid, plan(hands, len(grid.slots), apart=recipe.ink is Ink.STOCK)


def titles(**settings):
    return [step.title for step in steps_of(*made(**settings))]


def words(**settings):
    return " ".join(step.text for step in steps_of(*made(**settings)))


@pytest.mark.parametrize(
    ("settings", "told"),
    [
        ({}, ["Print", "Check the first leaf", "Cut", "Pile"]),
        (
            {"sides": Sides.FOLD},
            ["Print", "Check the first leaf", "Fold and glue", "Cut", "Pile"],
        ),
        # folds that do not meet at one line cannot be made before the cut
        (
            {"sides": Sides.FOLD, "paper": PaperName.TABLOID},
            ["Print", "Check the first leaf", "Cut", "Pile", "Fold and glue"],
        ),
        ({"sides": Sides.TENT}, ["Print", "Check the first leaf", "Cut", "Pile", "Fold"]),
        (
            {"sides": Sides.TWO_PASSES},
            [
                "Try it with one sheet",
                "Print the fronts",
                "Put the pile in again",
                "Print the backs",
                "Cut",
                "Pile",
            ],
        ),
        ({"size": CardSize.FULL}, ["Print", "Check the first leaf", "Pile"]),
        (
            {"size": CardSize.FULL, "sides": Sides.FOLD},
            ["Print", "Check the first leaf", "Pile", "Fold and glue"],
        ),
    ],
)
def test_each_way_has_its_own_steps_in_the_order_of_doing(settings, told):
    assert titles(**settings) == [*told, "Copy the study guide"]


def test_fronts_alone_come_with_their_answers():
    assert titles(sides=Sides.FRONTS)[-1] == "Copy the answers and the study guide"


def test_every_team_gets_a_list_of_answers():
    told = "Print answers.pdf on Letter for whoever checks, 3 copies: it stands in the order"
    assert told in words(sides=Sides.FRONTS)
    assert "1 copy: it stands" in words(sides=Sides.FRONTS, teams=1)
    rounds = words(sides=Sides.FRONTS, activity=Activity.ROUNDS)
    assert "for whoever checks: it stands" in rounds


def test_every_base_gets_a_list_of_answers():
    # 25 cards in three sets, the first of nine; 24 students want nine bases, 16 want six
    told = "Print answers.pdf on Letter for the bases, {} copies: it stands in the order"
    for students, copies in ((24, 9), (16, 6)):
        sets = words(sides=Sides.FRONTS, activity=Activity.STATIONS, students=students)
        assert told.format(copies) in sets


def test_piles_are_laid_on_one_another_only_where_an_owner_has_several():
    # on Letter there are eight small cards, which three teams with eight or nine cards share
    assert "Lay a team’s piles on one another in the order of the plan: nothing" in words()
    assert "Lay the team’s piles on one another" in words(teams=1)
    single = words(size=CardSize.MEDIUM, teams=4)
    assert "It holds all of a team’s cards: nothing needs sorting." in single
    assert "on one another" not in single


def test_one_colour_of_paper_is_not_told_as_several():
    assert "one colour after another" in words(ink=Ink.STOCK)
    for sides in (Sides.DUPLEX, Sides.TWO_PASSES):
        alone = words(ink=Ink.STOCK, teams=1, sides=sides)
        assert "after another" not in alone
        assert "Load 4 sheets of blue Letter, as heavy as" in alone


MEASURED = {"printer": "Staff room", "shift": Shift(right=1.2, up=-0.8)}


@pytest.mark.parametrize("sides", [Sides.DUPLEX, Sides.TWO_PASSES])
def test_a_measured_printer_is_named_with_what_its_backs_are_moved_by(sides):
    told = "Made for the printer “Staff room”: backs moved 1.2 mm right and 0.8 mm down."
    assert told in words(sides=sides, **MEASURED)


@pytest.mark.parametrize("sides", [Sides.FOLD, Sides.TENT, Sides.FRONTS])
def test_where_nothing_is_printed_behind_no_printer_is_named(sides):
    assert "Staff room" not in words(sides=sides, **MEASURED)


@pytest.mark.parametrize(
    ("shift", "told"),
    [
        (Shift(right=-0.5), "backs moved 0.5 mm left."),
        (Shift(up=2), "backs moved 2.0 mm up."),
        (Shift(right=1, skew=-0.4), "backs moved 1.0 mm right, the head 0.4 mm left of the foot."),
        (Shift(), "backs not moved."),
    ],
)
def test_a_shift_is_told_as_it_is_seen(shift, told):
    assert told in words(printer="Staff room", shift=shift)


def test_no_printer_is_named_where_none_was_measured():
    assert "Made for" not in words()


@pytest.mark.parametrize("flip", Flip)
def test_duplex_names_the_edge_to_flip_on(flip):
    assert f"flip on the {flip} edge" in words(flip=flip)


def test_gaps_between_cards_are_told_where_there_are_any():
    assert "both edges of every gap are cut" in words(bleed=3.0)
    assert "gap" not in words()


def test_what_was_printed_up_is_turned_over_and_what_was_printed_down_is_not():
    up = words(sides=Sides.TWO_PASSES, comes_out=ComesOut.FACE_UP)
    down = words(sides=Sides.TWO_PASSES, comes_out=ComesOut.FACE_DOWN)
    assert "turn the whole pile over" in up
    assert "set to face-down" in up
    assert "Do not turn it over" in down
    assert "set to face-up" in down


def test_runs_of_stock_follow_one_another_and_fill_the_file():
    deck, grid, stacks = made(ink=Ink.STOCK)
    runs = runs_of(deck, grid, stacks)
    pages = [page for run in runs for page in range(run.first, run.last + 1)]
    assert pages == list(range(1, 2 * sum(stack.leaves for stack in stacks) + 1))
    assert [run.team for run in runs] == list(deck.recipe.teams)
    assert [run.paper for run in runs][:2] == ["blue", "orange"]


def test_without_stock_all_is_printed_at_one_go():
    deck, grid, stacks = made(sides=Sides.TWO_PASSES, teams=5)
    (run,) = runs_of(deck, grid, stacks)
    assert (run.first, run.last) == (1, sum(stack.leaves for stack in stacks))
    assert run.paper == ""


def test_a_single_page_is_not_told_as_a_range():
    deck, grid, stacks = made(sides=Sides.FRONTS, ink=Ink.STOCK, teams=12)
    assert {re.sub(r"\d+", "n", run.pages) for run in runs_of(deck, grid, stacks)} == {"page n"}
