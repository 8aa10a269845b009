"""Reading: a file of the teacher's becomes content."""

from cards.reading.file import read

__all__ = ["read"]
