"""Headings, levels and sheets in five languages."""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping

import pytest

from cards.checking import check
from cards.content import Content
from cards.item import Kind, Level
from cards.reading.headings import keys_of, role_of, unaccented
from cards.reading.languages import language_of
from cards.reading.role import Role
from cards.reading.wordings import HEADINGS, KINDS, LEVELS

ReadCsv = Callable[..., Content]
ReadSheets = Callable[..., Content]


def meanings(
    tables: Mapping[str, Mapping[object, str]], forms: Callable[[str], Iterable[str]]
) -> dict[str, set[object]]:
    found: dict[str, set[object]] = defaultdict(set)
    for table in tables.values():
        for meaning, words in table.items():
            for form in forms(words):
                found[form].add(meaning)
    return found


@pytest.mark.parametrize("tables", [HEADINGS, KINDS])
def test_no_wording_has_two_meanings(tables: Mapping[str, Mapping[object, str]]) -> None:
    found = meanings(tables, keys_of)
    assert {form: some for form, some in found.items() if len(some) > 1 or not form} == {}


def test_no_heading_has_another_meaning_in_the_plural_or_with_a_number() -> None:
    for tables in HEADINGS.values():
        for role, words in tables.items():
            for word in words.split(","):
                assert role_of(word) is role, word
                assert role_of(word.upper()) is role, word
                assert role_of(f" {word}s 2:") in {role, None}, word


def test_no_level_has_two_meanings() -> None:
    found = meanings(LEVELS, lambda words: [unaccented(word) for word in words.split(", ")])
    assert {form: some for form, some in found.items() if len(some) > 1} == {}


def test_every_language_has_every_heading_level_and_kind() -> None:
    assert list(HEADINGS) == ["English", "Spanish", "French", "German", "Portuguese"]
    assert list(HEADINGS) == list(LEVELS) == list(KINDS)
    assert all(set(table) == set(Role) for table in HEADINGS.values())
    assert all(set(table) == set(Level) for table in LEVELS.values())
    assert all(set(table) == set(Kind) for table in KINDS.values())


SHEETS = [
    (
        "Vocabulario",
        "Palabra,Significado,Tema,Nivel,También correcto,Equipo",
        "lapa,molusco de roca,Animales,difícil,,Garza",
    ),
    (
        "Vocabulaire",
        "Mot,Définition,Thème,Difficulté,Autres réponses,Équipe",
        "patelle,mollusque des rochers,Animaux,difficile,,Héron",
    ),
    (
        "Wortschatz",
        "Wort,Bedeutung,Thema,Schwierigkeit,Auch richtig,Mannschaft",
        "Napfschnecke,Weichtier am Fels,Tiere,schwer,,Reiher",
    ),
    (
        "Vocabulário",
        "Palavra,Significado,Tema,Nível,Também certo,Equipa",
        "lapa,molusco das rochas,Animais,difícil,,Garça",
    ),
]
QUESTIONS = [
    ("Preguntas", "Pregunta,Respuesta,Respuestas incorrectas", "fácil"),
    ("Questions", "Question,Réponse,Mauvaises réponses", "facile"),
    ("Fragen", "Frage,Antwort,Falsche Antworten", "leicht"),
    ("Perguntas", "Pergunta,Resposta,Respostas erradas", "fácil"),
]


@pytest.mark.parametrize(("name", "headings", "row"), SHEETS)
def test_vocabulary_is_read_in_five_languages(
    read_sheets: ReadSheets, name: str, headings: str, row: str
) -> None:
    content = read_sheets({name: [headings.split(","), row.split(",")], "Blatt2": [["x", "y"]]})
    word, meaning, topic, *_, team = row.split(",")
    [item] = content.items
    assert (item.answer, item.prompt, item.topic, item.team) == (word, meaning, topic, team)
    assert (item.kind, item.level) == (Kind.VOCABULARY, Level.HARD)
    assert [finding.code for finding in check(content, [team])] == ["sheet-left-out"]


@pytest.mark.parametrize(("name", "headings", "easy"), QUESTIONS)
def test_questions_are_read_in_five_languages(
    read_sheets: ReadSheets, name: str, headings: str, easy: str
) -> None:
    rows = [[*headings.split(","), "Nivel"], ["12 × 12", "144", "124; 142", easy]]
    content = read_sheets({name: rows})
    [item] = content.items
    assert (item.prompt, item.answer, item.wrong) == ("12 × 12", "144", ("124", "142"))
    assert (item.kind, item.level) == (Kind.QUESTION, Level.EASY)
    assert content.findings == ()


