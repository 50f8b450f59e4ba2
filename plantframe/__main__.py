"""The same program as the `plantframe` command, for `python -m plantframe`."""

import sys

from plantframe.commands.main import main

if __name__ == "__main__":
    sys.exit(main())
