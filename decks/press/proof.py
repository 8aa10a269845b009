"""Reading the proof: what cannot be printed, and what does not fit, before anything is drawn."""

import unicodedata
from collections.abc import Iterator, Sequence

from cards.content import Content
from cards.finding import Finding, Severity
from cards.item import Item, folded
from cards.place import Place
from decks.deck import REVIEW_KINDS
from decks.layout.fitting import LADDER, words_that_fit
from decks.layout.grid import Grid
from decks.press.faces import Shape, fit_face, styled_of
from decks.press.fonts import measure, unprintable
from decks.recipe import CardSize, Recipe


def proofread(items: Sequence[Item], recipe: Recipe, grid: Grid) -> tuple[Finding, ...]:
    """Return what stands in the way of printing these items, as errors at their cells."""
    front = Shape(grid.card_width, grid.card_height, back=False)
    back = Shape(grid.card_width, grid.card_height, back=True)
    findings: list[Finding] = []
    for item in items:
        if item.kind not in REVIEW_KINDS:
            continue
        for text, place, shape in (
            (item.prompt, item.prompt_place, front),
            (item.answer, item.answer_place, back),
        ):
            findings += _letters(text, place)
            findings += _size(item, place, shape, recipe)
        for text in (item.topic, *item.also_right):
            findings += _letters(text, item.prompt_place)
    return tuple(findings)


def proofread_names(recipe: Recipe, content: Content) -> tuple[Finding, ...]:
    """Return what stands in the way of printing the title and the teams' names."""
    cells = [row.name for row in content.teams] + [row.value for row in content.settings]
    places = {folded(cell.text): cell.place for cell in reversed(cells)}
    return tuple(
        finding
        for name in (recipe.title, *(team.name for team in recipe.teams))
        for finding in _letters(name, places.get(folded(name), Place(name)))
    )


def _letters(text: str, place: Place) -> Iterator[Finding]:
    missing = unprintable(text)
    if missing:
        shown = ", ".join(_shown(letter) for letter in missing[:3])
        yield Finding(
            "cannot-be-printed",
            Severity.ERROR,
            place,
            text,
            f"The cards’ typeface has no {shown}.",
            "Write it in other characters, or in words.",
        )


def _shown(letter: str) -> str:
    name = unicodedata.name(letter, "control character").lower()
    sign = f"“{letter}” " if letter.isprintable() else ""
    return f"{sign}({name}, U+{ord(letter):04X})"


def _size(item: Item, place: Place, shape: Shape, recipe: Recipe) -> Iterator[Finding]:
    if fit_face(item, shape) is not None:
        return
    styled = styled_of(item, back=shape.back)
    words = words_that_fit(
        styled, width=shape.text_width, height_=shape.text_height, measure=measure
    )
    side = "back" if shape.back else "front"
    if words:
        mend = f"The first {words} of its {len(styled.text.split())} words would fit: shorten it"
    else:
        mend = "It begins with a word that is wider than the card: part it or write it shorter"
    larger = {CardSize.SMALL: " or choose a larger card", CardSize.MEDIUM: " or take large cards"}
    yield Finding(
        "does-not-fit",
        Severity.ERROR,
        place,
        styled.text,
        f"This does not fit on the {side} of a {recipe.card_size} card at {LADDER[-1]} points.",
        f"{mend}{larger.get(recipe.card_size, '')}.",
    )
