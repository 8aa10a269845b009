"""The line over a bank that says how to use it."""

from decks.bank.guide import GuidePart

_LONGEST_WORD = 3
_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def directions(part: GuidePart) -> str:
    """Say what to write where, whether it may be used again, and how many are left over."""
    noun = "word" if all(map(_is_word, part.bank)) else "answer"
    lines = "on the line" if len(part.blanks) == 1 else "on each line"
    return f"Write one {noun} from the bank {lines}. {_use(part, noun)}".strip()


def _is_word(entry: str) -> bool:
    """Whether a student would call it a word: it is no sentence and no number."""
    is_number = entry[:1].isdigit() or not any(sign.isalpha() for sign in entry)
    return len(entry.split()) <= _LONGEST_WORD and not is_number


def _use(part: GuidePart, noun: str) -> str:
    left = _left_over(len(part.extra_words))
    if len(part.blanks) == 1:
        return f"{left.capitalize()}." if left else ""
    if part.reusable:
        article = "An" if noun == "answer" else "A"
        again = f"{article} {noun} may be used more than once"
        return f"{again}; {left}." if left else f"{again}."
    return f"Each is used once at most; {left}." if left else f"Each {noun} is used once."


def _left_over(count: int) -> str:
    if not count:
        return ""
    number = _NUMBERS[count] if count < len(_NUMBERS) else str(count)
    return f"{number} {'is' if count == 1 else 'are'} left over"
