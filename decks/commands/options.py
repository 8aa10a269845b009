"""The settings as options of a command."""

import inspect
from collections.abc import Callable, Collection, Mapping
from typing import Annotated

import typer

from decks.settings import SETTINGS, Setting

ONLY_NEXT = frozenset({"aim", "target", "seen_before", "floor"})
"""The settings that say what a deck after the first is for."""

Command = Callable[..., None]

_SETTINGS = {setting.key: setting for setting in SETTINGS}


def with_settings(*, but: Collection[str] = ()) -> Callable[[Command], Command]:
    """Give a command an option for every setting, save those whose keys are in `but`.

    The command takes them as `**given`, by key. Each is helped by the words of its row on the Deck
    sheet.
    """
    options = [_parameter(setting) for setting in SETTINGS if setting.key not in but]

    def decorated(command: Command) -> Command:
        file, *others, _given = inspect.signature(command).parameters.values()
        signature = inspect.Signature([file, *options, *others])
        setattr(command, "__signature__", signature)  # noqa: B010 (typer reads it, mypy does not)
        return command

    return decorated


def option_for(key: str) -> typer.models.OptionInfo:
    """Return the option for a setting, helped by the words of its row on the Deck sheet."""
    setting = _SETTINGS[key]
    option: typer.models.OptionInfo = typer.Option(
        setting.option, help=f"{setting.what} ({setting.expects})."
    )
    return option


def _parameter(setting: Setting) -> inspect.Parameter:
    return inspect.Parameter(
        setting.key,
        inspect.Parameter.KEYWORD_ONLY,
        default=None,
        annotation=Annotated[str | None, option_for(setting.key)],
    )


def chosen(given: Mapping[str, str | None]) -> dict[str, str]:
    """Return the options that were given."""
    return {key: value for key, value in given.items() if value is not None}
