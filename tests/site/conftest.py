"""Fixtures: the site built once, handed out by Python's own file server, and a browser that keeps what a device keeps."""

from __future__ import annotations

import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, sync_playwright

from namewright.web.serve import free_port

FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update"]


@pytest.fixture(scope="session")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of static files, as ``make site`` makes it."""
    if not (shutil.which("npm") and shutil.which("node")):
        pytest.skip("npm is not installed here, so the site is not built (Debian or Ubuntu: apt install npm)")
    out = tmp_path_factory.mktemp("site") / "names"
    subprocess.run([sys.executable, "-m", "namewright.site.build", "-o", out], check=True)
    return out


class Host:
    """Python's file server on loopback: nothing but files. It can be stopped and started on the same address."""

    def __init__(self, folder: Path) -> None:
        self.port, self._folder = free_port("127.0.0.1", None), folder
        self.address = f"http://localhost:{self.port}/{folder.name}/"
        self.start()

    def start(self) -> None:
        """Hand out the files."""
        self._process = subprocess.Popen(
            [sys.executable, "-m", "http.server", str(self.port), "--bind", "127.0.0.1", "-d", str(self._folder.parent)],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)

    def stop(self) -> None:
        """Answer nothing any more."""
        self._process.kill()
        self._process.wait()


@pytest.fixture
def host(folder: Path) -> Iterator[Host]:
    """A server of the files."""
    running = Host(folder)
    yield running
    running.stop()


@pytest.fixture
def device(tmp_path: Path) -> Iterator[BrowserContext]:
    """A browser with a profile of its own, as on one device; it notes every request that leaves a page or worker."""
    where = shutil.which("chromium") or shutil.which("chromium-browser")
    if not where:
        pytest.skip("Chromium is not installed here, so the site is not tried (Debian or Ubuntu: apt install chromium)")
    with sync_playwright() as playwright:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=where, args=FLAGS, accept_downloads=True)
        yield context
        with suppress(Exception):
            context.close()


def opened(device: BrowserContext, host: Host) -> Any:
    """Open the site and wait for its first screen; return the page and the frame of the screens."""
    page = device.new_page()
    page.goto(host.address)
    return page, ready(page)


def ready(page: Any) -> Any:
    """Wait until Python answers in a page, and return the frame of the screens."""
    page.wait_for_selector("#screens:not([hidden])", timeout=90_000)
    frame = page.frame_locator("#screens")
    frame.locator("h1").first.wait_for(timeout=60_000)
    return frame
