"""Whatever the command line says, help, accounts and refusals, it says in the language asked for and in no other."""

from __future__ import annotations

import io
import re
import sys
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from made_up import MADE_UP, MARKED, unmarked

from longer import rest_long
from namewright import cli
from namewright.classbook.stages import Stage
from namewright.letters.alphabet import upright
from namewright.lines.ruling import PRESETS
from namewright.making.request import TO_KNOW
from namewright.names.beats import NAMES_IN
from namewright.pages.hue import COLOURS
from namewright.pages.ladder import TRACED, Chain
from namewright.pages.name_card import CardSize
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import KNOBS

COMMANDS = tuple(cli._COMMANDS)
TYPED = {"namewright", *COMMANDS, *PRESETS, *map(str, (*Order, *NamePart, *Support, *Hand, *Chain, *TRACED, *COLOURS,
         *CardSize, *Paper, *TO_KNOW)), *(stage.word for stage in Stage), *(knob.key for knob in KNOBS), "x-height",
         "keep_dots", "en", "es", "fr", "de", "it", "pt", *NAMES_IN, *MADE_UP, "table", "csv", "json", "pdf", "easiest",
         "year", "talk", "record",
         "ttf", *(form for forms in upright().forms.values() for form in forms)}
"""What is typed as it stands, in every language."""
LONG = "x" * 55
NAMES = ("Xeno", "XENO", "Yara", "Wren", "Rook", "Quill", "wren", "rook", "quill", "Марко", "Marko",
         LONG, LONG.capitalize())
OPTION = re.compile(r"(?<![\w-])--?[a-z][a-z-]*|[\w/*-]*\.(?:db|zip|txt|csv|pdf|ttf)\b|[a-z][a-z0-9 -]*, U\+\w+")
"""An option, the name of a file, or a character's name in Unicode."""
BOOK, LIST = "wren.db", "wren.txt"
LISTED = "Xeno Yara\nWren\nRook Yara\n???\nМарко\nQuill:\n"


@pytest.fixture
def said(made_up: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str],
         ) -> Callable[..., str]:
    """Run a command in a folder of its own; return all that it said."""
    monkeypatch.chdir(made_up)
    monkeypatch.setenv("COLUMNS", "200")

    def run(language: str, *words: str, typed: str = "") -> str:
        monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(typed.encode()), encoding="utf-8"))
        with suppress(SystemExit):
            cli.main([*words, "--language", language])
        told = capsys.readouterr()
        return told.out + told.err

    return run


def odd_words(text: str) -> list[str]:
    """Return the words that come from no language's file; options, single letters and what is typed as it
    stands are none."""
    return [word for word in unmarked(OPTION.sub(" ", text), (*TYPED, *NAMES)) if len(word) > 1]


@pytest.mark.parametrize("language", rest_long(MADE_UP))
@pytest.mark.parametrize("command", ["", *COMMANDS])
def test_help_is_in_one_language(said: Callable[..., str], language: str, command: str) -> None:
    """Of the program, and of every command."""
    text = said(language, *([command] if command else []), "--help")
    assert odd_words(text) == [], text


def _first_runs() -> Iterator[tuple[str, ...]]:
    """Yield words that make and keep what later ones need."""
    yield ("class", BOOK, "--from", LIST, "--who", "quill")
    yield ("class", BOOK, "--from", LIST)
    yield ("class", BOOK, "--take-back")
    yield ("class", BOOK, "--from", LIST)
    yield ("note", "Xeno", "--class", BOOK, "--letters", "Xe", "--not-yet", "o", "--support", "light",
           "--stage", "readable", "--note", "quill")
    yield ("note", "Xeno", "--class", BOOK, "--all", "--who", "quill")
    yield ("note", "Wren", "--class", BOOK, "--letters", "")
    yield ("class", BOOK)
    yield ("class", BOOK, "--together", "Xeno,Wren")
    yield ("class", BOOK, "--apart", "Rook, Wren")
    yield ("class", BOOK, "--either", "Rook, Wren")
    yield ("class", BOOK, "--either", "Rook")
    yield ("class", BOOK, "--beats", "Xeno", "--of", "Xeno")
    yield ("class", BOOK, "--beats", "Xeno")
    yield ("next", BOOK)
    yield ("next", BOOK, "-o", "quill.pdf", "--refuse", "Xeno", "--changes", "rook.pdf")
    yield ("class", BOOK, "--export", "quill.zip")
    yield ("class", "rook.db", "--import", "quill.zip")


