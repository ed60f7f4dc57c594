"""``namewright roster`` and ``namewright rulings``: what was read, and what there is."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from namewright.commands.asking import roster_of_options
from namewright.commands.common import roster_options
from namewright.commands.talk import ALL_MADE, SOME_NOT_MADE, Commands, explained, spoken, tell, worded
from namewright.lines.ruling import PRESETS, told_of
from namewright.making.adult import left_out
from namewright.message import message
from namewright.roster.children import LineReport, RosterError
from namewright.tuning import KNOBS


def add(commands: Commands) -> None:
    """Add the words of both commands."""
    account = commands.add_parser("roster", help=explained("roster.help"))
    roster_options(account)
    account.set_defaults(run=_account)
    settings = commands.add_parser("settings", help=explained("settings.help"))
    settings.set_defaults(run=_settings)
    listing = commands.add_parser("rulings", help=explained("rulings.help"))
    listing.set_defaults(run=_rulings)


def _account(options: argparse.Namespace) -> int:
    """Say of every line of the roster how it was read."""
    try:
        roster = roster_of_options(options)
    except RosterError as error:
        _say_lines(error.lines)
        raise
    _say_lines(roster.lines)
    for note in roster.notes:
        tell(note)
    return SOME_NOT_MADE if left_out(roster) else ALL_MADE


def _say_lines(lines: Sequence[LineReport]) -> None:
    for report in lines:
        child = report.child
        key = f"command.roster.{report.outcome.name.lower()}"
        read = message(key, line=report.source_line, text=report.opening, label=child.label,
                       practice=child.practice) if child else message(key, line=report.source_line, text=report.opening)
        print("\n    ".join([spoken().say(read), *map(worded, report.notes)]))


def _settings(_: argparse.Namespace) -> int:
    for knob in KNOBS:
        usual = message(f"setting.usual.{knob.key}")
        span = message("command.settings.switch", usual=usual) if knob.kind == "switch" else message(
            "command.settings.range", least=knob.least, most=knob.greatest, unit=message(f"setting.unit.{knob.unit}"),
            usual=usual)
        print(f"{knob.key:16} {spoken().say(span)}\n{'':16} {spoken().say(f'setting.why.{knob.key}')}")
    tell("command.settings.therapist")
    return ALL_MADE


def _rulings(_: argparse.Namespace) -> int:
    for name in PRESETS:
        note, source = map(spoken().say, told_of(name))
        print(f"{name:10} {note}\n{'':10} {source}")
    return ALL_MADE
