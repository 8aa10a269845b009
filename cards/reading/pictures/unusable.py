"""Why a picture cannot be used."""

from cards.finding import UnusablePictureError

_NARROWEST = 50


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


def blank() -> UnusablePictureError:
    """Say that a drawing shows nothing on paper."""
    return UnusablePictureError(
        "picture-blank",
        "is a drawing that shows nothing: what it draws is white, or lies outside its frame",
        "Open it in a drawing program, fit the page to what is drawn, and save it again.",
    )


def unseen() -> UnusablePictureError:
    """Say that no pixel of a picture shows on paper."""
    return UnusablePictureError(
        "picture-blank",
        "shows nothing on white paper: it is white or transparent all over",
        "Give it a background or a frame in a program for pictures, or choose another picture.",
    )


def refuse_narrow(width: float, height: float) -> None:
    """Raise if a picture is but a line, of which nothing can be seen on a card."""
    if max(width, height) > _NARROWEST * min(width, height):
        raise UnusablePictureError(
            "picture-too-narrow",
            f"is more than {_NARROWEST} times as long as it is wide",
            "Cut out the part that is to be seen in a program for pictures, and save it again.",
        )


def text_for_browsers() -> UnusablePictureError:
    """Say that letters of a drawing are a web page inside it, which is not drawn."""
    return UnusablePictureError(
        "picture-without-text",
        "is a drawing with text that only web browsers show, and would be printed without it",
        "Open it in a web browser or drawing program and save it as PNG.",
    )


def broken() -> UnusablePictureError:
    """Say that a picture is damaged."""
    return UnusablePictureError(
        "picture-broken",
        "is damaged or cut off",
        "Open it in a program for pictures and save it again as PNG or JPEG.",
    )
