"""The command line: what it promises to scripts, and what it says to people."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from longer import rest_long

Run = Callable[..., tuple[int, str, str]]


def test_a_stop_while_a_command_is_loaded(run: Run, roster: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Ctrl-C is answered in a sentence from the first moment on, not only while pages are made."""
    def stop(_: str) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("namewright.cli.import_module", stop)
    assert run("order", roster) == (2, "", "namewright: Stopped. Nothing was left half written.\n")


@pytest.mark.skipif(os.name != "posix", reason="the system sends no such signals")
def test_a_stop_while_the_command_line_itself_is_loaded() -> None:
    """Before it can say a sentence it says nothing: no traceback of what was being read."""
    code = """
import runpy, signal, sys
class Stopped:
    def find_spec(self, name, *_):
        if name == "namewright.cli":
            signal.raise_signal(signal.SIGINT)
signal.signal(signal.SIGINT, signal.default_int_handler)
sys.meta_path.insert(0, Stopped())
sys.argv[1:] = ["--version"]
runpy.run_module("namewright", run_name="__main__")
"""
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert (done.returncode, done.stdout, done.stderr) == (-2, "", "")


@pytest.mark.parametrize("said", ["sheets list.txt -o sheets.pdf", "card Bo -o card.pdf", "roster list.txt"])
def test_what_takes_long_to_load_is_not_loaded(said: str, tmp_path: Path) -> None:
    """Sheets, a card and the account of a list need no dataclass, no library for fonts, no class's file, no server."""
    code = "import sys; from namewright.cli import main; print(main(sys.argv[1:])); print(*sys.modules)"
    (tmp_path / "list.txt").write_text("Bo Tamsel\nOttilka Brane\n", encoding="utf-8")
    done = subprocess.run([sys.executable, "-c", code, *said.split()], cwd=tmp_path, capture_output=True, text=True,
                          check=True)
    *_, status, modules = done.stdout.splitlines()
    loaded = set(modules.split())
    assert status == "0"
    assert "namewright.making.make" in loaded or said.startswith("roster")
    assert sorted(loaded & {"dataclasses", "inspect", "logging", "fontTools", "sqlite3", "flask", "lxml", "tqdm"}) == []


@pytest.mark.skipif(os.name != "posix", reason="the system sends no such signals")
@pytest.mark.parametrize("wait", rest_long([0.7, 0.0, 1.5, 3.0]))
def test_ctrl_c_is_one_sentence(tmp_path: Path, wait: float) -> None:
    """Whenever it comes: no traceback, no half file, nothing hidden left."""
    (tmp_path / "list.txt").write_text("\n".join(f"Mira{'abcdefgh'[at % 8]} Vost{at}" for at in range(600)))
    with subprocess.Popen([sys.executable, "-m", "namewright.cli", "sheets", "list.txt", "-o", "o.pdf"], cwd=tmp_path,
                          stderr=subprocess.PIPE, start_new_session=True) as running:
        deadline = time.monotonic() + 60
        while not list(tmp_path.glob(".namewright-*")) and time.monotonic() < deadline and running.poll() is None:
            time.sleep(0.02)
        time.sleep(wait)
        running.send_signal(2)
        said = running.communicate(timeout=60)[1].decode()
    if running.returncode == 2:
        assert said == "namewright: Stopped. Nothing was left half written.\n"
        assert [path.name for path in tmp_path.iterdir()] == ["list.txt"]
    else:  # it was as quick
        assert running.returncode == 0
