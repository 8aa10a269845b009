"""A file, read by whoever knows its kind."""

from collections.abc import Callable
from errno import ENAMETOOLONG
from os import fstat
from os.path import lexists
from pathlib import Path

from cards.content import Content
from cards.finding import Finding, UnusableFileError
from cards.reading.gathering import gathered
from cards.reading.limits import MOST_FILE_BYTES, MOST_TEXT_BYTES, too_large
from cards.reading.near import near_miss
from cards.reading.open_elsewhere import workbook_of
from cards.reading.table import Table

Read = tuple[tuple[Table, ...], tuple[Finding, ...]]

_SHOWN = 40
_WORKS = "Files that work: .xlsx, .xlsm, .ods, .csv and .tsv."
_SAVE_AS = {
    ".xls": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xlsb": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xltx": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xltm": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xlt": "Open it in your spreadsheet program and save it as .xlsx.",
    ".ots": "Open it in your spreadsheet program and save it as .xlsx.",
    ".fods": "Open it in your spreadsheet program and save it as .xlsx.",
    ".numbers": "Open it in your spreadsheet program and export it as .xlsx or .csv.",
    ".gsheet": "It is only a link: open it in your browser and download it as .xlsx.",
    ".txt": "If it is a table, open it in your spreadsheet program and save it as .xlsx or .csv.",
    ".html": "Open it in your spreadsheet program and save it as .xlsx.",
    ".zip": "Unpack it first, and name the file that is in it.",
    ".docx": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".doc": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".odt": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".pages": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".pdf": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
}
_SAVE_AS_OTHERWISE = "Put the content into a spreadsheet and save it as .xlsx or .csv."


def read(path: Path) -> Content:
    """Read a workbook, an OpenDocument spreadsheet, or a file of delimited text.

    Raises `UnusableFileError`, with one line that says how to mend it, if the file is not there,
    is of a kind that is not read, is damaged or locked, or holds nothing that makes a card. What is
    wrong with single cells is found, not raised.
    """
    tables, findings = tables_of(path)
    return gathered(path.name, tables, findings, path.parent)


def tables_of(path: Path) -> Read:
    """Return the visible tables of a file, and what was found in reading them; raise as `read`."""
    try:
        reader, most_bytes = _reader(path)
        data = _bytes_of(path, most_bytes)
    except OSError as error:
        raise UnusableFileError(_refusal(path, error)) from error
    if not data.strip():
        raise UnusableFileError(
            f"{path.name} is empty. Put the content into it, save it, and try again."
        )
    return reader(data, path.name)


def _bytes_of(path: Path, most: int) -> bytes:
    if path.exists() and not path.is_file():
        raise UnusableFileError(
            f"{path.name} is not a file that holds anything. Name a spreadsheet. {_WORKS}"
        )
    with path.open("rb") as file:
        # what is asked for is set aside at once, however small the file is
        data = file.read(min(most, fstat(file.fileno()).st_size) + 1)
    if len(data) > most:
        raise too_large(path.name)
    return data


def _reader(path: Path) -> tuple[Callable[[bytes, str], Read], int]:
    """Return what reads a file of this kind, and how many bytes such a file may have."""
    suffix = path.suffix.lower()
    if open_workbook := workbook_of(path.name):
        raise UnusableFileError(
            f"{path.name} only says that {open_workbook} is open in a spreadsheet program. "
            f"Name {open_workbook}."
        )
    if path.is_dir():
        folder = path.resolve().name or path
        raise UnusableFileError(f"{folder} is a folder. Name a file in it. {_WORKS}")
    if suffix in {".xlsx", ".xlsm"}:
        return _read_workbook, MOST_FILE_BYTES
    if suffix == ".ods":
        return _read_opendocument, MOST_FILE_BYTES
    if suffix in {".csv", ".tsv"}:
        return _read_delimited, MOST_TEXT_BYTES
    path.stat()  # a name without a file says so first; from Python 3.14 on `exists` hides why
    mend = _SAVE_AS.get(suffix, _SAVE_AS_OTHERWISE)
    kind = f"{suffix} files" if suffix else "files without an ending such as .xlsx"
    raise UnusableFileError(f"{path.name} cannot be read: {kind} are not supported. {mend}")


# Each reader, and the library that it needs, is loaded for files of its own kind only.
def _read_workbook(data: bytes, name: str) -> Read:
    from cards.reading.workbook import read_workbook  # noqa: PLC0415

    return read_workbook(data, name)


def _read_opendocument(data: bytes, name: str) -> Read:
    from cards.reading.opendocument import read_opendocument  # noqa: PLC0415

    return read_opendocument(data, name)


def _read_delimited(data: bytes, name: str) -> Read:
    from cards.reading.delimited import read_delimited  # noqa: PLC0415

    return (read_delimited(data, name),), ()


def _refusal(path: Path, error: OSError) -> str:
    if isinstance(error, FileNotFoundError | NotADirectoryError):
        return _not_there(path)
    if isinstance(error, PermissionError):
        return (
            f"{path.name} may not be read. Close it in other programs, "
            "see that you may open it, and try again."
        )
    if error.errno == ENAMETOOLONG:
        return f"There is no file {path.name[:_SHOWN]}…: no name can be as long. {_WORKS}"
    return f"{path.name} could not be read ({error.strerror}). Copy it elsewhere and try again."


def _not_there(path: Path) -> str:
    folder = path.parent
    if lexists(path):
        return (
            f"{path.name} only points to a file that is not there any more. "
            "Name the file itself, where it is now."
        )
    near = near_miss(path.name, _names_in(folder))
    hint = f"Did you mean {near}?" if near else "Check the name and the folder."
    return f"There is no file {path.name} in {folder.resolve().name or folder}. {hint}"


def _names_in(folder: Path) -> list[str]:
    """Return the names of what is in a folder; none where it may not be looked into."""
    try:
        return sorted(other.name for other in folder.iterdir())
    except OSError:
        return []
