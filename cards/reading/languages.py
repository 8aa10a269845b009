"""Names of languages: two of them above two columns are headings."""

from cards.languages import LANGUAGES
from cards.reading.headings import key, keys_of

_LANGUAGES = {form: code for code, names in LANGUAGES.items() for form in keys_of(names) if form}


def language_of(text: str) -> str | None:
    """Return the ISO 639-1 code of the language which a text names, or None if it names none."""
    return _LANGUAGES.get(key(text))
