"""Why a picture cannot be used."""

from cards.finding import FairdealError


class UnusablePictureError(FairdealError):
    """A picture that cannot be printed: a finding's code, what is wrong with it, and the mend.

    `wrong` goes on from the picture's name: “is cut off in the middle”.
    """

    def __init__(self, code: str, wrong: str, mend: str) -> None:
        super().__init__(f"{wrong} {mend}")
        self.code = code
        self.wrong = wrong
        self.mend = mend


def too_large(how: str) -> UnusablePictureError:
    """Say that a picture is too large to be opened; `how` is what it has too much of."""
    return UnusablePictureError(
        "picture-too-large",
        how,
        "Make it smaller, about 2,000 pixels wide, in a program for pictures.",
    )


def too_much_to_draw(how: str) -> UnusablePictureError:
    """Say that a drawing asks for more than can be drawn; `how` goes on from “a drawing”."""
    return UnusablePictureError(
        "picture-too-large",
        f"is a drawing {how}",
        "Open it in a drawing program and save it as PNG.",
    )


def broken() -> UnusablePictureError:
    """Say that a picture is damaged."""
    return UnusablePictureError(
        "picture-broken",
        "is damaged or cut off",
        "Open it in a program for pictures and save it again as PNG or JPEG.",
    )
