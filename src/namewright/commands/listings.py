"""``namewright roster`` and ``namewright rulings``: what was read, and what there is."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from namewright.commands.asking import roster_of_options
from namewright.commands.common import roster_options
from namewright.commands.talk import ALL_MADE, SOME_NOT_MADE, Commands, worded
from namewright.lines.ruling import PRESETS, told_of
from namewright.making.adult import left_out
from namewright.roster.children import LineReport, RosterError
from namewright.tuning import KNOBS
from namewright.units import number
from namewright.wording import wording


def add(commands: Commands) -> None:
    """Add the words of both commands."""
    account = commands.add_parser("roster", help="how every line of your class list is read")
    roster_options(account)
    account.set_defaults(run=_account)
    settings = commands.add_parser("settings", help="list the settings for motor and vision needs, and why")
    settings.set_defaults(run=_settings)
    listing = commands.add_parser("rulings", help="list the rulings and where their measures come from")
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
        print(worded(note))
    return SOME_NOT_MADE if left_out(roster) else ALL_MADE


def _say_lines(lines: Sequence[LineReport]) -> None:
    for report in lines:
        read = f"{report.child.label}, to practise “{report.child.practice}”" if report.child else str(report.outcome)
        print(f"line {report.line}: {read}" + "".join(f"\n    {worded(note)}" for note in report.notes))


def _settings(_: argparse.Namespace) -> int:
    for knob in KNOBS:
        unit, usual, why = (wording("en").say(f"setting.{of}") for of in (
            f"unit.{knob.unit or 'mm'}", f"usual.{knob.key}", f"why.{knob.key}"))
        span = "on or off" if knob.kind == "switch" else f"{number(knob.least)} to {number(knob.greatest)} {unit}"
        print(f"{knob.key:16} {span}; where it is not set: {usual}\n{'':16} {why}")
    print("These are settings to try with the child’s licensed therapist, not advice.")
    return ALL_MADE


def _rulings(_: argparse.Namespace) -> int:
    for name in PRESETS:
        note, source = map(worded, told_of(name))
        print(f"{name:10} {note}\n{'':10} {source}")
    return ALL_MADE
