"""Wrong choices that are not simply wrong."""

import re
from collections.abc import Iterator, Mapping

from cards.answers import LONGEST_SYMBOL
from cards.checking.ranges import first_overlap
from cards.checking.rule import Remark
from cards.checking.runs import LONGEST, Lengths, Words, is_within, lengths_of, runs
from cards.checking.where import wrong_place
from cards.checking.words import ARTICLES, words
from cards.content import Content
from cards.item import Item
from cards.quoting import quoted
from cards.raised import written_out

_JOINED = re.compile(r"\b(?:and|as well as|together with|or|y|et|und|e)\b|[,&+]")
_MOST_RIGHT = 50
_TIMES_LONGER = 1.8
_LETTERS_LONGER = 12
_LEAST_CHOICES = 2


def wrong_choice_is_right(content: Content) -> Iterator[Remark]:
    """Find wrong choices that are the answer, are also right, or have the answer in them."""
    for item in content.items:
        rights = _rights(item) if item.wrong else {}
        lengths = lengths_of(rights)
        for number, choice in enumerate(item.wrong):
            right = _right_in(choice, rights, lengths)
            if right:
                verb = "is" if _plain(choice) == _plain(right) else "has"
                yield Remark(
                    wrong_place(item, number),
                    choice,
                    f"The wrong choice {quoted(choice)} {verb} the right answer "
                    f"{quoted(right)}{' in it' if verb == 'has' else ''}.",
                    "Write a choice that is wrong.",
                )


def repeated_choice(content: Content) -> Iterator[Remark]:
    """Find wrong choices that stand twice."""
    for item in content.items:
        seen: set[Words] = set()
        for number, choice in enumerate(item.wrong):
            plain = _plain(choice)
            if plain in seen:
                wrong = f"The wrong choice {quoted(choice)} stands twice in this row."
                yield Remark(wrong_place(item, number), choice, wrong, "Write another choice.")
            seen.add(plain)


def overlapping_ranges(content: Content) -> Iterator[Remark]:
    """Find choices that are ranges and share a number, so that two may be right."""
    for item in content.items:
        found = first_overlap((item.answer, *item.wrong)) if item.wrong else None
        if found:
            first, second = found
            number = max(item.wrong.index(text) for text in found if text in item.wrong)
            yield Remark(
                wrong_place(item, number),
                second,
                f"{quoted(first)} and {quoted(second)} share a number.",
                "Let each range begin after the end of the one before, as 10–19 and 20–29.",
            )


def longest_is_answer(content: Content) -> Iterator[Remark]:
    """Find answers that are much the longest choice."""
    for item in content.items:
        if len(item.wrong) < _LEAST_CHOICES:
            continue
        length, next_longest = len(item.answer), max(map(len, item.wrong))
        if length >= next_longest * _TIMES_LONGER and length >= next_longest + _LETTERS_LONGER:
            yield Remark(
                item.answer_place,
                item.answer,
                f"The answer is much longer ({length} characters) than every wrong choice "
                f"(at most {next_longest}), and who guesses takes the longest.",
                "Shorten the answer, or say as much in the wrong choices.",
            )


def _rights(item: Item) -> dict[Words, str]:
    """Return what is right in plain words, the answer first, with the text that says it."""
    rights: dict[Words, str] = {}
    others = item.also_right[:_MOST_RIGHT]
    for right in (written_out(item.answer, item.answer_spans), *others):
        rights.setdefault(_plain(right), right)
    return rights


def _right_in(choice: str, rights: Mapping[Words, str], lengths: Lengths) -> str | None:
    """Return the first right text that a choice is, or has in it as the answer and more."""
    said = _plain(choice)
    found = {said, *runs(said, lengths)} & rights.keys()
    if len(said) > LONGEST:
        found |= {right for right in rights if len(right) > LONGEST and is_within(right, said)}
    if not _JOINED.search(choice.casefold()):
        # a sea lion is no sea
        found = {right for right in found if len(right) > 1 or right == said}
    return next((text for right, text in rights.items() if right in found), None) if found else None


def _plain(text: str) -> Words:
    """Return the words of a text without articles; a text of signs only is taken as it is."""
    if len(text.strip()) <= LONGEST_SYMBOL:
        return (text.strip(),)
    found = tuple(word for word in words(text) if word not in ARTICLES)
    return (
        found if found and not any(c in text for c in "+−-<>=×÷*/^.,%°√²³") else (text.casefold(),)
    )
