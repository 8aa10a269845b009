"""What a teacher calls the two sides of an item."""

from cards.item import Kind

PROMPT_NAMES = {
    Kind.VOCABULARY: "meaning",
    Kind.FACT: "prompt",
    Kind.QUESTION: "question",
    Kind.DETAIL: "detail",
}
ANSWER_NAMES = {
    Kind.VOCABULARY: "word",
    Kind.FACT: "answer",
    Kind.QUESTION: "answer",
    Kind.DETAIL: "heading",
}
