"""Every screen in two made-up languages: what a person reads or hears there comes from a language's file.

What is read: the text of a page, and the attributes that are shown, spoken or set by the script. In the text of a
screen names, measures and what was typed may stand as they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path

import pytest
from webhelp import HOST, Visitor, finished

from longer import rest_long
from namewright.lines.ruling import PRESETS
from namewright.names.beats import UNSAID, readings, typed
from namewright.names.clusters import clusters
from namewright.wording import languages, wording
from wording.made_up import MADE_UP, made_up_languages, unmarked

NAMES = ("Ottilka", "Kirrin", "Mirel", "Tamsel", "Brane", "Vost", "Bo Lindle", "Bo", "Lindle", "Miri", "Íñigo",
         "Ondway", "KIRRIN", "BRANE", "李", "天")
LIST = ("Room 9 - the Alder class\nTamsel, Ottilka\nBRANE, KIRRIN\nMirel Vost (goes by Miri)\nBo Lindle\nBo Lindle\n"
        "Íñigo Ondway\n李\n")
ASIDE = ("Namewright", LIST.partition("\n")[0], "class.db", "aide", "mm", "room", "cjk unified ideograph-674e",
         "cjk unified ideograph-5929", *PRESETS, *MADE_UP,
         *(wording(language).say("page.language") for language in languages()))
# The beats of these names, alone and as they are typed.
_WAYS = [way for name in NAMES for way in readings(clusters(name), UNSAID)]
BEATS = {*(part.strip(" -") for way in _WAYS for part in way), *map(typed, _WAYS)}
_READ = ("alt", "aria-label", "title", "placeholder", "label", "content")
_SET_BY_THE_SCRIPT = ("data-offline", "data-fitted", "data-kept", "data-found", "data-one", "data-none", "data-all",
                      "data-alt", "data-everyone", "data-nobody",
                      "data-changed", "data-page-of", "data-and-more", "data-empty",
                      "data-waiting", "data-to-print", "data-ticked", "data-shown", "data-short", "data-for-child",
                      "data-who-one")
_UNREAD = ("script", "style", "svg", "textarea")


class _Read(HTMLParser):
    """What a person reads on a page, names of the roster as typed left away."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self._inside: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in _UNREAD:
            self._inside.append(tag)
        if tag != "meta":
            self.texts += [text or "" for name, text in attrs if name in (*_READ, *_SET_BY_THE_SCRIPT)]

    def handle_endtag(self, tag: str) -> None:
        if self._inside and tag == self._inside[-1]:
            self._inside.pop()

    def handle_data(self, data: str) -> None:
        if not self._inside:
            self.texts.append(data)


def read(page: str) -> list[str]:
    """Return the words of a page that have no mark and are no name: each single letter is a letter of a name."""
    reader = _Read()
    reader.feed(page)
    return [word for word in unmarked("\n".join(reader.texts), (*NAMES, *ASIDE, *BEATS)) if len(word) > 1]


@pytest.fixture(params=rest_long(MADE_UP))
def elsewhere(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, tmp_path: Path,
              tmp_path_factory: pytest.TempPathFactory) -> Iterator[Visitor]:
    """Somebody whose screens are in a made-up language, and the class with them."""
    with made_up_languages(monkeypatch, tmp_path_factory.mktemp("languages")):
        from namewright.web import create_app

        visitor = Visitor(create_app({"CLASS": str(tmp_path / "class.db"), "HOSTS": [HOST]}))
        visitor.post("/language", {"language": request.param, "back": "/"})
        yield visitor


