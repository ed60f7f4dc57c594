"""The command line: parse, call one library function, write, and say in a sentence what went wrong.

Exit status 0: everyone made; 1: some children not made, the rest are; 2: nothing could be made.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path
from typing import NoReturn, TextIO

from namewright import __version__
from namewright.classwork import Work, left_out
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.lines.ruling import DEFAULT_RULING, PRESETS, Ruling, custom_ruling, preset
from namewright.lines.tiles import LARGE_TILE_MM, TILE_MM
from namewright.names.model import Child, LineReport, Roster, RosterError
from namewright.names.roster import load_roster, read_roster, roster_from_bytes
from namewright.output.files import whole_file
from namewright.pages.card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.press import Press, captions
from namewright.pages.sheet import SheetSettings
from namewright.pages.tilesheet import TileSettings
from namewright.practice.order import Order, order_class, order_csv, order_json, order_table
from namewright.settings import Hand, NamePart, Support
from namewright.units import parse_length_mm

ALL_MADE, SOME_NOT_MADE, NOTHING_MADE = 0, 1, 2
_TITLE = "Name practice"  # general on purpose: a PDF's title is shown by print queues
_EXAMPLES = """\
For example:
  namewright sheets class.xlsx -o class.pdf        a practice sheet for every child in the list
  namewright sheets - -o class.pdf                 the same, from names you paste (end with Ctrl-D)
  namewright card Mira -o card.pdf                 one name card, now
  namewright tiles class.xlsx -o tiles.pdf         letter tiles to cut
  namewright order class.xlsx                      who could practise first, and why
Nothing leaves this computer. “namewright sheets --help” tells more about sheets, and so on.
"""


class Refusal(Exception):
    """Nothing can be made; the message is for the person at the keyboard."""


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        self.exit(NOTHING_MADE, f"{self.prog}: {message}. “{self.prog} --help” shows what can be said.\n")


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; return its exit status."""
    options = _parser().parse_args(argv)
    run: Callable[[argparse.Namespace], int] = options.run
    try:
        return run(options)
    except (Refusal, RosterError) as error:
        _complain(str(error))
    except BrokenPipeError:  # the reader of our output has had enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return ALL_MADE
    except OSError as error:
        _complain(f"{error.filename or 'a file'} cannot be used: {error.strerror or error}. "
                  "Check the name and that you may write there.")
    except RuntimeError as error:  # the native library is missing
        _complain(str(error))
    except KeyboardInterrupt:
        _complain("stopped; nothing was left half written")
    return NOTHING_MADE


# --- the commands ------------------------------------------------------------------------------------


def _sheets(options: argparse.Namespace) -> int:
    roster, settings, work = _roster(options), _sheet_settings(options), Work()
    placed = order_class(roster.children, Order(options.order))
    pages = _progress(work.sheets(placed, settings), len(placed))
    pages = _with_pictures(pages, options)
    _write(_followed(pages, lambda: work.summary(roster, settings) if work.made else ()), options)
    return _closing(work, roster)


def _tiles(options: argparse.Namespace) -> int:
    roster, work = _roster(options), Work()
    placed = order_class(roster.children, Order(options.order))
    settings = TileSettings(LARGE_TILE_MM if options.tile == "38" else TILE_MM, Paper(options.paper),
                            options.landscape, options.binding, options.captions)
    _write(_progress(work.tiles(placed, settings), None), options)
    return _closing(work, roster)


def _card(options: argparse.Namespace) -> int:
    name = _one_name(options.name)
    settings = CardSettings(_ruling(options), CardSize(options.size), Support(options.support), options.captions)
    press = Press()
    try:
        page = (card_sheet(press, name, name, settings, Paper(options.paper)) if options.fill_sheet
                else card_page(press, name, name, settings))
    except (MissingLetters, DoesNotFit) as error:
        raise Refusal(f"{name}: {error}.") from error
    _write([page], options)
    return ALL_MADE


def _order(options: argparse.Namespace) -> int:
    roster = _roster(options)
    write = {"table": order_table, "csv": order_csv, "json": order_json}[options.format]
    text = write(order_class(roster.children, Order(options.order)))
    if options.output:
        with whole_file(_target(options.output)) as file:
            file.write(text.encode())
    else:
        sys.stdout.write(text)
    return _closing(Work(), roster)


def _account(options: argparse.Namespace) -> int:
    """Say of every line of the roster how it was read."""
    try:
        roster = _roster(options)
    except RosterError as error:
        _say_lines(error.lines)
        raise
    _say_lines(roster.lines)
    for note in roster.notes:
        print(note)
    return SOME_NOT_MADE if left_out(roster) else ALL_MADE


def _say_lines(lines: Sequence[LineReport]) -> None:
    for report in lines:
        read = f"{report.child.label}, to practise “{report.child.practice}”" if report.child else str(report.outcome)
        print(f"line {report.line}: {read}" + "".join(f"\n    {note}" for note in report.notes))


def _rulings(_: argparse.Namespace) -> int:
    for ruling in PRESETS.values():
        print(f"{ruling.name:10} {ruling.note}\n{'':10} {ruling.source}")
    return ALL_MADE


