"""How the command line talks: help, and what was missing or odd in plain words."""

from __future__ import annotations

import unicodedata
from collections.abc import Callable

import pytest

from namewright import cli
from namewright.commands.talk import spoken

Run = Callable[..., tuple[int, str, str]]


def test_help_is_there_for_every_command(run: Run) -> None:
    """Help names every command, and each explains itself."""
    status, out, _ = run("--help")
    assert status == 0
    for command in ("sheets", "card", "tiles", "order", "roster", "rulings"):
        assert command in out
        assert run(command, "--help")[0] == 0


def test_unknown_words_are_refused_in_a_sentence(run: Run) -> None:
    """With status 2 and a way on."""
    status, _, err = run("sheets", "x", "-o", "y", "--paper", "a3")
    assert status == 2
    assert "--paper cannot be “a3”. Choose from letter, a4" in err
    assert "--help" in err


@pytest.mark.parametrize("words", [("sheets", "\x1b[2Jlist.txt", "-o", "y"), ("sheets", "x", "-o", "y", "--\x9b2J"),
                                   ("card", "\x1b]0;Mira\x07", "-o", "no/y"), ("\x1b[2J",)])
def test_nothing_that_is_told_orders_a_terminal_about(run: Run, words: tuple[str, ...]) -> None:
    """What was typed, or what a file is called, is told without its control characters."""
    _, out, err = run(*words)
    assert err
    assert not [char for char in out + err if unicodedata.category(char) == "Cc" and char not in "\n\t"]


@pytest.mark.parametrize(("words", "sentence"), [
    (("sheets",), "This is missing: your class list"), (("sheets", "x"), "where to write it"),
    (("sheets", "x", "-o"), "-o needs a word"), (("sheets", "x", "-o", "y", "--nope"), "There is no “--nope”"),
    (("order", "my", "class.txt"), "Put quotes round a name"), (("print",), "no command “print”"),
    (("Mira Tilo",), "no command “Mira Tilo”"), (("card", "Mira", "-o", "y", "--midline", "low"), "needs a number"),
    (("sheets", "x", "-o", "y", "--l"), "could mean --language, --landscape"),
    (("progress", "x", "--all"), "used together"),
    (("card", "Mira", "-o", "y", "--set", "rows"), "does not say what to set it to")])
def test_what_was_missing_is_said_in_plain_words(run: Run, words: tuple[str, ...], sentence: str) -> None:
    """Nobody needs to know what an argument is."""
    status, _, err = run(*words)
    assert status == 2
    assert sentence in err
    assert "argument" not in err
    assert err.count("\n") == 1


def test_no_word_at_all_shows_the_help(run: Run) -> None:
    """Somebody who only types the name of the program is told what it can do."""
    status, out, err = run()
    assert (status, err) == (2, "")
    assert "For example:" in out


def test_help_begins_with_what_must_be_said(run: Run) -> None:
    """The first line names what is needed and nothing else; what an option gives by itself is explained."""
    for command, needed in (("sheets", "ROSTER -o FILE …"), ("progress", "[CHILD] --class FILE -o FILE …"),
                            ("rulings", "")):
        out = run(command, "--help")[1]
        assert out.splitlines()[0].rstrip() == f"usage: namewright {command} {needed}".rstrip()
        assert "CAPITALS stand for your own" in " ".join(out.split())
        assert "argument" not in out


@pytest.mark.parametrize(("environment", "language"), [
    ({"LANG": "es_MX.UTF-8"}, "es"), ({"LANG": "C.UTF-8"}, "en"), ({"LC_ALL": "es", "LANG": "en_GB"}, "es"),
    ({"LC_MESSAGES": "es_ES@euro", "LANG": "en"}, "es"), ({"LC_ALL": "", "LANG": "es"}, "es"), ({"LANG": "tlh"}, "en")])
def test_the_machine_s_language_is_spoken(monkeypatch: pytest.MonkeyPatch, environment: dict[str, str],
                                          language: str) -> None:
    """As POSIX orders its variables; a language without words is English."""
    for key in ("LC_ALL", "LC_MESSAGES", "LANG"):
        monkeypatch.delenv(key, raising=False)
    for key, value in environment.items():
        monkeypatch.setenv(key, value)
    with pytest.raises(SystemExit):
        cli.main(["card", "--help"])
    assert spoken().language == language


@pytest.mark.parametrize("words", [("--language", "es", "order"), ("order", "--language", "es"), ("--lang=es", "order"),
                                   ("order", "--language=es")])
def test_the_language_that_is_typed_is_spoken(run: Run, words: tuple[str, ...]) -> None:
    """Wherever it stands among the words, before anything else is said."""
    assert "Falta esto" in run(*words)[2]
