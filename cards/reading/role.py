"""What a column of a sheet may hold."""

from enum import StrEnum


class Role(StrEnum):
    """What a column holds, named by the plainest of its headings."""

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
    PICTURE = "Picture"
    COLOUR = "Colour"
    SETTING = "Setting"
    VALUE = "Value"
