"""Who is let in, what is refused, and that no name leaves by a side door. The rules are those of RFC 9110 (Host,
Origin: RFC 6454), RFC 6265bis (SameSite) and W3C Content Security Policy Level 3.
"""

from __future__ import annotations

import http.client
import io
import os
import re
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from threading import Thread
from typing import Any

import pytest
from flask.sansio.app import App
from waitress import wasyncore
from webhelp import HOST, MESSY, Program, Visitor, own_folder, port_of_its_own, token_in

from namewright.classbook import Classbook
from namewright.commands.open import MIN_GUESSES, MIN_PASSPHRASE, _guesses, _passphrase
from namewright.commands.talk import Refusal
from namewright.web import create_app
from namewright.web.guard import Seal
from namewright.web.serve import local_address

SOON_S = 60  # a shared machine may stand still for a while; the server ends idle connections by itself at twice that
NAMES = ("Ottilka", "Tamsel", "Kirrin", "Katla", "Kasimir")


@pytest.mark.parametrize("host", ["names.example", "127.0.0.1:1", "localhost", "127.0.0.1.names.example:4999", ""])
def test_foreign_host(visitor: Visitor, host: str) -> None:
    """A request that names another host, as after a changed name entry, is refused."""
    assert visitor.get("/", Host=host).status_code == 403


@pytest.mark.parametrize("origin", ["http://names.example", "null", f"https://{HOST}", "http://127.0.0.1:5000",
                                    f"http://{HOST}.names.example"])
def test_foreign_origin(settled: Visitor, origin: str) -> None:
    """A request that comes from another page is refused, whether it changes anything or only reads."""
    before = settled.get("/class/list").text.partition("<textarea")[2].partition("</textarea>")[0]
    assert settled.post("/class/list", {"text": "Nobody Known", "based": "1"}, Origin=origin).status_code == 403
    assert settled.get("/class", Origin=origin).status_code == 403
    assert before in settled.get("/class/list").text


def test_foreign_site_without_origin(settled: Visitor) -> None:
    """A picture or script asked for by a page elsewhere is refused by Sec-Fetch-Site; a link to us may be followed."""
    assert settled.get("/picture/1/page.svg", Sec_Fetch_Site="cross-site", Sec_Fetch_Mode="no-cors").status_code == 403
    assert settled.get("/class", Sec_Fetch_Site="cross-site", Sec_Fetch_Mode="navigate").status_code == 200


def every_change(app: App) -> list[str]:
    """Return a path for every address that takes a form."""
    return sorted({rule.rule.replace("<int:child_id>", "1").replace("<int:note_id>", "1")
                   for rule in app.url_map.iter_rules() if "POST" in (rule.methods or ())})


def test_no_change_without_token(settled: Visitor) -> None:
    """Every address that takes a form asks for a token of this start: none, a made-up or an old one is refused."""
    paths = every_change(settled.client.application)
    assert len(paths) >= 8
    old = Seal().token()
    for path in paths:
        for token in ("", "abc.def", old):
            answer = settled.post(path, {"letters": "ka", "line_height": "30", "after": "0"}, token=token)
            assert answer.status_code == 403, (path, token)
    assert "data-once" not in settled.get("/class?child=1").text
    assert "Nothing has been changed" in settled.get("/class?child=1").text


def test_an_old_form_is_shown_again_with_what_was_typed(settled: Visitor) -> None:
    """A form from before a new start is not lost: it comes back, whole, with a token that counts."""
    answer = settled.post("/class/list", {"text": "Wenna Praske\n<b>Tobin</b> Yarrel", "based": "1"},
                          token=Seal().token())
    assert answer.status_code == 403
    assert "Wenna Praske" in answer.text
    assert "&lt;b&gt;Tobin&lt;/b&gt;" in answer.text
    again = settled.post("/class/list", {"text": "Wenna Praske\nTobin Yarrel", "based": "1"},
                         token=token_in(answer.text))
    assert again.status_code == 302


