"""All rules of checking, in one table."""

from cards.checking.blanks import no_answer, no_prompt
from cards.checking.repeats import same_item, same_prompt_other_answer
from cards.checking.rule import Rule
from cards.checking.teams import unknown_team
from cards.finding import Severity

RULES = (
    Rule("no-prompt", Severity.ERROR, no_prompt),
    Rule("no-answer", Severity.ERROR, no_answer),
    Rule("same-item", Severity.ERROR, same_item),
    Rule("same-prompt-other-answer", Severity.ERROR, same_prompt_other_answer),
    Rule("unknown-team", Severity.ERROR, unknown_team),
)
