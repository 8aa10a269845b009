"""LibreOffice, where it is installed: a spreadsheet program that is not ours."""

import shutil
import subprocess
from pathlib import Path

import pytest

SOFFICE = shutil.which("soffice") or shutil.which("libreoffice")
needs_office = pytest.mark.skipif(SOFFICE is None, reason="LibreOffice is not installed")
# Comma, quotation mark, UTF-8, from row 1, English (US); not all quoted, cells as they are shown.
AS_SHOWN = "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true"


def converted(path: Path, kind: str, folder: Path) -> Path:
    """Convert a file into a folder, in a profile of its own; return the new file."""
    assert SOFFICE
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    command = [SOFFICE, profile, "--headless", "--convert-to", kind, "--outdir", folder, path]
    subprocess.run(command, check=True, capture_output=True, timeout=300)
    return folder / f"{path.stem}.{kind.partition(':')[0]}"
