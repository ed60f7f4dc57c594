"""The key of the page: who started the program has it, and no other account of this machine.

Loopback is shared by everybody who is logged in to a machine, so an address alone must open nothing. The first address
carries a random key, one for each start; it is taken out of the address at once and kept in a cookie, and every
request is asked for it. The cookie is named after the port, since cookies do not tell ports apart. Out of scope: a
class that is shared, where the passphrase stands in for the key (``gate``).
"""

from __future__ import annotations

import hmac
from urllib.parse import urlencode

from flask import Flask, g, redirect, render_template, request
from werkzeug.wrappers import Response

FIELD = "key"
KNOWN = "known"  # on Flask's g: who asks may come in
_OPEN = frozenset({"static", "home.mark"})  # what the page that says what to do is made of


def cookie_name(host: str) -> str:
    """Return the name of the cookie for an address, its port at the end."""
    return f"{FIELD}-{host.rpartition(':')[2]}"


def way_in(address: str, key: str) -> str:
    """Return an address that lets in, to be opened once."""
    return f"{address}?{urlencode({FIELD: key})}" if key else address


def install(app: Flask, key: str) -> None:
    """Ask every request for the key."""
    def ask() -> str | tuple[str, int] | Response | None:
        if request.method == "GET" and _same(request.args.get(FIELD, ""), key):
            return _let_in(key)
        g.known = has_key(key)
        if g.known or request.endpoint in _OPEN:
            return None
        return render_template("no_key.html"), 403

    app.before_request(ask)


def has_key(key: str) -> bool:
    """Say whether a request carries the key in its cookie."""
    return _same(request.cookies.get(cookie_name(request.host), ""), key)


def _same(given: str, key: str) -> bool:
    return hmac.compare_digest(given.encode(), key.encode())


def _let_in(key: str) -> Response:
    """Keep the key in a cookie and go to the same address without it.

    Where another site or program led here, a redirect would still count as coming from there and would not carry a
    strict cookie; a page that goes on by itself does.
    """
    rest = urlencode([(name, text) for name, text in request.args.items(multi=True) if name != FIELD])
    plain = f"{request.path}?{rest}" if rest else request.path
    led_here = request.headers.get("Sec-Fetch-Site", "none") not in ("none", "same-origin")
    page = render_template("way_in.html", plain=plain) if led_here else None
    answer = redirect(plain) if page is None else Response(page, mimetype="text/html")
    answer.set_cookie(cookie_name(request.host), key, httponly=True, samesite="Strict")
    return answer
