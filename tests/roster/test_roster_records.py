"""Records of programs become rows; what stands round about them, and grown-ups within, is nobody."""

from __future__ import annotations

import json
import time

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster

KEYS = {"en": ("first_name", "last_name", "teacher", "guardian"), "es": ("nombre", "apellidos", "maestra", "tutor"),
        "fr": ("prenom", "nom_de_famille", "enseignante", "responsable"),
        "de": ("vorname", "nachname", "lehrerin", "eltern"), "it": ("nome", "cognome", "maestra", "genitore"),
        "pt": ("nome_proprio", "apelido", "professora", "responsavel")}
PAIRS = [("Xobrel", "Vost"), ("Mira", "Tarn"), ("Tilo", "Moss")]


def names(text: str) -> list[tuple[str, str]]:
    return [(one.given, one.family) for one in read_roster(text).children]


def practised(text: str) -> list[str]:
    return [one.practice for one in read_roster(text).children]


@pytest.mark.parametrize("tongue", KEYS)
@pytest.mark.parametrize("form", ["lines", "list", "wrapped", "yaml", "xml"])
def test_keys_say_what_is_the_childs(tongue: str, form: str) -> None:
    first, last, teacher, other = KEYS[tongue]
    records = [{"id": str(at), last: family, first: given, other: f"Jo {family}"}
               for at, (given, family) in enumerate(PAIRS, 1200)]
    text = {
        "lines": "\n".join(map(json.dumps, records)), "list": json.dumps(records, indent=2),
        "wrapped": json.dumps({teacher: "Ada Holm", "k": "K-2", "list": records}, indent=1),
        "yaml": f"{teacher}: Ada Holm\nlist:\n" + "\n".join(
            f"  {'-' if at == 0 else ' '} {key}: {one[key]}" for one in records for at, key in enumerate(one)),
        "xml": "\n".join((f"<list {teacher}='Ada Holm'>", *(
            f"<of>{''.join(f'<{key}>{text}</{key}>' for key, text in one.items())}</of>" for one in records),
            "</list>")),
    }[form]
    assert names(text) == PAIRS


@pytest.mark.parametrize("text", [
    '{"school":"Birch","groups":[{"name":"Bears","teacher":"Ada Holm","students":[{"first":"Mira","last":"Vost"},'
    '{"first":"Tilo","last":"Tarn"}]},{"name":"Owls","students":[{"first":"Bo","last":"Moss"}]}]}',
    '{"Bears": ["Mira Vost", "Tilo Tarn"], "Owls": ["Bo Moss"]}',
    '{"teacher": "Ada Holm", "days": ["Mon", "Tue"], "students": ["Mira Vost", "Tilo Tarn", "Bo Moss"]}',
    '{"1201": {"first": "Mira", "last": "Vost"}, "1202": {"first": "Tilo", "last": "Tarn"}, '
    '"1203": {"first": "Bo", "last": "Moss"}}',
    '{"Mira Vost": {"bus": "4", "room": "2"}, "Tilo Tarn": {"bus": "3", "room": "2"}, '
    '"Bo Moss": {"bus": "", "room": "1"}}',
    '[{"name": {"first": "Mira", "last": "Vost"}, "guardians": [{"name": "Jo Vost"}]}, '
    '{"name": {"first": "Tilo", "last": "Tarn"}, "guardians": [{"name": "Al Tarn"}]}, '
    '{"name": {"first": "Bo", "last": "Moss"}, "guardians": []}]',
    '{"first": ["Mira", "Tilo", "Bo"], "last": ["Vost", "Tarn", "Moss"]}',
    '[["Mira", "Vost"], ["Tilo", "Tarn"], ["Bo", "Moss"]]',
    "teacher: Ada Holm\nstudents:\n  - Mira Vost\n  - Tilo Tarn\n  - Bo Moss",
    "bears:\n  - name: Mira Vost\n    bus: 2\n  - name: Tilo Tarn\n    bus: 3\nowls:\n  - name: Bo Moss\n    bus: 3",
    "<roster>\n<teacher>Ada Holm</teacher>\n<student>Mira Vost</student>\n<student>Tilo Tarn</student>\n"
    "<student>Bo Moss</student>\n</roster>",
    '08:01 INFO made name="Mira Vost" class=K-2\n08:02 INFO made name="Tilo Tarn" class=K-2\n'
    '08:02 INFO made name="Bo Moss" class=K-2',
])
def test_the_children_are_found_wherever_they_stand(text: str) -> None:
    assert practised(text) == ["Mira", "Tilo", "Bo"]


def test_keys_on_no_list_leave_the_contents_to_tell() -> None:
    text = json.dumps([{"zzq": f"{given} {family}", "qqz": "1B", "teacher": "Ada Holm"} for given, family in PAIRS])
    assert practised(text) == ["Xobrel", "Mira", "Tilo"]


def test_contacts_are_read_by_their_names_alone() -> None:
    text = ("BEGIN:VCARD\nVERSION:3.0\nN:Vost;Mira;;;\nFN:Mira Vost\nTEL;TYPE=CELL:555 01\nORG:Birch\nEND:VCARD\n"
            "BEGIN:VCARD\nVERSION:3.0\nN:Tarn\\, d. J.;Tilo;;;\nitem1.EMAIL:jo@mail.example\nEND:VCARD\n"
            "BEGIN:VCARD\nFN:Bo Moss\nNOTE:Ask\n  Ada Holm\nEND:VCARD")
    assert practised(text) == ["Mira", "Tilo", "Bo"]
    assert practised("BEGIN:VCARD\nFN:Mira Vost\nEND:VCARD\nBEGIN:VCARD\nFN:Tilo Tarn\nEND:VCARD") == ["Mira", "Tilo"]


@pytest.mark.parametrize(("before", "behind"), [("Conference: ", ""), ("Geburtstag: ", ""), ("Anniversaire de ", ""),
                                                ("", "'s birthday"), ("Tutoría: ", ""), ("Colloquio – ", "")])
def test_events_are_read_by_what_they_are_called(before: str, behind: str) -> None:
    text = "\n".join(["BEGIN:VCALENDAR", "X-WR-CALNAME:Ada Holm", *(
        f"BEGIN:VEVENT\nDTSTART:20240101T0800\nSUMMARY:{before}{name}{behind}\nLOCATION:Room 4\n"
        "ATTENDEE;CN=Ada Holm:mailto:ada@mail.example\nEND:VEVENT" for name in ("Mia Vost", "Leo Tarn", "Ava Moss")),
        "END:VCALENDAR"])
    assert practised(text) == ["Mia", "Leo", "Ava"]


def test_keys_and_values_without_anybody_make_nobody() -> None:
    with pytest.raises(RosterError):
        read_roster('{"settings": {"colour": {"line": {"depth": {}}}}}')


def test_a_child_knows_the_line_it_was_on_and_reads_again_the_same() -> None:
    read = read_roster(json.dumps([{"first": given, "last": family} for given, family in PAIRS], indent=1))
    assert [report.source_line for report in read.lines if report.child] == [3, 7, 11]
    assert names(read.text) == PAIRS


def test_keys_that_each_record_has_for_itself_cost_by_their_number() -> None:
    """Four hundred such records took longer than a second and a half, twice as many four times that."""
    records = ",\n".join(f'{{"name": "Mia Vost{at}", "key {at}": "x"}}' for at in range(800))
    start = time.process_time()
    assert len(read_roster(f"[{records}]").children) == 800
    assert time.process_time() - start < 4
