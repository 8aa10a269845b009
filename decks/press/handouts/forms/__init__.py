"""The forms of a planning sheet: an organiser to be drawn and written into."""

from decks.press.handouts.forms.columns import columns
from decks.press.handouts.forms.figure import figure
from decks.press.handouts.forms.plan import Plan, by_alphabet, form_for, headings_of
from decks.press.handouts.forms.tree import tree

__all__ = ["Plan", "by_alphabet", "columns", "figure", "form_for", "headings_of", "tree"]
