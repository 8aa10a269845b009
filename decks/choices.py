"""A question with its choices: the right answer among the wrong ones, each with a letter."""

import re
from collections.abc import Iterable, Iterator

from cards.answers import as_meant
from cards.finding import Finding, Severity
from cards.item import Item, folded
from cards.place import column_letters
from cards.raised import written_out

# 0,5 or 3/4 or 1 1/2, or what any of them begins
_NUMBER = re.compile(r"([-−]?)(?:(\d+) (?=\d+/))?(\d+(?:[.,]\d+)?)(?:/([1-9]\d*))?")
# 12,000 and 12 000 are twelve thousand; 0,500 is a half
_THOUSANDS = re.compile(r"(?<![\d.,])(?=[1-9])\d{1,3}(?:[,\s]\d{3})+(?![\d,])")
_POINTS_AT_CHOICES = re.compile(
    r"\b(?:which|what|who|one|two|all|none|any) of (?:these|those|the following|them)\b"
    r"|\bthe following\b|\b(?:the )?(?:choices|options) (?:below|above)\b",
    re.IGNORECASE,
)
_OF_BANKS = {"same-answer", "right-for-another"}
_MEND = "To print them, write shown beside Choices on the Deck sheet."
_OF_ALL = re.compile(r"(?:all|none|both|neither) of (?:the above|these|them)", re.IGNORECASE)


def choices_of(item: Item) -> tuple[str, ...]:
    """Return the choices of an item, in an order that does not tell which is right.

    Numbers stand by size, other choices by the alphabet, and those that speak of the others last
    (after Haladyna, Downing & Rodriguez 2002). An item without wrong answers has none.
    """
    right = written_out(item.answer, item.answer_spans)
    texts = {as_meant(text): text for text in (*item.wrong, right)}
    if len(texts) == 1:
        return ()
    choices = sorted(texts.values(), key=lambda text: (_speaks_of_others(text), folded(text), text))
    if all(map(_NUMBER.match, choices)):
        choices.sort(key=lambda text: (_speaks_of_others(text), _size(text)))
    return tuple(choices)


def outside_banks(findings: Iterable[Finding], items: Iterable[Item]) -> tuple[Finding, ...]:
    """Return the findings without those about a bank where choices are printed with the question.

    The answer of such a question is in no bank: who answers writes a letter.
    """
    lettered_at = {item.answer_place for item in items if item.wrong}
    return tuple(
        one for one in findings if one.code not in _OF_BANKS or one.place not in lettered_at
    )


def _speaks_of_others(choice: str) -> bool:
    return _OF_ALL.search(choice) is not None


def _size(choice: str) -> float:
    found = _NUMBER.match(_THOUSANDS.sub(lambda found: re.sub(r"[,\s]", "", found[0]), choice))
    if not found:
        return 0
    sign, whole, number, below = found.groups()
    size = float(whole or 0) + float(number.replace(",", ".")) / float(below or 1)
    return -size if sign else size


def lettered(choices: tuple[str, ...]) -> str:
    """Return choices below each other, each after its letter."""
    return "\n".join(f"{letter_of(n)}{choice}" for n, choice in enumerate(choices))


def letter_of(number: int) -> str:
    """Return what stands before the choice of a number, from 0."""
    return f"{column_letters(number + 1)}.\u00a0"


def about_hidden(items: Iterable[Item]) -> Iterator[Finding]:
    """Yield what is to be said where wrong answers are not printed: questions that need them.

    That there are choices in columns of their own is told once, where no question points at them.
    """
    with_wrong = [item for item in items if item.wrong]
    needing = [item for item in with_wrong if _POINTS_AT_CHOICES.search(item.prompt)]
    for item in needing:
        yield Finding(
            "choices-not-printed",
            Severity.WARNING,
            item.prompt_place,
            item.prompt,
            "This question points at its choices, and they are not printed.",
            f"{_MEND} Or ask so that it can be answered without them.",
        )
    apart = (item for item in with_wrong if len({place.column for place in item.wrong_places}) > 1)
    first = next(apart, None)
    if first and not needing:
        yield Finding(
            "choices-not-printed",
            Severity.NOTE,
            first.wrong_places[0],
            first.wrong[0],
            "Choices are not printed: cards ask without them.",
            _MEND,
        )
