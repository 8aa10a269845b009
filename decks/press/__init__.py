"""Drawing only: frames become a PDF, in rooms for cards, handouts and the teacher's pages."""

import sys
from types import ModuleType

# reportlab would otherwise run files of these names from the user's home, and draw by them
for _name in ("reportlab_mods", "reportlab_settings"):
    sys.modules.setdefault(_name, ModuleType(_name))
