"""The application's answers without a server: one request in, one answer out, one at a time.

It is called by ``static/worker.mjs``, where Python runs inside a browser, and by tests. It keeps the cookies, which no
browser sees, and says when the class's file has changed, so that the file is kept on the device before the answer is
given. Out of scope: where the file is kept (``static/keeping.mjs``), how a request comes here (the service worker).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from http.cookies import CookieError, SimpleCookie
from pathlib import Path
from typing import TYPE_CHECKING, Any
from urllib.parse import unquote, urlsplit

from flask import render_template
from jinja2 import ChoiceLoader, Environment, ModuleLoader
from werkzeug.test import EnvironBuilder, run_wsgi_app

from namewright.cycles import look_seldom
from namewright.message import message
from namewright.pages.typesetter import Typesetter
from namewright.web.app import create_app
from namewright.web.desk import KEY, Desk
from namewright.web.jobs import WaitingJobs

if TYPE_CHECKING:
    from _typeshed.wsgi import WSGIEnvironment


COMPILED = Path(__file__).with_name("screens")  # the templates of the screens as bytecode, where the site was built


@dataclass(frozen=True, slots=True)
class Answer:
    """What the application answers: a status code, headers in their order, and the body."""

    status: int
    headers: tuple[tuple[str, str], ...]
    body: bytes


class Bridge:
    """One application for one class, asked without a network.

    ``class_file`` is its path, ``host`` the address of the page (host and port), ``root`` the path under which the
    screens lie.
    """

    def __init__(self, class_file: Path | str, host: str, root: str) -> None:
        look_seldom()
        self._file, self._host, self._root = Path(class_file), host, root.rstrip("/")
        self._waiting = WaitingJobs()
        self._app = create_app({"CLASS": str(class_file), "HOSTS": [host], "IN_BROWSER": True})
        take_compiled(self._app.jinja_env, COMPILED)
        self._desk: Desk = self._app.extensions[KEY]
        self.take_up({})

    @property
    def setter(self) -> Typesetter:
        """The letters that are kept ready for what is shown, counted and printed."""
        return self._desk.setter

    def take_up(self, cookies: Mapping[str, str], tell: Callable[[int, int], None] = lambda done, total: None) -> None:
        """Go on with the class that lies in the file now, whatever was there before.

        ``cookies`` are those of last time. ``tell`` hears how many pages of a PDF are made, and of how many.
        """
        self._desk.forget()
        self._desk.jobs.run_by(self._waiting, lambda job: tell(job.pages, job.pages_in_all))
        self.cookies = dict(cookies)
        self._kept = self._read = self._bytes()

    def answer(self, method: str, path: str, headers: Iterable[tuple[str, str]] = (), body: bytes = b"") -> Answer:
        """Answer a request; ``path`` has the query, if any. What lies outside of our screens is not found."""
        asked = urlsplit(path)
        inside = asked.path.removeprefix(self._root)
        if (inside == asked.path and self._root) or not inside.startswith("/"):
            return Answer(404, (), b"")
        sent = [(name, value) for name, value in headers if name.lower() not in ("cookie", "host", "origin")]
        if self.cookies:
            sent.append(("Cookie", "; ".join(f"{name}={value}" for name, value in self.cookies.items())))
        return self._asked(
            self._environ(unquote(inside), query_string=asked.query, method=method, headers=sent, data=body))

    def _environ(self, path: str, **more: Any) -> WSGIEnvironment:
        return EnvironBuilder(path, base_url=f"http://{self._host}{self._root}/", **more).get_environ()

    def _asked(self, environ: WSGIEnvironment) -> Answer:
        parts, status, headers = run_wsgi_app(self._app, environ, buffered=True)
        self._take_cookies(headers.getlist("Set-Cookie"))
        shown = tuple((name, value) for name, value in headers if name != "Set-Cookie")
        return Answer(int(status.split()[0]), shown, b"".join(parts))

    def _take_cookies(self, lines: Iterable[str]) -> None:
        for line in lines:
            try:
                found = SimpleCookie(line)
            except CookieError:
                continue
            for name, cookie in found.items():
                if cookie["max-age"] == "0":
                    self.cookies.pop(name, None)
                else:
                    self.cookies[name] = cookie.value

    def compile_screens(self) -> None:
        """Load the templates of all screens, which is done otherwise when each is first shown."""
        for name in self._app.jinja_loader.list_templates() if self._app.jinja_loader else ():
            self._app.jinja_env.get_template(name)

    def unkept(self) -> bytes | None:
        """Return the class's file where it differs from what is kept on the device; else None."""
        self._read = self._bytes()
        return None if self._read == self._kept else self._read

    def is_kept(self) -> None:
        """Hear that what ``unkept`` returned last is kept on the device."""
        self._kept = self._read

    def not_kept(self) -> Answer:
        """Go back to the class as it is kept, for the device had no room for the change; return a page that says so."""
        self._file.write_bytes(self._kept)
        self._desk.forget()
        with self._app.request_context(self._environ("/")):
            page = render_template("problem.html", problem=message("web.site.not_kept"))
        return Answer(507, (("Content-Type", "text/html; charset=utf-8"),), page.encode())

    def work(self) -> bool:
        """Do the next job that waits, else a step of what will be asked for soon; say whether there was one."""
        if self._waiting.do_next():
            return True
        with suppress(Exception):  # said when it is asked for
            return next(self._desk.soon, None) is not None
        return False

    def _bytes(self) -> bytes:
        return self._file.read_bytes() if self._file.exists() else b""


def compile_templates(out: Path) -> None:
    """Write the templates of all screens as Python into a folder; compiling them took most of a first answer."""
    app = create_app({"CLASS": "", "HOSTS": [], "IN_BROWSER": True})
    app.jinja_env.compile_templates(out, zip=None, ignore_errors=False)


def take_compiled(templates: Environment, folder: Path) -> None:
    """Take templates from where ``compile_templates`` wrote them, and from their sources what is not there."""
    if templates.loader and folder.is_dir():
        templates.loader = ChoiceLoader([ModuleLoader(folder), templates.loader])