def test_answers_may_load_nothing_from_elsewhere(settled: Visitor) -> None:
    """Every page forbids all but our own files, frames included, and holds no script, style or handler in itself."""
    for path in ("/", "/class", "/class/list", "/now", "/lines", "/child/1/lines", "/child/1/seen", "/child/1/home",
                 "/screen", "/print/pages?what=sheets&child=1", "/nowhere"):
        answer = settled.get(path)
        policy = answer.headers["Content-Security-Policy"]
        assert policy.startswith("default-src 'none'"), path
        assert "frame-ancestors 'none'" in policy
        assert "unsafe" not in policy
        assert answer.headers["X-Content-Type-Options"] == "nosniff"
        assert answer.headers["Cache-Control"] == "no-store"
        for outside in ("<style", " style=", " onclick", "http://", "https://", "<script>"):
            assert outside not in answer.text.replace('xmlns="http://www.w3.org/2000/svg"', "").replace(
                'xmlns:xlink="http://www.w3.org/1999/xlink"', "").replace(
                'xmlns:ev="http://www.w3.org/2001/xml-events"', ""), (path, outside)


def test_markup_in_a_name_stays_text(visitor: Visitor) -> None:
    """A name is text on every page, whatever it looks like."""
    visitor.post("/class/list", {"text": "Ottilka Tamsel\nMirel \"><script>alert(1)</script>", "based": "0"})
    for path in ("/class", "/class/list", "/now", "/lines"):
        assert "<script>alert" not in visitor.get(path).text


def test_too_much_is_refused_in_a_sentence(visitor: Visitor) -> None:
    """A paste or a file past the limit is refused and said, and nothing is kept."""
    answer = visitor.post("/class/list", {"text": "Ottilka Tamsel\n" * 250_000, "based": "0"})
    assert answer.status_code == 413
    assert "cut it down" in answer.text
    many = visitor.post("/class/list", {"text": "Ottilka Tamsel\n" * 401, "based": "0"})
    assert "401 lines" in visitor.get(many.headers["Location"]).text
    assert visitor.get("/class").status_code == 302


def test_no_name_in_an_address(settled: Visitor) -> None:
    """No link, form or redirect of ours carries a name."""
    for path in ("/class", "/class/list", "/now", "/lines", "/seen", "/child/1/lines", "/child/1/home"):
        page = settled.get(path).text
        for piece in page.split('href="')[1:] + page.split('src="')[1:] + page.split('action="')[1:]:
            assert not any(name.lower() in piece.partition('"')[0].lower() for name in NAMES)
    answer = settled.post("/now", {"letters": "ott", "size": "sheet"})
    assert answer.headers["Location"] == "/child/1/made?size=sheet"
    kept = settled.keep(MESSY + "Wenna Praske\n")
    assert "Wenna" not in str(kept.headers)


def test_an_error_is_logged_without_its_message(visitor: Visitor, capfd: pytest.CaptureFixture[str]) -> None:
    """What is written about a failure is its kind and its place, never what it says: that may hold a name."""
    app = visitor.client.application

    def broken() -> str:
        raise LookupError("Ottilka Tamsel")

    app.view_functions["home.first"] = broken
    app.config["PROPAGATE_EXCEPTIONS"] = False
    answer = visitor.get("/")
    said = "".join(capfd.readouterr())
    assert answer.status_code == 500
    assert "LookupError (test_web_guard.py, line" in said
    assert "Ottilka" not in said + answer.text


def shared(class_file: Path) -> Visitor:
    """Return a visitor before a class that is shared by a passphrase."""
    return Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST], "PASSPHRASE": "three quiet herons"}))


