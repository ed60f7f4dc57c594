"""Children of an invented class, and classes of any names, to be put in order."""

from __future__ import annotations

from hypothesis import strategies as st

from namewright.roster.children import Child


def child(name: str, line: int = 1, **more: str) -> Child:
    """Return a child of this name alone."""
    return Child(**{"practice": name, "label": name, "given": name, "family": "", **more}, line=line)


CLASS = tuple(child(name, line) for line, name in enumerate(
    ("Zuzelka", "Mira", "Étol", "Bob", "Etol", "Jean-Tov", "Łuva", "Alexandrine", "Dod"), start=1))
ANY_CLASS = st.lists(st.text("ABJMQZabdeiknoquvzé -", min_size=1, max_size=9), max_size=12).map(
    lambda names: [child(name, line) for line, name in enumerate(names, start=1)])