# --- reading what was asked --------------------------------------------------------------------------


def _roster(options: argparse.Namespace) -> Roster:
    part = NamePart(options.practise)
    if options.roster == "-":
        return roster_from_bytes(sys.stdin.buffer.read(), "the pasted text", part)
    return load_roster(Path(options.roster), part)


def _one_name(text: str) -> str:
    """Read the name of a card as a roster of one line, so that both clean a name alike."""
    children: Sequence[Child] = read_roster(text, "the name", NamePart.BOTH).children
    if len(children) != 1:
        raise Refusal(f"a card is for one child; “{text}” reads as {len(children)}")
    return children[0].practice


def _ruling(options: argparse.Namespace) -> Ruling:
    try:
        asked = {"midline": options.midline, "descender_mm": _length(options.descender),
                 "gap_mm": _length(options.row_gap)}
        own = {key: value for key, value in asked.items() if value is not None}
        height = _length(options.line_height)
        if own:
            return custom_ruling(height if height is not None else preset(options.ruling).line_height_mm, **own)
        ruling = preset(options.ruling)
        return ruling if height is None else ruling.scaled_to(height)
    except ValueError as error:
        raise Refusal(str(error)) from error


def _length(text: str | None) -> float | None:
    return None if text is None else parse_length_mm(text)


def _sheet_settings(options: argparse.Namespace) -> SheetSettings:
    return SheetSettings(_ruling(options), Paper(options.paper), options.landscape, options.binding,
                         Support(options.support), Hand(options.hand), options.captions)


# --- writing -----------------------------------------------------------------------------------------


def _write(pages: Iterable[Page], options: argparse.Namespace) -> None:
    """Write the PDF whole or not at all. Raises Refusal where there is no page to write."""
    from namewright.output.pdf import write_pdf

    language = captions(options.captions)["language"]
    pages = iter(pages)
    first = next(pages, None)
    if first is not None:
        with whole_file(_target(options.output)) as file:
            write_pdf(_followed([first], lambda: pages), file, title=_TITLE, lang=language)


def _target(path: str) -> Path:
    target = Path(path)
    if target.is_dir():
        raise Refusal(f"{path} is a folder; name a file in it, such as {path.rstrip('/')}/class.pdf")
    if not target.parent.is_dir():
        raise Refusal(f"there is no folder {target.parent} to write {target.name} into; make it first")
    return target


def _with_pictures(pages: Iterable[Page], options: argparse.Namespace) -> Iterator[Page]:
    """Pass the pages on, and write each as a numbered picture into the folders asked for."""
    from namewright.output.svg import page_svg

    folders = {kind: Path(folder) for kind, folder in (("svg", options.svg), ("png", options.png)) if folder}
    for folder in folders.values():
        folder.mkdir(parents=True, exist_ok=True)
    for count, page in enumerate(pages, 1):
        if "svg" in folders:
            with whole_file(folders["svg"] / f"{count:04d}.svg") as file:
                file.write(page_svg(page).encode())
        if "png" in folders:
            from namewright.output.png import page_png

            with whole_file(folders["png"] / f"{count:04d}.png") as file:
                file.write(page_png(page))
        yield page


def _followed(pages: Iterable[Page], more: Callable[[], Iterable[Page]]) -> Iterator[Page]:
    """Yield the pages, then those that can only be made afterwards."""
    yield from pages
    yield from more()


