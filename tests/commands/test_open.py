"""``namewright open``: what cannot be opened is said before anything is served."""

from __future__ import annotations

import io
from pathlib import Path

import pytest

from namewright.classbook import Classbook
from namewright.cli import main

Capture = pytest.CaptureFixture[str]


@pytest.fixture
def served(monkeypatch: pytest.MonkeyPatch) -> list[dict[str, object]]:
    """Keep what would have been served, and serve nothing."""
    calls: list[dict[str, object]] = []
    monkeypatch.setattr("namewright.web.serve.serve",
                        lambda file, port, **more: calls.append({"file": file, "port": port, **more}))
    return calls


@pytest.mark.parametrize("port", ["0", "-1", "65536", "99999"])
def test_a_port_that_there_is_not_is_refused(tmp_path: Path, served: list[dict[str, object]], port: str,
                                             capsys: Capture) -> None:
    """In a sentence that shows it; no class is made."""
    file = tmp_path / "class.db"
    assert main(["open", "--class", str(file), f"--port={port}"]) == 2
    assert port in capsys.readouterr().err
    assert not file.exists()
    assert served == []


def test_what_is_typed_is_what_is_served(tmp_path: Path, served: list[dict[str, object]]) -> None:
    """The class, the port, no browser, the language; nothing is shared unless that is said."""
    assert main(["open", "--class", str(tmp_path / "class.db"), "--port", "8123", "--no-browser", "--language",
                 "es"]) == 0
    (call,) = served
    assert (call["file"], call["port"]) == (tmp_path / "class.db", 8123)
    assert (call["browser"], call["passphrase"], call["spoken"]) == (False, "", "es")


def test_a_file_that_is_no_class_is_said_first(tmp_path: Path, served: list[dict[str, object]],
                                               capsys: Capture) -> None:
    """Before there is an address that leads nowhere."""
    (tmp_path / "list.txt").write_text("Mira\n" * 50)
    assert main(["open", "--class", str(tmp_path / "list.txt")]) == 2
    assert capsys.readouterr().err.count("\n") == 1
    assert served == []


@pytest.mark.parametrize(("typed", "status"), [
    ("lantern oboe quarry thimble", 0), ("lantern obo", 2), ("", 2), ("x" * 40, 2), ("Mirel Vostry Tilo Quorndike", 2),
    ("MirelVostryTiloQuorndike", 2), ("Quorndike lantern oboe quarry thimble", 0)])
def test_sharing_asks_for_a_long_passphrase(tmp_path: Path, served: list[dict[str, object]], typed: str, status: int,
                                            monkeypatch: pytest.MonkeyPatch) -> None:
    """Read from what is piped in; one that is short or soon guessed is refused. It goes to the server alone."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Mirel Vostry\nTilo Quorndike\n")
    monkeypatch.setattr("sys.stdin", io.StringIO(f"{typed}\n"))
    assert main(["open", "--class", str(tmp_path / "class.db"), "--share"]) == status
    assert [call["passphrase"] for call in served] == ([typed] if status == 0 else [])


@pytest.mark.parametrize(("piped", "errors"), [
    (b"lantern oboe \xff\xfe quarry thimble\n", "surrogateescape"),
    (b"lantern oboe \xff\xfe quarry thimble\n", "strict"), (b"lantern oboe\x07 quarry thimble\n", "strict")])
def test_a_passphrase_that_nobody_could_type_is_refused(tmp_path: Path, served: list[dict[str, object]],
                                                        monkeypatch: pytest.MonkeyPatch, capsys: Capture, piped: bytes,
                                                        errors: str) -> None:
    """Of bytes that are no text, however the machine reads them, or with a sign that no key types."""
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(piped), "utf-8", errors))
    assert main(["open", "--class", str(tmp_path / "class.db"), "--share"]) == 2
    assert "in a browser" in capsys.readouterr().err
    assert served == []


def test_a_line_that_ends_as_on_windows_is_the_same_passphrase(tmp_path: Path, served: list[dict[str, object]],
                                                               monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.StringIO("lantern oboe quarry thimble\r\n", newline=""))
    assert main(["open", "--class", str(tmp_path / "class.db"), "--share"]) == 0
    assert [call["passphrase"] for call in served] == ["lantern oboe quarry thimble"]


def test_a_passphrase_without_an_end_is_read_no_further(tmp_path: Path, served: list[dict[str, object]],
                                                        monkeypatch: pytest.MonkeyPatch) -> None:
    """What is piped in may never end its line."""
    endless = io.StringIO("x" * 100_000)
    monkeypatch.setattr("sys.stdin", endless)
    assert main(["open", "--class", str(tmp_path / "class.db"), "--share"]) == 2
    assert endless.tell() < 10_000
    assert served == []
