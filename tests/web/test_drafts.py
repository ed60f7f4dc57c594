"""What was changed on the desk and is not kept: laid over what is, and nothing of it kept. All names are invented."""

from __future__ import annotations

from urllib.parse import urlencode

import pytest
from flask import Flask
from werkzeug.datastructures import MultiDict

from namewright.classbook import ClassbookError
from namewright.web.desk import book, members
from namewright.web.drafts import read_drafts


def test_a_draft_lies_over_what_is_kept(app: Flask) -> None:
    """Of everyone and of one child; all others are as they were, and the file is, too."""
    drafts = read_drafts(MultiDict({"draft-class": "paper=a4", "draft-2": urlencode({"line_height": "30 mm"}),
                                    "draft-x": "paper=a4", "what": "sheets"}))
    assert drafts.settings()["paper"] == "a4"
    changed = {one.id: one.one.own.line_height for one in drafts.members()}
    assert {child: height for child, height in changed.items() if height} == {2: 30.0}
    assert "paper" not in book().class_settings
    assert not any(one.one.own.line_height for one in members())


def test_the_order_of_a_draft_is_the_order_of_its_pages(app: Flask) -> None:
    drafts = read_drafts(MultiDict({"draft-class": "order=name"}))
    labels = [one.label for one in drafts.members()]
    assert labels[:4] == ["Bo", "Íñigo", "Kasimir", "Katla"]
    assert labels != [one.label for one in members()]


def test_another_name_on_trial_has_its_own_letters(app: Flask) -> None:
    """The family name practised instead has its own beats and letters; the child keeps its place and table."""
    (before,) = (one for one in members() if one.label == "Katla")
    drafts = read_drafts(MultiDict({f"draft-{before.id}": "practise=family"}))
    (tried,) = (one for one in drafts.members() if one.id == before.id)
    assert (tried.one.child.practice, "".join(tried.placed.beats)) == ("Pruner", "Pruner")
    assert (tried.placed.position, tried.placed.group) == (before.placed.position, before.placed.group)


def test_what_cannot_be_is_told(app: Flask) -> None:
    for field in ("draft-class", "draft-2"):
        with pytest.raises(ClassbookError):
            read_drafts(MultiDict({field: "line_height=900"})).members()


def test_without_drafts_all_is_as_it_is_kept(app: Flask) -> None:
    assert tuple(read_drafts(MultiDict()).members()) == members()


def test_a_name_on_trial_is_told_apart_only_where_another_child_has_it(app: Flask) -> None:
    """Two are called Katla; whoever tries the family name, of these or of others, has a name of its own."""
    book().update_roster("Vost, Katla\nKatla Pruner\nBo Vost\n")
    first, second, bo = book().children()
    assert (first.namesake, second.namesake, bo.namesake) == (True, True, False)
    for child, apart in ((first, False), (bo, False)):
        drafts = read_drafts(MultiDict({f"draft-{child.id}": "practise=family"}))
        assert next(one.one.namesake for one in drafts.members() if one.id == child.id) is apart
