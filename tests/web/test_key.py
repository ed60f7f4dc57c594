"""The key of the page: an address alone opens nothing."""

from __future__ import annotations

from pathlib import Path

import pytest
from flask import Flask
from webhelp import HOST

from namewright.web import create_app
from namewright.web.key import cookie_name, way_in


@pytest.fixture
def app(class_file: Path) -> Flask:
    return create_app({"CLASS": str(class_file), "HOSTS": [HOST], "KEY": "k" * 20})


def test_without_the_key_nothing_is_shown(app: Flask) -> None:
    """Nor with another's; the page says so, with no name of a child and no form."""
    client = app.test_client()
    for cookie in ("", "x" * 20):
        client.set_cookie(cookie_name(HOST), cookie, domain="127.0.0.1")
        for path in ("/", "/class", "/class/list"):
            answer = client.get(path, headers={"Host": HOST})
            assert (answer.status_code, "<form" in answer.text) == (403, False)


def test_the_first_address_lets_in_and_hides_the_key(app: Flask) -> None:
    """The key goes into a cookie that scripts and other sites do not get, and out of the address; other words stay."""
    client = app.test_client()
    answer = client.get(f"/class/list?new=1&key={'k' * 20}", headers={"Host": HOST})
    assert answer.headers["Location"] == "/class/list?new=1"
    cookie = answer.headers["Set-Cookie"]
    assert cookie.startswith(f"{cookie_name(HOST)}={'k' * 20};")
    assert {"HttpOnly", "SameSite=Strict"} <= {part.strip() for part in cookie.split(";")}
    assert client.get("/class/list?new=1", headers={"Host": HOST}).status_code == 200


def test_from_another_site_a_page_goes_on_by_itself(app: Flask) -> None:
    """A redirect would not carry a strict cookie."""
    answer = app.test_client().get(f"/?key={'k' * 20}", headers={
        "Host": HOST, "Sec-Fetch-Site": "cross-site", "Sec-Fetch-Mode": "navigate", "Sec-Fetch-Dest": "document"})
    assert answer.status_code == 200
    assert "key=" not in answer.text


def test_cookies_of_two_ports_are_two() -> None:
    """Browsers do not tell ports apart."""
    assert cookie_name("127.0.0.1:27613") != cookie_name("127.0.0.1:27614")
    assert way_in("http://127.0.0.1:1/", "a&b") == "http://127.0.0.1:1/?key=a%26b"
    assert way_in("http://127.0.0.1:1/", "") == "http://127.0.0.1:1/"
