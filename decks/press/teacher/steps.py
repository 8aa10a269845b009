"""What the teacher does to make the deck, in words and in order, with the usual cautions."""

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.layout.units import in_mm
from decks.press.pages import page_paper
from decks.press.teacher.printing import printing_steps
from decks.press.teacher.step import Shown, Step
from decks.recipe import GuideFor, Ink, Sides
from decks.words import counted

CUTTING = (
    "Adults only. Guard in place, fingers behind it, blade down and latched whenever the hand "
    "leaves it. A few sheets at a time: about 6 of card or 15 of paper at the most, and a folded "
    "leaf counts as two. The maker’s instructions and the school’s rules come first."
)
MOVING = (
    "Walking only. Floor clear, bags away, an arm’s length apart, no cards or paper lying where "
    "people step. Agree on a stop signal and try it once. Anyone may play seated, no reason asked. "
    "Individual plans and medical notes come first. The school’s rules, and the staff who are "
    "licensed to decide, have the last word."
)
"""Common practice; the number of sheets is a school district's (see the facts in the tests)."""


def steps_of(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Step]:
    """Return the steps in the order in which they are taken."""
    return [
        *printing_steps(deck, grid, stacks),
        *([_fold_leaves()] if grid.folds_first else []),
        *([] if grid.whole else [_cut(deck, grid, stacks)]),
        _pile(grid),
        *([_fold_cards(grid)] if grid.folded and not grid.folds_first else []),
        *_papers(deck, grid),
    ]


def _fold_leaves() -> Step:
    text = "Fold each leaf between the dashed marks, print outside, and glue the halves together."
    return Step("Fold and glue", text)


def _fold_cards(grid: Grid) -> Step:
    fold = "Fold each card in half, edge on edge, print outside"
    if grid.sides is Sides.TENT:
        return Step("Fold", f"{fold}, and stand it on its two edges: both sides read upright.")
    return Step("Fold and glue", f"{fold}, and glue the halves together.")


def _cut(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Step:
    """Say where and how often to cut."""
    size = f"{in_mm(grid.card_width):.1f} × {in_mm(grid.card_height):.1f} mm"
    sentences = [
        "Keep the leaves in order, leaf 1 on top.",
        _scoring(grid),
        _lines_told(grid),
        "Cards stand apart, so both edges of every gap are cut." if grid.gutter else "",
        f"A card measures {size}{' folded' if grid.folded else ''}.",
        _stacks_told(deck, stacks),
    ]
    return Step("Cut", " ".join(filter(None, sentences)), Shown.CAUTION)


def _lines_told(grid: Grid) -> str:
    return (
        "Join the marks of the top leaf with pencil and ruler and cut along the lines in the "
        f"order of the plan: {counted(grid.level_cuts, 'level cut')}, then {grid.upright_cuts} "
        f"upright through every strip, {grid.cuts} in all."
    )


def _scoring(grid: Grid) -> str:
    if not grid.folded or grid.folds_first:
        return ""
    return (
        "Thick card folds cleanly when it is scored first: a ruler, and a blunt point along the "
        "line between dashed marks. Do not cut there."
    )


def _stacks_told(deck: Deck, stacks: tuple[Stack, ...]) -> str:
    if len(stacks) == 1:
        return ""
    if deck.recipe.ink is Ink.STOCK:
        return f"There are {len(stacks)} stacks, one for each team: cut each by itself."
    return f"There are {len(stacks)} stacks, named at their top edge: cut each by itself."


def _pile(grid: Grid) -> Step:
    """Say why nothing needs sorting."""
    if grid.whole:
        text = "There is nothing to cut: the leaves lie team by team in the order of the labels."
        return Step("Pile", text, Shown.LEAVES)
    text = (
        "Each place on the leaf gives one pile, its lowest number on top; what is cut later goes "
        "under what was cut before. Lay a team’s piles on one another in the order of the plan: "
        "nothing needs sorting."
    )
    return Step("Pile", text, Shown.PLANS)


def _papers(deck: Deck, grid: Grid) -> list[Step]:
    """Say what else is printed, and who gets it."""
    paper = page_paper(deck.recipe.paper).name
    answers = (
        f"Print answers.pdf on {paper} for whoever checks: it stands in the order of the labels."
    )
    whose = (
        "each student gets the pages of their own team"
        if deck.recipe.guide is GuideFor.TEAM
        else "every student gets the same pages"
    )
    guide = f"Print study-guide.pdf on one side of {paper}: {whose}. The answers follow below."
    wanted = {
        "the answers": answers if grid.sides is Sides.FRONTS else "",
        "the study guide": guide if deck.guides else "",
    }
    told = {what: text for what, text in wanted.items() if text}
    title = f"Copy {' and '.join(told)}"
    return [Step(title, " ".join(told.values()), with_next=True)] if told else []
