"""Who writes a team's answer: a roster of seats, so that nobody's name is needed."""


def writers(seats: int, questions: int) -> tuple[int, ...]:
    """Return the seat, counted from 1, that writes at each question.

    Wherever the lesson stops, every seat has written equally often or once more, and none has
    written twice running where there are two. Every time round begins one seat further on, so
    that a seat does not meet the easy questions only; with two seats that would make one of them
    write twice.
    """
    further = 1 if seats > 2 else 0  # noqa: PLR2004 (see above)
    return tuple((n + n // seats * further) % seats + 1 for n in range(questions))
