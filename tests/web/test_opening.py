"""The browser is started without the key in its arguments, and nothing is left behind."""

from __future__ import annotations

import os
import stat
from pathlib import Path
from urllib.parse import unquote, urlparse

from namewright.web import opening

ADDRESS = "http://127.0.0.1:27613/?key=secret&x=1"


def test_the_browser_gets_a_file_that_leads_on(tmp_path: Path) -> None:
    """Only its owner can read it, and it is gone when the page is open."""
    given: list[tuple[str, int, str]] = []

    def browse(what: str) -> None:
        place = Path(unquote(urlparse(what).path))
        given.append((what, stat.S_IMODE(place.stat().st_mode), place.read_text(encoding="utf-8")))

    opening.show(ADDRESS, home=tmp_path, kept_s=0, browse=browse)
    ((what, mode, page),) = given
    assert what.startswith("file:")
    assert "secret" not in what
    assert mode == 0o600
    assert 'url=http://127.0.0.1:27613/?key=secret&amp;x=1"' in page
    assert list(tmp_path.iterdir()) == []


def test_a_browser_that_fails_leaves_nothing(tmp_path: Path) -> None:
    def browse(_: str) -> None:
        raise KeyboardInterrupt

    try:
        opening.show(ADDRESS, home=tmp_path, kept_s=0, browse=browse)
    except KeyboardInterrupt:
        assert list(tmp_path.iterdir()) == []
    else:
        raise AssertionError("it was not stopped")


def test_where_no_file_can_be_written_the_page_opens_all_the_same(tmp_path: Path) -> None:
    given: list[str] = []
    opening.show(ADDRESS, home=tmp_path / "none", kept_s=0, browse=given.append)
    assert given == [ADDRESS]


def test_old_ones_are_taken_away_and_nothing_else(tmp_path: Path) -> None:
    old, new, other = (tmp_path / name for name in
                       ("namewright-open-a.html", "namewright-open-b.html", "namewright.html"))
    for place in (old, new, other):
        place.write_text("x")
    for place in (old, other):
        os.utime(place, (0, 0))
    opening.tidy_up(tmp_path)
    assert sorted(tmp_path.iterdir()) == [new, other]
