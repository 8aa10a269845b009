"""All rules of checking, in one table."""

from collections.abc import Sequence
from functools import partial

from cards.checking.also_right import several_right_in_one
from cards.checking.blanks import no_answer, no_prompt
from cards.checking.blanks_in_prompts import article_before_blank, number_before_blank
from cards.checking.choices import (
    longest_is_answer,
    overlapping_ranges,
    repeated_choice,
    wrong_choice_is_right,
)
from cards.checking.clues import answer_in_own_prompt
from cards.checking.decoding import wrongly_decoded
from cards.checking.details import (
    detail_without_topic,
    lonely_detail,
    nearly_same_heading,
    one_heading,
)
from cards.checking.elsewhere import answer_in_other_prompt
from cards.checking.evenness import lonely_topic, same_level, topic_once, uneven_length
from cards.checking.grades import hard_to_read
from cards.checking.mixed import capital_among_small, number_among_words, plural_among_singular
from cards.checking.movement import no_gentler_option, same_exercise, unknown_effort
from cards.checking.nearly import nearly_same_prompt
from cards.checking.pictures import missing_picture
from cards.checking.repeats import same_item, same_prompt_other_answer
from cards.checking.rivals import right_for_another, same_answer
from cards.checking.rule import Rule
from cards.checking.stand_ins import one_answer, stand_in
from cards.checking.stems_of_questions import absolute_word, all_of_the_above, unstressed_negative
from cards.checking.sums import wrong_sum
from cards.checking.teams import unknown_team
from cards.checking.wrong_answers import several_in_one
from cards.finding import Severity

_PRACTICE = "common practice"
_GUIDELINES = "Haladyna, Downing & Rodriguez 2002"
_HANDBOOK = "DOE-HDBK-1204-97 §8"
_BOTH = f"{_GUIDELINES}; {_HANDBOOK}"
_MOVING = "common practice; Butte et al. 2018 for the ranks of effort"
_GRADE = "Flesch 1948; Kincaid et al. 1975"

_RULES = (
    Rule("no-prompt", Severity.ERROR, _PRACTICE, no_prompt),
    Rule("no-answer", Severity.ERROR, _PRACTICE, no_answer),
    Rule("same-prompt-other-answer", Severity.ERROR, _PRACTICE, same_prompt_other_answer),
    Rule("picture-missing", Severity.ERROR, _PRACTICE, missing_picture),
    Rule("wrong-sum", Severity.ERROR, _PRACTICE, wrong_sum),
    Rule("same-item", Severity.WARNING, _PRACTICE, same_item),
    Rule("nearly-same-prompt", Severity.WARNING, _PRACTICE, nearly_same_prompt),
    Rule("same-answer", Severity.WARNING, _BOTH, same_answer),
    Rule("right-for-another", Severity.WARNING, _BOTH, right_for_another),
    Rule("answer-in-own-prompt", Severity.WARNING, _BOTH, answer_in_own_prompt),
    Rule("answer-in-other-prompt", Severity.WARNING, _BOTH, answer_in_other_prompt),
    Rule("article-before-blank", Severity.WARNING, _BOTH, article_before_blank),
    Rule("number-before-blank", Severity.WARNING, _BOTH, number_before_blank),
    Rule("stand-in", Severity.WARNING, _PRACTICE, stand_in),
    Rule("one-answer", Severity.WARNING, _PRACTICE, one_answer),
    Rule("wrongly-decoded", Severity.WARNING, _PRACTICE, wrongly_decoded),
    Rule("wrong-choice-is-right", Severity.WARNING, _GUIDELINES, wrong_choice_is_right),
    Rule("repeated-choice", Severity.WARNING, _GUIDELINES, repeated_choice),
    Rule("overlapping-ranges", Severity.WARNING, _BOTH, overlapping_ranges),
    Rule("longest-is-answer", Severity.WARNING, _BOTH, longest_is_answer),
    Rule("all-of-the-above", Severity.WARNING, _BOTH, all_of_the_above),
    Rule("unstressed-negative", Severity.WARNING, _BOTH, unstressed_negative),
    Rule("absolute-word", Severity.WARNING, _BOTH, absolute_word),
    Rule("number-among-words", Severity.WARNING, _HANDBOOK, number_among_words),
    Rule("plural-among-singular", Severity.WARNING, _HANDBOOK, plural_among_singular),
    Rule("capital-among-small", Severity.WARNING, _HANDBOOK, capital_among_small),
    Rule("nearly-same-heading", Severity.WARNING, _PRACTICE, nearly_same_heading),
    Rule("one-heading", Severity.WARNING, _PRACTICE, one_heading),
    Rule("detail-without-topic", Severity.WARNING, _PRACTICE, detail_without_topic),
    Rule("unknown-effort", Severity.WARNING, _MOVING, unknown_effort),
    Rule("no-gentler-option", Severity.WARNING, _PRACTICE, no_gentler_option),
    Rule("same-exercise", Severity.WARNING, _PRACTICE, same_exercise),
    Rule("uneven-length", Severity.NOTE, _GUIDELINES, uneven_length),
    Rule("same-level", Severity.NOTE, _PRACTICE, same_level),
    Rule("lonely-detail", Severity.NOTE, _PRACTICE, lonely_detail),
    Rule("lonely-topic", Severity.NOTE, _PRACTICE, lonely_topic),
    Rule("topic-once", Severity.NOTE, _PRACTICE, topic_once),
    Rule("also-right-in-one", Severity.NOTE, _PRACTICE, several_right_in_one),
    Rule("wrong-answers-in-one", Severity.NOTE, _PRACTICE, several_in_one),
)


def rules(team_names: Sequence[str] = (), reading_grade: int | None = None) -> tuple[Rule, ...]:
    """Return every rule, of which two are about the deck.

    Items may only be pinned to the teams named; prompts are to be no harder to read than a grade,
    where one is given.
    """
    of_teams = partial(unknown_team, team_names=team_names)
    at_grade = partial(hard_to_read, grade=reading_grade)
    return (
        *_RULES,
        Rule("unknown-team", Severity.ERROR, _PRACTICE, of_teams),
        Rule("hard-to-read", Severity.NOTE, _GRADE, at_grade),
    )
