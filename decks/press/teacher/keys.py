"""The answer keys: the study guides in their own order, and the cards by label."""

from collections.abc import Mapping, Sequence

from cards.item import Item
from decks.bank import Guide, GuidePart
from decks.bank.telling import about_cards, about_guessing, about_last_blank, about_solutions
from decks.card import Card
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.runs import Styled
from decks.press.also import also_told
from decks.press.cards.arranging import as_printed, styled_of
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import (
    BODY,
    NOTE,
    STRONG,
    SUBTITLE,
    TITLE,
    Style,
    continued,
    headed,
    paragraph,
    under_one_another,
)
from decks.recipe import (
    Activity,
    Recipe,
    Support,
    cards_are_the_bank,
)

FIGURE = Style(11, strong=True, tone="quiet")


def guide_key(deck: Deck, width: float) -> list[Block]:
    """Return the key to every study guide, part by part in the order of its blanks."""
    if not deck.guides:
        return []
    title = title_block("Answer key: study guide", "In the order of the guide", width)
    return [title, *(block for guide in deck.guides for block in _guide(deck, guide, width))]


def card_key(deck: Deck, width: float) -> list[Block]:
    """Return the key to the cards in the order of their labels, team by team."""
    subtitle = "In the order of the labels" + (
        ", the same for every team" if deck.has_copies else ""
    )
    words = deck.recipe.activity is Activity.COLLECT
    title = f"Answer key: {'word ' if words else ''}cards"
    blocks = [title_block(title, subtitle, width)]
    for team, hand in enumerate(deck.hands[:1] if deck.has_copies else deck.hands):
        named = None
        if not deck.has_copies:
            blocks.append(_team_head(deck.owners[team].name, team, width))
            named = continued(deck.owners[team].name, team, width)
        blocks += _cards(hand, named, deck.recipe, width, words=words)
    return blocks


def title_block(title: str, subtitle: str, width: float) -> Block:
    """Return the head of a chapter of the teacher's pages; it begins a page."""
    words = under_one_another(
        [paragraph(title, width, TITLE), paragraph(subtitle, width, SUBTITLE)], gap=3
    )
    return Block(words, with_next=True, new_page=True)


def _team_head(name: str, team: int, width: float) -> Block:
    return Block(headed(name, team, width), space=20, with_next=True)


def _guide(deck: Deck, guide: Guide, width: float) -> list[Block]:
    """Return the key to a guide; where it has a second version, to both."""
    team = None if guide.team is None else [t.name for t in deck.recipe.teams].index(guide.team)
    labels = {card.item: card.label for card in deck.cards}
    blocks = []
    if team is not None:
        blocks.append(_team_head(deck.recipe.teams[team].name, team, width))
    for n, part in enumerate(guide.parts):
        if len(guide.parts) > 1:
            head = paragraph(f"Part {n + 1}", width, STRONG)
            again = _named(guide, team, None, width)
            blocks.append(Block(head, space=14, with_next=True, head=again))
        named, notes = _named(guide, team, n, width), _about_part(deck.recipe, guide, n)
        blocks += _blanks(part, labels, deck.recipe, width, named=named, notes=notes)
    return blocks


def _named(guide: Guide, team: int | None, n: int | None, width: float) -> Frame | None:
    """Return what says whose key goes on, and, for a part `n` of several, which part of it."""
    whose = [] if guide.team is None else [guide.team]
    part = [] if n is None or len(guide.parts) == 1 else [f"Part {n + 1}"]
    return continued(" · ".join([*whose, *part]), team, width) if whose or part else None


def _blanks(  # noqa: PLR0913 (a part, where its cards are, and what stands above and below)
    part: GuidePart,
    labels: Mapping[Item, str],
    recipe: Recipe,
    width: float,
    *,
    named: Frame | None,
    notes: Sequence[str],
) -> list[Block]:
    """Return the key to a part of a guide, with its notes."""
    columns = [
        Column("Blank", 42),
        Column("Clue", 0.57 * width - 42),
        Column("Answer", 0.43 * width - 36),
        Column("Card", 36),
    ]
    rows = [
        [
            cell(columns[0], (str(blank), FIGURE)),
            _clue(columns[1], item, recipe),
            _answer(columns[2], item, as_printed(item, recipe, back=True)),
            cell(columns[3], (labels[item], NOTE)),
        ]
        for blank, item in enumerate(part.blanks, start=1)
    ]
    return table(columns, rows, named=named, notes=notes)


def _about_part(recipe: Recipe, guide: Guide, n: int) -> list[str]:
    """Return the notes under a part of a guide with a bank; with two versions, one for each.

    Where the cards are the bank, what is to be said of them stands under the last part.
    """
    if cards_are_the_bank(recipe):
        last = n == len(guide.parts) - 1
        return list(filter(None, [about_cards(guide)])) if last else []
    if recipe.support is not Support.BANK:
        return []
    about = _about(guide.parts[n], recipe.extra_words)
    if not guide.second:
        return [about]
    return [
        f"First version. {about}",
        f"Second version. {_about(guide.second[n], recipe.extra_words)}",
    ]


def _about(part: GuidePart, asked: int) -> str:
    """Return what is to be said of a part: extra words, solutions, and what guessing earns."""
    extra = ", ".join(part.extra_words)
    sentences = [
        f"Extra words, right for no blank: {extra}." if extra else "",
        about_solutions(part),
        about_guessing(part),
        about_last_blank(part, asked=asked),
    ]
    return " ".join(filter(None, sentences))


def _cards(
    hand: tuple[Card, ...], named: Frame | None, recipe: Recipe, width: float, *, words: bool
) -> list[Block]:
    """Return the cards of a hand; `words` says that words are in front, and no clue behind."""
    columns = [
        Column("Card", 42),
        Column("Clue" if words else "Front", 0.5 * width - 42),
        Column("Word" if words else "Back", 0.31 * width),
        Column("Topic and level", 0.19 * width),
    ]
    if words:
        columns[1:3] = reversed(columns[1:3])
    rows = [
        [
            cell(columns[0], (card.label, FIGURE)),
            *_front_and_back(columns[1:3], card.item, recipe, words=words),
            cell(
                columns[3],
                (card.item.topic or "no topic", NOTE),
                (card.item.level.name.lower(), NOTE),
            ),
        ]
        for card in hand
    ]
    return table(columns, rows, named=named)


def _front_and_back(
    columns: Sequence[Column], item: Item, recipe: Recipe, *, words: bool
) -> list[Frame]:
    if words:
        # a word card has no choices, and so no letter of the right one
        word = styled_of(item, back=True, fractions=recipe.fractions)
        return [_answer(columns[0], item, word), _clue(columns[1], item, recipe)]
    answer = as_printed(item, recipe, back=True)
    return [_clue(columns[0], item, recipe), _answer(columns[1], item, answer)]


def _clue(column: Column, item: Item, recipe: Recipe) -> Frame:
    return cell(column, (styled_of(item, back=False, fractions=recipe.fractions), BODY))


def _answer(column: Column, item: Item, answer: Styled) -> Frame:
    return cell(column, (answer, STRONG), (also_told(item), NOTE))
