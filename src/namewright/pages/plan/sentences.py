"""The sentences of the plan: what to do on Monday and why, in whole sentences of the language asked for.

Out of scope: where they stand (``plan``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from types import MappingProxyType

from namewright.practice.groups import group_worth, shared_letters
from namewright.practice.ordering import Order, Placed, initial_family
from namewright.practice.weeks import WeekPlan, letters_of

Words = Mapping[str, str]
Formed = Mapping[int, frozenset[str]]  # by the line of a child: the letters that stood when they were looked at last
NOTHING_FORMED: Formed = MappingProxyType({})
FIRST = 3  # how many children Monday names
SAID_LETTERS = 5


def joined(parts: Sequence[str], words: Words) -> str:
    """Return ``Ava, Bo and Zoë`` in the page's language; Spanish y is e before the sound of i."""
    if len(parts) < 2:
        return "".join(parts)
    last = parts[-1]
    sounds_i = last.casefold().startswith(("i", "í", "hi", "hí")) and not last.casefold().startswith("hie")
    return f"{', '.join(parts[:-1])} {words['plan.and_before_i' if sounds_i else 'plan.and']} {last}"


def groups_of(placed: Sequence[Placed]) -> dict[int, list[Placed]]:
    """Return the children of each group by its number, in roster order; whoever is in none is left out."""
    found: dict[int, list[Placed]] = {}
    for each in sorted(placed, key=lambda one: one.child.line):
        if each.group:
            found.setdefault(each.group, []).append(each)
    return dict(sorted(found.items()))


def group_said(number: int, group: Sequence[Placed], words: Words) -> str:
    """Return who is in a group; one full stop at the end, also after a label such as “Ava F.” has had its own."""
    names = joined([each.child.label for each in group], words)
    return words["plan.group"].format(number=number, who=names).replace("..", ".")


def first_children(placed: Sequence[Placed], order: Order, formed: Formed) -> Sequence[Placed]:
    """Return the children to begin with: the first in order who have letters that are still to come."""
    able = [each for each in placed
            if {letter for letter, _ in each.letters} - formed.get(each.child.line, frozenset())]
    if order is Order.FAMILY:
        able = [each for each in able if initial_family(each.child) is initial_family(able[0].child)]
    return able[:FIRST]


def monday(placed: Sequence[Placed], plan: WeekPlan, order: Order, words: Words,
           formed: Formed = NOTHING_FORMED) -> Iterator[str]:
    """Yield what to do on Monday: the first letter, the first children, the first table, each with its reason."""
    able = [each for each in placed if each.letters]
    if plan.weeks:
        yield _first_letter(able, plan.weeks[0].letter, words)
    first = first_children(placed, order, formed)
    if first:
        who = joined([each.child.label for each in first], words)
        kind = words[f"plan.family_{initial_family(first[0].child)}"]
        yield words[f"plan.monday_{_order_key(order)}"].format(who=who, family=kind)
    elif able:
        yield words["plan.monday_all_formed"]
    table = _best_table(able)
    if table:
        who = joined([each.child.label for each in table], words)
        letters = shared_letters([each.child.practice for each in table])[:SAID_LETTERS]
        yield words["plan.monday_table"].format(number=table[0].group, who=who, letters=joined(letters, words))


def _first_letter(able: Sequence[Placed], letter: str, words: Words) -> str:
    count = sum(letter in letters_of(each.child.practice) for each in able)
    key = "plan.monday_letter" if count > 1 else "plan.monday_letter_one"
    return words[key].format(letter=_both_cases(letter), count=count, all=len(able))


def _both_cases(letter: str) -> str:
    capital = letter.upper()
    return letter if capital == letter or len(capital) > 1 else f"{capital} {letter}"


def _best_table(able: Sequence[Placed]) -> Sequence[Placed]:
    """Return the group of three or more whose children share most with one another; none where nothing is shared."""
    tables = [table for table in groups_of(able).values() if len(table) > 2]
    return max(tables, key=_shared_each, default=()) if any(map(_shared_each, tables)) else ()


def _shared_each(table: Sequence[Placed]) -> float:
    sets = [letters_of(each.child.practice) for each in table]
    return group_worth(range(len(sets)), sets) / len(sets)


def _order_key(order: Order) -> str:
    return {Order.NEED: "need", Order.FAMILY: "family"}.get(order, "easiest")


def order_said(order: Order, words: Words) -> str:
    """Return the sentence that explains the order of the rows."""
    return words[f"plan.order_{_order_key(order)}"]


def weeks_said(plan: WeekPlan, everyone: int, words: Words) -> str:
    """Return the sentence that says what the weeks bring and how surely no other order brings more."""
    ready = sum(len(week.ready) for week in plan.weeks)
    how = words["plan.weeks_exact" if plan.exact else "plan.weeks_greedy"]
    return f"{words['plan.weeks_what'].format(weeks=len(plan.weeks), ready=ready, all=everyone)} {how}"
