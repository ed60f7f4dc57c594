"""The site's Python has a Unicode table of its own: names fall into the same letters there, and take the same case.

The names are those of faker's 56 and more locales (MIT; given names as its contributors typed them from public lists).
"""

from __future__ import annotations

import gzip
import json
import subprocess
import zipfile
from pathlib import Path

import pytest
from faker import Faker
from faker.config import AVAILABLE_LOCALES

from namewright.names.casing import mend_case
from namewright.names.clusters import clusters

pytestmark = pytest.mark.long
EACH = 60


def unpacked(folder: Path, into: Path) -> Path:
    """Write the files of the site as its service worker would give them."""
    script = (folder / "service-worker.js").read_text("utf-8")
    told, _ = json.JSONDecoder().raw_decode(script[script.index("const BUILD = ") + len("const BUILD = "):])
    for path, entry in told["files"].items():
        data = (folder / entry.get("packed", path)).read_bytes()
        (into / path).parent.mkdir(parents=True, exist_ok=True)
        (into / path).write_bytes(gzip.decompress(data) if "packed" in entry else data)
    return into


def names() -> list[str]:
    """Return given names of every locale, as typed and in capitals."""
    found: set[str] = set()
    for locale in sorted(AVAILABLE_LOCALES):
        maker = Faker(locale)
        maker.seed_instance(5)
        found |= {maker.first_name() for _ in range(EACH)}
    return sorted(found | {name.upper() for name in found})


def test_names_are_the_same_letters_in_both(folder: Path, tmp_path: Path) -> None:
    site, asked = unpacked(folder, tmp_path / "site"), names()
    (tmp_path / "names.json").write_text(json.dumps(asked), "utf-8")
    with zipfile.ZipFile(site / "library.zip") as library:
        library.extractall(tmp_path / "library")
    made = subprocess.run(["node", Path(__file__).with_name("names_in_wasm.mjs"), site / "engine", tmp_path / "library",
                           tmp_path / "names.json"], check=True, capture_output=True, text=True).stdout
    assert len(asked) > 2000
    assert json.loads(made) == [[list(clusters(name)), mend_case(name)] for name in asked]
