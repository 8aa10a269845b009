"""What the teacher does to make the deck, in words and in order, with the usual cautions."""

from collections import Counter

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.paper import Paper
from decks.layout.stacking import Stack
from decks.layout.units import in_mm
from decks.lesson import Bases, Telling
from decks.press.handouts.answers import has_answer_list
from decks.press.teacher.copying import guide_copies
from decks.press.teacher.how.organizer import is_compared
from decks.press.teacher.how.sets import bases_laid
from decks.press.teacher.printing import printing_steps
from decks.press.teacher.step import Shown, Step
from decks.press.type.pages import page_paper
from decks.recipe import Activity, Ink, Sides
from decks.words import counted

CUTTING = (
    "Adults only. Guard in place, fingers behind it, blade down and latched whenever the hand "
    "leaves it. A few sheets at a time: about 6 of card or 15 of paper at the most, and a folded "
    "leaf counts as two. The maker’s instructions and the school’s rules come first."
)
MOVING = (
    "Walking only. Floor clear, bags away, an arm’s length apart, no cards or paper lying where "
    "people step. Agree on a stop signal and try it once. Anyone may play seated, no reason asked; "
    "no exercise is ever a penalty. Individual plans and medical notes come first. The school’s "
    "rules, and the staff who are licensed to decide, have the last word."
)
"""Common practice; the number of sheets is a school district's tip."""


def steps_of(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Step]:
    """Return the steps in the order in which they are taken."""
    return [
        *printing_steps(deck, grid, stacks),
        *([_fold_leaves()] if grid.folds_first else []),
        *([] if grid.whole else [_cut(deck, grid, stacks)]),
        _pile(deck, grid, stacks),
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
        return (
            f"There are {len(stacks)} stacks, one for each {deck.owner_word}: cut each by itself."
        )
    return f"There are {len(stacks)} stacks, named at their top edge: cut each by itself."


def _pile(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Step:
    """Say why nothing needs sorting."""
    owner = deck.owner_word
    if grid.whole:
        text = (
            f"There is nothing to cut: the leaves lie {owner} by {owner} in the order of the "
            "labels."
        )
        return Step("Pile", text, Shown.LEAVES)
    text = (
        "Each place on the leaf gives one pile, its lowest number on top; what is cut later goes "
        f"under what was cut before. {_laid(deck, stacks)}: nothing needs sorting."
    )
    if deck.recipe.activity is Activity.COLLECT:
        text += " The spare cards come last: put them by for words that get lost."
    return Step("Pile", text, Shown.PLANS)


def _laid(deck: Deck, stacks: tuple[Stack, ...]) -> str:
    """Say what becomes of an owner's piles; where each has one alone, that is the whole."""
    whose = f"{'a' if len(deck.owners) > 1 else 'the'} {deck.owner_word}’s"
    piles = Counter(pile.team for stack in stacks for pile in stack.piles)
    if max(piles.values(), default=0) > 1:
        return f"Lay {whose} piles on one another in the order of the plan"
    return f"It holds all of {whose} cards"


def _papers(deck: Deck, grid: Grid) -> list[Step]:
    """Say what else is printed, and who gets it."""
    paper = page_paper(deck.recipe.paper)
    wanted = {
        "the answers": _answers(deck, paper) if has_answer_list(deck, grid) else "",
        "the study guide": guide_copies(deck, paper) if deck.guides else "",
        "the sheets": _sheets(deck, paper),
    }
    told = {what: text for what, text in wanted.items() if text}
    title = f"Copy {' and '.join(told)}"
    return [Step(title, " ".join(told.values()))] if told else []


def _answers(deck: Deck, paper: Paper) -> str:
    """Say how often the list of answers is printed: each team, or base, has one of its own."""
    whom = "for whoever checks"
    if isinstance(deck.lesson, Bases):
        laid = bases_laid(deck, deck.lesson)
        whom = f"for the bases, {counted(laid, 'copy', 'copies')}"
    elif deck.owner_word == "team":
        whom += f", {counted(len(deck.recipe.teams), 'copy', 'copies')}"
    return f"Print answers.pdf on {paper.name} {whom}: it stands in the order of the labels."


def _sheets(deck: Deck, paper: Paper) -> str:
    """Say how often what groups write on is printed, where there is such a thing."""
    if not isinstance(deck.lesson, Telling):
        return ""
    copies = counted(len(deck.recipe.teams), "copy", "copies")
    planned = copies if deck.lesson.is_alike else "once, as every page says whose it is"
    told = f"Print planning-sheet.pdf on one side of {paper.name}, {planned}"
    return f"{told}, and comparison.pdf, {copies}." if is_compared(deck.lesson) else f"{told}."