def test_a_shared_class_asks_for_the_passphrase(class_file: Path) -> None:
    """Without the passphrase no page is shown and no form is taken; with it all are; the cookie is for us alone."""
    guest = shared(class_file)
    for path in ("/", "/class", "/class/list", "/now", "/child/1/card.pdf"):
        assert guest.get(path).headers.get("Location") == "/gate"
    token = token_in(guest.get("/gate").text)
    assert guest.post("/class/choices", {"order": "name"}, token=token, mark="another").headers["Location"] == "/gate"
    assert guest.post("/class/list", {"text": MESSY, "based": "0"}, token=token).headers["Location"] == "/gate"
    assert guest.post("/gate", {"passphrase": "three quiet heron"}, token=token).status_code == 403
    inside = guest.post("/gate", {"passphrase": "three quiet herons"}, token=token)
    assert "HttpOnly" in inside.headers["Set-Cookie"]
    assert "SameSite=Strict" in inside.headers["Set-Cookie"]
    assert guest.get("/class/list").status_code == 200
    assert guest.post("/gate/leave", {}).headers["Location"] == "/gate"
    assert guest.get("/").headers["Location"] == "/gate"
    assert guest.get("/alive").status_code == 204  # the key of this start still tells its keeper that it answers


def test_nothing_of_a_shared_class_is_told_before_the_passphrase(class_file: Path) -> None:
    """Neither its file nor a child, whatever is asked: no page, another method, forms of another class."""
    guest = shared(class_file)
    with Classbook.open(class_file) as book:
        book.update_roster(MESSY)
    for answer in (guest.get("/nothing"), guest.get("/class/erase/yes"), guest.post("/class", {}, mark="another"),
                   guest.post("/class/erase/yes", {"everything": "1"}, mark=""), guest.get("/gate"),
                   guest.post("/gate", {"passphrase": "guess"}, mark="another")):
        assert not {"class.db", "Ottilka", "Katla"} & set(re.findall(r"[\w.]+", answer.text)), answer.text


def test_guessing_is_stopped(class_file: Path) -> None:
    """After five wrong passphrases in a minute even the right one waits."""
    guest = shared(class_file)
    token = token_in(guest.get("/gate").text)
    answers = [guest.post("/gate", {"passphrase": str(count)}, token=token).status_code for count in range(6)]
    assert answers == [403] * 5 + [429]
    assert guest.post("/gate", {"passphrase": "three quiet herons"}, token=token).status_code == 429


def opened(*words: str, typed: str = "") -> subprocess.CompletedProcess[str]:
    """Run ``namewright open`` with words that end it at once."""
    return subprocess.run([sys.executable, "-m", "namewright.cli", "open", "--no-browser", *words], input=typed,
                          capture_output=True, text=True, timeout=60, check=False, env=own_folder(Path(words[1])))


def test_sharing_says_what_it_means_and_wants_a_real_passphrase(class_file: Path) -> None:
    """Before a class is shared it is said who can see it and that nothing is encrypted; a short word is refused."""
    done = opened("--class", str(class_file), "--share", typed="heron\n")
    assert done.returncode == 2
    assert "not encrypted" in done.stderr
    assert "at least 12" in done.stderr
    assert not done.stdout


@pytest.mark.parametrize("typed", ["aaaaaaaaaaaa", "123456789012", "Ottilka Tamsel", "passwordpassword", "class alder"])
def test_a_passphrase_that_is_easily_guessed_is_refused(class_file: Path, monkeypatch: pytest.MonkeyPatch,
                                                        typed: str) -> None:
    """However long it is: signs over and over, words that everybody takes, names of the class."""
    with Classbook.open(class_file) as book:
        book.update_roster(MESSY)
        book.set_class_settings({"title": "Alder class"})
    monkeypatch.setattr("sys.stdin", io.StringIO(f"{typed}\n"))
    with pytest.raises(Refusal) as refused:
        _passphrase(class_file)
    assert refused.value.message.key == f"command.open.{'short' if len(typed) < MIN_PASSPHRASE else 'weak'}"
    assert _guesses("three quiet herons", class_file) > MIN_GUESSES


