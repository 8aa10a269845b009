"""The marks that a teacher wrote down, read and checked."""

from decks.marks.reading.file import marks_in, may_be_marks, read_marks

__all__ = ["marks_in", "may_be_marks", "read_marks"]
