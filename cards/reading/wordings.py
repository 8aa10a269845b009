"""The words that teachers use for headings, levels and sheets, language by language.

A wording has one meaning, whatever its language: headings are read without asking for the language
of a sheet. Case, accents, spaces and marks do not count, nor does the `s` of a plural.
"""

from collections.abc import Mapping

from cards.item import Kind, Level
from cards.reading.role import Role

HEADINGS: Mapping[str, Mapping[Role, str]] = {
    "English": {
        Role.WORD: "word, term, vocabulary, vocabulary word, vocab, vocab word, key word, "
        "key term, headword, new word, spelling word, word or phrase, word phrase, term or phrase",
        Role.MEANING: "meaning, definition, clue, definition or clue, clue or definition, "
        "description, explanation, translation, gloss, what it means, word meaning, def",
        Role.PROMPT: "prompt, front, front of card, front side, cue, side 1, side a, statement, "
        "fact, card front, stem, sentence",
        Role.QUESTION: "question, ask, q, problem, sum, exercise question, question text",
        Role.ANSWER: "answer, solution, back, back of card, back side, response, reply, side 2, "
        "side b, a, card back, result, right answer, correct answer, answer key, ans, answer text, "
        "correct response, expected answer, model answer",
        Role.HEADING: "heading, head, main idea, main heading, idea",
        Role.DETAIL: "detail, supporting detail, supporting fact, evidence",
        Role.TOPIC: "topic, unit, theme, category, section, chapter, lesson, subject, subtopic, "
        "strand",
        Role.LEVEL: "level, difficulty, difficulty level, level of difficulty, how hard",
        Role.ALSO_RIGHT: "also right, also accept, also accepted, also correct, other answer, "
        "other right answer, other correct answer, alternative, alternate, alternative answer, "
        "alternate answer, accept, accepted answer, acceptable answer",
        Role.WRONG: "wrong answer, wrong choice, wrong, distractor, incorrect answer, incorrect, "
        "incorrect choice, wrong option, false answer, other choice",
        Role.TEAM: "team, team name, for team",
        Role.PICTURE: "picture, image, photo, illustration, drawing",
        Role.COLOUR: "colour, color, team colour, team color",
        Role.SETTING: "setting, option",
        Role.VALUE: "value",
    },
    "Spanish": {
        Role.WORD: "palabra, término, vocabulario, palabra clave, vocablo",
        Role.MEANING: "significado, definición, pista, descripción, explicación, traducción",
        Role.PROMPT: "enunciado, consigna, anverso, frente, cara a, frase, oración, hecho",
        Role.QUESTION: "pregunta, problema, ejercicio",
        Role.ANSWER: "respuesta, solución, reverso, dorso, cara b, resultado, respuesta correcta",
        Role.HEADING: "encabezado, título, idea principal",
        Role.DETAIL: "detalle, idea secundaria",
        Role.TOPIC: "tema, unidad, categoría, sección, capítulo, lección, asunto, bloque",
        Role.LEVEL: "nivel, dificultad, nivel de dificultad",
        Role.ALSO_RIGHT: "también correcto, también correcta, también vale, también válida, "
        "otra respuesta, otras respuestas, otras respuestas correctas, respuesta alternativa, "
        "respuestas alternativas, se acepta, alternativa",
        Role.WRONG: "respuesta incorrecta, respuestas incorrectas, respuesta errónea, "
        "respuestas erróneas, respuesta falsa, respuestas falsas, distractor, distractores, "
        "incorrecta, opción incorrecta, opciones incorrectas",
        Role.TEAM: "equipo, nombre del equipo",
        Role.PICTURE: "imagen, imágenes, foto, dibujo, ilustración",
        Role.COLOUR: "color, color del equipo",
        Role.SETTING: "ajuste, opción, configuración",
        Role.VALUE: "valor",
    },
    "French": {
        Role.WORD: "mot, terme, vocabulaire, mot clé, mot de vocabulaire",
        Role.MEANING: "sens, signification, définition, indice, description, explication, "
        "traduction",
        Role.PROMPT: "consigne, énoncé, recto, face a, phrase, fait, affirmation, amorce",
        Role.QUESTION: "question, problème, exercice",
        Role.ANSWER: "réponse, solution, verso, face b, résultat, bonne réponse, réponse juste, "
        "réponse correcte, corrigé",
        Role.HEADING: "titre, idée principale, idée",
        Role.DETAIL: "détail, détail à l'appui",
        Role.TOPIC: "thème, sujet, unité, catégorie, section, chapitre, leçon, séquence",
        Role.LEVEL: "niveau, difficulté, niveau de difficulté",
        Role.ALSO_RIGHT: "aussi juste, aussi correct, aussi accepté, autre réponse, "
        "autres réponses, autres réponses justes, autres bonnes réponses, réponse acceptée, "
        "réponses acceptées",
        Role.WRONG: "mauvaise réponse, mauvaises réponses, réponse fausse, réponses fausses, "
        "réponse incorrecte, réponses incorrectes, distracteur, faux",
        Role.TEAM: "équipe, nom de l'équipe",
        Role.PICTURE: "image, photo, dessin, illustration",
        Role.COLOUR: "couleur, couleur de l'équipe",
        Role.SETTING: "réglage, paramètre, option",
        Role.VALUE: "valeur",
    },
    "German": {
        Role.WORD: "Wort, Wörter, Begriff, Begriffe, Vokabel, Vokabeln, Fachbegriff, Fachwort, "
        "Wortschatz",
        Role.MEANING: "Bedeutung, Bedeutungen, Definition, Definitionen, Erklärung, Erklärungen, "
        "Beschreibung, Umschreibung, Übersetzung, Hinweis",
        Role.PROMPT: "Vorderseite, Satz, Aussage, Fakt, Fakten, Seite A, Seite 1, Vorgabe",
        Role.QUESTION: "Frage, Fragen, Aufgabe, Aufgaben, Fragestellung",
        Role.ANSWER: "Antwort, Antworten, Lösung, Lösungen, Rückseite, Ergebnis, Seite B, Seite 2, "
        "richtige Antwort",
        Role.HEADING: "Überschrift, Überschriften, Hauptgedanke, Titel",
        Role.DETAIL: "Detail, Einzelheit, Einzelheiten",
        Role.TOPIC: "Thema, Themen, Einheit, Kategorie, Kapitel, Lektion, Abschnitt, Sachgebiet",
        Role.LEVEL: "Stufe, Niveau, Schwierigkeit, Schwierigkeitsgrad, Schwierigkeitsstufe",
        Role.ALSO_RIGHT: "auch richtig, auch möglich, weitere Antwort, weitere Antworten, "
        "andere Antwort, andere Antworten, weitere richtige Antworten",
        Role.WRONG: "falsche Antwort, falsche Antworten, falsch, Falschantwort, Falschantworten, "
        "Distraktor, Distraktoren",
        Role.TEAM: "Mannschaft, Team, Teamname",
        Role.PICTURE: "Bild, Bilder, Foto, Abbildung, Zeichnung",
        Role.COLOUR: "Farbe, Teamfarbe",
        Role.SETTING: "Einstellung, Option",
        Role.VALUE: "Wert",
    },
    "Portuguese": {
        Role.WORD: "palavra, termo, vocabulário, palavra-chave, vocábulo",
        Role.MEANING: "significado, definição, pista, dica, descrição, explicação, tradução",
        Role.PROMPT: "enunciado, frente, lado a, frase, facto, fato, afirmação",
        Role.QUESTION: "pergunta, questão, questões, problema, exercício",
        Role.ANSWER: "resposta, solução, verso, lado b, resultado, resposta certa, "
        "resposta correta",
        Role.HEADING: "título, ideia principal, cabeçalho",
        Role.DETAIL: "detalhe, pormenor, pormenores",
        Role.TOPIC: "tema, tópico, unidade, categoria, secção, seção, capítulo, lição, assunto",
        Role.LEVEL: "nível, dificuldade, nível de dificuldade, grau de dificuldade",
        Role.ALSO_RIGHT: "também certo, também certa, também correto, também correta, "
        "outra resposta, outras respostas, outras respostas certas, resposta alternativa, "
        "respostas alternativas, também aceite, também aceito",
        Role.WRONG: "resposta errada, respostas erradas, resposta incorreta, "
        "respostas incorretas, resposta falsa, respostas falsas, distrator, distratores, "
        "errada, incorreta",
        Role.TEAM: "equipa, equipe, nome da equipa, nome da equipe",
        Role.PICTURE: "imagem, imagens, foto, desenho, ilustração",
        Role.COLOUR: "cor, cor da equipa, cor da equipe",
        Role.SETTING: "configuração, configurações, opção, opções",
        Role.VALUE: "valor",
    },
}

