"""Whatever stands in the cells, checking comes to an end and points at cells that are there."""

from hypothesis import given
from hypothesis import strategies as st

from cards.checking import check
from cards.checking.decoding import wrongly_decoded
from cards.checking.slips import distance
from cards.content import Content
from cards.item import Item, Kind, Level
from cards.place import Place

PIECES = st.sampled_from(
    ["the tide", "a ____", "is called an …", "12 × 15", "Ã©", "not", "10–20", "all of the above"]
)
TEXTS = st.one_of(st.text(max_size=30), st.lists(PIECES, max_size=4).map(" ".join))


@st.composite
def contents(draw):
    rows = draw(st.lists(st.tuples(TEXTS, TEXTS, st.lists(TEXTS, max_size=3)), max_size=8))
    items = tuple(
        Item(
            prompt,
            answer,
            draw(st.sampled_from(Kind)),
            draw(st.sampled_from(Level)),
            draw(st.sampled_from(["Tides", "", "Zones"])),
            Place("Sheet", row, 1),
            Place("Sheet", row, 2),
            also_right=tuple(more[:1]),
            wrong=tuple(more[1:]),
        )
        for row, (prompt, answer, more) in enumerate(rows, 2)
    )
    return Content("Any", items, (), (), (), "")


@given(contents())
def test_findings_stand_in_the_cells_of_their_rows(content) -> None:
    places = {p for item in content.items for p in (item.prompt_place, item.answer_place)}
    findings = check(content, ())
    assert {finding.place for finding in findings} <= places | {Place("Sheet")}
    assert all(finding.wrong and finding.mend for finding in findings)
    assert check(content, ()) == findings


def fact(prompt):
    places = (Place("Facts", 2, 1), Place("Facts", 2, 2))
    return Content(
        "Any", (Item(prompt, "sea", Kind.FACT, Level.EASY, "", *places),), (), (), (), ""
    )


@given(st.sampled_from("éèêëáàâäíìîïóòôöúùûüñçøåæœšž’“…€°½²×"), st.sampled_from(["caf", "r", "sm"]))
def test_a_letter_that_went_through_a_wrong_encoding_is_found(letter, before) -> None:
    # how it goes wrong: written as UTF-8, read as cp1252, with the five bytes that this lacks kept
    mangled = "".join(
        bytes([byte]).decode("cp1252") if byte not in {0x81, 0x8D, 0x8F, 0x90, 0x9D} else chr(byte)
        for byte in letter.encode()
    )
    assert len(list(wrongly_decoded(fact(f"{before}{mangled}s")))) == 1
    assert list(wrongly_decoded(fact(f"{before}{letter}s"))) == []


WORDS = st.text("abc", max_size=6)


@given(WORDS, WORDS)
def test_the_distance_of_words_is_even_handed(word, other) -> None:
    assert distance(word, other) == distance(other, word) <= max(len(word), len(other))
    assert (distance(word, other) == 0) is (word == other)


def test_a_swap_counts_once() -> None:
    assert [distance("atlantic", "altantic"), distance("tide", "tied"), distance("", "ebb")] == [
        *(1, 1, 3)
    ]
