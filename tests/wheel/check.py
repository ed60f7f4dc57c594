"""What is published, tried as a stranger has it: the wheel, in an environment with what it asks for and nothing else.

Run by ``make wheel-check``. The wheel is built and installed afresh; then it makes the demo class as a PDF, which pypdf
reads, and answers a browser's first request. Everything runs from an empty folder, so that nothing of this one is seen.
"""

from __future__ import annotations

import re
import signal
import subprocess
import sys
import tempfile
import urllib.request
import venv
import zipfile
from importlib.metadata import distribution
from pathlib import Path

from pypdf import PdfReader

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "src" / "namewright"
BIN = "Scripts" if sys.platform == "win32" else "bin"
SECONDS = 60


def built(folder: Path) -> Path:
    """Build the wheel and return it."""
    subprocess.run([sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "-w", folder, ROOT], check=True)
    (wheel,) = folder.glob("namewright-*.whl")
    return wheel


def check_contents(wheel: Path) -> None:
    """Every file of the package that is in the repository's folder is in the wheel, words, pictures and data too."""
    inside = set(zipfile.ZipFile(wheel).namelist())
    here = {f"namewright/{path.relative_to(PACKAGE).as_posix()}" for path in PACKAGE.rglob("*")
            if path.is_file() and "__pycache__" not in path.parts}
    assert here <= inside, f"not in the wheel: {sorted(here - inside)}"
    assert "namewright/fonts/upright.toml" in inside, "the letters are not in the wheel"
    for face in ("AtkinsonHyperlegibleNext", "NotoSerif"):
        assert f"namewright/fonts/{face}-Latin.ttf" in inside, "another typeface is not in the wheel"


def check_page(wheel: Path) -> None:
    """The package page links to nothing that is not beside it, and still has the words of the pictures."""
    with zipfile.ZipFile(wheel) as archive:
        (name,) = [each for each in archive.namelist() if each.endswith(".dist-info/METADATA")]
        page = archive.read(name).decode("utf-8")
    here = [target for target in re.findall(r"\]\(([^)]+)\)", page) if not target.startswith("http")]
    assert not here, f"the package page links to {here}"
    assert "A sheet with full support" in page


def installed(wheel: Path, folder: Path) -> Path:
    """Install the wheel, with what it asks for, into an environment of its own; return where its programs are."""
    venv.create(folder, with_pip=True)
    programs = folder / BIN
    subprocess.run([programs / "python", "-m", "pip", "install", "--quiet", wheel], check=True)
    listed = subprocess.run([programs / "python", "-m", "pip", "list", "--format", "freeze"], check=True,
                            capture_output=True, text=True).stdout
    extra = {name for name in ("pytest", "shapely", "uharfbuzz", "skia-pathops", "scipy", "hypothesis")
             if f"\n{name}==" in f"\n{listed}"}
    assert not extra, f"the wheel brings what only its makers need: {sorted(extra)}"
    return programs


def check_pdf(programs: Path, folder: Path) -> None:
    """The demo class becomes a PDF with an entry for each of its children, and a page for the adult."""
    demo = "import importlib.resources as r; print(r.files('namewright').joinpath('demo.txt').read_text('utf-8'))"
    roster = subprocess.run([programs / "python", "-I", "-c", demo], check=True, capture_output=True).stdout
    (folder / "class.txt").write_bytes(roster)
    subprocess.run([programs / "namewright", "sheets", "class.txt", "-o", "class.pdf", "--summary", "adult.pdf"],
                   cwd=folder, check=True)
    assert len(PdfReader(folder / "class.pdf").outline) == 24
    assert len(PdfReader(folder / "adult.pdf").pages) >= 1


def check_door(programs: Path, folder: Path) -> None:
    """The lines in the README make a PDF."""
    (code,) = re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    subprocess.run([programs / "python", "-I", "-c", code], cwd=folder, check=True)
    assert len(PdfReader(folder / "class.pdf").pages) == 3


def check_web(programs: Path, folder: Path) -> None:
    """The program prints its address, answers there with its first screen, and ends when it is told to."""
    words = [programs / "namewright", "open", "--class", "room.db", "--no-browser"]
    with subprocess.Popen(words, cwd=folder, stdout=subprocess.PIPE, text=True) as running:
        try:
            assert running.stdout is not None
            address = running.stdout.readline().strip()
            browser = urllib.request.build_opener(urllib.request.HTTPCookieProcessor())  # keeps the key
            with browser.open(address, timeout=SECONDS) as answer:
                page = answer.read().decode("utf-8")
            assert answer.status == 200
            assert '<html lang="en">' in page
            assert "<form" in page
        finally:
            running.send_signal(signal.SIGINT)
            running.wait(SECONDS)
    assert running.returncode == 0


def main() -> None:
    """Build, install, try; a shell that runs this in the background has Ctrl-C ignored, and programs inherit it."""
    if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
        signal.signal(signal.SIGINT, signal.default_int_handler)
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place)
        wheel = built(folder)
        check_contents(wheel)
        check_page(wheel)
        programs = installed(wheel, folder / "env")
        check_pdf(programs, folder)
        check_door(programs, folder)
        check_web(programs, folder)
        print(f"{wheel.name} ({distribution('namewright').version}): installs alone, makes a PDF and answers a browser")


if __name__ == "__main__":
    main()
