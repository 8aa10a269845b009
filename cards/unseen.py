"""Loading a library without what it loads only where it finds it."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from types import ModuleType
from typing import cast


@contextmanager
def unseen(module: str) -> Iterator[None]:
    """Let nothing that is imported meanwhile see a module, unless it has been loaded before."""
    if module in sys.modules:
        yield
        return
    # what the import system asks for: it then says that there is no such module
    sys.modules[module] = cast("ModuleType", None)
    try:
        yield
    finally:
        del sys.modules[module]
