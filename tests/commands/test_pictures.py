"""Pages as numbered pictures."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

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
