"""All modules of the site in one file, and how Python imports them from there.

Inside a browser every look for a file is a call out of WebAssembly: finding and reading some four hundred modules one
by one took a quarter of importing them. The file begins with the size of an index (eight bytes, little end first),
then come the index (module names with path, place and size) and the modules' bytecode. What this module imports itself
must not be in the file. Out of scope: files of data, which stay files.
"""

from __future__ import annotations

import marshal
import os.path
import sys
from collections.abc import Iterator, Mapping
from importlib.machinery import ModuleSpec, SourcelessFileLoader
from importlib.util import spec_from_file_location
from types import CodeType, ModuleType

Place = tuple[str, int, int]  # a module's path, and where its bytecode begins and how long it is, in bytes

HEADER = 16  # bytes before the code in a compiled file (PEP 552)
_SIZE = 8


def packed(files: Mapping[str, bytes]) -> bytes:
    """Return the file of all modules; ``files`` are compiled ones (``.pyc``) by their paths below one folder."""
    index: dict[str, Place] = {}
    at = 0
    for path, data in sorted(files.items()):
        index[module_name(path)] = path, at, len(data) - HEADER
        at += len(data) - HEADER
    told = marshal.dumps(index)
    return len(told).to_bytes(_SIZE, "little") + told + b"".join(data[HEADER:] for _, data in sorted(files.items()))


def module_name(path: str) -> str:
    """Return the name of the module that lies at a path such as ``names/__init__.pyc``."""
    return path.removesuffix(".pyc").removesuffix("/__init__").replace("/", ".")


class Modules:
    """The modules of a file that ``packed`` made, as Python asks for them; each is as if it lay beside that file."""

    def __init__(self, file: str) -> None:
        self._file, self._folder = file, os.path.dirname(file)
        with open(file, "rb") as opened:
            size = int.from_bytes(opened.read(_SIZE), "little")
            self.index: dict[str, Place] = marshal.loads(opened.read(size))
        self._begin = _SIZE + size

    def find_spec(self, name: str, path: object = None, target: ModuleType | None = None) -> ModuleSpec | None:
        """Say where a module is, or that it is not here (importlib.abc.MetaPathFinder)."""
        if name not in self.index:
            return None
        inside, begin, size = self.index[name]
        where = f"{self._folder}/{inside}"
        folders = [os.path.dirname(where)] if where.endswith("/__init__.pyc") else None
        loader = _Loader(name, where, self._file, self._begin + begin, size)
        return spec_from_file_location(name, where, loader=loader, submodule_search_locations=folders)


class _Loader(SourcelessFileLoader):
    """Loads one module; files of data beside it are found as beside a file."""

    def __init__(self, name: str, path: str, file: str, begin: int, size: int) -> None:
        super().__init__(name, path)
        self._file, self._begin, self._size = file, begin, size

    def get_code(self, fullname: str) -> CodeType:
        """Return what the module does when it is loaded."""
        with open(self._file, "rb", buffering=0) as file:
            file.seek(self._begin)
            code: CodeType = marshal.loads(file.read(self._size))
        return code


def install(file: str) -> None:
    """Have every import look into the file first."""
    sys.meta_path.insert(0, Modules(file))


def below(package: ModuleType) -> Iterator[str]:
    """Yield the names of the modules in a package, whether they lie in such a file or are files of their own."""
    inside = f"{package.__name__}."
    for finder in sys.meta_path:
        if isinstance(finder, Modules):
            yield from (name for name in finder.index if name.startswith(inside))
    import pkgutil  # inside a browser this module is one of those that the file holds

    yield from (each.name for each in pkgutil.walk_packages(package.__path__, inside))
