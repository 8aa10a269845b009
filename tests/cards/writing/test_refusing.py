"""What the system says, in words for a teacher."""

import errno
import os

import pytest

from cards.writing.refusing import refusal


@pytest.mark.parametrize(
    ("number", "why", "mend"),
    [
        (errno.ENOSPC, "the disk is full", "Make room"),
        (errno.EDQUOT, "no more room for you", "Make room"),
        (errno.EFBIG, "may not be so large", "Make room"),
        (errno.EROFS, "nothing may be written there", "See that it may"),
        (errno.EACCES, "you may not write there", "See that you may"),
        (errno.ENAMETOOLONG, "the name is too long", "Take a shorter name"),
        (errno.ENOENT, "the folder has gone", "Make it again"),
        (errno.EIO, os.strerror(errno.EIO), "Try again"),
    ],
)
def test_a_refusal_says_why_and_what_to_do(number, why, mend):
    said = refusal(OSError(number, os.strerror(number)))
    assert why in said[0]
    assert said[1].startswith(mend)


@pytest.mark.parametrize(
    ("number", "why"),
    # Microsoft, System Error Codes (0-499)
    [(32, "another program has it open"), (33, "another program"), (206, "the name is too long")],
)
def test_what_only_windows_says_is_understood(number, why):
    error = OSError(errno.EACCES, "in English or another language")
    error.winerror = number
    assert why in refusal(error)[0]
