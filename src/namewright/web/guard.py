"""Who may ask, and what an answer may do: the rules that hold for every request.

Only our own address is answered (a foreign ``Host`` is how a web page elsewhere would reach a server on this
machine by a changed name entry), only our own pages may send forms, and an answer may load nothing from elsewhere.
A form carries a token that this start of the program signed; its random half also tells two sendings of one form
from two forms. It carries a mark of its class too: a page left open from one class must not change another that is
served at the same address later. Out of scope: the passphrase of a shared class (``gate``).
"""

from __future__ import annotations

import secrets
from collections.abc import Callable, Iterable
from hashlib import sha256

from flask import Flask, Request, Response, abort, request
from itsdangerous import BadSignature, Signer
from markupsafe import Markup

CONTENT_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
    "font-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'")
PDF_POLICY = "frame-ancestors 'none'"  # browsers show a PDF by pages of their own, which the strict policy would stop
_HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
_SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})
TOKEN_FIELD, CLASS_FIELD = "token", "class"
_OF_NO_CLASS = frozenset({"gate", "leave", "home.choose_language", "classes.turn_to"})


class Seal:
    """The tokens of one start of the program. A token is a random half and its signature, with a point between."""

    def __init__(self) -> None:
        self._signer = Signer(secrets.token_bytes(32), salt="form", digest_method=sha256)

    def token(self) -> str:
        """Return a new token for one form."""
        return self._signer.sign(secrets.token_urlsafe(12)).decode()

    def nonce(self, token: str) -> str | None:
        """Return the random half of a token of ours; None for any other text."""
        try:
            return self._signer.unsign(token).decode()
        except (BadSignature, UnicodeError):
            return None


class StaleForm(Exception):
    """A form of ours from before this start of the program: to be shown again with what was typed."""


class OtherClass(Exception):
    """A form of another class's page: to be shown again, and nothing of it kept here."""


def install(app: Flask, hosts: Iterable[str]) -> None:
    """Answer only at our own addresses, with port, and let no answer load anything from elsewhere."""
    ours = frozenset(hosts)
    app.before_request(lambda: refuse_strangers(request, ours))
    app.after_request(lambda answer: _guarded(answer, "self" if app.config["IN_BROWSER"] else "none"))


def install_forms(app: Flask, seal: Seal, mark: Callable[[], str]) -> None:
    """Take forms only of this start of the program, and of the class that ``mark`` tells.

    To be called after who may come in is asked: what is said of a form tells of the class.
    """
    def check() -> None:
        if request.method in _SAFE_METHODS:
            return
        if request.endpoint not in _OF_NO_CLASS and request.form.get(CLASS_FIELD) != mark():
            raise OtherClass
        if seal.nonce(request.form.get(TOKEN_FIELD, "")) is None:
            raise StaleForm

    app.before_request(check)
    app.context_processor(lambda: {"token": lambda of=None: _hidden(seal.token(), mark() if of is None else of)})


def _hidden(token: str, mark: str) -> Markup:
    field = Markup('<input type="hidden" name="{}" value="{}">')
    return field.format(TOKEN_FIELD, token) + field.format(CLASS_FIELD, mark)


def refuse_strangers(asked: Request, ours: frozenset[str]) -> None:
    """Abort with 403 unless the request is for us, and from us where it says where from."""
    if asked.host not in ours:
        abort(403)
    origin = asked.headers.get("Origin")
    if origin is not None and origin not in {f"http://{host}" for host in ours}:
        abort(403)
    site = asked.headers.get("Sec-Fetch-Site", "none")
    opened = asked.method == "GET" and asked.headers.get("Sec-Fetch-Mode") == "navigate"
    if site not in ("same-origin", "none") and not opened:
        abort(403)


def _guarded(answer: Response, framed_by: str) -> Response:
    """Write the headers of an answer; ``framed_by`` tells who may show it in a frame: none, or self (our own page)."""
    for name, value in _HEADERS.items():
        answer.headers[name] = value
    answer.headers["X-Frame-Options"] = {"none": "DENY", "self": "SAMEORIGIN"}[framed_by]
    policy = PDF_POLICY if answer.mimetype == "application/pdf" else CONTENT_POLICY
    framed = policy.replace("frame-ancestors 'none'", f"frame-ancestors '{framed_by}'")
    answer.headers["Content-Security-Policy"] = framed
    if request.endpoint == "static":
        answer.headers["Cache-Control"] = "no-cache"  # asked again each time, sent again only when it changed
    else:
        answer.headers["Cache-Control"] = "no-store"
    return answer
