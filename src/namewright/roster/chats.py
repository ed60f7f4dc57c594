"""A chat as it is exported: messages that are no name become headings, as what the program itself tells does.

What is a question, thanks, a stand-in for a picture, or words in small letters alone names nobody, nor does who asks
for names; what an answer says about a name comes off (``chat_answers``). Where most lines have a time and a sender, a
line with a time alone is told by the program: somebody joined. Each message stands for itself: one of thanks ends no
letter. Out of scope: times and senders before names (``pasted``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.chat_answers import asks_for_names, named_by, only_greets
from namewright.roster.known import is_given
from namewright.roster.pasted import CHAT, Line, has_stamp
from namewright.roster.shares import share
from namewright.roster.unlike import is_closing
from namewright.roster.vocabulary import fold, word_set

_PICTURE = pattern(r"\s*<[^<>]{1,60}>\s*")
_LEFT_OUT = word_set("""
    omitted, omitido, omitida, omitidos, omis, omise, absente, weggelassen, ausgeschlossen, omesso, omessa, oculto,
    oculta, ocultado, ocultada, deleted, eliminado, eliminaste, supprime, geloscht, eliminato, apagada""")
"""Last words of what a program writes in place of a picture or of a message that was taken back."""
_REPLIES = word_set("""
    ok, okay, k, yes, yay, great, perfect, super, awesome, got it, can't wait, can’t wait, will do, noted, sounds good,
    cool, top, toll, prima, klasse, perfekt, alles klar, passt, ja, gerne, parfait, genial, d'accord, d’accord, oui,
    bien recu, c'est note, c’est note, perfecto, vale, claro, si, de acuerdo, estupendo, entendido, perfetto, va bene,
    certo, ottimo, d'accordo, d’accordo, ricevuto, perfeito, combinado, sim, otimo, certo, fixe, boa, recebido""")
"""Messages that answer another and name nobody, without their signs."""
_ANSWERING = word_set("""
    sure, yes, yep, of, ok, okay, here, claro, si, vale, por, aqui, ahi, hola, oui, voici, voila, bien, d'accord,
    d’accord, ja, klar, na, naturlich, natuerlich, gerne, hier, certo, ecco, eccoli, eccole, va, certamente, subito,
    sim, pronto, ola, hi, hey, hallo, salut, ciao""")
"""Words that open an answer when all behind them are small: ``Sure, here they are``, ``Ja klar, hier kommen sie``."""
_HALF, _FEW = 0.5, 2
_SHORT = 6  # words of such a line


def from_a_chat(lines: Sequence[Line], typed: Sequence[str]) -> list[Line]:
    """Return the lines of a chat with headings for what names nobody, or the lines as they are where they are none.

    ``typed`` are the lines before times and senders were taken off, by the origin of each line.
    """
    asked = any(CHAT in line.notes and asks_for_names(line.text) for line in lines)
    lines = [_answered(line, typed[line.origin], asked=asked) for line in lines]
    said = sum(CHAT in line.notes for line in lines)
    if said < max(_FEW, _HALF * sum(bool(line.text.strip()) for line in lines)):
        return list(lines)
    ends = [line.text.split()[-1] for line in lines if CHAT in line.notes and " " in line.text.strip()]
    titled = share(map(begins_small, ends)) < _HALF
    return [line.heading(typed[line.origin]) if _names_nobody(line) or (titled and _answers(line)) else line
            for line in lines]


def _answered(line: Line, typed: str, *, asked: bool) -> Line:
    """Return a message that asks or replies as a heading, and one that names a child as the name alone."""
    if CHAT not in line.notes:
        return line
    if _is_a_reply(line) or (asked and (asks_for_names(line.text) or only_greets(line.text))):
        return line.heading(typed)
    name = named_by(line.text, asked=asked)
    return line.without(_around(line.text, name), name) if name else line


def _around(text: str, name: str) -> str:
    before, _, behind = text.partition(name)
    return f"{before.strip()} {behind.strip()}".strip()


def _is_a_reply(line: Line) -> bool:
    return CHAT in line.notes and fold(line.text).strip(" .!…") in _REPLIES


def _names_nobody(line: Line) -> bool:
    if CHAT not in line.notes:
        return has_stamp(line.text)
    words = line.text.split()
    if "?" in line.text or _PICTURE.fullmatch(line.text) or is_closing(line.text):
        return True
    if len(words) <= _SHORT and fold(words[-1]).strip(".!") in _LEFT_OUT:
        return True
    worded = [word for word in words if any(map(is_letter, word))]
    return len(worded) > 1 and all(map(begins_small, worded)) and not any(
        is_given(word.strip(",.!")) for word in worded)


def _answers(line: Line) -> bool:
    """Say whether a message opens with a word of an answer and goes on in small letters, with no known name."""
    opening, *rest = [bare for word in line.text.split() if (bare := word.strip(",.!…")) and any(map(is_letter, bare))
                      ] or [""]
    if CHAT not in line.notes or fold(opening) not in _ANSWERING or not rest or not all(map(begins_small, rest)):
        return False
    sentence = len(rest) > _FEW or (len(rest) == _FEW and not is_given(rest[0]))
    return sentence or not _ANSWERING.isdisjoint(map(fold, rest))
