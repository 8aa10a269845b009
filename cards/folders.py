"""Whether a name is that of a folder, be it a name that cannot be."""

from pathlib import Path


def is_folder(place: Path) -> bool:
    """Say whether a place is a folder; of a name that cannot be, whoever opens it tells."""
    try:
        return place.is_dir()
    except OSError:
        return False
