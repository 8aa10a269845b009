"""How often the study guide is copied, and for whom."""

from decks.deck import Deck
from decks.layout.paper import Paper
from decks.recipe import GuideFor, Recipe, Support
from decks.words import counted


def guide_copies(deck: Deck, paper: Paper) -> str:
    """Say how the study guide is printed, who gets it, and how many copies that takes."""
    recipe = deck.recipe
    whose = (
        "each student gets the pages of their own team"
        if recipe.guide is GuideFor.TEAM and not deck.is_one_team
        else "every student gets the same pages"
    )
    sentences = [
        f"Print study-guide.pdf on one side of {paper.name}: {whose}.",
        _how_many(recipe),
        _second(deck),
        "The answers follow below.",
    ]
    return " ".join(filter(None, sentences))


def _how_many(recipe: Recipe) -> str:
    """Reckon the copies; where teams differ in size, as many as the largest needs."""
    students, teams = recipe.students, len(recipe.teams)
    if recipe.guide is not GuideFor.TEAM or teams == 1:
        return f"{counted(students, 'student')}: {counted(students, 'copy', 'copies')}."
    each = -(-students // teams)
    among = f"{counted(students, 'student')} in {teams} teams"
    most = "" if students % teams == 0 else f", {each} in a team at the most"
    return f"{among}{most}: {counted(each, 'copy', 'copies')} of each."


def _second(deck: Deck) -> str:
    """Say what there is for those who are done early."""
    recipe = deck.recipe
    if not recipe.early_finishers:
        return ""
    if not any(guide.second for guide in deck.guides):
        return f"There is no second version: {_as_hard_as_can_be(deck)}."
    how = "without hints" if recipe.support is Support.HINTS else "with more and closer extra words"
    return (
        f"For those who are done early there is study-guide-more.pdf: the same blanks in the same "
        f"order, {how}. A few copies will do."
    )


def _as_hard_as_can_be(deck: Deck) -> str:
    if deck.recipe.support is Support.BANK and any(guide.has_words for guide in deck.guides):
        return "the unit has no other words that could be extra words"
    return "without a bank or hints the guide is as hard as it can be"
