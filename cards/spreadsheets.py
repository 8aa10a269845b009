"""The library that reads and writes workbooks, loaded without what it loads only for others."""

from cards.unseen import unseen


def load_openpyxl() -> None:
    """Load openpyxl; whatever imports it afterwards finds it loaded.

    Where numpy is installed, openpyxl loads it to take its numbers into cells, which a workbook of
    ours never holds, and where lxml is, to write with. That is a third of the time it takes, and
    files are to be the same with and without them.
    """
    with unseen("numpy"), unseen("lxml"):
        import openpyxl  # noqa: F401, PLC0415 (it takes long to load)
