"""What the teacher does to make the deck, in words, and the usual cautions."""

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.layout.units import in_mm
from decks.recipe import GuideFor
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


def printing(grid: Grid, leaves: int) -> str:
    """Say how to load the printer and what to choose."""
    sheets = f"Load {counted(leaves, 'sheet')} of {grid.paper.name}"
    scale = "Print cards.pdf at actual size (100 %)"
    if grid.folded:
        return f"{sheets}. {scale}, on one side only."
    return (
        f"{sheets}, the heaviest that the printer’s handbook allows for printing on both sides. "
        f"{scale}, both sides, flip on the {grid.flip} edge."
    )


def checking(grid: Grid) -> str:
    """Say how to see on the first leaf whether all is well."""
    rule = "The rule at its foot measures 100 mm; if not, the page was scaled."
    if grid.folded:
        return f"{rule} Set the scale to 100 % and print again."
    return (
        f"{rule} Hold the leaf to the light: the two corner marks lie back to back. If they lie in "
        "opposite corners, choose the other flip edge and print again."
    )


def folding() -> str:
    """Say how a folded card gets its back."""
    return (
        "Fold each leaf along the line between the dashed marks, print outside, and glue the "
        "halves together before cutting."
    )


def cutting(grid: Grid, stacks: tuple[Stack, ...]) -> str:
    """Say where and how often to cut."""
    size = f"{in_mm(grid.card_width):.1f} × {in_mm(grid.card_height):.1f} mm"
    level = counted(grid.level_cuts, "level cut")
    text = (
        "Keep the leaves in order, leaf 1 on top. Join the marks of the top leaf with pencil and "
        f"ruler and cut along the lines: {level}, then {grid.upright_cuts} upright, {grid.cuts} "
        f"in all. A card measures {size}. Cut a few leaves at a time."
    )
    if len(stacks) == 1:
        return text
    return f"{text} The leaves make {len(stacks)} stacks, named at their top edge."


def piling() -> str:
    """Say why nothing needs sorting."""
    return (
        "Each place on the leaf gives one pile, its lowest number on top; what is cut later goes "
        "under what was cut before. Lay a team’s piles on one another in the order of the plan: "
        "nothing needs sorting."
    )


def guides(deck: Deck) -> str:
    """Say who gets which pages of the study guide."""
    whose = (
        "each student gets the pages of their own team"
        if deck.recipe.guide is GuideFor.TEAM
        else "every student gets the same pages"
    )
    return f"Print study-guide.pdf on one side of the paper: {whose}. The answers follow below."
