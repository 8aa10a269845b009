"""Formulas and equations inside a text: where they may be broken, and where not."""

from collections.abc import Sequence

RELATION, SUM, PRODUCT, AFTER_SIGN = 1.0, 1.5, 2.0, 2.5
"""A formula that is wider than its column is broken before a relation sign, where that does not
help before a plus or minus, and so on, as displayed formulas are (common practice)."""

WORD_RELATION, WORD_SUM = 0.05, 0.15
"""Prices of a break before a sign between words, as in `egg → larva → pupa`."""

RELATIONS = frozenset("=≠≈≡≅≃∼~<>≤≥≪≫∝→←↔⇌⇄⇒⇐⇔⟶⟵⟷↦∈∉⊂⊆")
SUMS = frozenset("+±∓−∪∩∧∨")
PRODUCTS = frozenset("×÷·∙⋅∗*/∕⁄∘^√x")
DOUBTFUL = frozenset("-–:x∶")
"""Signs between two symbols, but a dash, a colon and a letter between words."""

PUNCTUATION = "()[]{}“”‘’\"',.;:?!…"


def formula_joint(words: Sequence[str], n: int) -> float | None:
    """Return the joint between word `n` and the next where either belongs to a formula."""
    left, right = words[n], words[n + 1]
    if _is_sign(words, n + 1):
        around = (left, words[n + 2]) if n + 2 < len(words) else (left,)
        return _before(right, in_symbols=any(_is_symbol(word) for word in around))
    if _is_sign(words, n):
        return AFTER_SIGN
    return AFTER_SIGN if _is_molecule(right) and _goes_before_molecule(left) else None


def _before(sign: str, *, in_symbols: bool) -> float:
    if sign in RELATIONS:
        return RELATION if in_symbols else WORD_RELATION
    if not in_symbols:
        return WORD_SUM
    return PRODUCT if sign in PRODUCTS else SUM


def _is_sign(words: Sequence[str], n: int) -> bool:
    if words[n] in DOUBTFUL:
        return 0 < n < len(words) - 1 and _is_symbol(words[n - 1]) and _is_symbol(words[n + 1])
    return words[n] in RELATIONS | SUMS | PRODUCTS


def _is_symbol(word: str) -> bool:
    """Return whether a word stands for a number: a figure, one letter, a blank, a chemical one."""
    core = word.strip(PUNCTUATION).lstrip("-−+±√")
    return len(core) <= 1 or not core.strip("_") or any(c.isnumeric() for c in core)


def _is_molecule(word: str) -> bool:
    """Return whether a word looks like `H2O` or `SO₄`: capitals and figures, and both of them."""
    core = word.strip(",.;:?!")
    return (
        core[:1].isalpha()
        and core[:1].isupper()
        and any(c.isnumeric() for c in core)
        and all(c.isnumeric() or c.isalpha() or c in "()[]+−-⁺⁻" for c in core)
    )


def _goes_before_molecule(word: str) -> bool:
    return _is_molecule(word) or word.isdecimal()