LEVELS: Mapping[str, Mapping[Level, str]] = {
    "English": {
        Level.EASY: "1, 1.0, easy, e, low, simple, basic, level 1, *, ★",
        Level.MEDIUM: "2, 2.0, medium, m, med, middle, moderate, average, level 2, **, ★★",
        Level.HARD: "3, 3.0, hard, h, high, difficult, challenging, advanced, level 3, ***, ★★★",
    },
    "Spanish": {
        Level.EASY: "fácil, sencillo, sencilla, básico, bajo, nivel 1",
        Level.MEDIUM: "medio, media, mediano, mediana, intermedio, regular, nivel 2",
        Level.HARD: "difícil, avanzado, alto, nivel 3",
    },
    "French": {
        Level.EASY: "facile, simple, bas, niveau 1",
        Level.MEDIUM: "moyen, moyenne, intermédiaire, niveau 2",
        Level.HARD: "difficile, dur, avancé, haut, niveau 3",
    },
    "German": {
        Level.EASY: "leicht, einfach, niedrig, Stufe 1",
        Level.MEDIUM: "mittel, mittelschwer, Stufe 2",
        Level.HARD: "schwer, schwierig, hoch, Stufe 3",
    },
    "Portuguese": {
        Level.EASY: "fácil, simples, básico, baixo, nível 1",
        Level.MEDIUM: "médio, média, intermédio, intermediário, nível 2",
        Level.HARD: "difícil, avançado, alto, nível 3",
    },
}

