"""The application: what goes wrong is a page with a sentence, in its language, and says nothing about a child."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from webhelp import HOST, Visitor

from namewright.web import create_app
from namewright.wording import wording


@pytest.mark.parametrize(("path", "code", "key"), [("/nothing/here", 404, "gone"), ("/child/99/lines", 404, "gone"),
                                                   ("/language", 405, "method")])
@pytest.mark.parametrize("language", ["en", "es"])
def test_what_is_not_there_is_said(settled: Visitor, path: str, code: int, key: str, language: str) -> None:
    """With the status that it has, and on a page that leads on."""
    settled.post("/language", {"language": language, "back": "/"})
    answer = settled.get(path)
    assert answer.status_code == code
    assert wording(language).say(f"web.problem.{key}") in answer.text
    assert f'<html lang="{language}">' in answer.text


def test_no_name_of_a_child_is_in_a_title(settled: Visitor) -> None:
    """A window's title is seen by whoever passes, and kept in the browser's history."""
    paths = {re.sub(r"<(?:int:)?\w+>", "1", str(rule)) for rule in settled.client.application.url_map.iter_rules()
             if "GET" in (rule.methods or ()) and "static" not in rule.endpoint}
    answers = {path: settled.get(path) for path in sorted(paths)}
    titles = {path: found[1] for path, answer in answers.items() if answer.mimetype == "text/html"
              and (found := re.search(r"<title>(.*)</title>", answer.text))}
    assert len(titles) > 15
    assert all(answer.status_code < 500 for answer in answers.values())
    assert not [path for path, title in titles.items()
                if re.search(r"Ottilka|Kirrin|Mir|Íñigo|Katla|Kasimir|\bBo\b", title)]


def test_a_class_that_cannot_be_opened_is_said(tmp_path: Path) -> None:
    """Before any page: the sentence of the class's file, and no traceback."""
    (tmp_path / "class.db").write_text("no database at all" * 50)
    answer = Visitor(create_app({"CLASS": str(tmp_path / "class.db"), "HOSTS": [HOST]})).get("/class")
    assert answer.status_code == 409
    assert "class.db" in answer.text
    assert "Traceback" not in answer.text


def test_an_application_needs_its_class_and_its_hosts(tmp_path: Path) -> None:
    """Nothing is served from a place that nobody named."""
    for config in ({"HOSTS": [HOST]}, {"CLASS": str(tmp_path / "class.db")}):
        with pytest.raises(KeyError):
            create_app(config)
