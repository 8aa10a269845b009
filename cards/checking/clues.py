"""Prompts that hold their own answer."""

import re
from collections.abc import Iterator, Sequence

from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.checking.stems import same_stem
from cards.checking.words import begins_with_a_note, content_words, is_value, words
from cards.content import Content
from cards.item import Item
from cards.quoting import quoted

_LEAST_LETTERS = 4
_MOST_PAIRS = 2_000
"""Forty words held against fifty; more would take seconds for each cell."""

# a question that offers its choices has to name the right one
_OFFERS = re.compile(r"\b(?:or|o|ou|oder|which of|true|false)\b|:", re.IGNORECASE)


def answer_in_own_prompt(content: Content) -> Iterator[Remark]:
    """Find items whose prompt has every telling word of the answer, or a form of it."""
    for item in content.items:
        given = _given_away(item)
        if given:
            prompt, answer = PROMPT_NAMES[item.kind], ANSWER_NAMES[item.kind]
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"This {prompt} has {quoted(given)} in it, and the {answer} is "
                f"{quoted(item.answer)}: it gives itself away.",
                f"Say it in other words, without the {answer}.",
            )


def _given_away(item: Item) -> str | None:
    """Return the word of the prompt that gives the answer away, or None."""
    telling = [word for word in content_words(item.answer) if len(word) >= _LEAST_LETTERS]
    if not telling or is_value(item.answer) or _OFFERS.search(item.prompt):
        return None
    if begins_with_a_note(item.answer):
        return None
    if len(telling) < len(content_words(item.answer)):
        return None
    said = _all_said(telling, words(item.prompt))
    return None if not said or _is_counterpart(item, telling) else " ".join(said)


def _is_counterpart(item: Item, telling: Sequence[str]) -> bool:
    """Say whether the prompt says no more than the answer does, as in a list of translations."""
    if words(item.prompt) == words(item.answer):
        return False
    asked = content_words(item.prompt)
    return not asked or bool(_all_said(asked, telling))


def _all_said(wanted: Sequence[str], said: Sequence[str]) -> list[str]:
    """Return for each word the first of its forms that is said; nothing where one has none.

    Where both texts are long, forms do not count.
    """
    once = dict.fromkeys(said)
    if len(wanted) * len(once) > _MOST_PAIRS:
        return list(wanted) if once.keys() >= set(wanted) else []
    found: list[str] = []
    for word in wanted:
        form = next((other for other in once if same_stem(word, other)), None)
        if form is None:
            return []
        found.append(form)
    return found
