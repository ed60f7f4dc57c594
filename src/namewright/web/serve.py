"""The page on this machine: an address, a server that keeps quiet, and the browser.

The server answers on loopback, to who has the key in its first address; with a passphrase also on this machine's
address in the local network. What is sent there is not encrypted, which is said before it is opened. Nothing about a
request is logged.
"""

from __future__ import annotations

import logging
import os
import secrets
import select
import socket
import threading
import time
import webbrowser
from collections.abc import Callable, Mapping, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from flask import Flask

from namewright.web import opening, running
from namewright.web.app import create_app
from namewright.web.desk import KEY, Desk
from namewright.web.key import cookie_name
from namewright.wording import FIRST

if TYPE_CHECKING:
    from waitress.server import BaseWSGIServer, MultiSocketServer

LOOPBACK = "127.0.0.1"
# The same each time if it is free, so that an open page finds the program again; below the ports that systems lend to
# outgoing connections (Linux from 32768, others from 49152: RFC 6335), so that none of those sits on it by chance.
USUAL_PORT = 27613
THREADS = 8
_CONNECTIONS = 300
_LOOK_S = 5  # between two looks for connections on which nothing happens
_TRIES = 5
_MOMENT_S = 0.3
_MAX_BODY_BYTES = 4_000_000  # a little over what the application takes, so that it can say so in a sentence


def default_class() -> Path:
    """Return the class's file in the user's own data folder. Raises OSError."""
    return running.own_folder() / "class.db"


def free_port(host: str, wanted: int | None) -> int:
    """Return the port that was asked for, else the usual one, else any that is free.

    Raises OSError where the port asked for is taken.
    """
    tries = [wanted] if wanted else [USUAL_PORT, 0]
    for port in tries:
        try:
            with socket.socket() as probe:
                if os.name == "posix":
                    probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
                probe.bind((host, port))
                return int(probe.getsockname()[1])
        except OSError:
            if port == tries[-1]:
                raise
    raise OSError("no port is free")


def local_address() -> str:
    """Return this machine's address in its network; nothing is sent. Raises OSError where there is no network."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        probe.connect(("192.0.2.1", 9))  # TEST-NET-1, RFC 5737: an address that nobody has
        return str(probe.getsockname()[0])


def serve(class_file: Path, port: int | None, *, passphrase: str = "", say: Callable[[str], None] = print,
          browser: bool = True, spoken: str = FIRST) -> None:
    """Serve until interrupted; ``spoken`` is the language of what is said on stderr.

    Raises OSError where the port is taken or there is no network to share on.
    """
    where = [LOOPBACK, *([local_address()] if passphrase else [])]
    logging.getLogger("waitress").setLevel(logging.CRITICAL)
    key = secrets.token_urlsafe(32)
    config = {"CLASS": str(class_file), "PASSPHRASE": passphrase, "KEY": key, "SPOKEN": spoken}
    app, server, found = _on_a_port(config, where, port)
    here = running.Running(found, f"http://{where[-1]}:{found}/", key, bool(passphrase))
    at: Desk = app.extensions[KEY]
    at.turned = partial(_noted_again, here)
    try:
        running.note(class_file, here)
        say(here.way_in)
        if browser:
            opening.tidy_up()
            threading.Thread(target=_open_soon, args=(here,), daemon=True).start()
        threading.Thread(target=_warm, args=(app, f"{where[0]}:{found}"), daemon=True).start()
        server.run()
    finally:
        running.forget(at.path, here)


def _on_a_port(config: Mapping[str, object], where: Sequence[str],
               port: int | None) -> tuple[Flask, MultiSocketServer | BaseWSGIServer, int]:
    """Return the application, the server that holds a port for it, and the port. Raises OSError where none is free."""
    for attempt in range(_TRIES):
        found = free_port(LOOPBACK, port)
        app = create_app({**config, "HOSTS": [f"{host}:{found}" for host in (*where, "localhost")]})
        try:
            return app, _listening(app, [f"{host}:{found}" for host in where]), found
        except OSError:  # another program took the port between the look and the taking
            if port or attempt == _TRIES - 1:
                raise
    raise OSError("no port is free")


def _open_soon(here: running.Running) -> None:
    """Open the page when the server has had a moment to begin."""
    time.sleep(_MOMENT_S)
    _open(here)


def _open(here: running.Running) -> None:
    """Open the page; a shared one has no key to be kept from others."""
    (webbrowser.open if here.shared else opening.show)(here.way_in)


def _noted_again(here: running.Running, before: Path, after: Path) -> None:
    """Let a second start find this program by the class that is open in it now."""
    running.forget(before, here)
    running.note(after, here)


def show_again(class_file: Path, say: Callable[[str], None], *, browser: bool) -> bool:
    """Open the page of the program that runs for a class already; return whether there is one."""
    found = running.find(class_file)
    if found is None:
        return False
    say(found.way_in)
    if browser:
        _open(found)
    return True


def _listening(app: Flask, where: Sequence[str]) -> MultiSocketServer | BaseWSGIServer:
    """Return a server that holds its ports. Raises OSError where one is taken."""
    from waitress.server import create_server

    from namewright.web.prompt import hurried

    return hurried(create_server(app, listen=" ".join(where), threads=THREADS, ident=None,
                                 max_request_body_size=_MAX_BODY_BYTES, connection_limit=_CONNECTIONS,
                                 asyncore_use_poll=hasattr(select, "poll"), cleanup_interval=_LOOK_S))


def _warm(app: Flask, host: str) -> None:
    """Make the first page ready while the browser starts: letters, order and groups are kept from then on."""
    app.test_client().get("/class", headers={"Host": host, "Cookie": f"{cookie_name(host)}={app.config['KEY']}"})