KINDS: Mapping[str, Mapping[Kind, str]] = {
    "English": {
        Kind.VOCABULARY: "vocabulary, vocab",
        Kind.FACT: "fact",
        Kind.QUESTION: "question",
        Kind.DETAIL: "detail",
    },
    "Spanish": {
        Kind.VOCABULARY: "vocabulario",
        Kind.FACT: "hecho",
        Kind.QUESTION: "pregunta",
        Kind.DETAIL: "detalle",
    },
    "French": {
        Kind.VOCABULARY: "vocabulaire",
        Kind.FACT: "fait",
        Kind.QUESTION: "question",
        Kind.DETAIL: "détail",
    },
    "German": {
        Kind.VOCABULARY: "Wortschatz, Vokabel, Vokabeln",
        Kind.FACT: "Fakt, Fakten",
        Kind.QUESTION: "Frage, Fragen",
        Kind.DETAIL: "Detail, Einzelheiten",
    },
    "Portuguese": {
        Kind.VOCABULARY: "vocabulário",
        Kind.FACT: "facto, fato",
        Kind.QUESTION: "pergunta, questões",
        Kind.DETAIL: "detalhe, pormenores",
    },
}

# No words for exercises but English: in the other four they are what English calls questions.
TEAM_SHEETS = "team, group, equipo, équipe, Mannschaft, Mannschaften, equipa, equipe"
TEAM_COLOURS = "paint, ink, hue, shade, paper colour, paper color, card colour, card color"
"""What heads the colours on a Teams sheet besides what heads them anywhere."""

DECK_SHEETS = (
    "deck, setting, deck setting, ajuste, configuración, réglage, paramètre, Einstellung, "
    "Einstellungen, configuração, configurações"
)
EXERCISE_SHEETS = "exercise"
STUDENTS = (
    "name, names, student, pupil, learner, child, children, player, member, student name, "
    "pupil name, first name, given name, last name, surname, family name, nombre, apellido, "
    "alumno, alumna, estudiante, nom, prénom, élève, Vorname, Nachname, Schüler, Schülerin, "
    "Schülerinnen, Kind, Kinder, nome, apelido, sobrenome, aluno, aluna"
)
"""What heads the students of a list that says which team each is in."""

TOTALS = (
    "total, grand total, subtotal, sum, average, mean, count, suma, promedio, media, somme, "
    "moyenne, Summe, Gesamt, Gesamtsumme, Durchschnitt, Mittelwert, soma, média"
)
"""What a row that sums up those above it is called."""

CHOICES = (
    "choice, option, answer, answer choice, opción, respuesta, alternativa, choix, proposition, "
    "réponse, Antwort, Auswahl, Möglichkeit, opção, resposta, escolha"
)
"""What stands before the letter or number in the heading of a choice."""

RIGHT_CHOICE = (
    "right, correct, key, right choice, correct choice, right option, correct option, "
    "correct letter, correcta, opción correcta, bon choix, juste, richtig, correta, "
    "alternativa correta, opção correta"
)
"""What heads the column that says which choice is right, besides what heads an answer."""
