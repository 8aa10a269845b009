"""Good content that looks like a mistake: each rule keeps quiet."""

import pytest

from cards.checking import check

FACTS = ["Prompt", "Answer", "Also right"]
QUESTIONS = ["Question", "Answer", "Wrong answers"]
VOCABULARY = ["Word", "Meaning", "Also right"]


def codes(content):
    return [finding.code for finding in check(content, ())]


INNOCENT_FACTS = {
    "one word tells two questions apart": [
        ["Which tide comes at new moon, spring or neap?", "spring"],
        ["Which tide comes at half moon, spring or neap?", "neap"],
    ],
    "a number tells two questions apart": [
        ["Legs that 12 shore crabs have between them", "120"],
        ["Legs that 13 shore crabs have between them", "130"],
    ],
    "one letter tells two words apart": [
        ["What is formed from the nitrate in old seaweed?", "saltpetre"],
        ["What is formed from the nitrite in old seaweed?", "bacon cure"],
    ],
    "a sign tells two prompts apart": [
        ["Write the answer of twelve + four", "16"],
        ["Write the answer of twelve − four", "8"],
    ],
    "capitals tell two symbols apart": [["Co", "cobalt"], ["CO", "carbon monoxide"]],
    "capitals tell two units apart": [["What is 1 Mg?", "a tonne"], ["What is 1 mg?", "a speck"]],
    "capitals tell two short names apart": [
        ["What does mW stand for?", "milliwatt"],
        ["What does MW stand for?", "megawatt"],
    ],
    "a symbol begins a prompt": [["m is short for", "metre"], ["M is short for", "mega"]],
    "blanks tell two programs apart": [
        ["What is shown?\nfor i in 1, 2:\n    j = i\nprint(j)", "2"],
        ["What is shown?\nfor i in 1, 2:\n    j = i\n    print(j)", "1 and 2"],
    ],
    "the name of a note is no article": [
        ["What is the relative minor of C major?", "A minor"],
        ["Which major key has three sharps?", "A major"],
    ],
    "numbers come again": [["Tides in a day", "2"], ["Shells of a mussel", "2"]],
    "yes comes again": [["Is a limpet a snail?", "yes"], ["Is a whelk a snail?", "yes"]],
    "things are sorted": [
        *[[f"Is the {name} animal, plant or neither?", "animal"] for name in ("crab", "tern")],
        *[[f"Is the {name} animal, plant or neither?", "plant"] for name in ("thrift", "wrack")],
        ["Is the whelk animal, plant or neither?", "animal"],
    ],
    "a question offers its answer": [["Which is saltier, the sea or the river?", "the sea"]],
    "each is asked for in both directions": [
        ["Symbol of iodine", "I"],
        ["Element with the symbol I", "iodine"],
    ],
    "an article goes by sound": [
        ["Sixty minutes are called an …", "hour"],
        ["Ten of ten, in rulers, is a …", "unit"],
        ["The picture from the hospital is an …", "MRI scan"],
        ["A rescue at sea may begin with an …", "SOS"],
        ["Someone from Crete is a …", "European"],
        ["A seal pup stays on land for nearly an …", "8-week month"],
    ],
    "a capital A is no article": [["What comes of too little vitamin A …", "eye trouble"]],
    "an article of another language": [["Vamos de madrugada a ____", "orillas del mar"]],
    "a mass has no plural": [["Grains of worn rock are called …", "sand"]],
    "an s makes no plural": [["The study of forces is called …", "physics"]],
    "accents in order": [["Mañana", "ÂGE, MANHÃ… ÉTÉ”"], ["Ångström", "Größe «É»"]],
    "why not": [["Why do limpets not dry out?", "they clamp down"]],
    "a capital NOT": [["Which of these is NOT a bird?", "a bat"]],
    "whenever and knot": [["Which knot holds whenever it is pulled?", "bowline"]],
}


@pytest.mark.parametrize("rows", INNOCENT_FACTS.values(), ids=INNOCENT_FACTS.keys())
def test_facts_that_look_amiss_are_left(read_sheets, rows) -> None:
    assert codes(read_sheets({"Facts": [FACTS, *rows]})) == []


@pytest.mark.parametrize(
    ("answer", "wrong"),
    [
        ("the sea", "sea lions; seaweed"),
        ("2", "12; 20; 22"),
        ("1/2", "1/12; 2/1"),
        ("x < 5", "x > 5; x = 5"),
        ("Co", "CO; co"),
        ("1914–1918", "1912–1916; 1939–1945"),
        ("10–19", "20–29; 30–39"),
        ("less than 10", "10 to 20; more than 20"),
        ("10–20 cm", "10–20 m; 15–25 km"),
        ("all of the fish", "none of the fish; some"),
    ],
)
def test_choices_that_look_amiss_are_left(read_sheets, answer, wrong) -> None:
    rows = [QUESTIONS, ["What do the gulls want?", answer, wrong]]
    assert codes(read_sheets({"Questions": rows})) == []


def test_a_plural_is_left_where_the_singular_is_right_too(read_sheets) -> None:
    words = ["ebb", "silt", "creek", "groyne", "skerry"]
    rows = [[word, f"Thing number {i} of the shore"] for i, word in enumerate(words)]
    plural = ["mudflats", "Where waders feed"]
    assert codes(read_sheets({"Vocabulary": [VOCABULARY, *rows, plural]})) == [
        "plural-among-singular"
    ]
    assert codes(read_sheets({"Vocabulary": [VOCABULARY, *rows, [*plural, "mudflat"]]})) == []