def _runs() -> Iterator[tuple[str, ...]]:
    yield from (("settings",), ("rulings",), ("roster", LIST), ("order", LIST), ("order", BOOK), ("roster", BOOK))
    yield ("sheets", LIST, "-o", "quill.pdf", "--summary", "rook.pdf")
    yield ("tiles", LIST, "-o", "quill.pdf")
    yield ("know", LIST, "-o", "quill.pdf", "--summary", "rook.pdf")
    yield ("plan", BOOK, "-o", "quill.pdf", "--groups", "1", "--group-sheets", "rook.pdf")
    yield ("progress", "--all", "--class", BOOK, "-o", "quill.pdf")
    yield ("progress", "--all", "--class", BOOK, "-o", "quill.csv", "--format", "csv", "--page", "record")
    yield ("progress", "--all", "--class", BOOK, "-o", "quill.csv", "--format", "csv")
    yield ("card", "XENO", "-o", "quill.pdf")
    yield from ((*words, "-o", "quill.pdf") for words in (
        ("card", "Марко"), ("card", "Xeno, Yara, Wren"), ("card", "Xeno", "--class", BOOK, "--line-height", "900"),
        ("card", "Quill", "--class", BOOK), ("card", "Xeno", "--set", "rows"), ("card", "Xeno", "--set", "rows=90"),
        ("card", "Xeno", "--set", "wren=quill"), ("card", "Xeno", "--letters", "a=quill"), ("card", LONG),
        ("card", "Xeno", "--ruling", "quill"), ("card", "Xeno", "--line-height", "quill"), ("sheets", "quill.txt"),
        ("card", "Xeno", "--midline", "0.9"), ("sheets", LIST, "--ladder", "quill"),
        ("card", "Xeno", "--font", "quill.ttf"),
        ("card", "Xeno", "--font", LIST), ("card", "Xeno", "--font", LIST, "--letters", "a=two-storey"),
        ("sheets", LIST, "--font", LIST, "--ladder", "start-dots"), ("sheets", BOOK, "--practise", "both"),
        ("know", LIST, "--pages", "quill"),
        ("plan", LIST, "--weeks", "900"), ("plan", LIST, "--groups", "quill"), ("plan", LIST, "--groups-from", LIST),
        ("progress", "Rook", "--class", BOOK), ("progress", "Xeno", "--class", "quill.db"),
        ("sheets", LIST, "--summary", "quill.pdf"), ("sheets", "beats.csv"), ("sheets", LIST, BOOK)))
    yield from (("sheets", "rook", LIST, "rook/wren.csv", "quill", "-o", "wren"), ("sheets", LIST, "-o", "wren/"))
    yield from (("card", "Xeno", "-o", place) for place in ("", ".", "quill/rook.pdf", "shut.pdf", "pipe"))
    yield from (("plan", LIST), ("order", LIST, "-o", LIST), ("note", "Xeno", "--class", BOOK, "--date", "2999-01-01"),
                ("note", "Xeno", "--class", BOOK, "--date", "quill"), ("note", "Xeno", "--class", BOOK, "--stage", "9"),
                ("note", "Xeno", "--class", BOOK), ("note", "Xeno", "--class", BOOK, "--letters", "q"),
                ("class", "rook.db", "--import", "quill.zip"), ("class", "empty.db", "--export", "quill"),
                ("class", BOOK, "--erase", "Rook"), ("class", BOOK, "--erase", "Wren", "--yes"),
                ("class", BOOK, "--take-back"),
                ("class", BOOK, "--erase-class"), ("class", BOOK, "--erase-class", "--yes"),
                ("sheets", BOOK, "-o", "rook.pdf"),
                ("open", "--class", LIST), ("open", "--port", "99999"), ("fonts", "-o", "quill"),
                ("open", "--class", BOOK, "--share"))


def _refused() -> Iterator[tuple[str, ...]]:
    """Yield words that the parser cannot use."""
    yield from (("sheets",), ("sheets", LIST), ("sheets", LIST, "-o"), ("sheets", LIST, "-o", "x", "--quill"),
                ("sheets", "quill", LIST, "-o", "x"), ("quill",), ("card", "Xeno", "-o", "y", "--midline", "quill"),
                ("sheets", LIST, "-o", "x", "--l", "x"), ("progress", "Xeno", "--all"), ("card", "-o", "x"), ("note",),
                ("sheets", LIST, "-o", "x", "--paper", "quill"), ("class",), ("progress", "--class", BOOK, "-o", "x"),
                ("fonts",), ("--quill",), ())


@pytest.mark.parametrize("language", rest_long(MADE_UP))
def test_every_account_and_refusal_is_in_one_language(said: Callable[..., str], made_up: Path, language: str) -> None:
    """What was made and what was not, what could not be used, and what is asked before anything is erased."""
    (made_up / LIST).write_text(LISTED, encoding="utf-8")
    (made_up / "beats.csv").write_text("Name,Beats\nXeno,Wren\n", encoding="utf-8")
    (made_up / "rook").mkdir()
    for name, text in (("wren.csv", "Name\nXeno\n"), ("yara.csv", "Name\nМарко\n"), ("quill", "?")):
        (made_up / "rook" / name).write_text(text, encoding="utf-8")
    (made_up / "shut.pdf").write_bytes(b"")
    (made_up / "shut.pdf").chmod(0o444)
    told = {words: said(language, *words) for words in (*_first_runs(), *_runs(), *_refused())}
    odd = {words: (odd_words(text), text) for words, text in told.items() if odd_words(text)}
    assert not odd, "\n".join(map(str, odd.items()))
    assert not any("Traceback" in text for text in told.values())


def test_words_on_a_page_are_in_the_language_of_the_page(said: Callable[..., str], made_up: Path) -> None:
    """An order for another program tells its reasons in the language of ``--captions``, whatever is spoken here."""
    (made_up / LIST).write_text("Xeno Yara\nWren\n", encoding="utf-8")
    text = said("en", "order", LIST, "--format", "csv", "--captions", MARKED)
    reasons = [line.split('"')[1] for line in text.splitlines()[1:] if '"' in line]
    assert reasons
    assert odd_words(" ".join(reasons)) == []


def test_a_language_without_words_is_refused_with_those_there_are(said: Callable[..., str]) -> None:
    text = said("tlh", "rulings")
    assert "tlh" in text
    assert "es" in text
    assert text.count("\n") == 1
