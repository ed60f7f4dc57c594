"""A very large class at the command line: fifty thousand made-up children, two processes; the time and the memory.

Run in a process of its own, as a district's office would run it. What is measured: seconds from start to end, seconds
of processor time of all processes, the peak of the process that writes and of the largest that helps it, the bytes. The
load of the machine before and after stands beside it, since other work makes all but the bytes larger.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from run import made_up

CHILDREN, JOBS = 50_000, 2
_RUN = """
import resource, sys
from namewright.cli import main
status = main(sys.argv[1:])
used = [resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)]
print(sum(one.ru_utime + one.ru_stime for one in used), *(one.ru_maxrss / 1024 for one in used))
sys.exit(status)
"""  # Linux counts memory in KiB


def main() -> None:
    """Read the options, run and print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--children", type=int, default=CHILDREN)
    parser.add_argument("--jobs", type=int, default=JOBS)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        names, out = Path(folder) / "class.txt", Path(folder) / "class.pdf"
        names.write_text("\n".join(made_up(options.children)), encoding="utf-8")
        before, begun = os.getloadavg()[0], time.perf_counter()
        done = subprocess.run([sys.executable, "-c", _RUN, "sheets", str(names), "-o", str(out), "--jobs",
                               str(options.jobs)], check=False, capture_output=True, text=True)
        wall = time.perf_counter() - begun
        if not out.exists():
            sys.exit(done.stderr)
        size = out.stat().st_size
    cpu, writer, helper = map(float, done.stdout.split())
    print(f"{options.children} children, {options.jobs} processes, exit status {done.returncode}:")
    print(f"  {wall:.0f} s from start to end (target: at most 100 s), {cpu:.0f} s of processor time,"
          f" {1000 * cpu / options.children:.2f} ms a child")
    print(f"  peak {writer:.0f} MB where it is written (target: at most 200 MB), {helper:.0f} MB in the largest helper")
    print(f"  {size / options.children:.0f} bytes a child; the machine's load was {before:.1f} before,"
          f" {os.getloadavg()[0]:.1f} after")


if __name__ == "__main__":
    main()
