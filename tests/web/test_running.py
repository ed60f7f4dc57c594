"""The note of a program that runs for a class: its owner's alone, gone when it ends, and never believed unasked."""

from __future__ import annotations

import http.server
import stat
import threading
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from namewright.web import running
from namewright.web.running import Running, find, forget, note

HERE = Running(1, "http://127.0.0.1:1/", "secret", shared=False)


@pytest.fixture(autouse=True)
def own(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The user's own folder, for this test."""
    folder = tmp_path / "own"
    folder.mkdir()
    monkeypatch.setattr(running, "own_folder", lambda: folder)
    return folder


class Answer(http.server.BaseHTTPRequestHandler):
    """A server that answers as ours does to who has the key, and as another would to who has not."""

    def do_GET(self) -> None:
        ours = self.path == "/alive" and "=secret" in self.headers.get("Cookie", "")
        self.send_response(204 if ours else 403)
        self.end_headers()

    def log_message(self, *_: object) -> None:
        """Say nothing."""


@pytest.fixture
def port() -> Iterator[int]:
    """The port of such a server."""
    with http.server.ThreadingHTTPServer(("127.0.0.1", 0), Answer) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield server.server_port
        server.shutdown()


def test_a_program_that_answers_is_found_for_its_class_alone(tmp_path: Path, own: Path, port: int) -> None:
    """By the class's file; the note holds the key, so only its owner may read it, and its name tells nothing."""
    here = replace(HERE, port=port)
    note(tmp_path / "room4.db", here)
    assert find(tmp_path / "room4.db") == here
    assert find(tmp_path / "room5.db") is None
    (noted,) = own.iterdir()
    assert stat.S_IMODE(noted.stat().st_mode) == 0o600
    assert "room4" not in noted.name


def test_a_program_that_was_killed_or_is_another_is_not_found(tmp_path: Path, port: int) -> None:
    """Nobody answers at its port, or somebody who does not take its key."""
    note(tmp_path / "room4.db", HERE)
    assert find(tmp_path / "room4.db") is None
    note(tmp_path / "room4.db", replace(HERE, port=port, key="other"))
    assert find(tmp_path / "room4.db") is None


def test_only_its_own_note_is_taken_back(tmp_path: Path, own: Path) -> None:
    """One that another program wrote meanwhile stays."""
    newer = replace(HERE, port=2)
    note(tmp_path / "room4.db", HERE)
    note(tmp_path / "room4.db", newer)
    forget(tmp_path / "room4.db", HERE)
    assert len(list(own.iterdir())) == 1
    forget(tmp_path / "room4.db", newer)
    assert list(own.iterdir()) == []


@pytest.mark.parametrize("text", ["", "{}", "[]", "{\"port\": \"x\"}", "\x00", "null"])
def test_a_note_that_is_none_is_no_program(tmp_path: Path, own: Path, text: str) -> None:
    note(tmp_path / "room4.db", HERE)
    (noted,) = own.iterdir()
    noted.write_text(text)
    assert find(tmp_path / "room4.db") is None


def test_the_way_in_has_the_key_unless_a_passphrase_stands_in() -> None:
    assert HERE.way_in == "http://127.0.0.1:1/?key=secret"
    assert replace(HERE, shared=True).way_in == "http://127.0.0.1:1/"
