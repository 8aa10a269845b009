"""What a rule is."""

from collections.abc import Callable, Iterable, Iterator

from msgspec import Struct

from cards.content import Content
from cards.finding import Finding, Severity
from cards.place import Place


class Remark(Struct, frozen=True):
    """What a rule says of one cell; its rule gives it a code and a severity."""

    place: Place
    found: str
    wrong: str
    mend: str


class Rule(Struct, frozen=True):
    """A rule: a function that looks at all of the content.

    `source` is the publication that advises it, or says that it is common practice.
    """

    code: str
    severity: Severity
    source: str
    remarks: Callable[[Content], Iterable[Remark]]

    def findings(self, content: Content) -> Iterator[Finding]:
        """Yield what the rule finds."""
        for remark in self.remarks(content):
            yield Finding(
                self.code, self.severity, remark.place, remark.found, remark.wrong, remark.mend
            )