def _progress(pages: Iterable[Page], total: int | None, stream: TextIO | None = None) -> Iterator[Page]:
    """Pass the pages on; on a terminal, and only there, show how far the work is."""
    stream = stream or sys.stderr
    shown = total is not None and total >= 10 and stream.isatty()
    for count, page in enumerate(pages, 1):
        if shown and total:
            filled = min(30, 30 * count // total)
            stream.write(f"\r[{'#' * filled}{'.' * (30 - filled)}] {count} of {total} ")
            stream.flush()
        yield page
    if shown:
        stream.write("\r" + " " * 60 + "\r")


def _closing(work: Work, roster: Roster) -> int:
    """Name on stderr every child who was not made and every line left out; return the exit status."""
    for one in work.not_made:
        _complain(f"not made: {one.child.label} (line {one.child.line}): {one.reason}")
    for report in left_out(roster):
        _complain(f"left out: line {report.line}: {' '.join(report.notes)}")
    if any(report.notes for report in roster.lines) or roster.notes:
        _complain("some lines were read with a note; “namewright roster” and the same list tells how each was read")
    missed = len(work.not_made)
    if missed and missed == len(roster.children):
        return NOTHING_MADE
    return SOME_NOT_MADE if missed or left_out(roster) else ALL_MADE


def _complain(sentence: str) -> None:
    print(f"namewright: {sentence}", file=sys.stderr)


# --- the words ---------------------------------------------------------------------------------------


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(prog="namewright", description="Name practice for young writers: give it your class list, "
                     "get paper that fits every child’s name.", epilog=_EXAMPLES,
                     formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--version", action="version", version=f"namewright {__version__}")
    commands = parser.add_subparsers(title="what it can do", required=True, metavar="COMMAND")
    _add_sheets(commands)
    _add_card(commands)
    _add_tiles(commands)
    _add_order(commands)
    account = commands.add_parser("roster", help="how every line of your class list is read")
    _roster_options(account)
    account.set_defaults(run=_account)
    listing = commands.add_parser("rulings", help="list the rulings and where their measures come from")
    listing.set_defaults(run=_rulings)
    return parser


_Commands = argparse._SubParsersAction  # the type argparse itself returns; it has no public name


def _add_sheets(commands: _Commands[_Parser]) -> None:
    parser = commands.add_parser("sheets", help="a practice sheet for every child of a class")
    _roster_options(parser)
    _page_options(parser)
    _line_options(parser)
    parser.add_argument("--hand", choices=list(Hand), default=Hand.RIGHT,
                        help="the writing hand of children whose list says nothing (%(default)s)")
    parser.add_argument("--svg", metavar="DIR", help="also write every page as a numbered SVG into this folder")
    parser.add_argument("--png", metavar="DIR", help="also write every page as a numbered PNG into this folder")
    parser.set_defaults(run=_sheets)


def _add_card(commands: _Commands[_Parser]) -> None:
    parser = commands.add_parser("card", help="a name card for one child")
    parser.add_argument("name", metavar="NAME", help="the name to write; put quotes round one with spaces")
    _page_options(parser)
    _line_options(parser)
    parser.add_argument("--hand", choices=list(Hand), default=Hand.RIGHT, help=argparse.SUPPRESS)
    parser.add_argument("--order", choices=list(Order), default=Order.PRACTICE, help=argparse.SUPPRESS)
    parser.add_argument("--size", choices=list(CardSize), default=CardSize.INDEX_4X6,
                        help="the card: an index card in inches, or A6 (%(default)s)")
    parser.add_argument("--fill-sheet", action="store_true",
                        help="fill a whole sheet with cards, with lines to cut along")
    parser.set_defaults(run=_card)


def _add_tiles(commands: _Commands[_Parser]) -> None:
    parser = commands.add_parser("tiles", help="letter tiles to cut, a strip for every child")
    _roster_options(parser)
    _page_options(parser)
    parser.add_argument("--tile", choices=["25", "38"], default="25", metavar="MM",
                        help="the side of a tile: 25 mm, or 38 mm for the youngest (%(default)s)")
    for word in ("--ruling", "--line-height", "--support", "--hand"):
        parser.add_argument(word, help=argparse.SUPPRESS)
    parser.set_defaults(run=_tiles)


def _add_order(commands: _Commands[_Parser]) -> None:
    parser = commands.add_parser("order", help="the class in an order to practise, and why")
    _roster_options(parser)
    parser.add_argument("--format", choices=["table", "csv", "json"], default="table", help="(%(default)s)")
    parser.add_argument("-o", "--output", metavar="FILE", help="write to this file, not to the screen")
    for word in ("--paper", "--ruling", "--line-height", "--support", "--hand", "--captions"):
        parser.add_argument(word, help=argparse.SUPPRESS)
    parser.add_argument("--landscape", action="store_true", help=argparse.SUPPRESS)
    parser.set_defaults(run=_order)


def _roster_options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("roster", metavar="ROSTER",
                        help="your class list: a .txt, .csv, .tsv or .xlsx file, or - to paste it")
    parser.add_argument("--order", choices=list(Order), default=Order.PRACTICE,
                        help="practice: easier names first; roster: as in the list; name: by name (%(default)s)")
    parser.add_argument("--practise", choices=list(NamePart), default=NamePart.GIVEN, metavar="PART",
                        help="the name to practise: given, family or both (%(default)s)")


def _page_options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("-o", "--output", metavar="FILE", required=True, help="the PDF to write")
    parser.add_argument("--paper", choices=list(Paper), default=Paper.LETTER, help="(%(default)s)")
    parser.add_argument("--landscape", action="store_true", help="lay the page on its long side")
    parser.add_argument("--binding", action="store_true", help="keep a wide margin for holes")
    parser.add_argument("--captions", choices=_languages(), default="en",
                        help="the language of the sentences on the page (%(default)s)")


def _line_options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--ruling", default=DEFAULT_RULING, metavar="NAME",
                        help="the lines to write on; “namewright rulings” lists them (%(default)s)")
    parser.add_argument("--line-height", metavar="MM",
                        help="baseline to top line, in mm or like “5/8 in”: the ruling is scaled to it")
    parser.add_argument("--midline", type=float, metavar="SHARE",
                        help="your own ruling: the midline’s share of the line height, 0.3 to 0.8")
    parser.add_argument("--descender", metavar="MM", help="your own ruling: the depth below the baseline")
    parser.add_argument("--row-gap", metavar="MM", help="your own ruling: the white between rows")
    parser.add_argument("--support", choices=list(Support), default=Support.FULL,
                        help="level of support of children whose list says nothing (%(default)s)")


def _languages() -> list[str]:
    return [language for language in ("en", "es") if captions(language)]


if __name__ == "__main__":
    sys.exit(main())


