"""A class made by several processes: the same pages, the same account, and nobody left at work."""

from __future__ import annotations

import os
import pickle
import signal
import subprocess
import sys
import time
from itertools import product
from pathlib import Path

import pytest

from namewright.cli import main
from namewright.commands import splitting
from namewright.commands.splitting import jobs_for
from namewright.commands.talk import Refusal
from namewright.making.account import FontTooLarge, NothingNoted, TooLarge
from namewright.message import Problem

CLASS = "Mira\nTilo\nМарко\nZoë\nJonquil\n" + "x" * 50 + "\nBo\nWren\nÍñigo\nRook\n"


@pytest.mark.parametrize("problem", [Problem("fit.out"), NothingNoted("Mira"), TooLarge(), FontTooLarge()])
def test_a_problem_goes_from_process_to_process(problem: Problem) -> None:
    """It says there what it said here, whatever it was made from."""
    again = pickle.loads(pickle.dumps(problem))
    assert (type(again), again.message, str(again)) == (type(problem), problem.message, str(problem))


def test_several_work_only_where_it_pays(monkeypatch: pytest.MonkeyPatch) -> None:
    """All cores from enough children on; as many as are typed always; no number that cannot be."""
    monkeypatch.setattr(splitting, "_cores", lambda: 4)
    assert [jobs_for(None, children) for children in (1, splitting.ENOUGH - 1, splitting.ENOUGH)] == [1, 1, 4]
    assert jobs_for(3, 1) == 3
    for typed in (0, -1, splitting.MAX_JOBS + 1):
        with pytest.raises(Refusal):
            jobs_for(typed, 500)


def names(count: int) -> str:
    made = ("".join(parts).capitalize() for parts in product(("ba", "le", "mi", "no", "tu", "ra"), repeat=5))
    return "".join(f"{name}\n" for name, _ in zip(made, range(count), strict=False))


def test_the_file_is_the_same(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Small chunks here, so that a few children make several; pages that are made into pictures too are no others."""
    monkeypatch.setattr(splitting.chunks, "__defaults__", (3,))
    (tmp_path / "class.txt").write_text(CLASS, encoding="utf-8")
    for jobs, more in (("1", []), ("2", []), ("1", ["--svg", str(tmp_path / "svg")])):
        name = f"{jobs}{len(more)}.pdf"
        assert main(["sheets", str(tmp_path / "class.txt"), "-o", str(tmp_path / name), "--jobs", jobs, *more]) == 1
    assert len({(tmp_path / name).read_bytes() for name in ("10.pdf", "20.pdf", "12.pdf")}) == 1
    assert len(list((tmp_path / "svg").iterdir())) >= 8


@pytest.mark.long
def test_a_school_is_the_same_bytes(tmp_path: Path) -> None:
    """As it is typed, with the chunks that it has."""
    (tmp_path / "class.txt").write_text(names(210), encoding="utf-8")
    made = set()
    for jobs in ("1", "2", "3"):
        assert main(["sheets", str(tmp_path / "class.txt"), "-o", str(tmp_path / "made.pdf"), "--jobs", jobs]) == 0
        made.add((tmp_path / "made.pdf").read_bytes())
    assert len(made) == 1


@pytest.mark.long
@pytest.mark.skipif(sys.platform == "win32", reason="Ctrl-C is sent in another way there")
def test_a_stop_ends_all(tmp_path: Path) -> None:
    """Ctrl-C reaches every process of a terminal; one sentence is said, and no process and no scrap stays."""
    (tmp_path / "class.txt").write_text(names(7000), encoding="utf-8")
    words = [sys.executable, "-m", "namewright.cli", "sheets", "class.txt", "-o", "made.pdf", "--jobs", "2"]
    run = subprocess.Popen(words, cwd=tmp_path, stderr=subprocess.PIPE, text=True, start_new_session=True)
    while run.poll() is None and not list(tmp_path.glob(".namewright-*")):
        time.sleep(0.02)
    os.killpg(run.pid, signal.SIGINT)
    _, told = run.communicate(timeout=60)
    assert (run.returncode, told) == (2, "namewright: Stopped. Nothing was left half written.\n")
    assert [path.name for path in tmp_path.iterdir()] == ["class.txt"]
    with pytest.raises(ProcessLookupError):
        os.killpg(run.pid, 0)
