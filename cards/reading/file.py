"""A file, read by whoever knows its kind."""

from collections.abc import Callable
from pathlib import Path

from cards.content import Content
from cards.finding import Finding, UnreadableFileError
from cards.reading.gathering import gathered
from cards.reading.near import near_miss
from cards.reading.table import Table

Read = tuple[tuple[Table, ...], tuple[Finding, ...]]

_WORKS = "Files that work: .xlsx, .xlsm, .csv and .tsv."
_SAVE_AS = {
    ".xls": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xlsb": "Open it in your spreadsheet program and save it as .xlsx.",
    ".xltx": "Open it in your spreadsheet program and save it as .xlsx.",
    ".ods": "Open it in your spreadsheet program and save it as .xlsx.",
    ".fods": "Open it in your spreadsheet program and save it as .xlsx.",
    ".numbers": "Open it in your spreadsheet program and export it as .xlsx or .csv.",
    ".gsheet": "It is only a link: open it in your browser and download it as .xlsx.",
    ".txt": "If it is a table, open it in your spreadsheet program and save it as .xlsx or .csv.",
    ".docx": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".doc": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".odt": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".pages": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
    ".pdf": "Copy its table into a spreadsheet and save that as .xlsx or .csv.",
}
_SAVE_AS_OTHERWISE = "Put the content into a spreadsheet and save it as .xlsx or .csv."


def read(path: Path) -> Content:
    """Read a workbook or a file of delimited text.

    Raises `UnreadableFileError`, with one line that says how to mend it, if the file is not there,
    is of a kind that is not read, is damaged or locked, or holds nothing that makes a card. What is
    wrong with single cells is found, not raised.
    """
    reader = _reader(path)
    try:
        data = path.read_bytes()
    except OSError as error:
        raise UnreadableFileError(_refusal(path, error)) from error
    if not data.strip():
        raise UnreadableFileError(
            f"{path.name} is empty. Put the content into it, save it, and try again."
        )
    tables, findings = reader(data, path.name)
    return gathered(path.name, tables, findings)


def _reader(path: Path) -> Callable[[bytes, str], Read]:
    suffix = path.suffix.lower()
    if path.is_dir():
        raise UnreadableFileError(f"{path.name} is a folder. Name a file in it. {_WORKS}")
    if suffix in {".xlsx", ".xlsm"}:
        return _read_workbook
    if suffix in {".csv", ".tsv"}:
        return _read_delimited
    if not path.exists():
        raise UnreadableFileError(_not_there(path))
    mend = _SAVE_AS.get(suffix, _SAVE_AS_OTHERWISE)
    kind = f"{suffix} files" if suffix else "files without an ending such as .xlsx"
    raise UnreadableFileError(f"{path.name} cannot be read: {kind} are not supported. {mend}")


# Each of the two libraries takes long to load, so it is loaded for files of its own kind only.
def _read_workbook(data: bytes, name: str) -> Read:
    from cards.reading.workbook import read_workbook  # noqa: PLC0415

    return read_workbook(data, name)


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
    return f"{path.name} could not be read ({error.strerror}). Copy it elsewhere and try again."


def _not_there(path: Path) -> str:
    folder = path.parent
    others = sorted(other.name for other in folder.iterdir()) if folder.is_dir() else []
    near = near_miss(path.name, others)
    hint = f"Did you mean {near}?" if near else "Check the name and the folder."
    return f"There is no file {path.name} in {folder.resolve().name or folder}. {hint}"
