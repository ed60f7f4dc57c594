"""What a child's writing showed: noted once, gone on with as it stands, and known to the plan."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

import pytest
from webhelp import Visitor, finished

from namewright.classbook import Classbook, Seen

TODAY = date.today().isoformat()


def card(page: str, child: int) -> str:
    """Return a child's card on the page of notes."""
    found = re.search(rf'<details class="note-card"[^>]* id="child-{child}".*?</form>\s*</details>', page, re.DOTALL)
    assert found, page[:400]
    return found[0]


def form_in(part: str) -> dict[str, list[str]]:
    """Return what a form holds that is sent with it: hidden fields, and what is ticked."""
    fields = re.findall(r'<input type="(hidden|checkbox)" name="(\w+)" value="([^"]*)"( checked)?', part)
    held: dict[str, list[str]] = {}
    for kind, name, value, checked in fields:
        if (kind == "hidden" or checked) and name not in ("token", "class"):
            held.setdefault(name, []).append(value)
    return held


def notes_of(class_file: Path, child: int = 1) -> list[tuple[str, tuple[int, ...] | None, str]]:
    with Classbook.open(class_file) as book:
        return [(note.date, note.letters, note.note) for note in book.observations(child)]


def test_what_was_seen_is_noted_once(settled: Visitor, class_file: Path) -> None:
    """A form of letters has a key of its own: sent twice, even to a new start of the program, it is noted once."""
    form = {"day": "2026-03-02", "letter": ["0", "2"], "support": "partial", "stage": "4", "once": "k1", "who": "RK"}
    for _ in range(2):
        assert settled.post("/child/1/seen", form).status_code == 302
    with Classbook.open(class_file) as book:
        notes = book.observations(1)
    assert [(note.date, note.letters, note.who) for note in notes] == [("2026-03-02", (0, 2), "RK")]
    assert settled.post("/child/1/seen", {**form, "day": "yesterday", "once": "k2"}).status_code == 422
    settled.post("/child/1/seen/back", {"day": "2026-03-02"})
    assert not notes_of(class_file)


@pytest.mark.parametrize("place", ["/seen", "/child/1/seen"])
def test_a_second_note_of_a_day_goes_on_with_the_first(settled: Visitor, class_file: Path, place: str) -> None:
    """Opened again the form has the day's letters and words; what it is saved with stands in their place."""
    settled.post("/child/1/seen", {"day": TODAY, "letter": ["0", "2"], "note": "proud", "stage": "4"})
    page = settled.get(place).text
    again = form_in(card(page, 1) if place == "/seen" else page)
    assert (again["letter"], "proud" in page) == (["0", "2"], True)
    settled.post("/child/1/seen", {**again, "letter": ["0", "3"], "note": "proud, and a k"})
    assert notes_of(class_file) == [(TODAY, (0, 3), "proud, and a k")]


def test_what_was_noted_meanwhile_stays(settled: Visitor, class_file: Path) -> None:
    """Two windows opened with the same note: what the first saves is not wiped by the second."""
    settled.post("/child/1/seen", {"day": TODAY, "letter": ["0"]})
    first, second = (form_in(card(settled.get("/seen").text, 1)) for _ in range(2))
    settled.post("/child/1/seen", {**first, "letter": ["0", "1"]})
    settled.post("/child/1/seen", {**second, "letter": ["2"], "note": "tired"})
    assert notes_of(class_file) == [(TODAY, (0, 1), ""), (TODAY, (2,), "tired")]


def test_nothing_tapped_is_not_none_yet(settled: Visitor, class_file: Path) -> None:
    """Letters left alone say nothing; “none yet” says none, “all the letters” all of them; and nothing is no note."""
    assert settled.post("/child/1/seen", {"day": TODAY, "support": "full"}).status_code == 422
    for child, form in ((1, {"note": "was away"}), (2, {"none": "1"}), (4, {"all": "1"})):
        assert settled.post(f"/child/{child}/seen", {"day": TODAY, **form}).status_code == 302
    assert [notes_of(class_file, child)[0][1] for child in (1, 2, 4)] == [None, (), (0, 1, 2, 3, 4)]


def test_the_level_is_the_childs_own(settled: Visitor) -> None:
    """It is chosen already: the class's, or what was set for the child."""
    settled.post("/child/1/lines", {"support": "light", "after": "0"})
    page = settled.get("/seen").text
    chosen = [re.findall(r'<option value="(\w+)" selected', card(page, child))[0] for child in (1, 2)]
    assert chosen == ["light", "full"]


def test_without_scripts_the_next_child_is_opened(settled: Visitor) -> None:
    """The same form leads to the page with the next child, in the order that was chosen, who is not done."""
    page = settled.get("/seen?by=name").text
    order = re.findall(r'class="note-card"[^>]* id="child-(\d+)"', page)
    assert [re.search(r"own-letters\">([^<]+)", card(page, int(child)))[1] for child in order] == [  # type: ignore[index]
        "Bo", "Íñigo", "Kasimir", "Katla", "Kirrin", "Miri", "Ottilka"]
    assert re.findall(r'id="child-(\d+)"[^>]* open', page) == order[:1]
    saved = settled.post(f"/child/{order[0]}/seen", {**form_in(card(page, int(order[0]))), "letter": ["0"]})
    then = settled.get(saved.headers["Location"].partition("#")[0]).text
    assert re.findall(r'id="child-(\d+)"[^>]* open', then) == order[1:2]
    assert "1 of 7 done" in then
    assert "✓ done" in card(then, int(order[0]))
    assert 'open>' not in card(settled.get("/seen").text, int(order[0]))[:120]


def test_a_card_comes_back_alone(settled: Visitor) -> None:
    """With scripts a card is sent and answered alone; one that says nothing comes back with the sentence why."""
    done = settled.post("/child/1/seen", {"day": TODAY, "by": "name", "card": "1", "letter": ["0"]})
    assert (done.status_code, done.text.count("note-card"), "data-done" in done.text) == (200, 1, True)
    assert form_in(done.text)["by"] == ["name"]
    assert "Save and next" in done.text
    wrong = settled.post("/child/1/seen", {"day": TODAY, "by": "name", "card": "1", "who": "RK"})
    assert (wrong.status_code, "Please tap the letters" in wrong.text, 'value="RK"' in wrong.text) == (422, True, True)


def test_the_plan_knows_what_was_formed(settled: Visitor, class_file: Path) -> None:
    """Once every letter of a name was noted as formed, the plan ticks them and is another."""
    plans = []
    for _ in range(2):
        where = finished(settled, settled.post("/print", {"what": ["plan"], "who": "all"}))
        plans.append(settled.get(where + "/pages.pdf").data)
        with Classbook.open(class_file) as book:
            for one in book.children():
                book.observe(one.id, "2026-11-20", Seen(range(len(one.child.practice))), who="RK")
    assert plans[0] != plans[1]


def test_the_year_of_no_class_is_not_there(visitor: Visitor) -> None:
    """Without a child there is no page to make, and no error."""
    assert visitor.get("/class/year.pdf").status_code == 404
    assert "No names are here yet" in visitor.get("/seen").text