def test_what_cannot_be_opened_is_said(class_file: Path) -> None:
    """A port in use, a port that is none, a file that is no class: one sentence each, and the file is untouched."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        in_use = opened("--class", str(class_file), "--port", str(taken.getsockname()[1]))
    assert (in_use.returncode, in_use.stderr.count("\n")) == (2, 1)
    assert "Another program may use that port" in in_use.stderr
    assert opened("--class", str(class_file), "--port", "70000").returncode == 2
    class_file.write_text("Ottilka Tamsel")
    wrong = opened("--class", str(class_file))
    assert wrong.returncode == 2
    assert "not a class of Namewright" in wrong.stderr
    assert class_file.read_text() == "Ottilka Tamsel"


def test_the_address_alone_opens_nothing(class_file: Path) -> None:
    """Whoever else is logged in to this machine reads one sentence, for every page, picture, form and PDF."""
    app = create_app({"CLASS": str(class_file), "HOSTS": [HOST]})
    keeper = Visitor(app)
    keeper.keep(MESSY)
    other, headers = app.test_client(), {"Host": HOST, "Origin": f"http://{HOST}"}
    rules = [str(rule) for rule in app.url_map.iter_rules() if rule.endpoint not in ("static", "home.mark")]
    for rule in rules:
        path = re.sub(r"<int:\w+>", "1", re.sub(r"<\w+>", "a", rule))
        for answer in (other.get(path, headers=headers), other.post(path, headers=headers)):
            assert answer.status_code in (403, 405), path
            assert "Ottilka" not in answer.text
            assert "class.db" not in answer.text
    assert "Only who started the program" in other.get("/class", headers=headers).text
    assert other.get("/class?key=", headers=headers).status_code == 403
    assert other.get(f"/class?key={app.config['KEY'][:-1]}", headers=headers).status_code == 403


def test_the_key_goes_from_the_address_into_a_cookie(class_file: Path) -> None:
    """It is for this page alone, no script sees it, and where another site led here the page goes on by itself."""
    app = create_app({"CLASS": str(class_file), "HOSTS": [HOST]})
    client, way_in = app.test_client(), f"/?told=a&key={app.config['KEY']}"
    answer = client.get(way_in, headers={"Host": HOST})
    assert (answer.status_code, answer.headers["Location"]) == (302, "/?told=a")
    assert answer.headers["Set-Cookie"] == f"key-4999={app.config['KEY']}; HttpOnly; Path=/; SameSite=Strict"
    elsewhere = {"Host": HOST, "Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate"}
    led = app.test_client().get(way_in, headers=elsewhere)
    assert led.status_code == 200
    assert 'content="0;url=/?told=a"' in led.text
    assert client.get("/class/list", headers={"Host": HOST}).status_code == 200


def test_no_title_of_the_browser_names_a_child(settled: Visitor) -> None:
    """The browser keeps titles in its history; the heading on the page may say whose page it is."""
    for path in ("/class?child=1", "/child/1/settings", "/child/1/seen", "/child/1/home", "/class",
                 "/class/list", "/now", "/class/erase"):
        page = settled.get(path).text
        assert "Ottilka" in page
        assert "Ottilka" not in page.partition("<title>")[2].partition("</title>")[0]


def test_a_second_start_finds_the_program_that_runs(class_file: Path) -> None:
    """It shows the same page and ends; after the first was killed, a start begins anew; its note is nobody else's."""
    with Program(class_file) as first:
        again = opened("--class", str(class_file))
        assert (again.returncode, again.stdout.strip()) == (0, first.way_in)
        assert "open already" in again.stderr
        (note,) = Path(f"{class_file.parent}-own/namewright").iterdir()
        if os.name == "posix":
            assert note.stat().st_mode & 0o077 == 0
        first.kill()
        with Program(class_file) as second:
            assert second.key != first.key
            second.process.send_signal(signal.SIGINT)
            second.process.wait(SOON_S)
    assert not note.exists()


