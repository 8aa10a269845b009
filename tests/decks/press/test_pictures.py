"""Pictures on a card: where they stand, how large they are, and what they leave for the text."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.items import item
from support.pictures import SHELL, SVG, picture

from cards.picture import PictureKind
from cards.reading.pictures.looking import picture_in
from decks.card import Card
from decks.layout.frame import Frame, Image, Placed, Ribbon, Text
from decks.layout.units import mm
from decks.press.cards.arranging import arrange, fit_face, fitted, text_room
from decks.press.cards.coarse import proofread_picture
from decks.press.cards.drawings import proofread_drawing
from decks.press.cards.faces import face
from decks.press.cards.shape import Shape
from decks.press.pictures import Printed, printed_in, ready
from decks.recipe import Recipe
from decks.team import make_teams

RECIPE = Recipe(title="Shore", teams=make_teams(["Heron", "Otter"], [None, None]))
SMALL = Shape(mm(97), mm(63), back=False)
LARGE = Shape(mm(195), mm(125), back=False)
LONG = "What do the birds in this picture look for where the tide has just gone out? " * 2


def front(image, prompt="What is this?", shape=SMALL):
    return face(Card("12", 1, item(prompt, image=image)), RECIPE.teams[1], shape)


def parts(frame):
    (image,) = [thing for thing in frame.things if isinstance(thing, Image)]
    texts = [thing for thing in frame.things if isinstance(thing, Text)]
    return image, [one for one in texts if one.text not in {"Life", "Otter", "12"}]


@given(
    st.integers(1, 3000),
    st.integers(1, 3000),
    st.sampled_from(["Who?", "What is this?", "Name the animal in the picture.", LONG]),
    st.sampled_from([SMALL, LARGE, Shape(mm(97), mm(63), back=False, ribbon=False)]),
)
def test_a_picture_keeps_its_proportions_and_stays_clear_of_text_labels_and_trim(
    wide, high, prompt, shape
):
    image, words = parts(front(picture(wide, high), prompt, shape))
    assert image.width / image.height == pytest.approx(wide / high)
    assert shape.left - 0.01 <= image.x
    assert image.x + image.width <= shape.left + shape.text_width + 0.01
    assert shape.bottom - 0.01 <= image.y
    assert image.y + image.height <= shape.bottom + shape.text_height + 0.01
    beside = all(word.x < image.x for word in words)
    below = all(word.y + 0.78 * word.size < image.y for word in words)
    assert beside or below


@given(st.integers(1, 400), st.integers(1, 400))
def test_a_picture_is_never_printed_with_fewer_than_75_dots_an_inch(wide, high):
    image, _ = parts(front(picture(wide, high), shape=LARGE))
    assert image.picture.width / (image.width / 72) >= 75 - 1e-6


def test_a_drawing_may_be_of_any_size():
    small = picture(10, 8, PictureKind.SVG)
    image, _ = parts(front(small, shape=LARGE))
    assert image.height > mm(50)


def test_a_wide_picture_stands_above_and_a_tall_one_beside_the_text():
    wide, words = parts(front(picture(2400, 500)))
    assert all(word.y < wide.y for word in words)
    tall, words = parts(front(picture(500, 2000), LONG))
    assert all(word.x < tall.x for word in words)


def test_the_back_shows_no_picture_and_a_row_without_one_has_all_the_room():
    asked = item(image=picture(300, 200))
    back = face(Card("1", 0, asked), RECIPE.teams[0], Shape(mm(97), mm(63), back=True))
    assert not [thing for thing in back.things if isinstance(thing, Image)]
    assert arrange(item(), SMALL).image is None
    assert text_room(item(), SMALL) == (SMALL.text_width, SMALL.text_height)
    wide, high = text_room(asked, SMALL)
    assert wide * high < SMALL.text_width * SMALL.text_height


def test_fitting_reckons_with_the_room_that_a_picture_takes():
    text = " ".join(["curlews"] * 12)
    alone, shown = item(text), item(text, image=picture(300, 200))
    assert fit_face(alone, SMALL).size > fit_face(shown, SMALL).size
    much = " ".join(["curlews"] * 30)
    assert fit_face(item(much), SMALL) is not None
    assert fit_face(item(much, image=picture(300, 200)), SMALL) is None


def test_no_prompt_is_set_as_a_ladder_of_single_words():
    _, words = parts(front(picture(900, 700)))
    assert len({word.y for word in words}) < 3


def test_fitted_takes_the_largest_size_that_the_box_and_the_dots_allow():
    sharp = picture(3000, 2000)
    # 100 wide: 100 x 66.7; the height allows more
    assert fitted(sharp, width=100, height=100) == pytest.approx((100, 200 / 3))
    # 30 dots at 75 an inch: 30/75 in = 28.8 pt
    assert fitted(picture(30, 30), width=100, height=100) == pytest.approx((28.8, 28.8))


# What is coarse


def test_a_coarse_picture_is_noted_at_its_cell_with_what_would_do():
    (note,) = proofread_picture(item(image=picture(60, 40)), SMALL)
    assert (note.code, note.severity) == ("picture-coarse", "note")
    # 60 dots at 75 an inch: 20.3 mm; at 150 an inch 120 are needed, and 60 reach for 10.2 mm
    assert "20 mm wide" in note.wrong
    assert "75 of its dots an inch" in note.wrong
    assert "at least 120 pixels wide" in note.mend
    assert "sharp up to 10 mm" in note.mend


@pytest.mark.parametrize(
    "image", [picture(1200, 900), picture_in(SHELL.encode()), None], ids=["dots", "drawing", "none"]
)
def test_nothing_is_said_of_sharp_pictures(image):
    assert list(proofread_picture(item(image=image), SMALL)) == []


# Letters in drawings


def drawing(text):
    inside = f'<rect width="40" height="20" fill="white"/><text y="15" font-size="9">{text}</text>'
    return picture_in(SVG.format(inside).encode())


@pytest.mark.parametrize("text", ["tide", "שלום", "سلام", "ज्वार", "2 ≤ 3", "ebb\n flow"])
def test_nothing_is_said_of_a_drawing_whose_letters_a_face_has(text):
    assert list(proofread_drawing(item(image=drawing(text)))) == []


@pytest.mark.parametrize("letter", ["東", "ไ", "😀"])
def test_a_drawing_with_letters_that_no_face_has_is_an_error_at_its_cell(letter):
    (found,) = proofread_drawing(item(image=drawing(f"tide {letter}")))
    assert (found.code, found.severity) == ("drawing-cannot-be-printed", "error")
    assert letter in found.wrong


@pytest.mark.parametrize(
    "unseen",
    [
        "<text><title>東</title>tide</text>",
        '<text display="none">東</text><text>tide</text>',
        '<g style="fill: red; display:none"><text>東</text></g><text>tide</text>',
        '<switch><text systemLanguage="ja">東</text><text>tide</text></switch>',
    ],
)
def test_letters_that_a_drawing_does_not_show_may_be_any(unseen):
    def dots(inside):
        image = picture_in(SVG.format(inside).encode())
        assert list(proofread_drawing(item(image=image))) == []
        return ready(Printed(image, 200, 100), grey=False).getRGBData()

    ground = '<rect width="40" height="20" fill="white"/>'
    assert dots(ground + unseen) == dots(f"{ground}<text>tide</text>")


@pytest.mark.parametrize(("one", "other"), [("שלום", "תודה"), ("سلام", "شكرا"), ("ज्वार", "भाटा")])
def test_letters_of_other_scripts_are_drawn_and_not_boxes(one, other):
    def dots(text):
        return ready(Printed(drawing(text), 200, 100), grey=False).getRGBData()

    # boxes for missing letters would look the same for as many
    assert len({dots(one), dots(other), dots("")}) == 3


# Ribbon, bleed and stock


def test_with_a_bleed_the_ribbon_runs_over_three_edges_on_the_same_side():
    bleed = mm(3)
    for back in (False, True):
        shape = Shape(mm(97), mm(63), back=back, bleed=bleed)
        frame = face(Card("1", 0, item()), RECIPE.teams[0], shape)
        (ribbon,) = [thing for thing in frame.things if isinstance(thing, Ribbon)]
        assert ribbon.y == pytest.approx(-bleed)
        assert ribbon.y + ribbon.height == pytest.approx(mm(63) + bleed)
        outer = mm(97) - ribbon.x - ribbon.width if back else ribbon.x
        assert outer == pytest.approx(-bleed)
        inner = ribbon.x if back else mm(97) - ribbon.x - ribbon.width
        assert inner == pytest.approx(mm(97 - 7))
        words = [thing for thing in frame.things if isinstance(thing, Text)]
        start = min(word.x for word in words)
        assert start >= (mm(5) if back else ribbon.x + ribbon.width + mm(4))


def test_without_a_ribbon_its_room_is_for_the_text():
    plain = Shape(mm(97), mm(63), back=False, ribbon=False)
    frame = face(Card("1", 0, item()), RECIPE.teams[0], plain)
    assert not [thing for thing in frame.things if isinstance(thing, Ribbon)]
    # 97 - 2 * 5 mm
    assert plain.text_width == pytest.approx(mm(87))


def test_labels_grow_with_the_card():
    sizes = [Shape(mm(200), mm(high), back=False).label_size for high in (63, 100, 160, 260)]
    assert sizes == sorted(set(sizes))


def test_a_long_text_from_right_to_left_is_flush_right():
    prompt = "אחת\nשתיים ועוד\nשלוש\nארבע ועוד קצת"
    texts = [one for one in front_of(prompt) if one.size > 9]
    from decks.press.type.fonts import measure  # noqa: PLC0415 (as the test is about its sums)

    ends = {round(one.x + measure(one.text) * one.size, 2) for one in texts}
    assert len(texts) == 4
    assert len(ends) == 1


def front_of(prompt):
    frame = face(Card("12", 1, item(prompt)), RECIPE.teams[1], SMALL)
    return [
        thing
        for thing in frame.things
        if isinstance(thing, Text) and thing.text not in {"Life", "Otter", "12"}
    ]


# Before printing


def test_of_one_picture_the_largest_print_counts():
    image = picture(300, 200)
    small = Frame(9, 9, (Image(0, 0, 30, 20, image),))
    large = Frame(9, 9, (Placed(1, 1, Frame(9, 9, (Image(0, 0, 60, 40, image),))),))
    found = printed_in([small, large, small])
    assert [(one.width, one.height) for one in found.values()] == [(60, 40)]
