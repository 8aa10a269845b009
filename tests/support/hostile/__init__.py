"""Files that lie: each is named as a teacher might have it, and made when it is asked for."""

from collections.abc import Mapping

from support.hostile.damaged import DAMAGED
from support.hostile.disguised import DISGUISED
from support.hostile.opendocument import OPENDOCUMENT
from support.hostile.packed import WORKBOOKS
from support.hostile.pictures import PICTURES
from support.hostile.texts import TEXTS

ALL: Mapping[str, bytes] = {
    **DAMAGED,
    **DISGUISED,
    **WORKBOOKS,
    **OPENDOCUMENT,
    **PICTURES,
    **TEXTS,
}
