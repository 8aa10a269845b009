"""Reading the proof: what cannot be printed, and what does not fit, before anything is drawn."""

import re
import unicodedata
from collections.abc import Iterator, Sequence
from dataclasses import replace

from cards.content import Content
from cards.finding import Finding, Severity
from cards.item import Item, folded
from cards.place import Place
from decks.deck import REVIEW_KINDS
from decks.layout.fitting import LADDER, words_that_fit
from decks.layout.grid import Grid
from decks.layout.runs import Styled
from decks.press.faces import Shape, fit_face, fit_styled, styled_of
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
        findings += _letters(item.topic, item.topic_place or item.prompt_place, "topic")
        for text, place in zip(item.also_right, item.also_right_places, strict=False):
            findings += _letters(text, place, "other right answer")
    return tuple(findings)


def proofread_names(recipe: Recipe, content: Content) -> tuple[Finding, ...]:
    """Return what stands in the way of printing the title and the teams' names."""
    cells = [row.name for row in content.teams] + [row.value for row in content.settings]
    places = {folded(cell.text): cell.place for cell in reversed(cells)}
    named = [("title", recipe.title), *(("team’s name", team.name) for team in recipe.teams)]
    return tuple(
        finding
        for what, name in named
        for finding in _letters(name, places.get(folded(name), Place(f"The {what}")), what)
    )


def _letters(text: str, place: Place, what: str = "") -> Iterator[Finding]:
    """Find letters that the typeface lacks; `what` says which text of the row or deck it is."""
    missing = unprintable(text)
    if missing:
        where = f" for the {what} “{text}”" if what else ""
        shown = ", ".join(_shown(letter) for letter in missing[:3])
        yield Finding(
            "cannot-be-printed",
            Severity.ERROR,
            place,
            text,
            f"The cards’ typeface has no {shown}{where}.",
            _how_to_write(missing),
        )


def _how_to_write(missing: Sequence[str]) -> str:
    if any(letter.isprintable() for letter in missing):
        return "Write it in other characters, or in words."
    return "It cannot be seen: clear the cell and write the text again."


def _shown(letter: str) -> str:
    name = unicodedata.name(letter, "control character").lower()
    sign = f"“{letter}” " if letter.isprintable() else ""
    return f"{sign}({name}, U+{ord(letter):04X})"


def _size(item: Item, place: Place, shape: Shape, recipe: Recipe) -> Iterator[Finding]:
    if fit_face(item, shape) is not None:
        return
    styled = styled_of(item, back=shape.back)
    side = "back" if shape.back else "front"
    larger = {CardSize.SMALL: " or choose a larger card", CardSize.MEDIUM: " or take large cards"}
    yield Finding(
        "does-not-fit",
        Severity.ERROR,
        place,
        styled.text,
        f"This does not fit on the {side} of a {recipe.card_size} card at {LADDER[-1]} points.",
        f"{_what_would_fit(styled, shape)}{larger.get(recipe.card_size, '')}.",
    )


def _what_would_fit(styled: Styled, shape: Shape) -> str:
    words = re.findall(r"[^ \t\n]+", styled.text)
    wide = [w for w in words if measure(w, styled.strong) * LADDER[-1] > shape.text_width]
    if wide:
        return f"“{wide[0]}” is wider than the card: part it or write it shorter"
    fitting = words_that_fit(
        styled, width=shape.text_width, height_=shape.text_height, measure=measure
    )
    if fit_styled(replace(styled, text=" ".join(words), spans=()), shape):
        return "It would fit with fewer line breaks: take some out"
    return f"The first {fitting} of its {len(words)} words would fit: shorten it"