def is_cut(slow: socket.socket, within_s: float) -> bool:
    """Send a line of a request ten times a second; say whether the connection is cut in time."""
    ends = time.monotonic() + within_s
    while time.monotonic() < ends:
        time.sleep(0.1)
        try:
            slow.sendall(b"A: b\r\n")
        except OSError:
            return True
    return False


def ended(server: Any, loop: Thread) -> None:
    """End a server that runs in this process: its loop and its workers first, and only then close what it has open.

    Closed under them, its pipe's number could be another's already when a worker writes the byte that wakes the loop:
    into the output of a program that the next test starts, for one.
    """
    def leave() -> bool:
        raise SystemExit

    server.readable = leave  # asked at every turn of the loop
    server.pull_trigger()
    loop.join(SOON_S)
    assert not loop.is_alive()
    wasyncore.close_all(server._map)


@contextmanager
def listening(class_file: Path) -> Iterator[int]:
    """Serve a class from this process; yield the port."""
    from namewright.web import serve

    port = port_of_its_own()
    app = create_app({"CLASS": str(class_file), "HOSTS": [f"127.0.0.1:{port}"]})
    server = serve._listening(app, [f"127.0.0.1:{port}"])
    loop = Thread(target=server.run, daemon=True)
    loop.start()
    try:
        yield port
    finally:
        ended(server, loop)


def test_a_request_that_dawdles_is_cut(class_file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """However its bytes trickle in; one that comes at once is answered."""
    monkeypatch.setattr("namewright.web.prompt.WHOLE_REQUEST_S", 0.3)
    with listening(class_file) as port:
        with socket.create_connection(("127.0.0.1", port), timeout=SOON_S) as slow:
            slow.sendall(b"GET / HTTP/1.1\r\n")
            assert is_cut(slow, within_s=25)  # sooner than where nothing else was said
        with socket.create_connection(("127.0.0.1", port), timeout=SOON_S) as prompt_one:
            prompt_one.sendall(f"GET /alive HTTP/1.0\r\nHost: 127.0.0.1:{port}\r\n\r\n".encode())
            assert b" 403 " in prompt_one.recv(200)


def test_many_that_dawdle_keep_nobody_waiting(class_file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """More connections than the server takes, none with a whole request: the oldest of them go, and whoever was
    answered before is answered again on the same connection."""
    monkeypatch.setattr("namewright.web.serve._CONNECTIONS", 30)
    monkeypatch.setattr("namewright.web.prompt.MAX_WAITING", 20)
    with listening(class_file) as port, ExitStack() as open_ones:
        def status(one: socket.socket) -> int:
            one.sendall(f"GET /alive HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n\r\n".encode())
            answer = http.client.HTTPResponse(one)
            answer.begin()
            answer.read()
            return answer.status

        def connect() -> socket.socket:
            return open_ones.enter_context(socket.create_connection(("127.0.0.1", port), timeout=SOON_S))

        asks_again = connect()
        assert status(asks_again) == 403
        for at in range(90):
            connect().sendall(b"GET / HTTP/1.1\r\nA: b\r\n" if at % 3 else b"")
        newcomer = connect()
        assert [status(newcomer), status(asks_again)] == [403, 403]


def test_only_this_machine_is_answered(class_file: Path) -> None:
    """Unless it is shared, a class answers on loopback and not at this machine's address in the network."""
    try:
        outside = local_address()
    except OSError:
        outside = "127.0.0.2"  # in no network: on Linux all of 127.0.0.0/8 is this machine
    with Program(class_file) as running:
        socket.create_connection(("127.0.0.1", running.port), timeout=SOON_S).close()
        with pytest.raises(OSError, match="refused"):
            socket.create_connection((outside, running.port), timeout=SOON_S)
