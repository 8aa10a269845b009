"""The one place where other units become points."""

POINTS_PER_INCH = 72.0
MM_PER_INCH = 25.4


def mm(length: float) -> float:
    """Return millimetres in points."""
    return length * POINTS_PER_INCH / MM_PER_INCH


def inch(length: float) -> float:
    """Return inches in points."""
    return length * POINTS_PER_INCH


def in_mm(points: float) -> float:
    """Return points in millimetres."""
    return points * MM_PER_INCH / POINTS_PER_INCH
