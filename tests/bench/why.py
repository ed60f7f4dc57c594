"""Print each step of the reader that changes the lines of a list, then what became of each line, and who tells so.

``python tests/bench/why.py FILE``, or a list pasted in.
"""

from __future__ import annotations

import sys
from pathlib import Path
from types import FrameType

import namewright.roster
from namewright.message import Message
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

ROOM = Path(namewright.roster.__file__).parent
SAYS = {path.stem: path.read_text("utf-8") for path in sorted(ROOM.glob("*.py"))}


def texts(lines: object) -> list[str] | None:
    """Return the texts of lines, which may come with what was taken out of them; None for anything else."""
    found = lines[0] if isinstance(lines, tuple) and lines else lines
    return [line.text for line in found] if isinstance(found, list) and found and all(
        isinstance(line, Line) for line in found) else None


def step(frame: FrameType, event: str, returned: object) -> None:
    """Print what a function of the reader that takes lines made of them; the innermost one is told first."""
    path = Path(frame.f_code.co_filename)
    if event != "return" or path.parent != ROOM or "lines" not in frame.f_code.co_varnames[:1]:
        return
    before, after = texts(frame.f_locals["lines"]), texts(returned)
    if before and after and before != after:
        print(f"{path.stem}.{frame.f_code.co_name}")
        print(*(f"  - {text}" for text in before if text not in after), sep="\n")
        print(*(f"  + {text}" for text in after if text not in before), sep="\n")


def said_by(note: Message) -> str:
    """Return what is told, with the modules that say so."""
    key = f'"{note.key}"'
    return f"{note}, said in {', '.join(name for name, source in SAYS.items() if key in source)}"


def main() -> None:
    """Read the list with an eye on every step."""
    text = Path(sys.argv[1]).read_text("utf-8") if len(sys.argv) > 1 else sys.stdin.read()
    sys.setprofile(step)
    try:
        lines = read_roster(text).lines
    except RosterError as error:
        lines = error.lines
    finally:
        sys.setprofile(None)
    for line in lines:
        name = f"{line.child.given} | {line.child.family}" if line.child else line.outcome
        print(f"{line.line}: {line.text!r}: {name}", *map(said_by, line.notes), sep="\n    ")


if __name__ == "__main__":
    main()
