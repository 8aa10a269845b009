"""Running numbers and bullets before the texts of a column."""

from collections.abc import Callable
from pathlib import Path

import pytest
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont
from support.workbooks import fill

from cards.checking import check
from cards.content import Content
from cards.reading import read
from cards.style import Span, TextStyle

ReadSheets = Callable[..., Content]
ReadCsv = Callable[..., Content]
HEADINGS = ["Question", "Answer"]
PAIRS = [
    ["What clings to rock?", "limpet"],
    ["Which worm digs?", "lugworm"],
    ["Who wades?", "heron"],
    ["How many tides a day?", "2"],
    ["What grows here?", "samphire"],
]


def codes(content: Content) -> list[tuple[str, str, str]]:
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


def texts(content: Content) -> list[list[str]]:
    return [[item.prompt, item.answer] for item in content.items]


def marked(prompt: str, answer: str) -> list[list[str]]:
    """Return the pairs with marks before them; `{n}` is a number, `{a}` a letter."""
    return [
        [
            form.format(n=n, a="-abcde"[n]) + text
            for form, text in zip((prompt, answer), pair, strict=True)
        ]
        for n, pair in enumerate(PAIRS, start=1)
    ]


@pytest.mark.parametrize(
    ("prompt", "answer"),
    [
        ("{n}. ", "{n}. "),
        ("{n}) ", "{n}.) "),
        ("({n}) ", "{n}: "),
        ("{a}) ", "{a}. "),
        ("({a}) ", "{n}.) "),
        ("Q{n}: ", "a{n}. "),
        ("Question {n}. ", "Answer {n}) "),
        ("Frage {n}: ", "Antwort {n}: "),
    ],
)
def test_numbers_that_count_the_texts_are_left_out_and_told_of(
    read_sheets: ReadSheets, prompt: str, answer: str
) -> None:
    content = read_sheets({"Shore": [HEADINGS, *marked(prompt, answer)]})
    assert texts(content) == PAIRS
    assert codes(content) == [
        ("running-numbers", "note", "Shore A2"),
        ("running-numbers", "note", "Shore B2"),
    ]


@pytest.mark.parametrize("mark", ["{n}. ", "{a}) ", "A: "])
def test_one_side_may_be_numbered_alone(read_sheets: ReadSheets, mark: str) -> None:
    content = read_sheets({"Shore": [HEADINGS, *marked("", mark)]})
    assert texts(content) == PAIRS
    assert codes(content) == [("running-numbers", "note", "Shore B2")]


def test_choices_are_bare_or_marked_all_of_them(read_sheets: ReadSheets) -> None:
    head = ["Question", "Answer", "Wrong answers"]
    for mark in ("• ", "1) "):
        rows = [[asked, f"{mark}{right}", f"{mark}tern; {mark}gull"] for asked, right in PAIRS]
        content = read_sheets({"Shore": [head, *rows]})
        assert [item.answer for item in content.items] == [row[1] for row in rows]
    columns = ["Question", "A", "B", "C", "Correct"]
    rows = [[asked, f"• {right}", "• tern", "• gull", "A"] for asked, right in PAIRS]
    for item in read_sheets({"Shore": [columns, *rows]}).items:
        assert {text[:2] for text in (item.answer, *item.wrong)} == {"• "}


@pytest.mark.parametrize("bullet", ["• ", "•", "- ", "▪ "])
def test_bullets_are_left_out_as_well(read_csv: ReadCsv, bullet: str) -> None:
    rows = [[f"{bullet}{prompt}", answer] for prompt, answer in PAIRS]
    content = read_csv("".join(f"{prompt},{answer}\n" for prompt, answer in rows))
    assert texts(content) == PAIRS
    assert codes(content) == [("running-numbers", "note", "words.csv A1")]


def test_a_row_may_lack_its_number_or_be_gone(read_sheets: ReadSheets) -> None:
    rows = [[f"{n}. Which creature is no. {n}?", "crab"] for n in range(1, 31)]
    rows[4][0] = "Which creature is left?"
    del rows[20]
    rows = [["Question", "Answer"], *rows[:10], [], *rows[10:]]
    content = read_sheets({"Shore": rows})
    assert not [item.prompt for item in content.items if item.prompt[0].isdigit()]


def test_letters_keep_their_styles(tmp_path: Path) -> None:
    book = fill({"Shore": [HEADINGS, *marked("{n}. ", "{n}. ")]})
    raised = TextBlock(InlineFont(vertAlign="superscript"), "2")
    bold = TextBlock(InlineFont(b=True), "3. m")
    book["Shore"]["B4"] = CellRichText(bold, raised)
    book.save(tmp_path / "Shore.xlsx")
    item = read(tmp_path / "Shore.xlsx").items[2]
    assert item.answer == "m2"
    assert item.answer_spans == (Span(0, 1, TextStyle.BOLD), Span(1, 2, TextStyle.RAISED))


