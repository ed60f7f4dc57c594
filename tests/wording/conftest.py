"""Languages that are made up, for every test of this folder that asks for them."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from made_up import made_up_languages


@pytest.fixture
def made_up(monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """Put the made-up languages beside the real ones; return an empty folder to work in."""
    with made_up_languages(monkeypatch, tmp_path_factory.mktemp("languages")):
        yield tmp_path_factory.mktemp("work")
