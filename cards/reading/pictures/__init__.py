"""Pictures: named in a cell or pasted into a row, read once, and safe to print."""

from cards.reading.pictures.illustrating import illustrated

__all__ = ["illustrated"]
