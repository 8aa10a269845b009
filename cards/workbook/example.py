"""The rows of content that a blank workbook brings along when asked for."""

from collections.abc import Mapping

from cards.exercises import Rows
from cards.exercises import rows as _rows

EXAMPLE: Mapping[str, Rows] = {
    "Vocabulary": _rows("""
seaweed | A plant-like living thing that grows on rocks under the waves | Shore life | easy | algae
barnacle | A tiny animal that glues itself down inside a cone of plates | Shore life | medium |
lichen | A grey or orange crust, part fungus, on the highest rocks | Shore life | hard |
creek | A narrow channel that carries the tide in and out of a marsh | Saltmarsh | easy | gut
cordgrass | A tough plant, one of the first to root in bare mud | Saltmarsh | hard | Spartina
strandline | The band of weed and shells where the sea last turned | Tides | medium | tideline
"""),
    "Facts": _rows("""
A limpet holds on to its rock with one strong … | foot | Shore life | easy | muscular foot
Besides its pincers, the number of legs that a crab has is … | 8 | Shore life | medium | eight
At the smallest tides, the lit part of the moon’s face is … | 1/2 | Tides | hard | half; 50%
When the moon is new or full, the tides are at their … | biggest | Tides | medium | largest
"""),
    "Questions": _rows("""
Which bird stands still to spear fish? | heron | plover; dunlin; teal | Saltmarsh | easy |
Which marsh plant was once burnt to make glass? | glasswort | reed; thrift | Saltmarsh | hard |
What do you do with a stone you turned over? | put it back | keep it; drop it | Shore life | easy |
What comes about six hours after low water? | high water | new moon; a storm | Tides | easy |
"""),
    "Details": _rows("""
Life between the tides | Not drying out | Mussels close their shells until the sea comes back
Life between the tides | Not drying out | Anemones fold in their arms and keep a drop of water
Life between the tides | Holding on | Seaweeds grip the rock with a holdfast
Life between the tides | Holding on | Starfish cling with hundreds of tube feet
"""),
    "Teams": _rows("""
Heron | blue
Otter | orange
Samphire | green
Curlew | yellow
"""),
}
"""A few rows of every kind, for whoever would rather change rows than begin with none."""
