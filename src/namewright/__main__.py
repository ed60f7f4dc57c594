"""``python -m namewright`` and the command ``namewright``: the command line."""

import signal
import sys


def run() -> None:
    """Load the command line and run it. Ctrl-C while it is loaded ends the process: nothing is under way yet."""
    usual = signal.getsignal(signal.SIGINT) is signal.default_int_handler  # else who started us has it ignored
    if usual:
        signal.signal(signal.SIGINT, signal.SIG_DFL)
    from namewright.cli import main

    if usual:
        signal.signal(signal.SIGINT, signal.default_int_handler)
    sys.exit(main())


if __name__ == "__main__":
    run()