@pytest.mark.parametrize("name", ["Vocabulario", "Vocabulaire", "Vokabeln", "Wortschatz"])
def test_a_sheet_without_headings_is_known_by_its_name(read_sheets: ReadSheets, name: str) -> None:
    content = read_sheets({name: [["lapa", "a shellfish"]], "Notes": [["minibus", "10"]]})
    assert [(item.answer, item.kind) for item in content.items] == [("lapa", Kind.VOCABULARY)]


@pytest.mark.parametrize(
    ("name", "headings"),
    [
        ("Equipos", "Equipo,Color"),
        ("Équipes", "Équipe,Couleur"),
        ("Mannschaften", "Mannschaft,Farbe"),
        ("Equipas", "Equipa,Cor"),
        ("Equipes", "Equipe,Cor"),
    ],
)
def test_teams_are_read_in_five_languages(
    read_sheets: ReadSheets, name: str, headings: str
) -> None:
    rows = [headings.split(","), ["Garza", "blue"]]
    content = read_sheets({"Facts": [["Prompt", "Answer"], ["Tides a day", "2"]], name: rows})
    assert [(row.name.text, row.colour and row.colour.text) for row in content.teams] == [
        ("Garza", "blue")
    ]
    assert content.findings == ()


@pytest.mark.parametrize(
    "first",
    [
        "pregunta,question",
        "réponse,answer",
        "tema,theme",
        "Frage,question",
        "couleur,colour",
        "palabra,word",
        "niveau,level",
        "cor,colour",
        "frente,dorso",
        "equipo,team",
        "Bild,picture",
    ],
)
def test_a_translated_heading_word_is_content(read_csv: ReadCsv, first: str) -> None:
    content = read_csv(f"garza,heron\n{first}\nlapa,limpet\n")
    assert [item.prompt for item in content.items] == ["garza", first.partition(",")[0], "lapa"]
    assert content.findings == ()


@pytest.mark.parametrize(
    "first", ["pregunta,question", "réponse,answer", "tema,theme", "Wert,value", "cor,colour"]
)
def test_a_translated_heading_word_is_content_in_the_first_row_too(
    read_csv: ReadCsv, first: str
) -> None:
    content = read_csv(f"{first}\ngarza,heron\nlapa,limpet\n")
    assert len(content.items) == 3
    assert content.findings == ()


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("FÁCIL", Level.EASY),
        ("facil", Level.EASY),
        ("medio", Level.MEDIUM),
        ("moyenne", Level.MEDIUM),
        ("mittel", Level.MEDIUM),
        ("Médio", Level.MEDIUM),
        ("dificil", Level.HARD),
        ("schwer", Level.HARD),
        ("difficile", Level.HARD),
    ],
)
def test_levels_are_known_with_and_without_accents(
    read_csv: ReadCsv, text: str, level: Level
) -> None:
    content = read_csv(f"Prompt,Answer,Level\nTides a day,2,{text}\n")
    assert [item.level for item in content.items] == [level]
    assert content.findings == ()


def test_a_misspelt_heading_of_another_language_is_told_of(read_csv: ReadCsv) -> None:
    content = read_csv("Pregunta,Respeusta\n12 × 12,144\n")
    assert [item.answer for item in content.items] == ["144"]
    assert [(f.code, f.place.cell) for f in content.findings] == [("misspelt-heading", "B1")]


def test_no_name_of_a_language_stands_for_two() -> None:
    assert language_of("Español") == language_of("spanish") != language_of("English")
    assert language_of("Spanglish") is None


@pytest.mark.parametrize(
    "headings", ["English,Spanish", "Deutsch,Englisch", "français,anglais", "inglês,português"]
)
def test_names_of_two_languages_are_headings(read_csv: ReadCsv, headings: str) -> None:
    content = read_csv(f"{headings}\nheron,garza\nlimpet,lapa\n")
    assert [(item.prompt, item.answer) for item in content.items] == [
        ("heron", "garza"),
        ("limpet", "lapa"),
    ]
    assert content.findings == ()


def test_other_columns_beside_two_languages_are_read(read_csv: ReadCsv) -> None:
    content = read_csv("Topic,English,Spanish,Level\nBirds,heron,garza,hard\n")
    [item] = content.items
    assert (item.topic, item.prompt, item.answer, item.level) == (
        "Birds",
        "heron",
        "garza",
        Level.HARD,
    )


@pytest.mark.parametrize("first", ["English,inglés", "Spanish,Spain", "English,a language"])
def test_one_language_in_a_row_is_content(read_csv: ReadCsv, first: str) -> None:
    content = read_csv(f"{first}\nheron,garza\n")
    assert len(content.items) == 2
