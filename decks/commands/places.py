"""How the one file that a command makes is named."""

from pathlib import Path

from decks.settings import UsageError


def refuse_other_ending(file: Path, ending: str, kind: str) -> None:
    """Raise `UsageError` for a name that does not end as that of this kind of file does.

    By another ending, or none, a double click would open it in another program or in none.
    """
    if file.suffix.lower() == ending:
        return
    stem = "" if file.name.startswith(".") else file.stem
    better = f"Name it {stem}{ending}." if stem else f"Name it as in Shore{ending}."
    raise UsageError(f"{file.name}: the name of a {kind} ends in {ending}. {better}")
