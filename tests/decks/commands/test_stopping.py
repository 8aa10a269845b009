"""When a stop ends a run, and when it comes too late."""

import signal
from contextlib import suppress

import pytest

from decks.commands.stopping import Stopped, finishing, heed, stoppable

ENDED = {"SIGINT": 130, "SIGTERM": 143}
"""As shells tell it: 128 and the number of the signal, 2 and 15 (POSIX.1-2017, kill, -s)."""


@pytest.mark.parametrize("name", ENDED)
def test_a_stop_ends_the_run_with_the_usual_status(name):
    with pytest.raises(Stopped) as stop, stoppable():
        signal.raise_signal(getattr(signal, name))
    assert stop.value.status == ENDED[name]


def test_a_stop_that_was_lost_on_its_way_is_heeded_at_the_next_step():
    with stoppable():
        with pytest.raises(Stopped):
            signal.raise_signal(signal.SIGTERM)
        with pytest.raises(Stopped):
            heed()
        with pytest.raises(Stopped), finishing():
            pytest.fail("nothing is put in its place any more")


def test_while_files_are_put_in_their_place_and_afterwards_a_stop_comes_too_late():
    with stoppable():
        with finishing():
            signal.raise_signal(signal.SIGINT)
        heed()


def test_where_nothing_could_be_put_in_its_place_a_stop_holds_again():
    with stoppable():
        with suppress(OSError), finishing():
            signal.raise_signal(signal.SIGINT)
            raise OSError
        with pytest.raises(Stopped):
            heed()


def test_a_run_does_not_know_of_a_stop_of_the_run_before():
    with pytest.raises(Stopped), stoppable():
        signal.raise_signal(signal.SIGINT)
    with stoppable():
        heed()


def test_what_is_being_ignored_goes_on_being_ignored_and_all_is_as_before_in_the_end():
    before = signal.signal(signal.SIGHUP, signal.SIG_IGN)
    interrupt = signal.getsignal(signal.SIGINT)
    try:
        with stoppable():
            signal.raise_signal(signal.SIGHUP)
            assert signal.getsignal(signal.SIGINT) is not interrupt
        assert signal.getsignal(signal.SIGINT) is interrupt
    finally:
        signal.signal(signal.SIGHUP, before)