def test_no_screen_says_a_word_of_its_own(elsewhere: Visitor) -> None:
    """Before there is a class, with one, with settings and notes, and with what went wrong."""
    pages = {path: elsewhere.get(path).text for path in ("/now", "/seen", "/class/list", "/nowhere")}
    form = {"text": LIST, "based": "0", "practise": "given"}
    pages["read"] = elsewhere.post("/class/list/read?part=lines", form).text
    assert elsewhere.keep(LIST).status_code == 302
    pages["kept"] = elsewhere.get(elsewhere.keep(LIST + "Kirrin Brane\n").headers["Location"]).text
    settings = {"line_height": "31", "hand": "left", "support": "light", "practise": "both", "letters": "a=two-storey",
                "ladder": "dots", "bold_baseline": "on", "after": "0", "who": "aide"}
    pages["saved"] = elsewhere.get(elsewhere.post("/child/1/lines", settings).headers["Location"]).text
    pages["undone"] = elsewhere.get(elsewhere.post("/child/1/lines/undo", {"after": "1"}).headers["Location"]).text
    noted = elsewhere.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a", "support": "full"})
    pages["noted"] = elsewhere.get(noted.headers["Location"]).text
    for path in ("/class", "/class?child=1&all=1", "/class?for=everyone", "/child/1/settings", "/class/list",
                 "/class/list?new=1", "/now", "/seen", "/child/1/seen", "/class/week", "/class/next", "/class/beats",
                 "/child/1/home", "/child/1/home?in=es", "/class/erase", "/class/double",
                 "/print/pages?what=sheets&child=1", "/print/none"):
        pages[path] = elsewhere.get(path).text
    seat = elsewhere.post("/class/week/seats", {"one": "1", "other": "2", "wish": "apart"})
    pages["seat"] = elsewhere.get(seat.headers["Location"]).text
    pages["no seat"] = elsewhere.post("/class/week/seats", {"one": "1", "other": "1", "wish": "apart"}).text
    pages["no tables"] = elsewhere.post("/class/week", {"tables": "0"}).text
    pages["beats"] = elsewhere.get(elsewhere.post("/child/1/beats", {"beats": ""}).headers["Location"]).text
    pages["home"] = elsewhere.get(elsewhere.post("/child/1/home", {"in": MADE_UP[0]}).headers["Location"]).text
    pages["which"] = elsewhere.post("/now", {"letters": "b", "size": "sheet"}).text
    pages["cannot"] = elsewhere.post("/now", {"letters": "天", "size": "sheet"}).text
    pages["nothing"] = elsewhere.post("/print", {"who": "all"}).text
    pages["slant"] = elsewhere.post("/class/choices", {"letters.slant": "40"}).text
    pages["height"] = elsewhere.post("/child/3/lines", {"line_height": "900", "after": "0"}).text
    pages["day"] = elsewhere.post("/child/3/seen", {"day": "2000000", "letter": "0", "once": "a"}).text
    pages["job"] = elsewhere.get(finished(elsewhere, elsewhere.post("/print", {
        "what": ["sheets", "cards", "tiles", "adult", "plan", "year", "groups"], "who": "all"}))).text
    pages["sure"] = elsewhere.post("/class/erase", {"child": "1"}).text
    pages["no double"] = elsewhere.post("/class/double", {"child": "1"}).text
    pages["double"] = elsewhere.post("/class/double", {"child": "1", "double": "2"}).text
    erased = elsewhere.post("/class/erase/yes", {"child": "1"})
    pages["erased"] = elsewhere.arrive(erased)
    del pages["/child/1/home?in=es"]
    assert len(pages) > 25
    assert {place: read(page) for place, page in pages.items() if read(page)} == {}


def test_a_page_with_a_word_of_its_own_is_found() -> None:
    """The look itself can fail: in the text, in an attribute, and in what the script puts there."""
    page = '<p>Hello <b>there</b></p><img alt="picture"><form data-none="nobody">'
    assert set(read(page)) == {"Hello", "there", "picture", "nobody"}
    assert read("<script>Hello</script><p>Bo · 3 mm</p>") == []


def test_the_script_has_no_words() -> None:
    """What the script says it takes from the page."""
    from importlib import resources

    folder = resources.files("namewright.web").joinpath("static")
    script = "\n".join(each.read_text(encoding="utf-8") for each in folder.iterdir() if each.name.endswith(".js"))
    code = re.sub(r"//.*|/\*.*?\*/", "", script)
    said = re.findall(r"(?:textContent|innerHTML|alt|title) = ([^;]*);", code)
    strings = [text for each in said for text in re.findall(r'"([^"]*)"|`([^`]*)`', each) if any(text)]
    assert len(said) > 4
    strings = [text for text in strings if not "".join(text).startswith((".", "#", "["))]  # a place on the page
    assert [text for text in strings if unmarked(" ".join(text), ("mm", "label"))] == []
