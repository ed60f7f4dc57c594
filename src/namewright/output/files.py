"""Files written whole or not at all: to a temporary neighbour first, then renamed into place."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO


@contextmanager
def whole_file(path: Path) -> Iterator[BinaryIO]:
    """Open a file for reading and writing that becomes ``path`` when the block ends without an error.

    Raises OSError, as the system words it, where the folder cannot be written.
    """
    handle, name = tempfile.mkstemp(prefix=".namewright-", dir=path.parent)
    temporary = Path(name)
    try:
        with os.fdopen(handle, "w+b") as file:
            yield file
        temporary.chmod(0o666 & ~_umask())
        temporary.replace(path)
    except BaseException:
        temporary.unlink(missing_ok=True)
        raise


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
