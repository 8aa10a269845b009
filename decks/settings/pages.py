"""The settings that say how pages are made: paper, cards, sides, ink, letters."""

from decks.lengths import (
    LEAST_CARD,
    MOST_CARD,
    MOST_MARGIN,
    read_bleed,
    read_distance,
    read_margins,
)
from decks.recipe import CardSize, Choices, ComesOut, Flip, Fractions, Ink, PaperName, Sides
from decks.settings.setting import Setting, one_of
from decks.settings.values import read_card_size, read_text
from decks.words import listed

PAGES = (
    one_of("Paper", "paper", PaperName, "The paper in the printer", PaperName.LETTER),
    Setting(
        "Margins",
        "margins",
        f"a length up to {MOST_MARGIN:g} mm, as 5 mm or 0.25 in, or four: "
        "top, right, bottom and left, as 5, 5, 7, 5 mm",
        read_margins,
        "The edge that your printer leaves white",
        default="5 mm",
    ),
    Setting(
        "Card size",
        "card_size",
        f"{listed(list(CardSize))}, or width by height, as 90 x 60 mm or 3.5 x 2.5 in, "
        f"each from {LEAST_CARD:g} to {MOST_CARD:g} mm",
        read_card_size,
        "How large a card is; without it, small, or the whole card on index cards",
    ),
    Setting(
        "Bleed",
        "bleed",
        "a length up to 5 mm, as 3 mm or 0.125 in, or 0",
        read_bleed,
        "How far colour runs over the cut; with it, ribbons reach the edge and cards stand apart",
        default="0",
    ),
    one_of(
        "Sides",
        "sides",
        Sides,
        "How a card gets its back: both sides at once, folded beside it, folded as a tent, "
        "not at all, or by sending the paper through twice by hand",
        Sides.DUPLEX,
    ),
    one_of("Flip", "flip", Flip, "The edge that the paper is turned over on", Flip.LONG),
    one_of(
        "Comes out",
        "comes_out",
        ComesOut,
        "How printed paper lies in the tray, for two passes by hand",
        ComesOut.FACE_DOWN,
    ),
    Setting(
        "Printer",
        "printer",
        "the name that you gave a printer with fairdeal align",
        read_text,
        "A printer that was measured, so that backs land behind their fronts",
    ),
    one_of("Ink", "ink", Ink, "What tells the teams on paper", Ink.COLOUR),
    Setting(
        "Read from",
        "read_from",
        "a distance from 20 cm to 10 m, as 40 cm, 1.5 m or 5 ft",
        read_distance,
        "How far from the cards the students stand who read them",
        default="40 cm",
    ),
    one_of(
        "Fractions",
        "fractions",
        Fractions,
        "Whether 3/4 is printed as typed or built as a fraction",
        Fractions.PLAIN,
    ),
    one_of(
        "Choices",
        "choices",
        Choices,
        "Whether a question with wrong answers is printed with them, as choices to pick from",
        Choices.HIDDEN,
    ),
)
"""A part of `SETTINGS`, in its order."""
