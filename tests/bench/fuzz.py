"""A fuzzer guided by which lines were reached (atheris) on the targets of ``tests/fuzz``, one target a run.

``pip install atheris``, then ``python tests/bench/fuzz.py list --seconds 600``. It ends at the first finding, which
it writes into a file in the folder where it was started. Its last results stand in DEVELOPERS.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

import atheris

HERE = Path(__file__).parent
sys.path.append(str(HERE.parent / "fuzz"))


def main() -> None:
    """Fuzz one target for so long."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("target")
    parser.add_argument("--seconds", type=int, default=600)
    options = parser.parse_args()
    with atheris.instrument_imports(include=["namewright"]):
        from targets import TARGETS
        target = TARGETS[options.target]
        target.run(target.seeds()[0])  # what a target imports when it is first run
    with tempfile.TemporaryDirectory() as corpus:
        for at, seed in enumerate(target.seeds()):
            (Path(corpus) / str(at)).write_bytes(seed)
        atheris.Setup([sys.argv[0], f"-max_total_time={options.seconds}", "-max_len=300000", "-print_final_stats=1",
                       "-timeout=20", "-rss_limit_mb=1500", corpus], target.run)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
