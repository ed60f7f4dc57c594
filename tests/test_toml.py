"""Our files of words, letters and evidence are the same by either reader."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

import namewright
from namewright import toml

SOURCE = Path(namewright.__file__).parent
FILES = sorted([*SOURCE.rglob("*.toml"), *SOURCE.parents[1].joinpath("fonts").glob("*.toml")])


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_a_file_is_read_as_the_standard_library_reads_it(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert toml.loads(text) == tomllib.loads(text)
