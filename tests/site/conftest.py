"""Fixtures: the site built once, handed out by a server of files, and a browser that keeps what a device keeps."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, expect, sync_playwright
from sitehelp import FLAGS, PATIENCE, Host

expect.set_options(timeout=PATIENCE)


@pytest.fixture(scope="session")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of static files, as ``make site`` makes it; NAMEWRIGHT_SITE names one that is built already."""
    if built := os.environ.get("NAMEWRIGHT_SITE"):
        return Path(built)
    if not (shutil.which("npm") and shutil.which("node")):
        pytest.skip("npm is not installed here, so the site is not built (Debian or Ubuntu: apt install npm)")
    out = tmp_path_factory.mktemp("site") / "names"
    subprocess.run([sys.executable, "-m", "namewright.site.build", "-o", out], check=True)
    return out


@pytest.fixture
def host(folder: Path) -> Iterator[Host]:
    """A server of the files."""
    running = Host(folder)
    yield running
    running.stop()


@pytest.fixture
def device(tmp_path: Path) -> Iterator[BrowserContext]:
    """A browser with a profile of its own, as on one device."""
    where = shutil.which("chromium") or shutil.which("chromium-browser")
    if not where:
        pytest.skip("Chromium is not installed here, so the site is not tried (Debian or Ubuntu: apt install chromium)")
    with sync_playwright() as playwright:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=where, args=FLAGS, accept_downloads=True)
        context.set_default_timeout(PATIENCE)
        yield context
        with suppress(Exception):
            context.close()
