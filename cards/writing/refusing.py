"""What the system's refusal to write means, in words for a teacher."""

from errno import EACCES, EDQUOT, EFBIG, ENAMETOOLONG, ENOENT, ENOSPC, EPERM, EROFS

from cards.writing.aside import is_in_use

_TOO_LONG = frozenset({111, 206})
"""What Windows says of names (Microsoft, System Error Codes 0 to 499)."""

_WORDS = {
    ENOSPC: ("the disk is full", "Make room on it"),
    EDQUOT: ("there is no more room for you", "Make room there"),
    EFBIG: ("the file may not be so large there", "Make room there"),
    ENAMETOOLONG: ("the name is too long", "Take a shorter name"),
    ENOENT: ("the folder has gone", "Make it again"),
    EACCES: ("you may not write there", "See that you may, close it in other programs"),
    EPERM: ("you may not write there", "See that you may, close it in other programs"),
    EROFS: ("nothing may be written there", "See that it may"),
}


def refusal(error: OSError) -> tuple[str, str]:
    """Return why something could not be written, and how to mend it; both go into a sentence."""
    if is_in_use(error):
        return "another program has it open", "Close it in other programs and try again"
    if getattr(error, "winerror", None) in _TOO_LONG:
        return _WORDS[ENAMETOOLONG]
    why = error.strerror or str(error) or "the system did not say why"
    return _WORDS.get(error.errno or 0, (why, "Try again"))