SEEN = ("flood", "new dyke", "great storm", "last ferry")
INNOCENT = {
    "decimals": ["1.5 m", "2.5 m", "3.5 m", "4.5 m"],
    "negative numbers": ["-5", "-4", "-3", "-2"],
    "negative letters": ["-x", "-y", "-ed", "-ing"],
    "ratios": ["1: 2", "2: 3", "3: 4", "4: 5"],
    "sizes of paper": ["A1: largest", "A2: half", "A3: quarter", "A4: usual"],
    "ordinals from the second": ["2. World War", "3. Reich", "4. Republic", "5. Column"],
    "Czech dates": ["1. ledna", "2. února", "3. února", "4. března"],
    "Finnish dates": ["1. tammikuuta", "2. helmikuuta", "3. maaliskuuta", "4. huhtikuuta"],
    "inverses": ["- a", "- b", "- c", "- d"],
    "temperatures in words": ["- five", "- ten below", "- two below", "- one below zero"],
    "forms that nobody wrote": ["* wodr", "* fisk", "* kuningaz", "* stainaz"],
    "first days of months": ["1. Januar", "2. Februar", "3. März", "4. April"],
    "species in small letters": ["c. elegans", "d. rerio", "e. coli", "f. catus"],
    "dates in the order of the year": ["1. Januar", "6. Januar", "3. Oktober", "24. Dezember"],
    "ordinals": ["1. Advent", "2. Advent", "3. Advent", "4. Advent"],
    "ordinals of questions": ["1. Akt: wer?", "2. Akt: wo?", "3. Akt: was?", "4. Akt: wann?"],
    "ordinals with more": ["1. Akt: Anfang", "2. Akt: Gefahr", "3. Akt: Not", "4. Akt: Ende"],
    "times": ["1:30", "2:30", "3:30", "4:30"],
    "numbers": ["1", "2", "3", "4"],
    "numbers with a full stop": ["1.", "2.", "3.", "4."],
    "hours": ["1 o'clock", "2 o'clock", "3 o'clock", "4 o'clock"],
    "years": ["1066. A battle", "1067. A siege", "1068. A march", "1069. A famine"],
    "numbers that go up and down": ["2. FC", "1. BC", "4. DC", "3. EC"],
    "things that are counted": ["Step 1: mix", "Step 2: stir", "Step 3: pour", "Step 4: wait"],
    "species": ["A. thaliana", "B. subtilis", "C. elegans", "D. rerio"],
    "kinds of fronts": ["Front: cold", "Front: warm", "Front: dry", "Front: occluded"],
    "initials": ["C. Brine", "C. Wader", "C. Marsh", "C. Crab"],
    "lists of several lines": ["- ebb\n- flow", "- salt\n- mud", "- tern\n- gull", "- a\n- b"],
}


@pytest.mark.parametrize("answers", INNOCENT.values(), ids=INNOCENT.keys())
def test_what_only_looks_like_running_numbers_stays(
    read_sheets: ReadSheets, answers: list[str]
) -> None:
    rows = [[prompt, answer] for (prompt, _), answer in zip(PAIRS, answers, strict=False)]
    content = read_sheets({"Shore": [HEADINGS, *rows]})
    assert texts(content) == rows
    assert codes(content) == []


@pytest.mark.parametrize(
    "prompts",
    [
        ["- x + 3 = 5", "- y + 2 = 8", "- z + 4 = 1", "- n - 4 = 1"],
        ["A: Where are you?", "A: Who are you?", "A: What is it?", "A: Why?"],
        ["- x plus y", "- a plus b", "- c plus d", "- e plus f"],
        ["- ou -", "- ai -", "- eau -", "- oi -"],
        ["* I goed home", "* She sinked it", "* We was late", "* It are wet"],
    ],
)
def test_signs_of_formulas_and_of_wrong_sentences_stay(
    read_sheets: ReadSheets, prompts: list[str]
) -> None:
    rows = [[prompt, answer] for prompt, (_, answer) in zip(prompts, PAIRS, strict=False)]
    assert texts(read_sheets({"Shore": [HEADINGS, *rows]})) == rows


def test_sentences_that_begin_alike_may_be_numbered(read_sheets: ReadSheets) -> None:
    rows = [[f"{n}. The year of the {what}", f"18{n}0"] for n, what in enumerate(SEEN, start=1)]
    content = read_sheets({"Shore": [HEADINGS, *rows]})
    assert [item.prompt for item in content.items] == [f"The year of the {what}" for what in SEEN]


def test_two_numbers_are_no_run(read_sheets: ReadSheets) -> None:
    rows = marked("", "{n}. ")[:2]
    assert texts(read_sheets({"Shore": [HEADINGS, *rows]})) == rows
