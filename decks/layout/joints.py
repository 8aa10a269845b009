"""Where a person would not break a line: how badly a break reads between two words.

A joint says it as one number. Below `HELD` it is a price, as a share of the mean line squared: a
break costs as much as lines that differ by so much. From `HELD` on the words stay together, and
where they are wider than the column they part at their weakest joints first.
"""

from collections.abc import Sequence
from functools import cache

from decks.layout.formulas import formula_joint
from decks.layout.held import is_held, word_set

HELD = 1.0
"""From here on words stay together, formulas below `NAME`, numbers and names at it."""
NAME = 3.0
STUCK = 4.0

ARTICLE_END = 0.12
WEAK_END = 0.08
NUMBER_END = 0.03
BLANK_START = 0.05
AFTER_SENTENCE = -0.04
AFTER_COMMA = -0.015
"""Prices: 0.08 is what it costs that one of two lines is longer by 0.4 of their mean."""

ARTICLES = word_set("a an the le la les l’ un une des der die das den dem ein eine el los las una")
WEAK = word_set(
    "of in on at to by for from with and or but nor as if its his her their our your my no not "
    "than into onto is are was e.g. i.e. du de da di il lo gli en et y e o u von zu und oder au"
)
"""Short words that lean on the next: English, and the languages that most classes learn."""

LONE_LETTERS = 4
"""A line of one word with no more letters than this is lost on a card."""

OPENING = "([{“‘«¿¡"
CLOSING = ")]}”’»"
DASHES = "-–—‒―"
BULLETS = DASHES + "•·*"
STOPS = ".,;:!?…"
ENDS_SENTENCE = (".", "?", "!", ":", ";", "…")


def joints_of(words: Sequence[str]) -> tuple[float, ...]:
    """Return the joints between neighbouring words: one fewer than there are words."""
    return tuple([_joint(words, n) for n in range(len(words) - 1)])


@cache
def is_lone(word: str) -> bool:
    """Return whether a word is too little for a line of its own: short, or a blank to fill."""
    letters = word.strip(OPENING + CLOSING + STOPS)
    return len(letters) <= LONE_LETTERS or is_blank(word)


def is_blank(word: str) -> bool:
    """Return whether a word is a line to write on."""
    return word.strip(OPENING + CLOSING + STOPS).strip("_") == "" and "__" in word


def _joint(words: Sequence[str], n: int) -> float:
    left, right = words[n], words[n + 1]
    if left.isalpha() and right.isalpha() and right.islower():
        return _leaning(left)
    if _is_stuck(left, right) or (n == 0 and left in BULLETS):
        return STUCK
    formula = formula_joint(words, n)
    if formula is not None:
        return formula
    if is_held(left, right):
        return NAME
    return _price(left, right)


def _is_stuck(left: str, right: str) -> bool:
    """Return whether a line would begin with a dash or closing mark, or end with an opening one."""
    return (
        not right.strip(DASHES + STOPS + CLOSING + "/\"'")
        or not left.strip(OPENING)
        or left == right == "_"
    )


def _price(left: str, right: str) -> float:
    price = BLANK_START if is_blank(right) else 0
    if _leaning(left):
        return price + _leaning(left)
    if left.isdecimal() and right[0].islower():
        return price + NUMBER_END
    if left.endswith(ENDS_SENTENCE):
        return price + AFTER_SENTENCE
    return price + (AFTER_COMMA if left.endswith(",") else 0)


@cache
def _leaning(word: str) -> float:
    """Return the price of a line that ends with a word which leans on the next; mostly nought."""
    short = word.casefold()
    if short in ARTICLES or (len(word) == 1 and word.isalpha()):
        return ARTICLE_END
    return WEAK_END if short in WEAK else 0
