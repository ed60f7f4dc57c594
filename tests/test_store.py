"""A store makes a value once, keeps the newest so many, and tells what it lets go."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.store import Made, Store, forget_names, keeps_names


@given(st.lists(st.integers(0, 9), max_size=60), st.integers(1, 5))
def test_the_keys_asked_for_last_are_kept_and_the_others_go(asked: list[int], most: int) -> None:
    """Against the plain rule: of all that was asked for, the last so many different keys are still there."""
    store: Store[int, int] = Store(most)
    made: list[int] = []

    def make(key: int) -> int:
        made.append(key)
        return key

    for at, key in enumerate(asked):
        held = list(dict.fromkeys(reversed(asked[:at])))[:most]
        before = len(made)
        assert store.get(key, lambda key=key: make(key)) == key  # type: ignore[misc]
        assert len(made) - before == (key not in held)
    newest = list(dict.fromkeys(reversed(asked)))[:most]
    assert {key for key in range(10) if store.find(key) is not None} == set(newest)
    assert len(store) == len(newest)


def test_what_could_not_be_made_is_asked_for_again() -> None:
    def tries() -> Iterator[object]:
        yield ValueError("not yet")
        yield "made"

    coming, store = tries(), Store[str, object](3)

    def make() -> object:
        value = next(coming)
        if isinstance(value, Exception):
            raise value
        return value

    with pytest.raises(ValueError, match="not yet"):
        store.get("key", make)
    assert store.get("key", make) == "made"


def test_a_store_that_was_cleared_is_empty() -> None:
    store: Store[int, str] = Store(2)
    for key, value in enumerate("abc"):
        store.get(key, lambda value=value: value)  # type: ignore[misc]
    store.clear()
    assert (len(store), store.find(2)) == (0, None)


def test_made_values_are_made_once_and_only_when_asked_for() -> None:
    """Keys are all there from the start; only what is looked at is made."""
    asked: list[str] = []
    made = Made("abc", lambda key: asked.append(key) or key.upper())  # type: ignore[func-returns-value]
    assert "b" in made
    assert "d" not in made
    assert (list(made), len(made), asked) == (["a", "b", "c"], 3, [])
    assert (made["b"], made["b"], asked) == ("B", "B", ["b"])
    with pytest.raises(KeyError):
        made["d"]
    assert dict(made) == {"a": "A", "b": "B", "c": "C"}


def test_answers_about_names_are_kept_until_names_are_forgotten() -> None:
    """The newest are given again without asking, what was raised is asked for again, and forgetting lets all go."""
    asked: list[str] = []

    @keeps_names(2)
    def shout(name: str, *, sign: str = "!") -> str:
        asked.append(name)
        if not name:
            raise ValueError("nobody")
        return name.upper() + sign

    assert [shout(name) for name in ("mia", "leo", "mia", "leo")] == ["MIA!", "LEO!", "MIA!", "LEO!"]
    assert asked == ["mia", "leo"]
    assert shout("mia", sign="?") == "MIA?"
    for _ in range(2):
        with pytest.raises(ValueError, match="nobody"):
            shout("")
    assert asked == ["mia", "leo", "mia", "", ""]
    forget_names()
    assert (shout("mia", sign="?"), len(asked)) == ("MIA?", 6)
