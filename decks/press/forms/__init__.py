"""The forms of a planning sheet: an organiser to be drawn and written into."""

from decks.press.forms.columns import columns
from decks.press.forms.figure import figure
from decks.press.forms.plan import Heading, Plan, form_for, headings_of
from decks.press.forms.tree import tree

__all__ = ["Heading", "Plan", "columns", "figure", "form_for", "headings_of", "tree"]
