"""OpenDocument spreadsheets (.ods), whose cells keep the text that they show beside the value."""

from cards.reading.opendocument.spreadsheet import read_opendocument

__all__ = ["read_opendocument"]
