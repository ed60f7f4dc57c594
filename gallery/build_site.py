"""Rebuild the pictures of the program inside a browser, with no server behind it: a tablet and a phone, by touch.

Needs npm, Chromium and playwright. ``python gallery/build_site.py [FOLDER]``, FOLDER being a site that is built
already; look at each before committing it.
"""

from __future__ import annotations

import io
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from PIL import Image
from playwright.sync_api import Playwright, sync_playwright

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parent / "tests" / "site"))
from sitehelp import FLAGS, Host, opened, save_class  # noqa: E402 - the tests' own way to the site

DEMO = HERE.parent / "src" / "namewright" / "demo.txt"
SIZES = {"tablet": {"width": 820, "height": 1180}, "phone": {"width": 390, "height": 844}}


def shoot(playwright: Playwright, host: Host, where: str) -> None:
    """Paste the class, take the network away, and take a picture of what goes on working."""
    with tempfile.TemporaryDirectory() as profile:
        context = playwright.chromium.launch_persistent_context(
            profile, executable_path=shutil.which("chromium"), args=FLAGS, has_touch=True, is_mobile=True,
            viewport=SIZES[where], reduced_motion="reduce")  # type: ignore[arg-type]
        page, frame = opened(context, host)
        save_class(frame, DEMO.read_text(encoding="utf-8"))
        host.stop()
        page.reload()
        page.wait_for_selector("#screens:not([hidden])", timeout=90_000)
        frame.get_by_role("button", name="Open PDF").wait_for()
        page.wait_for_timeout(3000)  # pictures of the pages
        picture = Image.open(io.BytesIO(page.screenshot()))
        context.close()
    picture.convert("RGB").quantize(96, dither=Image.Dither.NONE).save(HERE / f"web-site-{where}.png", optimize=True)


def main() -> None:
    """Take both pictures."""
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright:
        folder = Path(sys.argv[1]) if sys.argv[1:] else Path(scratch) / "names"
        if not sys.argv[1:]:
            subprocess.run([sys.executable, "-m", "namewright.site.build", "-o", folder], check=True)
        for where in SIZES:
            host = Host(folder)
            try:
                shoot(playwright, host, where)
            finally:
                host.stop()
            print(where)


if __name__ == "__main__":
    main()
