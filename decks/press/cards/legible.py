"""From how far a text can be read, by the letters of the very font that it is set in."""

from decks.layout.reading_distance import distance_for, least_step
from decks.layout.runs import Styled, plain, runs_of
from decks.press.type.fonts import letter_height


def letter_of(styled: Styled) -> float:
    """Return the height in ems of the lowest letters that must be made out.

    Raised and lowered figures count, and parts of fractions; other raised letters, as in 21st, need
    not be made out.
    """
    if not styled.spans:
        return letter_height(styled.text, styled.strong)
    runs = runs_of(styled)
    text = plain([run for run in runs if run.scale == 1])
    heights = [
        letter_height(run.text, run.strong) * run.scale
        for run in runs
        if run.scale < 1 and any(letter.isdigit() for letter in run.text)
    ]
    if text.strip() or not heights:
        heights.append(letter_height(text, styled.strong))
    return min(heights)


def least_size(styled: Styled, distance: float) -> float:
    """Return the least size of the ladder in points for a distance in millimetres."""
    return least_step(distance, letter_of(styled))


def distance_of(styled: Styled, size: float) -> float:
    """Return from how many millimetres the text can be read at a size in points."""
    return distance_for(size, letter_of(styled))
