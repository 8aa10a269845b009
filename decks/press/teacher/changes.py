"""What is new in a deck after the first: its figures, what comes back, and by which means."""

from collections.abc import Iterator, Sequence

from cards.item import Item, Level
from decks.aims import Plan
from decks.aims.past import KNOWN, KNOWN_TRIES, MISSED
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.marks.estimate import STRENGTH
from decks.marks.summary import GOOD
from decks.press.cards.arranging import as_printed, styled_of
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import (
    BODY,
    NOTE,
    STRONG,
    Style,
    paragraph,
    under_one_another,
)
from decks.recipe import Aim
from decks.words import percent

FIGURE = Style(11, strong=True, tone="quiet")
MOST = 12
"""So many items that come back are shown; the rest is counted."""

AIMS = {
    Aim.HARDER: "Harder where the class is sure, gentler where it is not",
    Aim.RETEACH: "To reteach what was missed, among easier items of the same topics",
    Aim.MIXED: "Older items among new ones",
}


def changes(deck: Deck, plan: Plan, width: float) -> list[Block]:
    """Return the page that says what was chosen for the aim, and why."""
    return [
        title_block("What is new in this deck", AIMS[plan.aim], width),
        *(
            Block(paragraph(sentence, width, BODY), space=5 if n else 14)
            for n, sentence in enumerate(plan.sentences)
        ),
        *_figures(plan, width),
        *_means(plan, width),
        *_back(deck, plan, width),
        *_advice(plan, width),
        Block(paragraph(_explained(), width, NOTE), space=14),
    ]


def _figures(plan: Plan, width: float) -> list[Block]:
    """Return the last deck and this one side by side."""
    last = plan.history.last
    columns = [
        Column("", 0.4 * width),
        Column(f"Deck {last.number}", 0.3 * width),
        Column("This deck", 0.3 * width, 0),
    ]
    levels = [sum(item.level is level for item in plan.choice.items) for level in Level]
    by_marks = percent(plan.history.mean) if plan.history.last_marked else "no marks"
    lines = [
        ("Expected to be right", percent(last.told), percent(plan.choice.share)),
        ("Expected after the marks", by_marks, "–"),
        ("Items", str(len(last.keys)), str(len(plan.choice.items))),
        ("Easy, medium, hard", _in_a_row(last.levels), _in_a_row(levels)),
        ("Seen in an earlier deck", "–", str(plan.seen)),
    ]
    styles = (STRONG, Style(11), Style(11))
    rows = [
        [cell(*each) for each in zip(columns, zip(line, styles, strict=True), strict=True)]
        for line in lines
    ]
    return table(columns, rows, space=14)


def _in_a_row(levels: Sequence[int]) -> str:
    return ", ".join(map(str, levels))


def _means(plan: Plan, width: float) -> Iterator[Block]:
    for n, means in enumerate(plan.means):
        told = [paragraph(means.title, width, STRONG), paragraph(means.text, width, BODY)]
        yield Block(under_one_another(told, gap=1), space=8 if n else 16)


def _back(deck: Deck, plan: Plan, width: float) -> list[Block]:
    """Return what was missed and is back, to be gone over before the lesson.

    Older items that are back for practice alone are not among these.
    """
    back = plan.due + plan.behind
    if not back:
        return []
    lacking = " or of a topic that needs another lesson" if plan.behind else ""
    text = f"Missed before{lacking}, and back: go over them first"
    shown, rest = back[:MOST], len(back) - MOST
    more = [Block(paragraph(f"and {rest} more", width, NOTE), space=5)] if rest > 0 else []
    head = Block(paragraph(text, width, STRONG), space=16, with_next=True)
    return [head, *table(*_table(deck, plan, shown, width), space=4), *more]


def _table(
    deck: Deck, plan: Plan, items: Sequence[Item], width: float
) -> tuple[list[Column], list[list[Frame]]]:
    labels = {card.item: card.label for card in deck.cards}
    columns = [
        Column("Card", 42),
        Column("Clue", 0.5 * width - 42),
        Column("Answer", 0.31 * width),
        Column("Right last time", 0.19 * width),
    ]
    fractions = deck.recipe.fractions
    rows = [
        [
            cell(columns[0], (labels[item], FIGURE)),
            cell(columns[1], (styled_of(item, back=False, fractions=fractions), BODY)),
            cell(columns[2], (as_printed(item, deck.recipe, back=True), STRONG)),
            cell(columns[3], (_right(plan, item), NOTE)),
        ]
        for item in items
    ]
    return columns, rows


def _right(plan: Plan, item: Item) -> str:
    past = plan.history.of(item)
    if past is None or not past.results:
        return ""
    last = past.results[-1]
    return f"{last.right} of {last.tries}"


def _advice(plan: Plan, width: float) -> Iterator[Block]:
    if plan.choice.advice:
        yield Block(paragraph("What the content lacks", width, STRONG), space=16, with_next=True)
    for line in plan.choice.advice:
        yield Block(paragraph(line, width, BODY), space=3)


def _explained() -> str:
    known, good = percent(KNOWN), percent(GOOD)
    return (
        f"An item counts as missed if fewer than {MISSED} % got it right when it was last marked, "
        f"and as known if at least {known} are expected to get it right after {KNOWN_TRIES} tries "
        f"or more; a topic needs another lesson if all of its interval is below {good}. "
        "What is expected begins with the level (90, 75 or 60 %, which weighs as much as "
        f"{STRENGTH:g} tries) and moves with every mark; what the study guide does is not in the "
        "figures, as nobody knows how much it does in your class."
    )
