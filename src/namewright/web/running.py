"""The program that runs for a class already: noted in the user's own folder, so that a second start finds it.

The note holds the key, so it is its owner's alone; it is forgotten when the program ends, and one of a program that was
killed is found out by asking. Out of scope: the key itself (``key``).
"""

from __future__ import annotations

import http.client
import json
import os
from contextlib import suppress
from dataclasses import asdict, dataclass
from hashlib import sha256
from pathlib import Path

from namewright.web.key import cookie_name, way_in

_PATIENCE_S = 2.0
_MAX_BYTES = 10_000


@dataclass(frozen=True, slots=True)
class Running:
    """A program that answers: at which port of this machine, where its page is, with which key."""

    port: int
    address: str
    key: str
    shared: bool

    @property
    def way_in(self) -> str:
        """Return the address to open: with the key, unless the passphrase stands in for it."""
        return way_in(self.address, "" if self.shared else self.key)


def own_folder() -> Path:
    """Return the user's own data folder, made private where it is made. Raises OSError."""
    from platformdirs import user_data_path

    folder = user_data_path("namewright", appauthor=False)
    folder.mkdir(parents=True, exist_ok=True, mode=0o700)
    return folder


def _note(class_file: Path) -> Path:
    return own_folder() / f"open-{sha256(str(class_file.resolve()).encode()).hexdigest()[:16]}.json"


def note(class_file: Path, running: Running) -> None:
    """Note a program that runs; where that cannot be, a second start finds none."""
    with suppress(OSError):
        place = _note(class_file)
        place.unlink(missing_ok=True)
        handle = os.open(place, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            json.dump(asdict(running), file)


def forget(class_file: Path, running: Running) -> None:
    """Take back what was noted, unless another program has noted itself meanwhile."""
    with suppress(OSError):
        if _noted(class_file) == running:
            _note(class_file).unlink(missing_ok=True)


def find(class_file: Path) -> Running | None:
    """Return the program that runs for a class and answers; None where there is none."""
    noted = _noted(class_file)
    return noted if noted and _answers(noted) else None


def _noted(class_file: Path) -> Running | None:
    try:
        with _note(class_file).open(encoding="utf-8") as file:
            said = json.loads(file.read(_MAX_BYTES))
        return Running(int(said["port"]), str(said["address"]), str(said["key"]), bool(said["shared"]))
    except (OSError, ValueError, TypeError, KeyError):
        return None


def _answers(noted: Running) -> bool:
    host = f"127.0.0.1:{noted.port}"
    connection = http.client.HTTPConnection(host, timeout=_PATIENCE_S)
    try:
        connection.request("GET", "/alive", headers={"Cookie": f"{cookie_name(host)}={noted.key}"})
        return connection.getresponse().status == http.client.NO_CONTENT
    except (OSError, http.client.HTTPException, ValueError):
        return False
    finally:
        connection.close()
