"""The library that reads and writes workbooks, loaded without what it loads only for others."""

from cards.unseen import unseen


def load_openpyxl() -> None:
    """Load openpyxl; whatever imports it afterwards finds it loaded.

    Where numpy is installed, openpyxl loads it to take its numbers into cells, which a workbook of
    ours never holds, and where lxml is, to write with. That is a third of the time it takes, and
    files are to be the same with and without them. Pictures it looks at with Pillow; who reads a
    file has them from elsewhere, and who copies one needs `load_openpyxl_with_pictures`.
    """
    with unseen("numpy"), unseen("lxml"), unseen("PIL"):
        import openpyxl  # noqa: F401, PLC0415 (it takes long to load)


def load_openpyxl_with_pictures() -> None:
    """Load openpyxl so that it reads and writes the pictures of a workbook too."""
    load_openpyxl()
    from openpyxl.drawing import image  # noqa: PLC0415 (loaded by now)
    from openpyxl.reader import drawings  # noqa: PLC0415 (as above)
    from PIL import Image  # noqa: PLC0415 (it takes long to load)

    for module in (image, drawings):
        # where it holds that there is none
        vars(module)["PILImage"] = Image
