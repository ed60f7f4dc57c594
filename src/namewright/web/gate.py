"""The passphrase of a class that is shared on a school network: asked of everyone, on this machine too.

Before it nothing is told but that there is a class. Who has typed it carries a random key in a cookie, until they
leave, do nothing for an hour, or have been inside for a long school day. Wrong tries are counted by address and in all:
after five in a minute nobody at that address is heard for the rest of it.
"""

from __future__ import annotations

import hmac
import secrets
import time
from collections import deque
from dataclasses import dataclass, field
from hashlib import sha256
from threading import Lock

from flask import Flask, abort, g, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from namewright.web.key import has_key

COOKIE = "inside"
MAX_TRIES = 5
MAX_TRIES_IN_ALL = 30
WINDOW_S = 60.0
IDLE_S = 3600.0
STAY_S = 10 * 3600.0
_OPEN = frozenset({"static", "gate", "home.choose_language", "home.mark"})
_ALIVE = "home.alive"


@dataclass
class Gate:
    """Who is inside, and who tried in vain."""

    passphrase: str = field(repr=False)
    _inside: dict[str, tuple[float, float]] = field(default_factory=dict)  # a key, when it was given, when it was shown
    _wrong: deque[tuple[float, str]] = field(default_factory=deque)
    _lock: Lock = field(default_factory=Lock)

    def let_in(self, typed: str, now: float) -> str | None:
        """Return a key for who typed the passphrase; None for any other. Takes the same time for both."""
        if not hmac.compare_digest(sha256(typed.encode()).digest(), sha256(self.passphrase.encode()).digest()):
            return None
        key = secrets.token_urlsafe(32)
        with self._lock:
            self._inside = {one: when for one, when in self._inside.items() if _stays(when, now)}
            self._inside[key] = (now, now)
        return key

    def knows(self, key: str, now: float) -> bool:
        """Say whether a key was given out and still holds; from now on it holds for another hour."""
        with self._lock:
            when = self._inside.get(key)
            if when is None or not _stays(when, now):
                self._inside.pop(key, None)
                return False
            self._inside[key] = (when[0], now)
            return True

    def let_out(self, key: str) -> None:
        """Take a key back."""
        with self._lock:
            self._inside.pop(key, None)

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


def _stays(when: tuple[float, float], now: float) -> bool:
    given, shown = when
    return now - given < STAY_S and now - shown < IDLE_S


def install(app: Flask, passphrase: str, key: str) -> None:
    """Put the gate before every page. Who has the ``key`` of this start may ask whether the program answers."""
    keeper = Gate(passphrase)

    def ask() -> Response | None:
        if request.endpoint in _OPEN or (request.endpoint == _ALIVE and has_key(key)):
            return None
        g.known = keeper.knows(request.cookies.get(COOKIE, ""), time.monotonic())
        if g.known:
            return None
        if request.endpoint == _ALIVE:
            abort(403)
        return redirect(url_for("gate"))

    def gate() -> str | Response | tuple[str, int]:
        return _answer(keeper) if request.method == "POST" else render_template("gate.html", wrong=False)

    def leave() -> Response:
        keeper.let_out(request.cookies.get(COOKIE, ""))
        answer = redirect(url_for("gate"))
        answer.delete_cookie(COOKIE, httponly=True, samesite="Strict")
        return answer

    app.before_request(ask)
    app.add_url_rule("/gate", "gate", gate, methods=["GET", "POST"])
    app.add_url_rule("/gate/leave", "leave", leave, methods=["POST"])


def _answer(keeper: Gate) -> Response | tuple[str, int]:
    address, now = request.remote_addr or "", time.monotonic()
    if keeper.closed_to(address, now):
        abort(429)
    key = keeper.let_in(request.form.get("passphrase", ""), now)
    if key is None:
        keeper.note_wrong(address, now)
        return render_template("gate.html", wrong=True), 403
    answer = redirect(url_for("home.first"))
    answer.set_cookie(COOKIE, key, httponly=True, samesite="Strict")
    return answer
