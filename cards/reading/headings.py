"""What a heading means, however it is worded."""

import re
import unicodedata
from collections.abc import Collection
from enum import StrEnum

from cards.reading.near import near_miss

# A heading this much like a known one is taken for it, and said so. "Anwser" is .83 like "answer".
_CLOSENESS = 0.8
_BRACKETED = re.compile(r"\([^()]*\)|\[[^\[\]]*\]")
_NUMBERED = re.compile(r"(?<=[^\W\d])\d+$")


class Role(StrEnum):
    """What a column holds."""

    WORD = "Word"
    MEANING = "Meaning"
    PROMPT = "Prompt"
    QUESTION = "Question"
    ANSWER = "Answer"
    HEADING = "Heading"
    DETAIL = "Detail"
    TOPIC = "Topic"
    LEVEL = "Level"
    ALSO_RIGHT = "Also right"
    WRONG = "Wrong answers"
    TEAM = "Team"
    COLOUR = "Colour"
    SETTING = "Setting"
    VALUE = "Value"


_WORDINGS: dict[Role, str] = {
    Role.WORD: "word, term, vocabulary, vocabulary word, vocab, vocab word, key word, key term, "
    "headword, new word, spelling word, word or phrase, word phrase, term or phrase",
    Role.MEANING: "meaning, definition, clue, definition or clue, clue or definition, description, "
    "explanation, translation, gloss, what it means, word meaning",
    Role.PROMPT: "prompt, front, front of card, front side, cue, side 1, side a, statement, "
    "fact, card front, stem, sentence",
    Role.QUESTION: "question, ask, q, problem, sum, exercise question, question text",
    Role.ANSWER: "answer, solution, back, back of card, back side, response, reply, side 2, "
    "side b, a, card back, result, right answer, correct answer, answer key",
    Role.HEADING: "heading, head, main idea, main heading, idea",
    Role.DETAIL: "detail, supporting detail, supporting fact, evidence",
    Role.TOPIC: "topic, unit, theme, category, section, chapter, lesson, subject, subtopic, strand",
    Role.LEVEL: "level, difficulty, difficulty level, level of difficulty, how hard",
    Role.ALSO_RIGHT: "also right, also accept, also accepted, also correct, other answer, "
    "other right answer, other correct answer, alternative, alternate, alternative answer, "
    "alternate answer, accept, accepted answer, acceptable answer",
    Role.WRONG: "wrong answer, wrong choice, wrong, distractor, incorrect answer, incorrect, "
    "incorrect choice, wrong option, false answer, other choice",
    Role.TEAM: "team, team name, for team",
    Role.COLOUR: "colour, color, team colour, team color",
    Role.SETTING: "setting, option",
    Role.VALUE: "value",
}


def key(text: str) -> str:
    """Return a heading as it is compared: no case, accents, spaces, marks, or text in brackets."""
    bare = unicodedata.normalize("NFKD", _BRACKETED.sub("", text)).casefold()
    return "".join(character for character in bare if character.isalnum())


_ROLES = {key(word): role for role, words in _WORDINGS.items() for word in words.split(",")}


def role_of(text: str) -> Role | None:
    """Return what a heading means, or None if it is not known. Plurals and numbers are accepted."""
    bare = key(text)
    for form in (bare, bare.removesuffix("s"), _NUMBERED.sub("", bare).removesuffix("s")):
        if form in _ROLES:
            return _ROLES[form]
    return None


def misspelt_role_of(text: str, roles: Collection[Role]) -> Role | None:
    """Return which of the roles a misspelt heading probably means: first letters must agree."""
    bare = key(text)
    known = [
        form
        for form, role in _ROLES.items()
        if role in roles and form[:1] == bare[:1] and len(form) > len("q")
    ]
    swapped = (form for form in known if sorted(form) == sorted(bare))
    near = next(swapped, None) or near_miss(bare, known, closeness=_CLOSENESS)
    return _ROLES[near] if near else None
