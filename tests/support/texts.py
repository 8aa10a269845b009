"""Texts with headings and details, and decks to build organisers of them."""

from strategies import TEAMS

from cards.item import Item, Kind, Level
from cards.place import Place
from decks.activities import make_deck
from decks.recipe import Activity, Dealing, Recipe
from decks.team import make_teams

SHORE = {
    "Holding on": ("Limpets clamp down", "Weeds have a root-like disc", "Starfish have tube feet"),
    "Getting food": ("Barnacles comb the water", "Whelks drill through shells", "Crabs pick"),
    "Keeping cool": ("Pale shells throw back light", "Snails crowd into cracks", "Weed drips"),
}
MARSH = {
    "Slowing the sea": ("Stiff stems break waves", "Creeks spread the flood"),
    "Feeding guests": ("Dead leaves crumble", "Birds probe the mud"),
}
TIDES = {"Pulls": ("The moon pulls", "The sun pulls"), "Times": ("Twice a day", "Later each day")}
TEXTS = {"Between the tides": SHORE, "A saltmarsh": MARSH, "Tides": TIDES}


def headed(**counts):
    """Return a text with so many details under each heading."""
    return {head: tuple(f"{head} says {n}" for n in range(count)) for head, count in counts.items()}


def details_of(texts):
    """Return the items of texts, given as topic, heading and details."""
    rows = [
        (topic, heading, detail)
        for topic, headings in texts.items()
        for heading, details in headings.items()
        for detail in details
    ]
    return [
        Item(
            prompt=detail,
            answer=heading,
            kind=Kind.DETAIL,
            level=Level.MEDIUM,
            topic=topic,
            prompt_place=Place("Details", n, 3),
            answer_place=Place("Details", n, 2),
        )
        for n, (topic, heading, detail) in enumerate(rows, start=2)
    ]


def organizer_deck(texts=None, *, teams=4, seed="s", **settings):
    """Return a deck of details, in copies; without texts there are three."""
    settings.setdefault("deal", Dealing.COPIES)
    recipe = Recipe(
        title="Saltmarsh week",
        teams=make_teams(TEAMS[:teams], [None] * teams),
        activity=Activity.ORGANIZER,
        **settings,
    )
    return make_deck(recipe, details_of(texts or TEXTS), number=1, seed=seed)
