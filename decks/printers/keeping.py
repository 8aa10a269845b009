"""The file in the user's settings folder that keeps the measured printers.

It is written whole or not at all, and by one at a time. A file that cannot be understood is named,
and left as it is.
"""

import json
import os
import tempfile
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

from msgspec.structs import replace

from cards.finding import UnusableFileError
from cards.item import folded
from cards.writing.aside import patiently
from cards.writing.holding import held
from decks.printers.printer import MOST_OFF, MOST_SKEW, Printer, Reading, find
from decks.recipe import Flip

FILE = "printers.json"
HOLD = f".{FILE}-being-written"
FORMAT = 1
ROUNDING = 1e-9


def settings_folder() -> Path:
    """Return the folder for the user's settings; `FAIRDEAL_SETTINGS` names another."""
    import platformdirs  # noqa: PLC0415 (a build without a printer needs none)

    own = os.environ.get("FAIRDEAL_SETTINGS")
    return Path(own) if own else platformdirs.user_config_path("Fairdeal", appauthor=False)


def read_printers(folder: Path) -> tuple[Printer, ...]:
    """Return the printers that are kept, by name; none where nothing is kept yet.

    Raises `UnusableFileError` for a file that is damaged or may not be read.
    """
    path = folder / FILE
    try:
        text = path.read_text(encoding="utf-8")
    except (FileNotFoundError, NotADirectoryError):
        return ()
    except UnicodeDecodeError as error:
        raise _damaged(path) from error
    except OSError as error:
        raise UnusableFileError(
            f"{path} could not be read ({error.strerror or error}). Let it be read, or name "
            "another folder in the environment as FAIRDEAL_SETTINGS."
        ) from error
    try:
        return _from_json(json.loads(text), path)
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        raise _damaged(path) from error


def remember(folder: Path, name: str, reading: Reading, *, turned: bool) -> Printer:
    """Keep a reading of a printer, in place of an earlier one, and return the printer.

    What is known of its other pages stays. Raises `UnusableFileError` where the file is damaged
    or cannot be written; nothing is changed then.
    """
    with _alone(folder):
        printers = read_printers(folder)
        known = replace(find(printers, name) or Printer(name), name=name)
        known = replace(known, turned=reading) if turned else replace(known, upright=reading)
        _write(folder, [*_without(printers, name), known])
    return known


def forget(folder: Path, name: str) -> Printer | None:
    """Forget a printer and return what was known of it, or None where it was not known.

    Raises `UnusableFileError` as `remember` does.
    """
    if not find(read_printers(folder), name):
        return None
    with _alone(folder):
        printers = read_printers(folder)
        known = find(printers, name)
        if known:
            _write(folder, _without(printers, name))
    return known


def _without(printers: Sequence[Printer], name: str) -> list[Printer]:
    return [one for one in printers if folded(one.name) != folded(name)]


def _write(folder: Path, printers: Iterable[Printer]) -> None:
    ordered = sorted(printers, key=lambda one: folded(one.name))
    document = {"format": FORMAT, "printers": [_record(one) for one in ordered]}
    data = (json.dumps(document, indent=2, ensure_ascii=False) + "\n").encode()
    with _explained(folder):
        unfinished, name = tempfile.mkstemp(dir=folder, prefix=f".{FILE}-")
        try:
            with open(unfinished, "wb") as file:  # noqa: PTH123 (it is a descriptor)
                file.write(data)
                file.flush()
                os.fsync(file.fileno())
            patiently(lambda: Path(name).replace(folder / FILE))
        except BaseException:
            with suppress(OSError):
                Path(name).unlink()
            raise


@contextmanager
def _alone(folder: Path) -> Iterator[None]:
    """Make the folder, and let nobody else write the file between reading and writing it."""
    with _explained(folder):
        folder.mkdir(parents=True, exist_ok=True)
        with held(folder / HOLD):
            yield


@contextmanager
def _explained(folder: Path) -> Iterator[None]:
    """Turn what the system says into a line that says what to do."""
    try:
        yield
    except TimeoutError as error:
        raise UnusableFileError(
            f"Another fairdeal align is writing the printers in {folder}. What was there is as it "
            "was. Try again in a moment."
        ) from error
    except OSError as error:
        raise UnusableFileError(
            f"The printers could not be kept in {folder} ({error.strerror or error}). "
            "What was there is as it was. Let the folder be written to, or name another one in "
            "the environment as FAIRDEAL_SETTINGS."
        ) from error


def _damaged(path: Path) -> UnusableFileError:
    return UnusableFileError(
        f"{path} is damaged and was left as it is. Move it away, then give the numbers of your "
        "printers again: fairdeal align --set"
    )


def _record(printer: Printer) -> dict[str, object]:
    sides = {"upright": printer.upright, "turned": printer.turned}
    return {"name": printer.name} | {
        side: None
        if one is None
        else {"right": one.right, "up": one.up, "skew": one.skew, "flip": one.flip.value}
        for side, one in sides.items()
    }


def _from_json(document: Any, path: Path) -> tuple[Printer, ...]:  # noqa: ANN401 (it is any JSON)
    if type(document["format"]) is int and document["format"] > FORMAT:
        raise UnusableFileError(
            f"{path} was written by a newer Fairdeal and was left as it is. Bring this one up to "
            "date."
        )
    printers = tuple(_printer(one) for one in document["printers"])
    distinct = {folded(one.name) for one in printers}
    if document["format"] != FORMAT or len(distinct) < len(printers):
        raise ValueError(document["format"])
    return printers


def _printer(record: dict[str, Any]) -> Printer:
    name = record["name"]
    if not isinstance(name, str) or not name.strip() or not name.isprintable():
        raise ValueError(name)
    return Printer(name, _reading(record["upright"]), _reading(record["turned"]))


def _reading(record: dict[str, Any] | None) -> Reading | None:
    if record is None:
        return None
    right, up = _length(record["right"], MOST_OFF), _length(record["up"], MOST_OFF)
    skew = _length(record["skew"], MOST_SKEW)
    _length(right - skew, MOST_OFF)
    return Reading(right, up, skew, Flip(record["flip"]))


def _length(value: object, most: float) -> float:
    if (
        isinstance(value, bool)
        or not isinstance(value, int | float)
        or not abs(value) <= most + ROUNDING
    ):
        raise ValueError(value)
    return float(value)
