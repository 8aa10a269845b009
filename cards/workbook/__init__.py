"""Workbooks that we write: a blank one to fill in, and a marked copy of the teacher's own."""

from cards.workbook.blank import blank_workbook
from cards.workbook.marked import marked_copy
from cards.workbook.offers import Offers, SettingOffer
from cards.workbook.saving import marked_path, save_new

__all__ = [
    "Offers",
    "SettingOffer",
    "blank_workbook",
    "marked_copy",
    "marked_path",
    "save_new",
]
