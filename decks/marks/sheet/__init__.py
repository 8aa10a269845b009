"""The workbook that a class's marks are written into: `marks.xlsx`."""

from decks.marks.sheet.book import MARKS_FILE, marks_workbook

__all__ = ["MARKS_FILE", "marks_workbook"]
