"""Names of months and days, in the language that a format code asks for; else in English."""

from collections.abc import Mapping

from msgspec import Struct


class Names(Struct, frozen=True):
    """The names of the months from January on and of the days from Monday on, long and short."""

    months: tuple[str, ...]
    short_months: tuple[str, ...]
    days: tuple[str, ...]
    short_days: tuple[str, ...]


def _names(months: str, short_months: str, days: str, short_days: str) -> Names:
    return Names(*(tuple(words.split()) for words in (months, short_months, days, short_days)))


ENGLISH = _names(
    "January February March April May June July August September October November December",
    "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec",
    "Monday Tuesday Wednesday Thursday Friday Saturday Sunday",
    "Mon Tue Wed Thu Fri Sat Sun",
)
# By the number of the language, the lower ten bits of a language identifier (MS-LCID, 2.1).
_LANGUAGE_BITS = 0x3FF
_BY_LANGUAGE: Mapping[int, Names] = {
    0x07: _names(
        "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
        "Jan Feb Mär Apr Mai Jun Jul Aug Sep Okt Nov Dez",
        "Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag",
        "Mo Di Mi Do Fr Sa So",
    ),
    0x0A: _names(
        "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
        "ene feb mar abr may jun jul ago sep oct nov dic",
        "lunes martes miércoles jueves viernes sábado domingo",
        "lun mar mié jue vie sáb dom",
    ),
    0x0C: _names(
        "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
        "janv. févr. mars avr. mai juin juil. août sept. oct. nov. déc.",
        "lundi mardi mercredi jeudi vendredi samedi dimanche",
        "lun. mar. mer. jeu. ven. sam. dim.",
    ),
    0x16: _names(
        "janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro",
        "jan fev mar abr mai jun jul ago set out nov dez",
        "segunda-feira terça-feira quarta-feira quinta-feira sexta-feira sábado domingo",
        "seg ter qua qui sex sáb dom",
    ),
}


def names_in(language: str) -> Names:
    """Return the names for a language identifier in hexadecimal, as in `[$-40C]`; or English."""
    number = int(language, 16) & _LANGUAGE_BITS if language else 0
    return _BY_LANGUAGE.get(number, ENGLISH)
