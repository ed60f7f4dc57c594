"""What all tests share: one typesetter, the command line, and property tests that run the same on every machine."""

from __future__ import annotations

import signal
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from flask import Flask
from hypothesis import settings
from jinja2 import BytecodeCache
from jinja2.bccache import Bucket

from namewright.cli import main
from namewright.letters.alphabet import Alphabet, upright
from namewright.pages.typesetter import Typesetter

# The same examples every time, so that a red build is red at the next desk too; no deadline, because how long
# an example takes says nothing about whether it is right.
settings.register_profile("namewright", deadline=None, derandomize=True, database=None, max_examples=60)
settings.load_profile("namewright")


class CompiledTemplates(BytecodeCache):
    """Templates of screens, compiled once for the process: each application of a test would compile its own."""

    def __init__(self) -> None:
        self.kept: dict[str, bytes] = {}

    def load_bytecode(self, bucket: Bucket) -> None:
        """Give what is kept for a template; Jinja compiles it again if its source is another."""
        if bucket.key in self.kept:
            bucket.bytecode_from_string(self.kept[bucket.key])

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep what was compiled."""
        self.kept[bucket.key] = bucket.bytecode_to_string()


Flask.jinja_options = {"bytecode_cache": CompiledTemplates()}

# A shell that runs the tests in the background has Ctrl-C ignored, and programs that a test starts would inherit it.
if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
    signal.signal(signal.SIGINT, signal.default_int_handler)


@pytest.fixture(autouse=True)
def ctrl_c() -> Iterator[None]:
    """Let Ctrl-C do what it did: a command that is stopped in this process ignores it from then on, and so would
    every program that a later test starts."""
    before = signal.getsignal(signal.SIGINT)
    yield
    if signal.getsignal(signal.SIGINT) is not before:
        signal.signal(signal.SIGINT, before)


@pytest.fixture(scope="session")
def alphabet() -> Alphabet:
    """Our own alphabet."""
    return upright()


@pytest.fixture(scope="session")
def setter() -> Typesetter:
    """One typesetter for all tests: it keeps letters ready and nothing else."""
    return Typesetter()


@pytest.fixture
def roster(tmp_path: Path) -> Path:
    """A list of four invented children."""
    path = tmp_path / "class.txt"
    path.write_text("Mira\nTilo\nZoë\nJonquil\n", encoding="utf-8")
    return path


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Callable[..., tuple[int, str, str]]:
    """Run a command here; return its status, and what was said on stdout and stderr."""
    def _run(*argv: str | Path) -> tuple[int, str, str]:
        try:
            status = main([str(word) for word in argv])
        except SystemExit as leaving:
            status = int(leaving.code or 0)
        out, err = capsys.readouterr()
        assert "Traceback" not in err
        return status, out, err
    return _run
