"""Answers of families name a child; a greeting, thanks and whose the child is come off, in six languages."""

from __future__ import annotations

import pytest

from namewright.roster.chat_answers import asks_for_names, named_by
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

ASKS = [
    "Hello parents, could you post your child's first name below? Then I'll print the labels.",
    "Hola a todos, necesito que pongáis el nombre de cada niño para las perchas.",
    "Bonjour, pouvez-vous noter ici le prénom de votre enfant pour les porte-manteaux ?",
    "Guten Morgen zusammen, bitte schreibt mir die Vornamen eurer Kinder für die Garderobe.",
    "Buonasera, mi servono i nomi dei vostri bambini per gli armadietti.",
    "Boa tarde, preciso que escrevam o nome da vossa filha ou do vosso filho para os cabides.",
]


@pytest.mark.parametrize("text", ASKS)
def test_a_message_asks_for_the_names_of_children(text: str) -> None:
    assert asks_for_names(text)


@pytest.mark.parametrize("text", ["Mira Vost", "My daughter is Mira", "Thank you, the labels are lovely", "Kind, Mira"])
def test_other_messages_ask_for_nothing(text: str) -> None:
    assert not asks_for_names(text)


ANSWERS = [
    "Hi! {}", "Good evening, our little boy is {} 🎈", "Hey everyone, my kid's name is {}", "{} here, thanks so much!",
    "Buenas tardes, mi niño se llama {}", "Nuestra peque es {} 🌞", "Hola a todos: {}, muchas gracias",
    "Coucou, mon fils c'est {}", "Notre petite fille : {} ☺", "Bonsoir, {}, merci d'avance",
    "Moin, mein Junge heisst {}", "Das ist unser Kind {}", "Guten Abend! {}, vielen Dank 🙏",
    "Salve, il mio bimbo si chiama {}", "La nostra bambina è {} ✨", "Buongiorno, {}, grazie mille",
    "Boa tarde! A nossa menina é a {}", "O meu filho chama-se {} 🌈", "Bom dia a todos, {}, muito obrigado",
]


@pytest.mark.parametrize("answer", ANSWERS)
@pytest.mark.parametrize("name", ["Mira", "Leo Vost", "Zorbin Quixel", "Ole B."])
def test_an_answer_names_the_child(answer: str, name: str) -> None:
    assert named_by(answer.format(name), asked=True) == name


@pytest.mark.parametrize("text", ["Mira Vost", "Thanks!", "Hello everyone!", "Ola Berg", "My daughter is ill today",
                                  "Which name do you need?", "Danke dir"])
def test_nothing_comes_off_what_is_no_answer(text: str) -> None:
    assert not named_by(text, asked=True)


def test_names_alone_stay_as_they_are_where_nobody_asked() -> None:
    assert not named_by("Hi, Mira Vost", asked=False)
    assert named_by("Unser Sohn ist Leo Vost", asked=False) == "Leo Vost"


@pytest.mark.parametrize("asks", ASKS)
def test_a_chat_of_answers_has_one_child_a_message(asks: str) -> None:
    names = ["Mira", "Leo", "Ada", "Noah", "Emil", "Zoé"]
    said = [answer.format(f"{name} Vost") for name, answer in zip(names, ANSWERS[::3], strict=False)]
    text = "\n".join(f"[03/10/25, 17:{at:02}:11] Ruth Vost: {what}" for at, what in enumerate([asks, *said]))
    read = read_roster(text)
    assert [child.practice for child in read.children] == names
    assert read.lines[0].outcome is Outcome.HEADING
