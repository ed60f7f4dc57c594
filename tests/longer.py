"""Cases that only the long run of the tests tries, beside the few that every run tries."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import pytest


def rest_long(cases: Iterable[Any], first: int = 1) -> list[Any]:
    """Return the cases of a test, all but the ``first`` so many marked as long."""
    return [case if at < first else _long(case) for at, case in enumerate(cases)]


def _long(case: Any) -> Any:
    return pytest.param(*(case if isinstance(case, tuple) else (case,)), marks=pytest.mark.long)
