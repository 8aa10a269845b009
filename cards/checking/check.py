"""All findings about a file's content, and what can be trusted in spite of them."""

from collections.abc import Iterable, Sequence

from cards.checking.rules import rules
from cards.checking.words import words
from cards.content import Content
from cards.finding import Finding, errors_in, ranked
from cards.item import Item
from cards.place import Place


def check(
    content: Content, team_names: Sequence[str], reading_grade: int | None = None
) -> tuple[Finding, ...]:
    """Return the findings of reading and of every rule, errors first, then by place.

    Items may only be pinned to the teams named, and prompts may be no harder to read than a grade.
    """
    every = rules(team_names, reading_grade)
    found = [finding for rule in every for finding in rule.findings(content)]
    # every rule asks for the words of every text; after the last of them nobody does
    words.cache_clear()
    return ranked([*content.findings, *found])


def sound_items(content: Content, findings: Iterable[Finding]) -> tuple[Item, ...]:
    """Return the items in whose row no error stands, in the teacher's order."""
    wrong = {_row(error.place) for error in errors_in(findings)}
    return tuple(
        item
        for item in content.items
        if wrong.isdisjoint({_row(item.prompt_place), _row(item.answer_place)})
    )


def _row(place: Place) -> tuple[str, int]:
    return place.sheet, place.row
