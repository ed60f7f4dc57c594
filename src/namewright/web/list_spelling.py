"""A name on a line of a list as somebody spelled it: whole, or the part that was meant. Pure."""

from __future__ import annotations

import re
from difflib import SequenceMatcher

from namewright.classbook.going_on import whole_name
from namewright.classbook.parting import Promise
from namewright.classbook.same_child import HEARD
from namewright.message import Message, message
from namewright.names.latin_spelling import latin_spelling
from namewright.roster.children import Child, LineReport
from namewright.roster.vocabulary import fold
from namewright.store import keeps_names
from namewright.web.list_ways import ANYBODY, WITH_MIDDLE, Way


@keeps_names(1024)
def asks_latin(letters: tuple[str, ...]) -> Message:
    """Ask for letters that can be drawn in place of these."""
    return message("web.list.asks_latin",
                   letters=tuple(message("quoted", words=letter) for letter in dict.fromkeys(letters)))


def latin(child: Child) -> Way:
    """Offer a spelling in letters that can be drawn, to be changed as the family spells it."""
    called = child.practice not in (child.given, child.family, whole_name(child))
    offered = latin_spelling("" if called else whole_name(child)) or latin_spelling(child.practice)
    return Way("latin", message("web.list.way_latin"), offered=offered)


def spelled(report: LineReport, child: Child, typed: str) -> Way:
    """Write the name of a line as somebody spelled it: whole, or the part that was meant; the rest stays as it is."""
    new, text, given = " ".join(typed.split()), report.text.rstrip(), _given_as_written(report, child)
    heard, family_heard = _alike(new, given), _alike(new, child.family)
    if fold(child.family).isascii() and not fold(given).isascii():
        family_heard = -1.0  # written in our letters already: the given name is what was asked for
    if _is_whole(child, new):
        tries, promise = _whole_name(text, given, child.family, new)
    elif family_heard > heard or (family_heard == heard and child.practice == child.family):
        tries, promise = ((_put(text, child.family, new),),), Promise(child.given, new)
    elif child.family and child.family in child.practice:
        tries, promise = ((_put(text, given, new),),), Promise(new, child.family)
    else:
        tries, promise = ((f"{text} (goes by {new})",), (_put(text, child.practice, new),)), Promise("", practice=new)
    return Way("latin", message("web.list.way_latin"), tries, (promise,))


def _given_as_written(report: LineReport, child: Child) -> str:
    """Return the given name with what was taken for a middle name, where both stand together."""
    middle = next((str(note["middle"]) for note in report.notes if note.key == WITH_MIDDLE), "")
    both = f"{child.given} {middle}".strip()
    return both if both.casefold() in report.text.casefold() else child.given


def _whole_name(text: str, old_given: str, old_family: str, new: str) -> tuple[tuple[tuple[str, ...], ...], Promise]:
    """Put given and family name in the place of each where it stands, else write them anew."""
    words = new.split()
    before = len(words) - len(old_family.split())
    given, family = " ".join(words[:before]), " ".join(words[before:])
    anew = f"{family}, {given}" if family else given
    tries = (_put(_put(text, old_given, given), old_family, family),), (anew,), (f"Name: {new}",)
    if not family and len(words) > 1:  # 王小明 is both, and Wang Xiaoming is read by the rules for such names
        return tries, ANYBODY
    return tries, Promise(given, family)


def _is_whole(child: Child, typed: str) -> bool:
    """Say whether a spelling has the family name, too: one like it, or where none can be guessed, as many words."""
    families = child.family.split()
    if len(typed.split()) <= len(families):
        return False
    if _in_latin(child.family).isascii():
        return not families or _alike(" ".join(typed.split()[-len(families):]), child.family) >= HEARD
    return len(typed.split()) >= len(whole_name(child).split())


def _alike(typed: str, part: str) -> float:
    """Return how alike a spelling and a part of a name are, of 1."""
    return SequenceMatcher(None, _in_latin(typed), _in_latin(part), autojunk=False).ratio()


def _in_latin(name: str) -> str:
    return fold(latin_spelling(name) or name)


def _put(text: str, old: str, new: str) -> str:
    """Put words in place of others that stand once in a line, however their letters are cased."""
    return re.sub(rf"(?<!\w){re.escape(old)}(?!\w)", lambda _: new, text, count=1, flags=re.IGNORECASE) if old else text
