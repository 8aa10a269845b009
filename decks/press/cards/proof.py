"""Reading the proof: what cannot be printed, and what does not fit, before anything is drawn."""

import re
import unicodedata
from collections.abc import Iterator, Sequence

from msgspec.structs import replace

from cards.content import Cell, Content
from cards.finding import Finding, Severity
from cards.item import Item, folded
from cards.place import Place
from cards.quoting import quoted
from decks.layout.grid import Grid
from decks.press.cards.coarse import proofread_picture
from decks.press.cards.drawings import proofread_drawing
from decks.press.cards.faces import shapes_of
from decks.press.cards.sizes import proofread_size
from decks.press.type.fonts import unprintable
from decks.recipe import Activity, Recipe, choices_are_printed

_OTHER_TITLE = "The title is the file’s name as long as the Deck sheet has none."
_MOST_MARKS = 4
_PILED = re.compile(f"m{{{_MOST_MARKS + 1}}}")


def proofread(items: Sequence[Item], recipe: Recipe, grid: Grid) -> tuple[Finding, ...]:
    """Return what stands in the way of printing and reading these items, at their cells."""
    front, back = shapes_of(grid, recipe)
    kinds = recipe.activity.asks
    findings: list[Finding] = []
    for item in items:
        if item.kind not in kinds:
            continue
        findings += _letters(item.prompt, item.prompt_place)
        findings += proofread_size(item, front, recipe)
        findings += _letters(item.answer, item.answer_place)
        findings += proofread_size(item, back, recipe)
        findings += proofread_picture(item, front)
        findings += proofread_drawing(item)
        findings += _letters(item.topic, item.topic_place or item.prompt_place, "topic")
        for text, place in zip(item.also_right, item.also_right_places, strict=False):
            findings += _letters(text, place, "other right answer")
        if choices_are_printed(recipe):
            for text, place in zip(item.wrong, item.wrong_places, strict=False):
                findings += _letters(text, place, "wrong answer")
    return tuple(findings)


def proofread_names(recipe: Recipe, content: Content) -> tuple[Finding, ...]:
    """Return what stands in the way of printing the title and the teams' names."""
    cells = [row.name for row in content.teams] + [row.value for row in content.settings]
    is_file = recipe.title == content.name
    place = _where_named(recipe.title, cells, "The title" if is_file else "--title")
    findings = list(_letters(recipe.title, place, "title"))
    if is_file:
        findings = [replace(one, mend=f"{one.mend} {_OTHER_TITLE}") for one in findings]
    for team in recipe.teams:
        place = _where_named(team.name, cells, "--teams")
        findings += _letters(team.name, place, "team’s name")
    return tuple(findings)


def _where_named(name: str, cells: Sequence[Cell], elsewhere: str) -> Place:
    """Return the cell that says a name, by itself or in a list, or where else it comes from."""
    for cell in cells:
        if folded(name) in map(folded, (cell.text, *cell.text.split(","))):
            return cell.place
    return Place(elsewhere)


def proofread_exercises(recipe: Recipe, content: Content) -> tuple[Finding, ...]:
    """Return what exercises are printed without, where the lesson has any: no deck need wait."""
    if recipe.activity is not Activity.ROUNDS:
        return ()
    cells = [cell for row in content.exercises for cell in (row.name, row.how_many, row.gentler)]
    found = (f for cell in cells if cell for f in _letters(cell.text, cell.place, "exercise"))
    return tuple(replace(finding, severity=Severity.WARNING) for finding in found)


def _letters(text: str, place: Place, what: str = "") -> Iterator[Finding]:
    """Find letters that the typeface lacks; `what` says which text of the row or deck it is."""
    missing = unprintable(text)
    if not text.isascii() and _PILED.search(_kinds(text)):
        yield Finding(
            "piled-marks",
            Severity.ERROR,
            place,
            text,
            f"More than {_MOST_MARKS} marks stand on one letter, and would print over other text.",
            "Leave out the marks that the letter does not need.",
        )
    if missing:
        where = f" for the {what} {quoted(text)}" if what else ""
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


def _kinds(text: str) -> str:
    """Return an m for each mark that stands on a letter, and a dot for every other character."""
    apart = unicodedata.normalize("NFD", text)
    return "".join("m" if unicodedata.combining(character) else "." for character in apart)


def _shown(letter: str) -> str:
    name = unicodedata.name(letter, "control character").lower()
    sign = f"“{letter}” " if letter.isprintable() else ""
    return f"{sign}({name}, U+{ord(letter):04X})"
