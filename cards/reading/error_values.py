"""What spreadsheet programs show where a formula fails, in the languages whose headings are known.

So Microsoft Excel and LibreOffice Calc do, each in the language of its menus (common practice; the
words for what newer functions bring, as #SPILL!, from memory).
"""

import re

_VALUES = (
    "#REF! #NAME? #N/A #VALUE! #DIV/0! #NUM! #NULL! #SPILL! #CALC! #FIELD! #BLOCKED! #CONNECT!",
    "#UNKNOWN! #BUSY! #ERROR! #GETTING_DATA",
    "#¡REF! #¿NOMBRE? #N/D #¡VALOR! #¡DIV/0! #¡NUM! #¡NULO! #¡DESBORDAMIENTO! #¡CALC!",
    "#NOM? #VALEUR! #NOMBRE! #NUL! #PROPAGATION!",
    "#BEZUG! #NV #WERT! #ZAHL! #ÜBERLAUF! #KALK!",
    "#NOME? #VALOR! #NÚM! #NULO! #DESPEJAR!",
)
_FORMS = frozenset(" ".join(_VALUES).split())
# LibreOffice has numbers for the rest (Help, Error Codes in LibreOffice Calc).
_NUMBERED = re.compile(r"Erro? ?:5\d\d")


def is_error_value(text: str) -> bool:
    """Say whether a text is all that a failed formula shows."""
    return text in _FORMS or _NUMBERED.fullmatch(text) is not None
