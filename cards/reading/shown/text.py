"""Text under a format code."""

from cards.reading.shown.format import Sections
from cards.reading.shown.tokens import Mark


def text_shown(text: str, sections: Sections) -> str:
    """Return the text as it is, or set into the section of the format that is for text."""
    if sections.text is None:
        return text
    pieces = {Mark.TEXT: text, Mark.GENERAL: text}
    return "".join(pieces.get(token.mark, token.text) for token in sections.text.tokens)
