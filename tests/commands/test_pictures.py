"""Pages as numbered pictures."""

from __future__ import annotations

import resource
import signal
from collections.abc import Callable
from pathlib import Path

import pytest

Run = Callable[..., tuple[int, str, str]]


def test_pictures_are_numbered_not_named(run: Run, roster: Path, tmp_path: Path) -> None:
    """A child's name never becomes a file name."""
    run("sheets", roster, "-o", tmp_path / "class.pdf", "--svg", tmp_path / "svg", "--png", tmp_path / "png")
    assert sorted(p.name for p in (tmp_path / "svg").iterdir()) == [f"{n:04d}.svg" for n in range(1, 5)]
    assert sorted(p.name for p in (tmp_path / "png").iterdir()) == [f"{n:04d}.png" for n in range(1, 5)]


def test_pictures_of_others_stay(run: Run, roster: Path, tmp_path: Path) -> None:
    """One of ours is written over, one of somebody else is not."""
    roster.write_text("Jo\n", encoding="utf-8")
    words = ("sheets", roster, "-o", tmp_path / "o.pdf", "--svg", tmp_path, "--png", tmp_path)
    for _ in range(2):
        assert run(*words) == (0, "", "")
    for name, content in (("0001.svg", b"<svg/>"), ("0001.png", b"\x89PNG mine")):
        picture = tmp_path / name
        before = picture.read_bytes()
        picture.write_bytes(content)
        status, _, said = run(*words)
        assert (status, picture.read_bytes()) == (2, content)
        assert name in said
        picture.write_bytes(before)


@pytest.mark.parametrize("kind", ["svg", "png"])
def test_on_a_full_disk_no_empty_folder_is_left(run: Run, roster: Path, tmp_path: Path, kind: str) -> None:
    """The picture is named in a sentence; folders that were made for it go again, one that was there stays."""
    words = ("sheets", roster, "-o", tmp_path / "class.pdf", f"--{kind}")
    limits = resource.getrlimit(resource.RLIMIT_FSIZE)
    before = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    (tmp_path / "there").mkdir()
    resource.setrlimit(resource.RLIMIT_FSIZE, (1000, limits[1]))
    try:
        for folder in ("new/pictures", "there"):
            status, _, said = run(*words, tmp_path / folder)
            assert (status, said.count("\n")) == (2, 1)
            assert f"{folder}/0001.{kind}" in said
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, limits)
        signal.signal(signal.SIGXFSZ, before)
    assert {place.name for place in tmp_path.iterdir()} == {"there", roster.name}
    assert list((tmp_path / "there").iterdir()) == []
