"""Drawing only: fonts, inks, textures, faces, and one module for each paper."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def _unseen(module: str) -> Iterator[None]:
    """Let nothing that is imported meanwhile see a module."""
    waiting = sys.modules.get(module)
    sys.modules[module] = None  # type: ignore[assignment] # what the import system asks for
    try:
        yield
    finally:
        del sys.modules[module]
        if waiting is not None:
            sys.modules[module] = waiting


# reportlab loads the shaping engine whenever it is there, used or not; most decks need none of it
with _unseen("uharfbuzz"):
    import reportlab.pdfbase.ttfonts  # noqa: F401
