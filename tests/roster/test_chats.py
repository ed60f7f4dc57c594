"""Messages of a chat: a name in each, however it is answered; questions, pictures and thanks name nobody."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster


def chat(*messages: str, sender: str = "Hilde Tarn") -> str:
    return "\n".join(f"03/10/2025, 17:{at:02} - {sender}: {text}" for at, text in enumerate(messages))


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("chatter", [
    "Who is coming? Just write the name", "a qué hora es?", "<Media omitted>", "<Medien ausgeschlossen>",
    "image omitted", "imagen omitida", "Bild weggelassen", "gracias!!", "thank you!!", "Danke", "ok see you there"])
@pytest.mark.parametrize("names", [["Mira", "Tilo", "Anna", "Emil"], ["Fántain", "Ámdiam", "Xairfön", "Quorrik"]])
def test_what_names_nobody_is_a_heading(chatter: str, names: list[str]) -> None:
    """Wherever it stands: thanks near the end make no signature of the names below."""
    for at in range(len(names) + 1):
        assert made(chat(*names[:at], chatter, *names[at:])) == names


def test_what_the_program_tells_of_somebody_is_no_child() -> None:
    for told in ("Jana Koch joined using this group's link", "Jana Koch ist der Gruppe beigetreten",
                 "Jana Koch se unió con el enlace del grupo"):
        roster = read_roster(f"{chat('Mira', 'Tilo')}\n03/10/2025, 18:00 - {told}\n{chat('Anna')}")
        assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna"]
        assert roster.lines[2].outcome is Outcome.HEADING


@pytest.mark.parametrize("answer", ["{}!", "{} 👍", "{} please", "{} kommt mit", "{} se apunta", "{} is coming!"])
def test_a_name_and_an_answer(answer: str) -> None:
    names = ["Mira", "Tilo", "Anna", "Emil", "Zoé"]
    assert made(chat(*map(answer.format, names))) == names


def test_answers_in_small_letters_are_taken_off_unknown_names() -> None:
    names = ["Fántain", "Ámdiam", "Xairfön", "Quorrik", "Zandelle"]
    assert made(chat(*(f"{name} please" for name in names), "Emil")) == [*names, "Emil"]


def test_one_rare_name_and_please_is_asked_about() -> None:
    roster = read_roster(chat("Mira", "Tilo", "Haimnygis please", "Anna"))
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna"]
    assert roster.lines[2].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("answer", [
    "Sure, here you go", "Ok, coming up", "Vale, te los mando", "Claro, son estos de aquí", "Oui, les voici",
    "D'accord, je te les envoie", "Ja, ich schreibe sie dir", "Klar, das sind sie", "Certo, te li mando",
    "Va bene, sono loro", "Sim, são estes", "Claro, já te mando"])
@pytest.mark.parametrize("names", [
    ["Mira Vost", "Tilo Tarn", "Ja Lind"], ["Fántain Ord", "Ámdiam Kelp", "Xairfön Bru"]])
def test_an_answer_before_the_names_is_no_child(answer: str, names: list[str]) -> None:
    roster = read_roster(chat(answer, *names))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert roster.lines[0].outcome is Outcome.HEADING


def test_a_name_in_small_letters_behind_an_answer_is_not_passed_over() -> None:
    roster = read_roster(chat("Mira vost", "Tilo tarn", "Sure xobrel quill", "Anna berg"))
    assert roster.lines[2].outcome is not Outcome.HEADING


@pytest.mark.parametrize("stamp", [
    "{} (17:0{}): {}", "{} [17:0{}]: {}", "{} [03/10/2025, 17:0{}]: {}", "{}, 17:0{}: {}"])
@pytest.mark.parametrize("ask", ["Who is coming?", "¿Quién viene?", "Wer kommt mit?", "¡Hola! ¿Los nombres?"])
def test_a_sender_and_a_time_in_brackets(stamp: str, ask: str) -> None:
    names = ["Mira Vost", "Tilo Tarn", "Fántain Ord"]
    text = "\n".join([stamp.format("Jana Koch", 0, ask),
                      *(stamp.format("Hilde Tarn", at, name) for at, name in enumerate(names, 1))])
    assert made(text) == ["Mira", "Tilo", "Fántain"]


def test_a_chat_read_again_is_the_same() -> None:
    roster = read_roster(chat("Mira!", "thanks!", "Tilo", "Anna", "Who else?"))
    assert [one.practice for one in read_roster(roster.text).children] == [one.practice for one in roster.children]


def test_a_time_before_each_name_makes_no_chat() -> None:
    assert made("03/10/2025, 08:01 - Mira Vost\n03/10/2025, 08:04 - Tilo Tarn") == ["Mira", "Tilo"]


def test_the_time_may_stand_before_the_day() -> None:
    """As a chat in a browser writes it when it is copied; the day and the sender are nobody’s name."""
    text = ("[8:10, 9/4/2026] Ms Brae: Hi! here is the list\n[8:11, 9/4/2026] Ms Brae: Mira, Tilo, Oda\n"
            "[8:12, 9/4/2026] Ms Brae: Anna\n[8:13 AM, 4.9.2026] Quill: thank you!")
    assert made(text) == ["Mira", "Tilo", "Oda", "Anna"]


def test_a_question_that_comes_again_stays_with_who_asked() -> None:
    asked = "What time is it?"
    names = ["Xobrel", "Vemka", "Jelbru", "Pesku"]
    assert made(chat("Xobrel", asked, "Vemka", asked, "Jelbru", asked, "Pesku")) == names


@pytest.mark.parametrize("reply", ["ok", "Super", "Perfetto", "Parfait!", "Perfecto", "Perfeito", "Can't wait", "Top"])
@pytest.mark.parametrize("mark", ["", "- ", "✅ "])
def test_an_answer_to_a_list_in_one_message_is_no_child(mark: str, reply: str) -> None:
    names = ["Mira", "Tilo", "Xobrel", "Emil"]
    listed = "\n".join(f"{mark}{name}" for name in names)
    assert made(f"{chat('Who is in the play:')}\n{listed}\n{chat(reply, sender='Ute Lund')}") == names


@pytest.mark.parametrize(("line", "name"), [
    ("12:04 - Jo Reed: Ava too", "Ava"), ("12:04 – Mia Lange: Luz auch", "Luz"), ("9.15 - Ana: Luz también", "Luz"),
    ("12:04 - Zoé Tarn: Ava aussi", "Ava")])
def test_a_time_and_a_sender_without_a_day_are_taken_off(line: str, name: str) -> None:
    """The child is who is written about, and never the sender."""
    roster = read_roster(f"Theo Vost\n{line}\nLena Brask")
    assert [(child.practice, child.family) for child in roster.children][1] == (name, "")


def test_a_lesson_with_a_time_is_no_sender() -> None:
    roster = read_roster("9:00 - Math: Theo, Lena\n10:00 - Reading: Ava, Bo")
    assert {child.practice for child in roster.children} == {"Theo", "Lena", "Ava", "Bo"}
    assert "roster.chat" not in {note.key for report in roster.lines for note in report.notes}
