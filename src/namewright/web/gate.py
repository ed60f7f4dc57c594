"""The passphrase of a class that is shared on a school network: asked of everyone, on this machine too.

Who has typed it carries a random key in a cookie, known for as long as the program runs. Wrong tries are counted by
address and in all: after five in a minute nobody at that address is heard for the rest of it.
"""

from __future__ import annotations

import hmac
import secrets
import time
from collections import deque
from dataclasses import dataclass, field
from hashlib import sha256
from threading import Lock

from flask import Flask, abort, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

COOKIE = "inside"
MAX_TRIES = 5
MAX_TRIES_IN_ALL = 30
WINDOW_S = 60.0
_OPEN = frozenset({"static", "gate", "home.choose_language", "home.mark"})


@dataclass
class Gate:
    """Who is inside, and who tried in vain."""

    passphrase: str = field(repr=False)
    _inside: set[str] = field(default_factory=set)
    _wrong: deque[tuple[float, str]] = field(default_factory=deque)
    _lock: Lock = field(default_factory=Lock)

    def let_in(self, typed: str) -> str | None:
        """Return a key for who typed the passphrase; None for any other. Takes the same time for both."""
        if not hmac.compare_digest(sha256(typed.encode()).digest(), sha256(self.passphrase.encode()).digest()):
            return None
        key = secrets.token_urlsafe(32)
        self._inside.add(key)
        return key

    def knows(self, key: str) -> bool:
        """Say whether a key was given out."""
        return key in self._inside

    def closed_to(self, address: str, now: float) -> bool:
        """Say whether an address, or everyone, tried in vain too often within the last minute."""
        with self._lock:
            while self._wrong and now - self._wrong[0][0] > WINDOW_S:
                self._wrong.popleft()
            return (len(self._wrong) >= MAX_TRIES_IN_ALL
                    or sum(who == address for _, who in self._wrong) >= MAX_TRIES)

    def note_wrong(self, address: str, now: float) -> None:
        """Remember a try in vain."""
        with self._lock:
            self._wrong.append((now, address))


def install(app: Flask) -> None:
    """Put the gate before every page, if there is a passphrase."""
    app.context_processor(lambda: {"shared": bool(app.config["PASSPHRASE"])})
    if not app.config["PASSPHRASE"]:
        return
    keeper = Gate(app.config["PASSPHRASE"])

    def ask() -> Response | None:
        if request.endpoint in _OPEN or keeper.knows(request.cookies.get(COOKIE, "")):
            return None
        return redirect(url_for("gate"))

    def gate() -> str | Response | tuple[str, int]:
        return _answer(keeper) if request.method == "POST" else render_template("gate.html", wrong=False)

    app.before_request(ask)
    app.add_url_rule("/gate", "gate", gate, methods=["GET", "POST"])


def _answer(keeper: Gate) -> Response | tuple[str, int]:
    address, now = request.remote_addr or "", time.monotonic()
    if keeper.closed_to(address, now):
        abort(429)
    key = keeper.let_in(request.form.get("passphrase", ""))
    if key is None:
        keeper.note_wrong(address, now)
        return render_template("gate.html", wrong=True), 403
    answer = redirect(url_for("home.first"))
    answer.set_cookie(COOKIE, key, httponly=True, samesite="Strict")
    return answer
