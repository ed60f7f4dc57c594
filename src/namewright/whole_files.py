"""Files written whole or not at all: to a temporary neighbour first, then renamed into place.

A run that is killed leaves its neighbour behind; the next run that writes into the folder takes it away. A neighbour in
use is locked, where the system has locks (POSIX), or cannot be removed at all (Windows). A neighbour may be a folder,
for what has several files; the lock is then on a file in it.
"""

from __future__ import annotations

import errno
import os
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import BinaryIO

try:
    import fcntl
except ImportError:  # Windows
    fcntl = None  # type: ignore[assignment]

_PREFIX = ".namewright-"
_LOCK = "lock"
_YOUNG_S = 10.0  # one as young as this may belong to a run that has not locked it yet


@contextmanager
def whole_file(path: Path) -> Iterator[BinaryIO]:
    """Open a file for reading and writing that becomes ``path`` when the block ends without an error.

    Raises OSError, as the system words it, where the folder cannot be written, and for a device or a pipe: who may
    write into its folder would put a file in its place.
    """
    if path.exists() and not (path.is_file() or path.is_dir()):
        raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST), str(path))
    clear_leftovers(path.parent)
    temporary = path.parent / (_PREFIX + os.urandom(8).hex())  # not by tempfile: it brings nine modules
    try:  # from here on: a Ctrl-C right behind the opening finds the file
        handle = os.open(temporary, os.O_RDWR | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o600)
        with os.fdopen(handle, "w+b") as file:
            _locked(handle)
            yield file
        temporary.chmod(0o666 & ~_umask())
        temporary.replace(path)
    except BaseException:
        with suppress(OSError):
            temporary.unlink(missing_ok=True)
        raise


@contextmanager
def folder_for_files(folder: Path) -> Iterator[None]:
    """Make a folder and those above it where there are none; those into which nothing came go again afterwards.

    Raises OSError, as the system words it, where one cannot be made.
    """
    new = [each for each in (folder, *folder.parents) if not each.exists()]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        yield
    finally:
        for each in new:
            with suppress(OSError):  # it is not empty
                each.rmdir()


@contextmanager
def folder_beside(path: Path) -> Iterator[Path]:
    """Yield a new folder beside ``path``, its owner's alone, that is taken away with what is left in it afterwards.

    Raises OSError, as the system words it, where none can be made.
    """
    import shutil  # not at the top: few runs need a folder, and these two bring modules for all kinds of files
    import tempfile

    clear_leftovers(path.parent)
    folder = Path(tempfile.mkdtemp(prefix=_PREFIX, dir=path.parent))
    try:
        with (folder / _LOCK).open("wb") as lock:
            _locked(lock.fileno())
            yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def clear_leftovers(folder: Path) -> None:
    """Take away what runs that were killed left in a folder; what cannot be taken away stays."""
    with suppress(OSError):
        for left in folder.glob(f"{_PREFIX}*"):
            with suppress(OSError):
                if time.time() - left.stat().st_mtime > _YOUNG_S and _nobodys(left):
                    _remove(left)


def _remove(left: Path) -> None:
    if left.is_dir():
        import shutil

        shutil.rmtree(left, ignore_errors=True)
    else:
        left.unlink()


def _nobodys(left: Path) -> bool:
    """Say whether no run that goes on is writing to a file, or into a folder."""
    lock = left / _LOCK if left.is_dir() else left
    if not lock.is_file():  # a pipe would be waited for without an end
        return not lock.exists()
    with lock.open("rb") as file:
        return _locked(file.fileno())


def _locked(handle: int) -> bool:
    """Lock an open file for as long as it is open; return whether nobody else had."""
    if fcntl is None:
        return True
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        return False
    return True


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
