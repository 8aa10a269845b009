"""The line over the clues that says what to write, and where the words are."""

from decks.bank.guide import GuidePart
from decks.recipe import Support

LETTERS = "Where choices stand below a question, write the letter of the right one."

_LONGEST_WORD = 3
_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def directions(part: GuidePart, support: Support = Support.BANK, *, gathered: bool = False) -> str:
    """Say what to write where, whether it may be used again, and how many are left over.

    `gathered` says that the students have the words on cards that their team has brought home.
    """
    sentences = _sentences(part, support, gathered=gathered) if part.worded else []
    return " ".join(filter(None, [*sentences, LETTERS if part.choices else ""]))


def noun_of(part: GuidePart) -> str:
    """Return what the entries of a part are called: words, or answers where some are longer."""
    return "word" if all(map(_is_word, part.bank)) else "answer"


def _sentences(part: GuidePart, support: Support, *, gathered: bool) -> list[str]:
    noun = noun_of(part)
    # an answer may take several lines
    where = "for the clue" if len(part.blanks) == 1 else "for each clue"
    if support is Support.BANK:
        cards = "The words are on your team’s cards and in the bank." if gathered else ""
        return [cards, f"Write one {noun} from the bank {where}.", _use(part, noun)]
    write = f"Write one {noun} {where}."
    hints = _hinted(part) if support is Support.HINTS else ""
    if gathered:
        cards = "Your team’s word cards are the word bank."
        return [cards, write, _use_of_cards(part, noun), hints]
    return [write, hints]


def _hinted(part: GuidePart) -> str:
    """Say how to read what stands below a clue."""
    one = len(part.worded) == 1
    hints = "The hint below the clue gives" if one else "The hints below the clues give"
    return f"{hints} first letters; a dash stands for any other letter or figure."


def _is_word(entry: str) -> bool:
    """Whether a student would call it a word: it is no sentence and no number."""
    is_number = entry[:1].isdigit() or not any(sign.isalpha() for sign in entry)
    return len(entry.split()) <= _LONGEST_WORD and not is_number


def _use(part: GuidePart, noun: str) -> str:
    left = _left_over(len(part.extra_words))
    if len(part.worded) == 1:
        return f"{left.capitalize()}." if left else ""
    if part.reusable:
        again = _again(noun)
        return f"{again}; {left}." if left else f"{again}."
    return f"Each is used once at most; {left}." if left else f"Each {noun} is used once."


def _use_of_cards(part: GuidePart, noun: str) -> str:
    """Say whether a card may be used again; how many are left over depends on what was gathered."""
    if len(part.worded) == 1:
        return ""
    return f"{_again(noun)}." if part.reusable else "Each card is used once at most."


def _again(noun: str) -> str:
    article = "An" if noun == "answer" else "A"
    return f"{article} {noun} may be used more than once"


def _left_over(count: int) -> str:
    if not count:
        return ""
    number = _NUMBERS[count] if count < len(_NUMBERS) else str(count)
    return f"{number} {'is' if count == 1 else 'are'} left over"
