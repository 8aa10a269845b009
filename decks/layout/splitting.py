"""Words that are wider than their column: parted after a hyphen, or else between any letters."""

from decks.layout.runs import Measure, Run, Word, set_line, width_of

HYPHENS = "-\N{HYPHEN}\N{EN DASH}\N{EM DASH}"


def split(word: Word, width: float, measure: Measure) -> list[Word]:
    """Part a word that is wider than `width` ems into pieces that are not; a last resort.

    A piece and what follows it up to the next hyphen, or its next letter, are wider than a line.
    """
    if width_of(word, measure) <= width:
        return [word]
    pieces: list[Word] = [()]
    for part in _after_hyphens(word):
        whole = width_of(_joined((), *part), measure) <= width
        for letters in [part] if whole else [[letter] for letter in part]:
            longer = _joined(pieces[-1], *letters)
            if pieces[-1] and width_of(longer, measure) > width:
                longer = _joined((), *letters)
                pieces.append(())
            pieces[-1] = longer
    return pieces


def _joined(piece: Word, *letters: Run) -> Word:
    return set_line([(*piece, *letters)], strong=False)


def _after_hyphens(word: Word) -> list[list[Run]]:
    """Return the letters of a word up to each hyphen between two letters or digits."""
    letters = [Run(letter, run.strong, run.style) for run in word for letter in run.text]
    parts: list[list[Run]] = [[]]
    for n, letter in enumerate(letters):
        parts[-1].append(letter)
        around = "".join(run.text for run in letters[max(n - 1, 0) : n + 2 : 2])
        if letter.text in HYPHENS and len(around) > 1 and around.isalnum():
            parts.append([])
    return parts
